package org.rimebook.desk.start;

import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;

/** Asks for files and folders; begins where it was left. */
final class Choosers {

  private final Component above;
  private Optional<File> last = Optional.empty();

  Choosers(Component above) {
    this.above = above;
  }

  /** A season folder. */
  Optional<Path> season() {
    JFileChooser chooser = chooser("Open season", JFileChooser.DIRECTORIES_ONLY);
    return asked(chooser, "Open").map(File::toPath);
  }

  /** Logger files, or one folder of them. */
  Optional<List<Path>> record() {
    JFileChooser chooser =
        chooser("Files of the logger, or their folder", JFileChooser.FILES_AND_DIRECTORIES);
    chooser.setMultiSelectionEnabled(true);
    return asked(chooser, "Use these")
        .map(file -> Stream.of(chooser.getSelectedFiles()).map(File::toPath).toList())
        .filter(files -> !files.isEmpty());
  }

  /** Another folder to write into, or the one now when none is chosen. */
  Path folderFor(Path now) {
    JFileChooser chooser = chooser("Folder to write into", JFileChooser.DIRECTORIES_ONLY);
    chooser.setSelectedFile(now.toFile());
    return asked(chooser, "Use this").map(File::toPath).orElse(now);
  }

  /** Whether what is entered in a form may go, for a new one. */
  boolean replaces() {
    return JOptionPane.showConfirmDialog(
            above,
            "Leave what you have entered, and begin with the other files?",
            "New season",
            JOptionPane.OK_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE)
        == JOptionPane.OK_OPTION;
  }

  private JFileChooser chooser(String title, int mode) {
    JFileChooser chooser = new JFileChooser();
    chooser.setDialogTitle(title);
    chooser.setFileSelectionMode(mode);
    last.ifPresent(chooser::setCurrentDirectory);
    return chooser;
  }

  private Optional<File> asked(JFileChooser chooser, String approve) {
    if (chooser.showDialog(above, approve) != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    last = Optional.of(chooser.getCurrentDirectory());
    return Optional.ofNullable(chooser.getSelectedFile());
  }
}
