package org.rimebook.desk.model;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.station.Calibration;
import org.rimebook.station.Wire;

/**
 * A wire as it is being entered.
 *
 * @param column column of the record that holds its frequency
 * @param texts its fields as entered
 */
public record WireDraft(String column, Map<WireField, String> texts) {

  public WireDraft {
    texts = Map.copyOf(texts);
  }

  /** A field as entered; empty text when it wasn't. */
  public String text(WireField field) {
    return texts.getOrDefault(field, "");
  }

  /** With another entry in a field. */
  public WireDraft with(WireField field, String text) {
    Map<WireField, String> changed = new EnumMap<>(WireField.class);
    changed.putAll(texts);
    changed.put(field, text);
    return new WireDraft(column, changed);
  }

  /** A number as entered; empty when it isn't one yet. */
  OptionalDouble number(WireField field) {
    return Numbers.read(text(field));
  }

  /** The calibration; empty until all of it is entered. */
  Optional<Calibration> calibration() {
    OptionalDouble a = number(WireField.A);
    OptionalDouble b = number(WireField.B);
    OptionalDouble f0 = number(WireField.F0);
    return a.isPresent() && b.isPresent() && f0.isPresent()
        ? Optional.of(
            new Calibration(Optional.empty(), a.getAsDouble(), b.getAsDouble(), f0.getAsDouble()))
        : Optional.empty();
  }

  /** The wire with a calibration. */
  Wire wire(Calibration calibration) {
    String lead = text(WireField.LEAD).strip();
    return new Wire(
        text(WireField.NAME).strip(),
        column,
        Optional.of(lead).filter(word -> !word.isEmpty()),
        List.of(calibration));
  }
}
