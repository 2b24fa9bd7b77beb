package org.rimebook.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.lang.reflect.InvocationTargetException;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.rimebook.desk.look.Theme;

class CheckedFieldTest {

  @Test
  void comingToAFilledFieldSelectsWhatIsInItEachTime()
      throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.install(Theme.LIGHT);
          JTextField field = new CheckedField("Rim [m]", "1.5", "1.75", text -> {}).field();
          for (int time = 0; time < 2; time++) {
            tell(field, FocusEvent.FOCUS_GAINED);
            assertThat(field.getSelectedText()).isEqualTo("1.75");
            field.setCaretPosition(2);
            tell(field, FocusEvent.FOCUS_LOST);
          }
        });
  }

  private static void tell(JTextField field, int id) {
    FocusEvent event = new FocusEvent(field, id, false, null, FocusEvent.Cause.TRAVERSAL_FORWARD);
    for (FocusListener listener : field.getFocusListeners()) {
      if (id == FocusEvent.FOCUS_GAINED) {
        listener.focusGained(event);
      } else {
        listener.focusLost(event);
      }
    }
  }
}
