package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class StationSheetWriterProperties {

  @Property(tries = 300)
  void aSheetReadsBackAsItWasWritten(@ForAll("sheets") StationSheet sheet) throws InputException {
    String text = StationSheetWriter.write(sheet, Optional.empty());
    StationSheetReader.Reading reading = StationSheetReader.read(text, "station.json");
    assertThat(reading.sheet()).isEqualTo(sheet);
    assertThat(reading.unknownMembers()).isEmpty();
    assertThat(StationSheetWriter.write(sheet, Optional.of(text))).isEqualTo(text);
  }

  @Provide
  Arbitrary<StationSheet> sheets() {
    return Combinators.combine(
            Combinators.combine(
                    texts(), numbers(-90, 90), numbers(-180, 180), numbers(-400, 9000), offsets())
                .as(Place::new),
            Arbitraries.integers().between(0, 23).map(hour -> LocalTime.of(hour, 0)),
            gauges(),
            wires(),
            Combinators.combine(layouts(), channelLists()).as(Logged::new))
        .as(
            (place, dayStartsAt, gauge, wires, logged) ->
                new StationSheet(
                    place.name,
                    place.latitude,
                    place.longitude,
                    place.elevation,
                    place.offset,
                    dayStartsAt,
                    gauge,
                    wires,
                    logged.layout,
                    logged.channels));
  }

  private record Place(
      String name,
      OptionalDouble latitude,
      OptionalDouble longitude,
      OptionalDouble elevation,
      ZoneOffset offset) {}

  private record Logged(RecordLayout layout, List<Channel> channels) {}

  private static Arbitrary<ZoneOffset> offsets() {
    return Arbitraries.integers()
        .between(-18 * 4, 18 * 4)
        .map(quarters -> ZoneOffset.ofTotalSeconds(quarters * 900));
  }

  private static Arbitrary<Gauge> gauges() {
    return Combinators.combine(
            Arbitraries.doubles().between(1, 5000),
            numbers(1, 2000),
            numbers(0.1, 9),
            Arbitraries.of(WindShield.class))
        .as(Gauge::new);
  }

  private static Arbitrary<List<Wire>> wires() {
    Arbitrary<String> names = texts().filter(name -> !name.matches(".*[+;,].*"));
    return names.list().ofMinSize(1).ofMaxSize(4).uniqueElements().flatMap(all -> wires(all));
  }

  private static Arbitrary<List<Wire>> wires(List<String> names) {
    Arbitrary<OptionalDouble> perDegC =
        Arbitraries.doubles()
            .between(-Wire.MOST_PER_DEG_C, Wire.MOST_PER_DEG_C)
            .ofScale(9)
            .optional()
            .map(g -> g.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    return Combinators.combine(texts(), texts().optional(), calibrations(), perDegC)
        .as((column, lead, calibrations, g) -> new Wire("", column, lead, calibrations, g))
        .list()
        .ofSize(names.size())
        .uniqueElements(Wire::frequencyColumn)
        .map(
            wires -> {
              List<Wire> named = new ArrayList<>();
              for (Wire wire : wires) {
                String name = names.get(named.size());
                named.add(
                    new Wire(
                        name,
                        wire.frequencyColumn(),
                        wire.lead(),
                        wire.calibrations(),
                        wire.temperaturePerDegC()));
              }
              return named;
            });
  }

  private static Arbitrary<List<Calibration>> calibrations() {
    Arbitrary<Instant> froms =
        Arbitraries.longs()
            .between(0, 4_000_000_000_000_000_000L)
            .map(nanos -> Instant.EPOCH.plusNanos(nanos));
    Arbitrary<List<Instant>> later =
        froms
            .list()
            .ofMaxSize(3)
            .uniqueElements()
            .map(instants -> instants.stream().sorted().toList());
    Arbitrary<Double> constants = Arbitraries.doubles().between(-1e4, 1e4);
    return Combinators.combine(later, constants, constants, constants)
        .as(
            (instants, a, b, f0) -> {
              List<Calibration> all = new ArrayList<>();
              all.add(new Calibration(Optional.empty(), a, b, f0));
              instants.forEach(from -> all.add(new Calibration(Optional.of(from), b, f0, a)));
              return all;
            });
  }

  private static Arbitrary<RecordLayout> layouts() {
    Arbitrary<Optional<Character>> delimiters = Arbitraries.of(';', '\t', '|', ' ').optional();
    Arbitrary<Optional<Character>> decimals = Arbitraries.of('.', ',').optional();
    Arbitrary<List<String>> tokens = Arbitraries.strings().ofMaxLength(9).list().ofMaxSize(4);
    return Combinators.combine(
            Combinators.combine(texts().list().ofMinSize(1).ofMaxSize(3), texts(), tokens)
                .as((files, column, missing) -> List.of(files, List.of(column), missing)),
            delimiters,
            decimals,
            texts().optional(),
            Combinators.combine(
                    Arbitraries.of(RecordLayout.TimeIs.class),
                    Arbitraries.of(RecordLayout.FrequencyKind.class))
                .as(List::<Enum<?>>of))
        .as(
            (names, delimiter, decimal, format, kinds) ->
                new RecordLayout(
                    names.get(0),
                    names.get(1).get(0),
                    names.get(2),
                    delimiter,
                    decimal,
                    format,
                    (RecordLayout.TimeIs) kinds.get(0),
                    (RecordLayout.FrequencyKind) kinds.get(1),
                    OptionalDouble.of(2.5)));
  }

  private static Arbitrary<List<Channel>> channelLists() {
    return channels()
        .list()
        .ofMaxSize(4)
        .uniqueElements(channel -> List.of(channel.quantity(), channel.column()));
  }

  private static Arbitrary<Channel> channels() {
    return Combinators.combine(Arbitraries.of(Unit.class), texts(), texts(), numbers(0.1, 50))
        .as((unit, quantity, column, height) -> new Channel(quantity, column, unit, height));
  }

  private static Arbitrary<OptionalDouble> numbers(double least, double most) {
    return Arbitraries.doubles()
        .between(least, most)
        .optional()
        .map(value -> value.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
  }

  private static Arbitrary<String> texts() {
    return Arbitraries.strings().ofMinLength(1).ofMaxLength(10).filter(text -> !text.isBlank());
  }
}
