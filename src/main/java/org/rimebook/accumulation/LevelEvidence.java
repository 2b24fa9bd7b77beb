package org.rimebook.accumulation;

import java.util.List;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireDepths;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.StationSheet;

/**
 * Everything the catch is estimated from.
 *
 * @param record at least one row
 * @param sheet the station sheet
 * @param depths depth by wire and row
 * @param level the level at some or all rows
 * @param rulings from {@link Rulings#of}
 */
public record LevelEvidence(
    SeasonRecord record,
    StationSheet sheet,
    WireDepths depths,
    LevelSeries level,
    List<Ruling> rulings) {}
