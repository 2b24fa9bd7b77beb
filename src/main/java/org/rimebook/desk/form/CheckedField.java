package org.rimebook.desk.form;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;

/** A text field with its name above and what is wrong with the entry beneath. */
public final class CheckedField extends JPanel {

  private final JTextField field;
  private final JTextArea fault = Words.text("", () -> Look.text(0.92), Look::ink);
  private String wrong = "";
  private boolean left;

  /**
   * @param name its name, with the unit
   * @param example what an entry looks like, shown while it is empty
   * @param text the first entry
   * @param typed told each entry
   */
  public CheckedField(String name, String example, String text, Consumer<String> typed) {
    super(new MigLayout("insets 0, wrap 1, gapy 2, hidemode 3", "[grow, fill]"));
    field = new JTextField(text, 6);
    field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, example);
    field.putClientProperty(
        FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY,
        FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_ALWAYS);
    field.getAccessibleContext().setAccessibleName(name);
    JLabel label = Words.label(name, () -> Look.text(0.92), Look::muted);
    label.setLabelFor(field);
    fault.getAccessibleContext().setAccessibleName("What is wrong with " + name);
    add(label);
    add(field);
    add(fault, "w 0:20:");
    setOpaque(false);
    TextWatch.on(field, typed);
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent event) {
            left = true;
            blame();
          }
        });
    blame();
  }

  /** Says what is wrong with the entry; empty text when nothing is. */
  public void wrong(String words) {
    wrong = words;
    blame();
  }

  public JTextField field() {
    return field;
  }

  /** What is said beneath the field now. */
  public String said() {
    return fault.isVisible() ? fault.getText() : "";
  }

  /** An empty field is blamed only once it has been passed over. */
  private void blame() {
    boolean blamed = !wrong.isEmpty() && (left || !field.getText().isBlank());
    fault.setText(blamed ? wrong : "");
    fault.setVisible(blamed);
    field.putClientProperty(
        FlatClientProperties.OUTLINE, blamed ? FlatClientProperties.OUTLINE_ERROR : null);
    field.getAccessibleContext().setAccessibleDescription(blamed ? wrong : "");
  }
}
