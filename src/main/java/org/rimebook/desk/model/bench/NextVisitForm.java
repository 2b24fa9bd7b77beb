package org.rimebook.desk.model.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.desk.model.bench.Preparation.Outcome;
import org.rimebook.export.leaflet.NextVisitLeaflet;
import org.rimebook.export.leaflet.OutlookParts;
import org.rimebook.export.leaflet.VisitSheet;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Progress;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.Resolution;
import org.rimebook.upkeep.BucketNow;
import org.rimebook.upkeep.CatchRates;
import org.rimebook.upkeep.Caution;
import org.rimebook.upkeep.Outlook;
import org.rimebook.upkeep.Plan;
import org.rimebook.upkeep.Poured;

/** When the next visit is due, and what to bring. */
public final class NextVisitForm extends BenchForm {

  /** What goes on paper. */
  public enum Paper {
    SHEET("Sheet to take along"),
    OUTLOOK("Outlook alone");

    private final String words;

    Paper(String words) {
      this.words = words;
    }

    /** Its name on screen. */
    public String words() {
      return words;
    }
  }

  private final PouredForm poured;
  private Paper paper = Paper.SHEET;

  NextVisitForm(PouredForm poured, Runnable changed) {
    super(poured.offset(), changed);
    this.poured = poured;
  }

  /** Which antifreeze and oil. */
  public PouredForm poured() {
    return poured;
  }

  /** What goes on paper. */
  public Paper paper() {
    return paper;
  }

  /** Chooses what goes on paper. */
  public void paper(Paper chosen) {
    if (paper != chosen) {
      paper = chosen;
      changed();
    }
  }

  @Override
  public List<BenchField> fields() {
    return List.of(
        BenchField.COLDEST,
        BenchField.MARGIN,
        BenchField.DAYS,
        BenchField.FIRST_ANTIFREEZE,
        BenchField.WET_RATE);
  }

  @Override
  public List<String> cautions() {
    List<String> cautions = new ArrayList<>(poured.cautions());
    cautions.addAll(Caution.site());
    return cautions;
  }

  @Override
  Preparation prepare(Moment now) {
    Optional<String> missing = poured.missing().or(this::firstFault);
    if (missing.isPresent() || now.settled().isEmpty()) {
      return Preparation.not(missing.orElse(ChargeForm.UNSETTLED));
    }
    Poured like = poured.poured(checked(BenchField.FIRST_ANTIFREEZE));
    Plan plan =
        new Plan(
            checked(BenchField.COLDEST),
            checked(BenchField.MARGIN),
            (int) checked(BenchField.DAYS));
    OptionalDouble rate = number(BenchField.WET_RATE);
    SeasonResult result = now.settled().get();
    Paper wanted = paper;
    return Preparation.of(
        progress -> {
          OutlookParts parts = outlook(result, like, plan, rate, progress);
          return new Outcome(
              wanted == Paper.SHEET
                  ? VisitSheet.of(result, Optional.of(parts))
                  : NextVisitLeaflet.of(parts));
        });
  }

  private static OutlookParts outlook(
      SeasonResult result, Poured like, Plan plan, OptionalDouble rate, Progress progress) {
    BucketNow now = BucketNow.of(result.stage(), like);
    progress.step("rates", 0.2);
    CatchRates rates =
        rate.isPresent()
            ? CatchRates.given(rate.getAsDouble())
            : CatchRates.of(result.totals(Resolution.HUNDREDTH));
    progress.step("outlook", 0.6);
    StationSheet sheet = result.season().sheet();
    Outlook outlook = Outlook.of(now, rates, like.antifreeze(), plan, sheet.gauge());
    return new OutlookParts(outlook, rates, like.antifreeze(), plan, sheet);
  }
}
