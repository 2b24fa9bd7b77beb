package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** Writes the last of several changes, on another thread. */
final class LateWrite {

  private final Path file;
  private final Executor writer;
  private final Consumer<Notice> tell;
  private final AtomicReference<Map<String, String>> pending = new AtomicReference<>();
  private boolean failedBefore;

  LateWrite(Path file, Executor writer, Consumer<Notice> tell) {
    this.file = file;
    this.writer = writer;
    this.tell = tell;
  }

  /** Writes these texts some time later, unless others come to be written first. */
  void later(Map<String, String> texts) {
    if (pending.getAndSet(new TreeMap<>(texts)) == null) {
      writer.execute(this::now);
    }
  }

  /** Writes what is waiting. */
  synchronized void now() {
    Map<String, String> texts = pending.getAndSet(null);
    if (texts == null) {
      return;
    }
    try {
      PropertiesText.write(file, texts);
      failedBefore = false;
    } catch (IOException e) {
      if (!failedBefore) {
        failedBefore = true;
        tell.accept(unwritable(e));
      }
    }
  }

  private Notice unwritable(IOException fault) {
    return new Notice(
        Notice.Weight.NOTE,
        "How the window stands can't be remembered: "
            + file
            + " can't be written ("
            + fault.getClass().getSimpleName()
            + ": "
            + fault.getMessage()
            + "). Make room there or give the right to write; seasons and notebooks aren't"
            + " touched by this");
  }
}
