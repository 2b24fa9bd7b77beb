package org.rimebook.desk.model;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

/** A {@link ViewState} as texts by name, and back; a text that can't be read is as if absent. */
final class ViewText {

  private static final String DIVIDER = "divider.";
  private static final String SHOWN = "shown";
  private static final String FITS = "fits";
  private static final String STAYS = "stays";

  private final Map<String, String> texts;
  private final List<String> unread = new ArrayList<>();

  private ViewText(Map<String, String> texts) {
    this.texts = texts;
  }

  /**
   * What was read.
   *
   * @param state the state, with what a first look has where nothing could be read
   * @param unread names of the texts that couldn't be read
   */
  record Reading(ViewState state, List<String> unread) {}

  static Map<String, String> texts(ViewState state) {
    Map<String, String> texts = new TreeMap<>();
    state.visible().ifPresent(span -> texts.put("visible", text(span)));
    texts.put("strips", state.strips().stream().map(ViewText::text).collect(joined()));
    texts.put("catch", state.catchForm().words());
    texts.put("drawer", word(state.drawer()));
    texts.put("resolution", Double.toString(state.resolution().mm()));
    Selection selection = state.selection();
    texts.put("selection", selection.intervals().stream().map(ViewText::text).collect(joined()));
    texts.put("wires", selection.wires().stream().sorted().collect(joined()));
    texts.put("entry", selection.entry());
    state.dividers().forEach((name, share) -> texts.put(DIVIDER + name, share.toString()));
    texts.put("filter", state.notebookFilter());
    texts.put("findings", state.findingOrder().code());
    return texts;
  }

  static Reading read(Map<String, String> texts) {
    ViewText text = new ViewText(texts);
    Selection selection =
        new Selection(
            text.value("selection", ViewText::spans).orElse(List.of()),
            Set.copyOf(parts(texts.getOrDefault("wires", ""))),
            texts.getOrDefault("entry", ""));
    ViewState state =
        new ViewState(
            text.value("visible", ViewText::span),
            text.value("strips", ViewText::strips).orElse(List.of()),
            text.value("catch", ViewText::catchForm).orElse(CatchForm.ACCUMULATED),
            text.value("drawer", t -> Drawer.valueOf(t.toUpperCase(Locale.ROOT)))
                .orElse(Drawer.CLOSED),
            text.value("resolution", t -> Resolution.of(t).orElseThrow()).orElse(Resolution.TENTH),
            selection,
            text.dividers(),
            texts.getOrDefault("filter", ""),
            text.value("findings", t -> FindingOrder.valueOf(t.toUpperCase(Locale.ROOT)))
                .orElse(FindingOrder.STRONGEST));
    return new Reading(state, List.copyOf(text.unread));
  }

  private <T> Optional<T> value(String name, Function<String, T> reading) {
    String text = texts.getOrDefault(name, "");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reading.apply(text));
    } catch (IllegalArgumentException
        | DateTimeException
        | ArithmeticException
        | NoSuchElementException e) {
      unread.add(name);
      return Optional.empty();
    }
  }

  private Map<String, Double> dividers() {
    Map<String, Double> dividers = new TreeMap<>();
    for (String name : texts.keySet()) {
      if (name.startsWith(DIVIDER)) {
        value(name, ViewText::share)
            .ifPresent(share -> dividers.put(name.substring(DIVIDER.length()), share));
      }
    }
    return dividers;
  }

  private static double share(String text) {
    double share = Double.parseDouble(text);
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("not a share: " + text);
    }
    return share;
  }

  private static String text(Interval span) {
    return span.from() + "/" + span.to();
  }

  private static Interval span(String text) {
    String[] ends = halves(text, "/", 2);
    return Interval.of(Instant.parse(ends[0]), Instant.parse(ends[1]));
  }

  private static List<Interval> spans(String text) {
    return parts(text).stream().map(ViewText::span).toList();
  }

  private static String text(StripSetting strip) {
    return String.join(
        ":",
        strip.kind().code(),
        strip.shown() ? SHOWN : "hidden",
        Double.toString(strip.share()),
        strip.fits() ? FITS : STAYS + strip.axis().map(ViewText::ends).orElse(""));
  }

  private static String ends(Extent axis) {
    return "=" + axis.least() + "=" + axis.most();
  }

  private static StripSetting strip(String text) {
    String[] parts = halves(text, ":", 4);
    double share = Double.parseDouble(parts[2]);
    if (!(share > 0 && share < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("not a share: " + parts[2]);
    }
    StripSetting.Kind kind =
        Arrays.stream(StripSetting.Kind.values())
            .filter(k -> k.code().equals(parts[0]))
            .findFirst()
            .orElseThrow();
    boolean shown = parts[1].equals(SHOWN);
    return new StripSetting(kind, shown, share, parts[3].equals(FITS), axis(parts[3]));
  }

  private static Optional<Extent> axis(String text) {
    if (!text.contains("=")) {
      return Optional.empty();
    }
    String[] ends = halves(text, "=", 3);
    Extent axis = new Extent(Double.parseDouble(ends[1]), Double.parseDouble(ends[2]));
    if (!(axis.most() - axis.least() > 0 && axis.most() - axis.least() < Double.MAX_VALUE)) {
      throw new IllegalArgumentException("not the ends of an axis: " + text);
    }
    return Optional.of(axis);
  }

  private static List<StripSetting> strips(String text) {
    List<StripSetting> strips = parts(text).stream().map(ViewText::strip).toList();
    if (strips.stream().map(StripSetting::kind).distinct().count() < strips.size()) {
      throw new IllegalArgumentException("a strip stands twice: " + text);
    }
    return strips;
  }

  private static CatchForm catchForm(String text) {
    return Stream.of(CatchForm.values())
        .filter(form -> form.words().equals(text))
        .findFirst()
        .orElseThrow();
  }

  private static String word(Drawer drawer) {
    return drawer.name().toLowerCase(Locale.ROOT);
  }

  private static String[] halves(String text, String separator, int count) {
    String[] parts = text.split(separator, -1);
    if (parts.length != count) {
      throw new IllegalArgumentException("not " + count + " parts: " + text);
    }
    return parts;
  }

  private static Collector<CharSequence, ?, String> joined() {
    return Collectors.joining(",");
  }

  private static List<String> parts(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(","));
  }
}
