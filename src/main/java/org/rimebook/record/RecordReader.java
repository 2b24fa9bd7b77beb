package org.rimebook.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.Progress;
import org.rimebook.station.StationSheet;

/**
 * Reads the logger files of a season into one record. How a file is written is found out from its
 * first lines unless the station sheet states it; every line is used or accounted for.
 */
public final class RecordReader {

  private static final long MANY_BAD_TIMES = 10;
  private static final long EXPECTED_MARGIN = 50;

  private final StationSheet sheet;
  private final Wanted wanted;
  private final Progress progress;

  private RecordReader(StationSheet sheet, Progress progress) {
    this.sheet = sheet;
    this.progress = progress;
    wanted = Wanted.of(sheet);
  }

  /**
   * Reads a season's record, its digest beside.
   *
   * @param seasonFolder the folder that holds {@code station.json} and {@code records}
   * @param sheet its station sheet
   * @param progress hears of it
   * @return the record, with at least one row
   * @throws InputException when no file matches, a column the sheet names is absent (from every
   *     file, for a wire or channel; from any, for the time) or stands twice, dates can be read in
   *     two ways, or no row can be read
   * @throws IOException when a file can't be read
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static SeasonRecord read(Path seasonFolder, StationSheet sheet, Progress progress)
      throws InputException, IOException {
    List<RecordFile> files = RecordFiles.find(seasonFolder, sheet.layout().files());
    RecordDigest digest = RecordDigest.of(files, progress);
    digest.begin();
    SeasonRecord record = new RecordReader(sheet, progress).read(files, digest);
    take(digest);
    progress.step("reading the record", 1); // a digest that was called off is none
    return record;
  }

  /**
   * Reads a season's record and leaves its digest to be taken by whoever asks for it first.
   *
   * @param seasonFolder the folder that holds {@code station.json} and {@code records}
   * @param sheet its station sheet
   * @param progress hears of it
   * @return as {@link #read}
   * @throws InputException as {@link #read}
   * @throws IOException when a file can't be read
   */
  public static SeasonRecord readSoon(Path seasonFolder, StationSheet sheet, Progress progress)
      throws InputException, IOException {
    List<RecordFile> files = RecordFiles.find(seasonFolder, sheet.layout().files());
    return new RecordReader(sheet, progress).read(files, RecordDigest.of(files, Progress.NONE));
  }

