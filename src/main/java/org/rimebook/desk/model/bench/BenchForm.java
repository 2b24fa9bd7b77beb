package org.rimebook.desk.model.bench;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.desk.model.Numbers;

/** A form of the bench: its fields as typed, what is wrong with them, and what is made of them. */
public abstract class BenchForm {

  private final Map<BenchField, String> texts = new EnumMap<>(BenchField.class);
  private final ZoneOffset offset;
  private final Runnable changed;

  /**
   * @param offset the station's
   * @param changed run after each change
   */
  BenchForm(ZoneOffset offset, Runnable changed) {
    this.offset = offset;
    this.changed = changed;
  }

  /** The fields that count as the form stands, in the order they are filled in. */
  public abstract List<BenchField> fields();

  /** What to make of the form, or why nothing can be made. */
  abstract Preparation prepare(Moment now);

  /** What can hurt in doing this. */
  public abstract List<String> cautions();

  /** A field as typed. */
  public String text(BenchField field) {
    return texts.getOrDefault(field, field.first());
  }

  /** Types into a field. */
  public void type(BenchField field, String text) {
    if (!text(field).equals(text)) {
      texts.put(field, text);
      changed();
    }
  }

  /** Types into a field without making anything of it. */
  final void fill(BenchField field, String text) {
    texts.put(field, text);
  }

  /** Name of a field with its unit. */
  public String label(BenchField field) {
    return field.label(offset);
  }

  /** What is wrong with a field and what to do; empty when nothing is. */
  public Optional<String> fault(BenchField field) {
    return fields().contains(field) ? field.fault(text(field), offset) : Optional.empty();
  }

  /** The first fault of the fields that count, with the field's name. */
  final Optional<String> firstFault() {
    return fields().stream()
        .filter(field -> fault(field).isPresent())
        .findFirst()
        .map(field -> label(field) + ": " + fault(field).orElseThrow());
  }

  final void changed() {
    changed.run();
  }

  /** A number typed; empty when there is none. */
  final OptionalDouble number(BenchField field) {
    return Numbers.read(text(field));
  }

  /** A number typed, which has been checked. */
  final double checked(BenchField field) {
    return number(field).orElseThrow();
  }

  /** A time typed; empty when there is none. */
  final Optional<Instant> time(BenchField field) {
    return StationTime.read(text(field), offset);
  }

  /** A time typed, which has been checked [ms since epoch]. */
  final long checkedMs(BenchField field) {
    return time(field).orElseThrow().toEpochMilli();
  }

  /** The station's offset. */
  final ZoneOffset offset() {
    return offset;
  }
}
