package org.rimebook.desk.model.bench;

import java.util.List;
import java.util.Optional;
import org.rimebook.desk.model.bench.Preparation.Outcome;
import org.rimebook.export.leaflet.ChargeLeaflet;
import org.rimebook.season.SeasonDepths;
import org.rimebook.upkeep.ChargeCheck;
import org.rimebook.upkeep.Poured;

/** What was poured in at the visits of the notebook against what the wires show. */
public final class ChargeForm extends BenchForm {

  /** What is said while the season isn't computed. */
  static final String UNSETTLED = "Waiting until the totals are settled";

  private final PouredForm poured;

  ChargeForm(PouredForm poured, Runnable changed) {
    super(poured.offset(), changed);
    this.poured = poured;
  }

  /** Which antifreeze and oil. */
  public PouredForm poured() {
    return poured;
  }

  @Override
  public List<BenchField> fields() {
    return List.of();
  }

  @Override
  public List<String> cautions() {
    return poured.cautions();
  }

  @Override
  Preparation prepare(Moment now) {
    Optional<String> missing = poured.missing();
    if (missing.isPresent() || now.settled().isEmpty()) {
      return Preparation.not(missing.orElse(UNSETTLED));
    }
    SeasonDepths depths = now.settled().get().stage();
    Poured like = poured.poured(0);
    return Preparation.of(
        progress -> new Outcome(ChargeLeaflet.of(ChargeCheck.of(depths, like), like, now.sheet())));
  }
}
