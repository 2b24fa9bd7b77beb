package org.rimebook.desk.model.bench;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.rimebook.upkeep.Antifreeze;
import org.rimebook.upkeep.Caution;
import org.rimebook.upkeep.Poured;

/** Which antifreeze and oil are used at a gauge; the notebook has only their litres. */
public final class PouredForm extends BenchForm {

  private Optional<Antifreeze> antifreeze = Optional.empty();
  private boolean fromMemory;

  PouredForm(ZoneOffset offset, Runnable changed) {
    super(offset, changed);
  }

  @Override
  public List<BenchField> fields() {
    return List.of(BenchField.STRENGTH, BenchField.OIL_DENSITY);
  }

  /** The antifreeze; empty until it is chosen. */
  public Optional<Antifreeze> antifreeze() {
    return antifreeze;
  }

  /** Chooses the antifreeze. */
  public void antifreeze(Optional<Antifreeze> chosen) {
    if (!antifreeze.equals(chosen)) {
      antifreeze = chosen;
      changed();
    }
  }

  /** Whether tables are used that nobody could check against their source. */
  public boolean fromMemory() {
    return fromMemory;
  }

  /** Says whether they are used. */
  public void fromMemory(boolean use) {
    if (fromMemory != use) {
      fromMemory = use;
      changed();
    }
  }

  /** Whether the antifreeze chosen is one whose freezing points are only remembered. */
  public boolean asksForMemory() {
    return antifreeze.filter(liquid -> liquid.source().isEmpty()).isPresent();
  }

  /** What keeps it from being used, and what to do; empty when nothing does. */
  public Optional<String> missing() {
    if (antifreeze.isEmpty()) {
      return Optional.of("Choose the antifreeze");
    }
    if (asksForMemory() && !fromMemory) {
      return Optional.of(
          "The freezing points of "
              + antifreeze.get().words()
              + " are only remembered: tick the box to use them all the same");
    }
    return firstFault();
  }

  /**
   * What is poured; only when nothing is missing.
   *
   * @param antifreezeL litres in the bucket when the record begins
   */
  Poured poured(double antifreezeL) {
    return new Poured(
        antifreeze.orElseThrow(),
        checked(BenchField.STRENGTH) / 100,
        antifreezeL,
        0,
        checked(BenchField.OIL_DENSITY));
  }

  @Override
  public List<String> cautions() {
    return antifreeze.map(Caution::charge).orElse(List.of());
  }

  @Override
  Preparation prepare(Moment now) {
    return Preparation.not(missing().orElse(""));
  }
}
