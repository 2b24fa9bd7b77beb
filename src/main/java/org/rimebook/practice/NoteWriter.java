package org.rimebook.practice;

import java.time.Duration;
import java.time.ZoneOffset;
import org.rimebook.station.Interval;

/** The note in a season folder ({@code NOTE.md}): one page on what the data are. */
final class NoteWriter {

  private NoteWriter() {}

  static String text(PracticeSeason practice) {
    SimulatedSeason season = practice.season();
    StringBuilder text = new StringBuilder();
    text.append("# ").append(practice.note().title()).append("\n\n");
    text.append(practice.note().summary()).append("\n\n");
    line(text, "Origin", origin(season));
    line(text, "Licence", "Apache-2.0, the same as the project.");
    line(text, "Time", time(season));
    line(text, "Span", span(season));
    line(
        text,
        "Units",
        "frequencies Hz, air temperature °C, wind m/s at 10 m, supply V; depths, catch and truth"
            + " mm of water over the orifice.");
    line(
        text,
        "Truth",
        "`truth/hourly.csv` and `truth/daily.csv` hold what entered the bucket (`catch_mm`) and"
            + " what fell onto the orifice or a cap of snow over it (`fell_mm`);"
            + " `truth/season.csv` holds where the season's water went.");
    text.append("\n## Known defects\n\n");
    practice.note().defects().forEach(defect -> text.append("- ").append(defect).append("\n"));
    return text.toString();
  }

  private static String origin(SimulatedSeason season) {
    return "invented, place and weather alike; made by the forward model `org.rimebook.practice`"
        + " with seed "
        + season.seed()
        + ".";
  }

  private static String time(SimulatedSeason season) {
    return "station time UTC"
        + season.sheet().utcOffset()
        + ", no summer time; a stamp closes its interval and shows the level at that moment;"
        + " the day starts at "
        + season.sheet().dayStartsAt()
        + ".";
  }

  private static String span(SimulatedSeason season) {
    ZoneOffset offset = season.sheet().utcOffset();
    Interval span = season.sampling().span();
    return TruthTables.time(span.from(), offset)
        + " to "
        + TruthTables.time(span.to(), offset)
        + ", on a grid of "
        + Duration.ofMillis(season.sampling().stepMs()).toMinutes()
        + " min.";
  }

  private static void line(StringBuilder text, String name, String words) {
    text.append("- **").append(name).append("**: ").append(words).append("\n");
  }
}
