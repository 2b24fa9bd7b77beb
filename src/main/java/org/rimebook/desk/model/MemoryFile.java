package org.rimebook.desk.model;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.rimebook.station.Sha256;

/**
 * Memory in one file of properties, written whole some time after a change. A file that can't be
 * read, or written, is told and never stops anything: it then holds for this run only.
 */
public final class MemoryFile implements Memory {

  /** Name of the file in the {@link StateFolder}. */
  public static final String NAME = "desk.properties";

  private static final int SEASONS = 60;
  private static final String SEASON = "season.";
  private static final String FOLDER = "folder";
  private static final String OPENED = "opened";
  private static final String TOTAL = "total_mm";
  private static final String STATION = "name";
  private static final String VIEW = "view.";

  private final Consumer<Notice> tell;
  private final LateWrite write;
  private final TreeMap<String, String> texts = new TreeMap<>();

  /**
   * Reads the memory.
   *
   * @param file the file; needn't exist
   * @param writer runs the writing, some time after a change; several changes meanwhile are written
   *     as one
   * @param tell told in words what couldn't be read or written, on the thread that met it
   */
  public MemoryFile(Path file, Executor writer, Consumer<Notice> tell) {
    this.tell = tell;
    this.write = new LateWrite(file, writer, tell);
    try {
      texts.putAll(PropertiesText.read(file));
    } catch (IOException e) {
      tell.accept(PropertiesText.damaged(file, e));
    }
  }

  @Override
  public WindowState window() {
    try {
      Optional<WindowState.Place> place =
          texts.containsKey("window.place")
              ? Optional.of(place(texts.get("window.place").split(",")))
              : Optional.empty();
      return new WindowState(
          place,
          Boolean.parseBoolean(texts.get("window.maximised")),
          texts.getOrDefault("window.theme", ""),
          Integer.parseInt(texts.getOrDefault("window.scale_pct", "0")));
    } catch (NumberFormatException e) {
      tellUnread("how the window stood");
      return WindowState.UNKNOWN;
    }
  }

  private static WindowState.Place place(String[] numbers) {
    if (numbers.length != 4) {
      throw new NumberFormatException("four numbers make a place");
    }
    return new WindowState.Place(
        Integer.parseInt(numbers[0]),
        Integer.parseInt(numbers[1]),
        Integer.parseInt(numbers[2]),
        Integer.parseInt(numbers[3]));
  }

  @Override
  public void window(WindowState state) {
    state
        .place()
        .ifPresent(
            p ->
                texts.put(
                    "window.place", p.x() + "," + p.y() + "," + p.width() + "," + p.height()));
    texts.put("window.maximised", Boolean.toString(state.maximised()));
    texts.put("window.theme", state.theme());
    texts.put("window.scale_pct", Integer.toString(state.scalePct()));
    write.later(texts);
  }

  @Override
  public String initials() {
    return texts.getOrDefault("initials", "");
  }

  @Override
  public void initials(String writer) {
    texts.put("initials", writer);
    write.later(texts);
  }

  @Override
  public List<RecentSeason> recent() {
    return texts.keySet().stream()
        .filter(name -> name.startsWith(SEASON) && name.endsWith("." + OPENED))
        .map(name -> name.substring(0, name.length() - OPENED.length()))
        .map(this::season)
        .flatMap(Optional::stream)
        .sorted(Comparator.comparing(RecentSeason::opened).reversed())
        .toList();
  }

  private Optional<RecentSeason> season(String key) {
    try {
      return Optional.of(
          new RecentSeason(
              Path.of(texts.getOrDefault(key + FOLDER, "\0")),
              texts.getOrDefault(key + STATION, ""),
              Instant.parse(texts.get(key + OPENED)),
              Optional.ofNullable(texts.get(key + TOTAL)).map(BigDecimal::new)));
    } catch (DateTimeException | IllegalArgumentException e) {
      tellUnread("one of the recent seasons");
      return Optional.empty();
    }
  }

  @Override
  public void recent(RecentSeason season) {
    String key = key(season.folder());
    texts.put(key + FOLDER, season.folder().toString());
    texts.put(key + STATION, season.name());
    texts.put(key + OPENED, season.opened().toString());
    season.totalMm().ifPresent(mm -> texts.put(key + TOTAL, mm.toPlainString()));
    recent().stream().skip(SEASONS).forEach(old -> remove(old.folder()));
    write.later(texts);
  }

  @Override
  public void forget(Path folder) {
    remove(folder);
    write.later(texts);
  }

  private void remove(Path folder) {
    String key = key(folder);
    texts.keySet().removeIf(name -> name.startsWith(key));
  }

  @Override
  public Optional<ViewState> view(Path folder) {
    String key = key(folder) + VIEW;
    Map<String, String> own = new HashMap<>();
    texts
        .tailMap(key)
        .forEach(
            (name, text) -> {
              if (name.startsWith(key)) {
                own.put(name.substring(key.length()), text);
              }
            });
    if (own.isEmpty()) {
      return Optional.empty();
    }
    ViewText.Reading reading = ViewText.read(own);
    if (!reading.unread().isEmpty()) {
      tellUnread(
          reading.unread().stream().sorted().collect(Collectors.joining(", "))
              + " of how "
              + folder.getFileName()
              + " was looked at");
    }
    return Optional.of(reading.state());
  }

  @Override
  public void view(Path folder, ViewState state) {
    String key = key(folder);
    texts.keySet().removeIf(name -> name.startsWith(key + VIEW));
    texts.put(key + FOLDER, absolute(folder).toString());
    ViewText.texts(state).forEach((name, text) -> texts.put(key + VIEW + name, text));
    write.later(texts);
  }

  @Override
  public void flush() {
    write.now();
  }

  private void tellUnread(String what) {
    tell.accept(
        new Notice(
            Notice.Weight.NOTE,
            "What was remembered of "
                + what
                + " couldn't be read, and starts afresh. No season is touched by this"));
  }

  private static Path absolute(Path folder) {
    return folder.toAbsolutePath().normalize();
  }

  /** Of the folder's whole path, so that no two seasons share it and any path fits. */
  private static String key(Path folder) {
    byte[] path = absolute(folder).toString().getBytes(StandardCharsets.UTF_8);
    return SEASON + Sha256.hex(path).substring(0, 16) + ".";
  }
}
