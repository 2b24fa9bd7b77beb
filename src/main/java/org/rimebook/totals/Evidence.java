package org.rimebook.totals;

import org.rimebook.accumulation.CatchSeries;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireDepths;
import org.rimebook.findings.Findings;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.StationSheet;

/**
 * Everything totals are made from.
 *
 * @param sheet the station sheet
 * @param record the record, at least one row
 * @param notebook the notebook
 * @param depths depth by wire and row
 * @param level the bucket's level
 * @param series the catch
 * @param findings what looks wrong and nobody has decided on
 */
public record Evidence(
    StationSheet sheet,
    SeasonRecord record,
    Notebook notebook,
    WireDepths depths,
    LevelSeries level,
    CatchSeries series,
    Findings findings) {}
