package org.rimebook.record;

import java.util.List;
import java.util.stream.Stream;
import org.rimebook.station.Channel;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/**
 * The columns a station sheet asks for.
 *
 * @param time column of the stamps
 * @param values columns of numbers, each once: the wires' first, then the channels'
 */
record Wanted(String time, List<String> values) {

  Wanted {
    values = List.copyOf(values);
  }

  static Wanted of(StationSheet sheet) {
    return new Wanted(
        sheet.layout().timeColumn(),
        Stream.concat(
                sheet.wires().stream().map(Wire::frequencyColumn),
                sheet.channels().stream().map(Channel::column))
            .distinct()
            .toList());
  }
}
