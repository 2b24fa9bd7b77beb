package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Terminal;
import org.rimebook.practice.RealDailyPrecipitation;
import org.rimebook.practice.SeasonFolderWriter;

/**
 * Daily amounts of a real winter (NOAA, in the open data package vega-datasets 3.2.1, data set
 * seattle-weather), put through three simulated wires and recovered.
 */
class RealDaysTest {

  @TempDir private Path folder;

  @Test
  void eachDayOfARealWinterComesBack() throws IOException {
    SortedMap<LocalDate, Double> truth = RealDailyPrecipitation.amountsMm();
    Path season = folder.resolve("season");
    SeasonFolderWriter.write(RealDailyPrecipitation.season(20121001), season);
    Path out = folder.resolve("out");
    Terminal run = Terminal.run("totals", season, "--out", out, "--resolution", "0.01");
    assertThat(run.code()).isEqualTo(0);
    List<String> rows = Files.readAllLines(out.resolve("daily.csv")).stream().skip(1).toList();
    assertThat(rows).hasSameSizeAs(truth.keySet());
    double sumMm = 0;
    int row = 0;
    for (Map.Entry<LocalDate, Double> day : truth.entrySet()) {
      String[] fields = rows.get(row++).split(",", -1);
      assertThat(fields[0]).startsWith(day.getKey().toString());
      double foundMm = Double.parseDouble(fields[2]);
      sumMm += foundMm;
      // Sun and temperature move the level by tenths of a millimetre between days.
      double allowance = Math.max(0.35, 0.02 * day.getValue());
      assertThat(foundMm).as(fields[0]).isCloseTo(day.getValue(), within(allowance));
    }
    double totalMm = truth.values().stream().mapToDouble(Double::doubleValue).sum();
    assertThat(sumMm).isCloseTo(totalMm, within(0.01 * totalMm));
  }
}
