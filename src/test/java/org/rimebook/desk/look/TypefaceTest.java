package org.rimebook.desk.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.Font;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JLabel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The type of the window under the locale of the tests, whose small letter of I has no dot. */
class TypefaceTest {

  private final AtomicReference<Font> label = new AtomicReference<>();

  @BeforeEach
  void dress() throws Exception {
    EventQueue.invokeAndWait(
        () -> {
          Theme.install(Theme.LIGHT);
          label.set(new JLabel().getFont());
        });
  }

  @Test
  void bothWeightsAreThoseOfTheTypefaceInALocaleWithADotlessI() {
    assertThat("I".toLowerCase(Locale.getDefault())).isEqualTo("\u0131");
    assertThat(label.get().getFontName(Locale.ROOT)).isEqualTo("Inter Regular");
    assertThat(Look.text(0.92).getFontName(Locale.ROOT)).isEqualTo("Inter Regular");
    assertThat(Look.bold(1.25).getFontName(Locale.ROOT)).isEqualTo("Inter Bold");
    assertThat(Look.bold(1).getSize2D()).isEqualTo(Look.text(1).getSize2D());
  }
}
