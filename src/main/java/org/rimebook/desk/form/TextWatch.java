package org.rimebook.desk.form;

import java.util.function.Consumer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Tells the whole text of a field at each change. */
public record TextWatch(JTextComponent field, Consumer<String> taker) implements DocumentListener {

  public static void on(JTextComponent field, Consumer<String> taker) {
    field.getDocument().addDocumentListener(new TextWatch(field, taker));
  }

  @Override
  public void insertUpdate(DocumentEvent event) {
    taker.accept(field.getText());
  }

  @Override
  public void removeUpdate(DocumentEvent event) {
    taker.accept(field.getText());
  }

  @Override
  public void changedUpdate(DocumentEvent event) {
    taker.accept(field.getText());
  }
}
