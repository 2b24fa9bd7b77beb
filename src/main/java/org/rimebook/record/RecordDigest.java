package org.rimebook.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.FutureTask;
import org.rimebook.station.Progress;
import org.rimebook.station.Sha256;

/**
 * The digests by which a record is recognised. They are taken beside other work or when somebody
 * asks; who asks while they are being taken waits. Safe for threads.
 */
public final class RecordDigest {

  private static final int BUFFER = 1 << 17;

  private final FutureTask<Digests> taking;

  private RecordDigest(FutureTask<Digests> taking) {
    this.taking = taking;
  }

  /**
   * Digests of files as they are now, not yet taken.
   *
   * @param files the files
   * @param progress ends it early when it is called off
   * @throws IOException when a file can't be looked at
   */
  static RecordDigest of(List<RecordFile> files, Progress progress) throws IOException {
    List<State> states = new ArrayList<>();
    for (RecordFile file : files) {
      states.add(State.of(file.path()));
    }
    return new RecordDigest(new FutureTask<>(() -> taken(files, states, progress)));
  }

  /**
   * The digest of a record that is known by another way, or was never in files.
   *
   * @param record what {@link #record()} gives
   */
  public static RecordDigest known(String record) {
    FutureTask<Digests> known = new FutureTask<>(() -> new Digests(record, List.of()));
    known.run();
    return new RecordDigest(known);
  }

  /** Begins to take them on another thread, unless that has begun. */
  public void begin() {
    ForkJoinPool.commonPool().execute(taking);
  }

  /**
   * SHA-256 over each file's name, a zero byte and its bytes as stored, in the order of the files;
   * lower-case hexadecimal.
   *
   * @throws UncheckedIOException when a file can't be read, or has changed since it was
   */
  public String record() {
    return digests().record();
  }

  /**
   * SHA-256 of each file's bytes as stored, in the order of the files, lower-case hexadecimal;
   * empty for a record that was never in files.
   *
   * @throws UncheckedIOException when a file can't be read, or has changed since it was
   */
  public List<String> files() {
    return digests().files();
  }

  private Digests digests() {
    taking.run(); // does nothing when it runs elsewhere or has run
    try {
      return taking.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException unread) {
        throw new UncheckedIOException(unread);
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private static Digests taken(List<RecordFile> files, List<State> states, Progress progress)
      throws IOException {
    MessageDigest digest = Sha256.start();
    List<String> ofFiles = new ArrayList<>();
    byte[] buffer = new byte[BUFFER];
    for (int i = 0; i < files.size(); i++) {
      RecordFile file = files.get(i);
      digest.update(file.name().getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
      MessageDigest ofFile = Sha256.start();
      try (InputStream in = Files.newInputStream(file.path())) {
        int count = in.read(buffer);
        while (count >= 0 && !progress.cancelled()) {
          digest.update(buffer, 0, count);
          ofFile.update(buffer, 0, count);
          count = in.read(buffer);
        }
      }
      ofFiles.add(Sha256.hex(ofFile));
      if (!State.of(file.path()).equals(states.get(i))) {
        throw new IOException(file.name() + " has changed since it was read");
      }
    }
    return new Digests(Sha256.hex(digest), ofFiles);
  }

  private record Digests(String record, List<String> files) {}

  /** What tells that a file is no longer the one that was read. */
  private record State(long bytes, FileTime changed) {
    static State of(Path file) throws IOException {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      return new State(attributes.size(), attributes.lastModifiedTime());
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RecordDigest that && digests().equals(that.digests());
  }

  @Override
  public int hashCode() {
    return record().hashCode();
  }

  @Override
  public String toString() {
    return record();
  }
}
