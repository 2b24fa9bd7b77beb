package org.rimebook.desk;

import java.awt.Dimension;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JTextArea;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.Opened;
import org.rimebook.desk.model.Workspace;
import org.rimebook.station.Problem;

/**
 * What was met on reading the season and didn't stop it: lines of the notebook without effect,
 * lines of the record that weren't taken, members of the sheet that aren't known.
 */
final class ReadingNotes {

  private ReadingNotes() {}

  static DeskAction action(JFrame window, Workspace workspace) {
    return DeskAction.named(
            Group.SEASON,
            "What was met on reading…",
            () -> show(window, words(workspace.opened().get().orElseThrow())))
        .saying("Lines of the notebook and the record that have no effect, and why")
        .key("F3")
        .mnemonic('M')
        .when(() -> workspace.opened().get().isPresent())
        .done();
  }

  /** How many notes there are, in words for the header; empty when there are none. */
  static String count(Opened opened) {
    int notebook = opened.season().notebook().notes().size();
    int all = opened.season().notes().size();
    if (all == 0) {
      return "";
    }
    return notebook > 0
        ? notebook + (notebook == 1 ? " line" : " lines") + " of the notebook to look at: F3"
        : all + (all == 1 ? " note" : " notes") + " on reading: F3";
  }

  private static String words(Opened opened) {
    List<String> lines = new ArrayList<>();
    for (Problem note : opened.season().notes()) {
      lines.add(note.toString());
    }
    return lines.isEmpty() ? "Nothing: every line was taken." : String.join("\n\n", lines);
  }

  private static void show(JFrame window, String words) {
    JTextArea text = new JTextArea(words);
    text.setEditable(false);
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    text.setMargin(new Insets(16, 16, 16, 16));
    text.getAccessibleContext().setAccessibleName("What was met on reading");
    text.setCaretPosition(0);
    ReadingDialog.show(window, "What was met on reading", text, new Dimension(640, 400));
  }
}
