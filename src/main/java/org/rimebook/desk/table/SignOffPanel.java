package org.rimebook.desk.table;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.SignOffModel;

/** What is signed for, and by whom. */
final class SignOffPanel extends JPanel {

  private final SignOffModel model;
  private final JPanel items =
      new JPanel(new MigLayout("insets 0, gap 16 4, wrap 2", "[104!][grow, fill]"));
  private final JTextField initials = new JTextField(6);
  private final JTextField note = new JTextField(30);
  private final Prose obstacle = Prose.of("");
  private final JButton sign = new JButton("Sign off");

  /**
   * @param model what is signed for
   * @param close closes the dialog
   */
  SignOffPanel(SignOffModel model, Runnable close) {
    super(new MigLayout("insets 16, gap 8 8, wrap 2", "[104!][grow, fill, 360::]"));
    this.model = model;
    JButton cancel = new JButton("Cancel");
    cancel.addActionListener(event -> close.run());
    sign.addActionListener(
        event -> {
          if (model.sign(initials.getText(), note.getText())) {
            close.run();
          }
        });
    initials.setText(model.initials());
    initials.getDocument().addDocumentListener(new Changed(this::judge));
    add(items, "spanx, growx");
    add(label("Initials", 'I', initials), "gaptop 8");
    add(initials, "growx 0, gaptop 8");
    add(label("Note", 'N', note));
    add(note, "growx");
    add(obstacle, "spanx, growx, wmin 0");
    add(cancel, "spanx, split 2, align right, growx 0");
    add(sign, "growx 0");
    refresh();
  }

  private static JLabel label(String words, char mnemonic, JTextField field) {
    JLabel label = new JLabel(words);
    label.setDisplayedMnemonic(mnemonic);
    label.setLabelFor(field);
    return label;
  }

  JButton sign() {
    return sign;
  }

  /** Shows the totals as they are now. */
  void refresh() {
    items.removeAll();
    for (SignOffModel.Item item : model.items()) {
      JLabel label = new JLabel(item.label());
      label.setForeground(Look.muted());
      items.add(label, "top");
      items.add(
          item.label().equals("Total")
              ? new TabularLabel(item.words(), SwingConstants.LEADING)
              : Prose.of(item.words()),
          "wmin 0");
    }
    judge();
    items.revalidate();
    items.repaint();
  }

  private void judge() {
    Optional<String> why = model.obstacle();
    obstacle.setText(
        why.orElse(
            initials.getText().isBlank()
                ? "Enter your initials to sign."
                : "The entry is written into the notebook; anything changed later shows beside"
                    + " it."));
    sign.setEnabled(why.isEmpty() && !initials.getText().isBlank());
  }

  private record Changed(Runnable deed) implements DocumentListener {
    @Override
    public void insertUpdate(DocumentEvent event) {
      deed.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
      deed.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
      deed.run();
    }
  }
}
