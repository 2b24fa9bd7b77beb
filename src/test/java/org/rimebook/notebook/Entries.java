package org.rimebook.notebook;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.rimebook.station.Interval;

/** Entries for tests: any of them, and one of each kind. */
final class Entries {

  private static final long FIRST_MS =
      OffsetDateTime.parse("0001-01-01T00:00Z").toEpochSecond() * 1000;
  private static final long LAST_MS =
      OffsetDateTime.parse("9998-12-31T00:00Z").toEpochSecond() * 1000;

  private Entries() {}

  static Interval span(String from, String to) {
    return Interval.of(
        OffsetDateTime.parse(from).toInstant(), OffsetDateTime.parse(to).toInstant());
  }

  /** Any entry of any kind. */
  static Arbitrary<Entry> any() {
    return Combinators.combine(headers(), spans(), texts(), texts().list().ofMaxSize(4), amounts())
        .flatAs(
            (header, span, text, texts, amount) ->
                Arbitraries.oneOf(
                    visits(header, span),
                    badIntervals(header, span, Set.copyOf(texts)),
                    Arbitraries.of(
                        new Entry.LateCatch(header, span),
                        new Entry.DrySpell(header, span),
                        new Entry.Estimate(header, span, amount, text),
                        new Entry.Remark(header, Optional.of(span)),
                        new Entry.Remark(header, Optional.empty()),
                        new Entry.Dismissal(header, text),
                        new Entry.Withdrawal(header, text),
                        new Entry.SignOff(header, text, text, texts),
                        new Entry.Unknown(header, "x-" + text))));
  }

  private static Arbitrary<Entry> visits(Entry.Header header, Interval span) {
    Arbitrary<OptionalDouble> litres =
        amounts().optional().map(l -> l.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    Arbitrary<List<VisitAction>> actions = Arbitraries.of(VisitAction.class).list().ofMaxSize(9);
    return Combinators.combine(actions, litres, litres)
        .as((done, antifreeze, oil) -> new Entry.ServiceVisit(header, span, done, antifreeze, oil));
  }

  private static Arbitrary<Entry> badIntervals(
      Entry.Header header, Interval span, Set<String> wires) {
    return Arbitraries.of(BadReason.class)
        .map(reason -> new Entry.BadInterval(header, span, wires, reason));
  }

  private static Arbitrary<Entry.Header> headers() {
    Arbitrary<String> at = Arbitraries.of("2025-01-15T10:30:00-07:00", "2025-06-01T00:00Z");
    return Combinators.combine(texts(), at, texts(), Arbitraries.strings().ofMaxLength(20))
        .as(Entry.Header::new);
  }

  private static Arbitrary<Interval> spans() {
    return Combinators.combine(
            Arbitraries.longs().between(FIRST_MS, LAST_MS),
            Arbitraries.longs().between(1, 86_400_000L * 300))
        .as((fromMs, lengthMs) -> new Interval(fromMs, fromMs + lengthMs));
  }

  private static Arbitrary<String> texts() {
    return Arbitraries.strings().ofMinLength(1).ofMaxLength(12).filter(text -> !text.isBlank());
  }

  private static Arbitrary<Double> amounts() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(0, 1e6),
        Arbitraries.integers().between(0, 9).map(i -> i * 1.0));
  }
}
