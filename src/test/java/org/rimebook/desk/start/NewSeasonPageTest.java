package org.rimebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.form.CheckedField;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Theme;
import org.rimebook.desk.model.SeasonDraft;
import org.rimebook.desk.model.SeasonSource;

class NewSeasonPageTest {

  @TempDir Path folder;
  private final List<SeasonDraft> made = new ArrayList<>();
  private NewSeasonPage page;

  @BeforeAll
  static void dress() throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.install(Theme.LIGHT));
  }

  @BeforeEach
  void aFormOfALoggerFile() throws Exception {
    Path file = folder.resolve("download.csv");
    Files.writeString(file, "time,f1_hz\n2024-12-01 00:00,1500\n2024-12-01 00:10,1501\n");
    SeasonSource source = SeasonSource.of(List.of(file));
    SwingUtilities.invokeAndWait(
        () ->
            page =
                new NewSeasonPage(
                    source, new NewSeasonPage.Asking(made::add, now -> now, () -> {})));
  }

  @Test
  void theSeasonIsMadeOnceAllIsEntered() throws Exception {
    JButton make = button("Make and open");
    assertThat(make.isEnabled()).isFalse();
    type("Station time, from UTC", "-07:00");
    type("Orifice, cm²", "200");
    type("A, cm/Hz of the wire in column f1_hz", "0.02");
    type("B, cm/Hz² of the wire in column f1_hz", "1e-5");
    assertThat(make.isEnabled()).isFalse();
    type("f0, Hz of the wire in column f1_hz", "1000");
    assertThat(make.isEnabled()).isTrue();
    SwingUtilities.invokeAndWait(make::doClick);
    assertThat(made).hasSize(1);
  }

  @Test
  void aWrongEntryIsNamedBeneathItsFieldAndToScreenReaders() throws Exception {
    type("Latitude, ° north (if known)", "95");
    JTextField latitude = field("Latitude, ° north (if known)");
    assertThat(((CheckedField) latitude.getParent()).said()).contains("between -90 and 90");
    assertThat(latitude.getAccessibleContext().getAccessibleDescription())
        .contains("between -90 and 90");
    JTextField offset = field("Station time, from UTC");
    assertThat(((CheckedField) offset.getParent()).said()).isEmpty();
  }

  @Test
  void theCurveIsDrawnAsSoonAsItIsEntered() throws Exception {
    assertThat(wireColoured()).isZero();
    type("A, cm/Hz of the wire in column f1_hz", "0.02");
    type("B, cm/Hz² of the wire in column f1_hz", "1e-5");
    type("f0, Hz of the wire in column f1_hz", "1000");
    assertThat(wireColoured()).isGreaterThan(50);
  }

  private long wireColoured() throws Exception {
    BufferedImage image = new BufferedImage(400, 220, BufferedImage.TYPE_INT_RGB);
    SwingUtilities.invokeAndWait(
        () -> {
          CurveChart chart = new CurveChart(page.season());
          chart.setSize(400, 220);
          chart.paint(image.getGraphics());
        });
    return IntStream.range(0, 400 * 220)
        .filter(i -> isWires(new Color(image.getRGB(i % 400, i / 400))))
        .count();
  }

  /** Nearer to the wire's colour than to the paper's: smoothed edges mix the two. */
  private static boolean isWires(Color colour) {
    Color wire = Look.wire(0);
    return Math.abs(colour.getRed() - wire.getRed()) < 90
        && Math.abs(colour.getGreen() - wire.getGreen()) < 70
        && Math.abs(colour.getBlue() - wire.getBlue()) < 40;
  }

  private void type(String name, String text) throws Exception {
    JTextField field = field(name);
    SwingUtilities.invokeAndWait(() -> field.setText(text));
  }

  private JTextField field(String name) {
    return all(page, JTextField.class).stream()
        .filter(field -> name.equals(field.getAccessibleContext().getAccessibleName()))
        .findFirst()
        .orElseThrow();
  }

  private JButton button(String text) {
    return all(page, JButton.class).stream()
        .filter(button -> text.equals(button.getText()))
        .findFirst()
        .orElseThrow();
  }

  private static <T> List<T> all(Container in, Class<T> type) {
    List<T> found = new ArrayList<>();
    for (Component part : in.getComponents()) {
      if (type.isInstance(part)) {
        found.add(type.cast(part));
      }
      if (part instanceof Container container) {
        found.addAll(all(container, type));
      }
    }
    return found;
  }
}
