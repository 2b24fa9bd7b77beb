package org.rimebook.export.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;
import ucar.ma2.Array;
import ucar.nc2.NetcdfFile;
import ucar.nc2.Variable;

/** Reads what we write with a reader that isn't ours. */
class SeasonNetcdfTest {

  private static SeasonResult winter;
  private static byte[] bytes;

  @TempDir private Path folder;

  @BeforeAll
  static void makeWinter() throws InputException {
    winter = SeasonResult.of(Season.open(Path.of("sample-sets", "hard-winter")));
    bytes = StandardFormat.NETCDF.bytes(winter, Resolution.HUNDREDTH);
  }

  private static NetcdfFile open(byte[] file) throws IOException {
    return NetcdfFile.openInMemory("totals.nc", file);
  }

  private static String text(Variable variable, String attribute) {
    return variable.findAttribute(attribute).getStringValue();
  }

  @Test
  void anIndependentReaderFindsEveryTotalAgain() throws IOException {
    NetcdfFile file = open(bytes);
    for (String table : List.of("hourly", "daily")) {
      List<TotalRow> rows =
          table.equals("daily")
              ? winter.totals(Resolution.HUNDREDTH).daily()
              : winter.totals(Resolution.HUNDREDTH).hourly();
      Array times = file.findVariable(table.equals("daily") ? "day" : "hour").read();
      Array caught = file.findVariable(table + "_catch").read();
      Array uncertainty = file.findVariable(table + "_uncertainty").read();
      Array quality = file.findVariable(table + "_quality").read();
      assertThat(caught.getSize()).isEqualTo(rows.size());
      for (int i = 0; i < rows.size(); i++) {
        TotalRow row = rows.get(i);
        assertThat(times.getDouble(i)).isEqualTo(row.interval().toMs() / 1000.0);
        double mm =
            row.catchUnits().isPresent()
                ? Resolution.HUNDREDTH.toMm(row.catchUnits().getAsLong()).doubleValue()
                : SeasonNetcdf.FILL;
        assertThat(caught.getDouble(i)).isEqualTo(mm);
        assertThat(uncertainty.getDouble(i))
            .isEqualTo(row.uncertaintyMm().orElse(SeasonNetcdf.FILL));
        assertThat(quality.getByte(i)).isEqualTo(QualityTerm.of(row.quality()).flag());
      }
    }
  }

  @Test
  void variablesSayWhatTheyAreByTheCfConventions() throws IOException {
    NetcdfFile file = open(bytes);
    assertThat(file.findGlobalAttribute("Conventions").getStringValue()).isEqualTo("CF-1.8");
    Variable caught = file.findVariable("daily_catch");
    assertThat(text(caught, "standard_name")).isEqualTo("lwe_thickness_of_precipitation_amount");
    assertThat(text(caught, "units")).isEqualTo("mm");
    assertThat(text(caught, "cell_methods")).isEqualTo("day: sum");
    assertThat(caught.findAttribute("_FillValue").getNumericValue()).isEqualTo(SeasonNetcdf.FILL);
    Variable quality = file.findVariable("daily_quality");
    assertThat(text(quality, "flag_meanings"))
        .isEqualTo("good unchecked estimate suspect poor missing");
    assertThat(quality.findAttribute("flag_values").getLength()).isEqualTo(6);
    assertThat(quality.findAttribute("flag_values").getNumericValue(3))
        .isEqualTo(QualityTerm.of(Quality.SUSPECT).flag());
  }

  @Test
  void fillValuesAndFlagsAreOfTheTypeOfTheirVariable() throws IOException {
    int met = 0;
    for (Variable variable : open(bytes).getVariables()) {
      for (String attribute : List.of("_FillValue", "flag_values")) {
        if (variable.findAttribute(attribute) != null) {
          assertThat(variable.findAttribute(attribute).getDataType())
              .as(variable.getShortName())
              .isEqualTo(variable.getDataType());
          met++;
        }
      }
    }
    assertThat(met).isEqualTo(14);
  }

  @Test
  void everyNameThatAnAttributeRefersToIsThere() throws IOException {
    NetcdfFile file = open(bytes);
    int met = 0;
    for (Variable variable : file.getVariables()) {
      for (String attribute : List.of("coordinates", "ancillary_variables", "bounds")) {
        if (variable.findAttribute(attribute) != null) {
          for (String name : text(variable, attribute).split(" ")) {
            assertThat(file.findVariable(name)).as(name).isNotNull();
            met++;
          }
        }
      }
    }
    assertThat(met).isGreaterThan(20);
    Array bounds = file.findVariable("day_bounds").read();
    Array days = file.findVariable("day").read();
    assertThat(bounds.getDouble(1)).isEqualTo(days.getDouble(0));
    assertThat(bounds.getDouble(2)).isEqualTo(days.getDouble(0));
  }

  @Test
  void aStationWithoutPlaceHasNoCoordinatesOfIt() throws IOException {
    SeasonResult result = Bucket.every(60, 48).result();
    NetcdfFile file = open(StandardFormat.NETCDF.bytes(result, Resolution.TENTH));
    boolean placed = result.season().sheet().latitudeDeg().isPresent();
    assertThat(file.findVariable("latitude") != null).isEqualTo(placed);
    assertThat(file.findVariable("station").read().toString().strip())
        .contains(result.season().sheet().name());
  }
}
