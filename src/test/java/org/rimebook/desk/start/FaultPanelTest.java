package org.rimebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.rimebook.desk.look.Theme;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

class FaultPanelTest {

  @Test
  void everyProblemIsThereToCopyWithItsPlaceAndRemedy() throws Exception {
    List<Problem> problems =
        List.of(
            new Problem("station.json", 7, 17, "utc_offset is absent", "Enter it"),
            Problem.inFile("a.csv", "is empty", ""));
    String[] text = new String[1];
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.install(Theme.DARK);
          FaultPanel panel = new FaultPanel(() -> {}, () -> {});
          panel.show("It can't be opened", new InputException(problems), () -> {});
          text[0] = panel.text();
        });
    assertThat(text[0])
        .isEqualTo(
            "station.json, line 7, column 17: utc_offset is absent. Enter it\na.csv: is empty");
  }
}
