package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.season.SheetDraft;
import org.rimebook.station.InputException;
import org.rimebook.station.Json;
import org.rimebook.station.Members;
import org.rimebook.station.Problem;
import org.rimebook.station.RecordLayout.TimeIs;
import org.rimebook.station.Unit;
import org.rimebook.station.WindShield;

/** A season as its logger files alone tell it: the sheet that is drafted from them, taken apart. */
final class FirstDraft {

  private FirstDraft() {}

  static SeasonDraft of(SeasonSource source) {
    String name = String.valueOf(source.folder().getFileName());
    Members sheet = members(SheetDraft.of(source.preview(), name).text());
    List<ColumnUse> none = Collections.nCopies(source.preview().columns().size(), ColumnUse.NONE);
    SeasonDraft draft =
        new SeasonDraft(
            source,
            source.folder(),
            Map.of(StationField.NAME, name, StationField.DAY_START, "00:00"),
            WindShield.OTHER,
            none,
            List.of(),
            TimeIs.END);
    Optional<String> time = sheet.object("record").text("time_column");
    draft = used(draft, time.orElse(""), ColumnUse.of(ColumnRole.TIME));
    for (Members channel : sheet.objects("channels")) {
      draft = used(draft, channel.text("column").orElse(""), use(channel));
    }
    for (Members wire : sheet.objects("wires")) {
      String column = wire.text("frequency_column").orElse("");
      draft = used(draft, column, ColumnUse.of(ColumnRole.WIRE));
    }
    return draft;
  }

  private static SeasonDraft used(SeasonDraft draft, String column, ColumnUse use) {
    int number = draft.column(column);
    return number < 0 ? draft : draft.with(number, use);
  }

  private static ColumnUse use(Members channel) {
    ColumnUse usual =
        channel
            .text("quantity")
            .flatMap(ColumnRole::ofQuantity)
            .map(ColumnUse::of)
            .orElse(ColumnUse.NONE);
    return channel.text("unit").flatMap(Unit::ofSymbol).map(usual::in).orElse(usual);
  }

  private static Members members(String text) {
    List<Problem> problems = new ArrayList<>();
    try {
      return Members.of("station.json", "", Json.parse(text, "station.json", 1), problems);
    } catch (InputException e) {
      throw new IllegalStateException("a sheet just drafted is well-formed", e);
    }
  }
}
