package org.rimebook.desk.start;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;
import org.rimebook.desk.model.Faults;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/** Why something couldn't be opened: each problem with its place and what to do. */
public final class FaultPanel extends JPanel {

  private final JLabel title = Words.label(" ", () -> Look.bold(1.4), Look::ink);
  private final JLabel count = Words.label(" ", () -> Look.text(1), Look::muted);
  private final Sheet list = new Sheet(new MigLayout("insets 0, wrap 1, gapy 4", "[grow, fill]"));
  private final JButton again = new JButton("Try again");
  private final JButton another = new JButton("Open another…");
  private final JButton back = new JButton("Back");
  private String text = "";
  private Runnable retry = () -> {};

  /**
   * @param openAnother asked for when another season is to be opened
   * @param goBack asked for when it is to be left at that
   */
  public FaultPanel(Runnable openAnother, Runnable goBack) {
    super(
        new MigLayout(
            "insets 32, wrap 1, align 50% 0", "[grow, fill, ::760]", "[]4[]16[grow]16[]"));
    JButton copy = new JButton("Copy the text");
    add(title);
    add(count);
    add(Sheet.scrolling(list), "grow, hmin 0");
    JPanel ways = new JPanel(new MigLayout("insets 0, gapx 8"));
    List.of(again, another, copy, back).forEach(ways::add);
    add(ways);
    again.setMnemonic('T');
    another.setMnemonic('O');
    copy.setMnemonic('C');
    back.setMnemonic('B');
    again.addActionListener(event -> retry.run());
    another.addActionListener(event -> openAnother.run());
    copy.addActionListener(event -> copy());
    back.addActionListener(event -> goBack.run());
    registerKeyboardAction(
        event -> goBack.run(),
        KeyStroke.getKeyStroke("ESCAPE"),
        JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
  }

  /**
   * Shows a fault.
   *
   * @param what what couldn't be done, as a title
   * @param fault why
   * @param tryAgain does it again
   */
  public void show(String what, Throwable fault, Runnable tryAgain) {
    retry = tryAgain;
    title.setText(what);
    list.removeAll();
    if (fault instanceof InputException input) {
      input.problems().forEach(this::add);
      int problems = input.problems().size();
      count.setText(
          problems == 1 ? "One thing is in the way:" : problems + " things are in the way:");
      text = input.problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    } else {
      text = Faults.words(fault);
      count.setText("This is in the way:");
      list.add(line(text), "wmin 0");
    }
    list.revalidate();
    list.repaint();
  }

  /** Puts the focus on the way out that is taken most. */
  void focus() {
    again.requestFocusInWindow();
  }

  /** All of it as text, one problem a line. */
  String text() {
    return text;
  }

  private void add(Problem problem) {
    JLabel place = Words.label(place(problem), () -> Look.bold(1), Look::ink);
    list.add(place, "gaptop 8, wmin 0");
    list.add(line(sentence(problem.what())), "wmin 0");
    if (!problem.remedy().isEmpty()) {
      list.add(line(sentence(problem.remedy())), "wmin 0");
    }
  }

  private static JComponent line(String words) {
    JTextArea area = Words.text(words, () -> Look.text(1), Look::ink);
    area.setFocusable(true);
    area.getAccessibleContext().setAccessibleName("Problem");
    return area;
  }

  private static String sentence(String words) {
    return words.endsWith(".") ? words : words + ".";
  }

  private static String place(Problem problem) {
    List<String> parts =
        List.of(
            problem.file(),
            problem.line() > 0 ? ", line " + problem.line() : "",
            problem.line() > 0 && problem.column() > 0 ? ", column " + problem.column() : "");
    return String.join("", parts);
  }

  private void copy() {
    StringSelection selection = new StringSelection(text);
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(selection, selection);
  }
}
