package org.rimebook.desk.model.bench;

import java.nio.file.Path;
import java.time.ZoneOffset;
import org.rimebook.desk.model.Opened;
import org.rimebook.station.StationSheet;

/** The forms of one season, as far as they are filled in. */
public final class BenchForms {

  private final Path folder;
  private final CalibrationForm calibration;
  private final TemperatureForm temperature;
  private final ChargeForm charge;
  private final NextVisitForm nextVisit;
  private final InstallationForm installation;
  private final VisitForm visit;

  BenchForms(Opened opened, Runnable changed) {
    StationSheet sheet = opened.season().sheet();
    ZoneOffset offset = sheet.utcOffset();
    PouredForm poured = new PouredForm(offset, changed);
    this.folder = opened.folder();
    this.calibration = new CalibrationForm(sheet, changed);
    this.temperature = new TemperatureForm(sheet, changed);
    this.charge = new ChargeForm(poured, changed);
    this.nextVisit = new NextVisitForm(poured, changed);
    this.installation = new InstallationForm(offset, changed);
    this.visit = new VisitForm(poured, sheet.gauge(), changed);
  }

  /** The season's folder. */
  Path folder() {
    return folder;
  }

  /** A wire's calibration. */
  public CalibrationForm calibration() {
    return calibration;
  }

  /** What the air temperature does. */
  public TemperatureForm temperature() {
    return temperature;
  }

  /** Litres against levels. */
  public ChargeForm charge() {
    return charge;
  }

  /** The next visit. */
  public NextVisitForm nextVisit() {
    return nextVisit;
  }

  /** A gauge at rest. */
  public InstallationForm installation() {
    return installation;
  }

  /** A visit that was made. */
  public VisitForm visit() {
    return visit;
  }

  /** The form of a task. */
  public BenchForm of(BenchTask task) {
    return switch (task) {
      case CALIBRATION -> calibration;
      case TEMPERATURE -> temperature;
      case CHARGE -> charge;
      case NEXT_VISIT -> nextVisit;
      case INSTALLATION -> installation;
      case VISIT_DONE -> visit;
    };
  }
}
