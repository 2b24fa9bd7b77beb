package org.rimebook.desk.table;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.model.ExportModel;
import org.rimebook.totals.Resolution;

/** Where the tables go and at what resolution, and how far their writing is. */
final class ExportPanel extends JPanel {

  private static final int PARTS = 100;

  private final ExportModel model;
  private final JTextField folder = new JTextField(36);
  private final JComboBox<String> resolution = new JComboBox<>();
  private final JProgressBar bar = new JProgressBar(0, PARTS);
  private final Prose words = Prose.quiet("");
  private final JButton write = new JButton("Export");
  private boolean begun;

  /**
   * @param model writes
   * @param first resolution offered
   */
  ExportPanel(ExportModel model, Resolution first) {
    super(new MigLayout("insets 16, gap 8 8, wrap 3", "[80!][grow, fill][]"));
    this.model = model;
    for (Resolution each : Resolution.values()) {
      resolution.addItem(each.mm() + " mm");
    }
    resolution.setSelectedIndex(first.ordinal());
    folder.setText(model.suggestedFolder().toString());
    JButton choose = new JButton("Choose…");
    choose.setMnemonic('C');
    choose.addActionListener(event -> choose());
    write.addActionListener(event -> start());
    add(label("Folder", 'F', folder));
    add(folder, "growx, wmin 0");
    add(choose);
    add(label("Resolution", 'R', resolution));
    add(resolution, "growx 0, wrap");
    bar.getAccessibleContext().setAccessibleName("How far the writing is");
    add(words, "skip 1, spanx, growx, wmin 0, hmin 36");
    add(bar, "skip 1, spanx, growx");
    bar.setVisible(false);
  }

  private static JLabel label(String words, char mnemonic, javax.swing.JComponent field) {
    JLabel label = new JLabel(words);
    label.setDisplayedMnemonic(mnemonic);
    label.setLabelFor(field);
    return label;
  }

  JButton write() {
    return write;
  }

  private void choose() {
    JFileChooser chooser = new JFileChooser(new File(folder.getText()));
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    chooser.setDialogTitle("Folder for the tables");
    if (chooser.showDialog(this, "Choose") == JFileChooser.APPROVE_OPTION) {
      folder.setText(chooser.getSelectedFile().toString());
    }
  }

  private void start() {
    Optional<Path> path = path();
    Optional<String> obstacle =
        path.map(model::obstacle)
            .orElse(Optional.of("That isn't the name of a folder: choose one"));
    if (obstacle.isPresent()) {
      words.setText(obstacle.get());
      return;
    }
    begun = true;
    model.start(path.orElseThrow(), Resolution.values()[resolution.getSelectedIndex()]);
  }

  private Optional<Path> path() {
    try {
      return folder.getText().isBlank()
          ? Optional.empty()
          : Optional.of(Path.of(folder.getText().strip()));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** Shows how far the writing is; tells whether it was begun here and has ended. */
  boolean show(ExportModel.State state) {
    bar.setVisible(state.busy());
    bar.setIndeterminate(state.share() < 0);
    bar.setValue((int) Math.round(PARTS * Math.max(0, state.share())));
    folder.setEnabled(!state.busy());
    resolution.setEnabled(!state.busy());
    write.setEnabled(!state.busy());
    words.setText(
        state.busy()
            ? state.words()
            : "Writes hourly.csv, daily.csv, season.json and datapackage.json: the same bytes as"
                + " the command line. Files of these names there are replaced.");
    return begun && !state.busy();
  }
}
