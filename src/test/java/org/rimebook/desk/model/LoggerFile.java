package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.rimebook.station.InputException;

/** A file of an invented logger with two wires, and the season entered from it. */
public final class LoggerFile {

  /** Frequency of an ideal string at f0 = 1000 Hz, A = 0.02, B = 1e-5: 100 mm at 1414.2 Hz. */
  static final String A = "0.02";

  static final String B = "1e-5";

  private LoggerFile() {}

  /** Writes the file, an hour long. */
  public static Path in(Path folder) throws IOException {
    StringBuilder text = new StringBuilder("time;f1_hz;f2_hz;air_temp_c;wind;note\n");
    for (int minute = 0; minute < 60; minute++) {
      text.append("2024-12-01 00:%02d;1500,0;1450,0;-3,5;NAN;ok\n".formatted(minute));
    }
    return Files.writeString(folder.resolve("download.csv"), text);
  }

  static NewSeason season(Path file) throws InputException {
    return new NewSeason(SeasonSource.of(List.of(file)));
  }

  /** With all that is needed entered. */
  public static NewSeason entered(Path file) throws InputException {
    NewSeason season = season(file);
    SeasonDraft draft =
        season
            .draft()
            .get()
            .with(StationField.UTC_OFFSET, "-07:00")
            .with(StationField.ORIFICE, "200");
    for (int wire = 0; wire < 2; wire++) {
      draft =
          draft
              .with(wire, WireField.A, A)
              .with(wire, WireField.B, B)
              .with(wire, WireField.F0, "1000");
    }
    season.draft().set(draft);
    return season;
  }
}
