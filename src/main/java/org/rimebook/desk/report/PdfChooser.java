package org.rimebook.desk.report;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;

/** Asks for the file that a paper is saved as. */
public final class PdfChooser {

  private final Component parent;
  private final String what;

  /**
   * @param parent what the dialogs stand over
   * @param what the paper's name, title of the dialogs
   */
  public PdfChooser(Component parent, String what) {
    this.parent = parent;
    this.what = what;
  }

  /**
   * Asks for the file.
   *
   * @param first the file proposed
   * @param obstacle why a file can't be written, if so
   * @return the file; empty when nothing is to be saved
   */
  public Optional<Path> ask(Path first, Function<Path, Optional<String>> obstacle) {
    JFileChooser chooser = new JFileChooser();
    chooser.setDialogTitle("Save: " + what);
    chooser.setSelectedFile(first.toFile());
    if (chooser.showDialog(parent, "Save") != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    Path file = chooser.getSelectedFile().toPath();
    Optional<String> why = obstacle.apply(file);
    if (why.isPresent()) {
      JOptionPane.showMessageDialog(parent, why.get(), what, JOptionPane.WARNING_MESSAGE);
      return Optional.empty();
    }
    return !file.toFile().exists() || replacing(file) ? Optional.of(file) : Optional.empty();
  }

  private boolean replacing(Path file) {
    return JOptionPane.showConfirmDialog(
            parent, file + " is there already. Replace it?", what, JOptionPane.OK_CANCEL_OPTION)
        == JOptionPane.OK_OPTION;
  }
}