  private static void take(RecordDigest digest) throws IOException {
    try {
      digest.record();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /**
   * The digest of a season's record without reading its rows.
   *
   * @param seasonFolder the folder that holds {@code station.json} and {@code records}
   * @param sheet its station sheet
   * @throws InputException when no file matches
   * @throws IOException when a file can't be read
   */
  public static RecordDigest digest(Path seasonFolder, StationSheet sheet)
      throws InputException, IOException {
    List<RecordFile> files = RecordFiles.find(seasonFolder, sheet.layout().files());
    RecordDigest digest = RecordDigest.of(files, Progress.NONE);
    take(digest);
    return digest;
  }

  /**
   * Size of a season's record as stored [bytes].
   *
   * @param seasonFolder the folder that holds {@code station.json} and {@code records}
   * @param sheet its station sheet
   * @throws InputException when no file matches
   * @throws IOException when a file can't be looked at
   */
  public static RecordSize size(Path seasonFolder, StationSheet sheet)
      throws InputException, IOException {
    return RecordSize.of(RecordFiles.find(seasonFolder, sheet.layout().files()));
  }

  private SeasonRecord read(List<RecordFile> files, RecordDigest digest)
      throws InputException, IOException {
    Map<RecordFile, List<LogicalLine>> heads = new LinkedHashMap<>();
    for (RecordFile file : files) {
      heads.put(file, Head.of(file));
    }
    Map<RecordFile, FilePlan> plans = RecordPlanner.plan(wanted, sheet.layout(), heads);
    List<FutureTask<FilePart>> parts = new ArrayList<>();
    SharedProgress shared = new SharedProgress(progress, files.size());
    for (RecordFile file : files) {
      Progress ofFile = shared.part(parts.size());
      parts.add(new FutureTask<>(() -> read(file, heads.get(file), plans.get(file), ofFile)));
    }
    parts.parallelStream().forEach(FutureTask::run);
    Rows rows = new Rows(wanted.values().size(), rows(parts));
    List<FileReading> readings = new ArrayList<>();
    for (FutureTask<FilePart> task : parts) {
      FilePart part = made(task);
      readings.add(part.reading().after(rows.size()));
      rows.append(part.rows());
    }
    parts.clear(); // the files' own rows aren't needed any more
    if (rows.size() == 0) {
      throw nothing(readings);
    }
    int[] order = Joiner.join(rows, readings, wanted, sheet.utcOffset());
    return new RecordBuilder(sheet, wanted, rows, readings).build(order, digest);
  }

  /** What one file holds, read without regard to the others. */
  private record FilePart(Rows rows, FileReading reading) {}

  private FilePart read(
      RecordFile file, List<LogicalLine> head, FilePlan plan, Progress progressOfFile)
      throws InputException, IOException {
    Rows rows = new Rows(wanted.values().size(), expectedRows(file, head));
    LoggerFileReader reader = new LoggerFileReader(sheet, wanted, rows, progressOfFile);
    if (plan == null) {
      return new FilePart(rows, reader.readNone(file, head));
    }
    FileReading reading = reader.read(plan, head);
    refuseUnknownTimes(reading, plan);
    return new FilePart(rows, reading);
  }

  private static long rows(List<FutureTask<FilePart>> parts) throws InputException, IOException {
    long rows = 0;
    for (FutureTask<FilePart> part : parts) {
      rows += made(part).rows().size();
    }
    return rows;
  }

  /** What a task that has run made, or what was in its way. */
  private static FilePart made(FutureTask<FilePart> task) throws InputException, IOException {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof InputException input) {
        throw input;
      }
      if (e.getCause() instanceof IOException unread) {
        throw unread;
      }
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  /** Rows a file may hold, from its size and the length of its first lines. */
  private static long expectedRows(RecordFile file, List<LogicalLine> head) throws IOException {
    long characters = head.stream().mapToLong(line -> line.text().length() + 1L).sum();
    long bytes = Files.size(file.path());
    long expected = characters == 0 ? 0 : bytes * head.size() / characters + head.size();
    return expected + expected / EXPECTED_MARGIN;
  }

  private static void refuseUnknownTimes(FileReading reading, FilePlan plan) throws InputException {
    long bad = reading.ledger().lines(LineReason.BAD_TIME);
    boolean noRow = reading.firstRow() == reading.endRow();
    if (noRow && bad >= MANY_BAD_TIMES) {
      throw new InputException(
          Problem.inFile(
              reading.file(),
              "none of its times can be read; the first is "
                  + LineLedger.quote(plan.form().example()),
              "Add to record in station.json a time_format such as \"yyyy-MM-dd HH:mm:ss\", or"
                  + " \"epoch-seconds\", that fits"));
    }
  }

  private static InputException nothing(List<FileReading> readings) {
    return new InputException(
        readings.stream()
            .flatMap(reading -> Stream.concat(reading.notes().stream(), Stream.of(noRow(reading))))
            .toList());
  }

  private static Problem noRow(FileReading reading) {
    return Problem.inFile(
        reading.file(),
        "no row of it can be read: " + found(reading),
        "A row has a time and as many fields as the header has names");
  }

  private static String found(FileReading reading) {
    if (reading.lines() == 0) {
      return "it is empty";
    }
    return reading.ledger().inOrder().stream()
        .collect(
            Collectors.groupingBy(
                SetAside::reason, TreeMap::new, Collectors.summingLong(SetAside::lines)))
        .entrySet()
        .stream()
        .map(entry -> entry.getValue() + " × " + entry.getKey().words())
        .collect(Collectors.joining(", "));
  }
}
