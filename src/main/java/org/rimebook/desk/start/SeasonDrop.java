package org.rimebook.desk.start;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/** Takes folders and files that are dropped on the window, or pasted into it. */
public final class SeasonDrop extends TransferHandler {

  private static final long serialVersionUID = 1L;

  private final transient Consumer<List<Path>> taker;

  /**
   * @param taker given what was dropped, at least one path, on the event thread
   */
  public SeasonDrop(Consumer<List<Path>> taker) {
    this.taker = taker;
  }

  @Override
  public boolean canImport(TransferSupport support) {
    boolean files = support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    if (files && support.isDrop()) {
      support.setDropAction(COPY);
    }
    return files;
  }

  @Override
  public boolean importData(TransferSupport support) {
    if (!canImport(support)) {
      return false;
    }
    try {
      Object data = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      List<Path> paths = new ArrayList<>();
      ((List<?>) data).forEach(file -> paths.add(((File) file).toPath()));
      if (paths.isEmpty()) {
        return false;
      }
      // The program that is dragged from waits until this returns.
      SwingUtilities.invokeLater(() -> taker.accept(paths));
      return true;
    } catch (UnsupportedFlavorException | IOException e) {
      return false;
    }
  }
}
