package org.rimebook.export.standard;

import org.rimebook.totals.Quality;

/**
 * How each quality of ours is said in open standards.
 *
 * <p>The words are those of OGC WaterML 2.0 (10-126r4), so there it is the same word. Flags of
 * netCDF are ours, described in the file itself by CF's {@code flag_values} and {@code
 * flag_meanings}. The figures of BUFR are those of code table 0 33 020, quality control indication
 * of following value (WMO-No. 306, from memory); they are for those who put the totals into BUFR,
 * which this program doesn't write.
 */
enum QualityTerm {
  GOOD(Quality.GOOD, 0, "good"),
  UNCHECKED(Quality.UNCHECKED, 4, "not checked"),
  ESTIMATE(Quality.ESTIMATE, 6, "estimated"),
  SUSPECT(Quality.SUSPECT, 2, "doubtful"),
  POOR(Quality.POOR, 1, "inconsistent"),
  MISSING(Quality.MISSING, 7, "missing value");

  private static final String OGC = "http://www.opengis.net/def/waterml/2.0/quality/";

  private final Quality quality;
  private final int bufr033020;
  private final String bufrWords;

  QualityTerm(Quality quality, int bufr033020, String bufrWords) {
    this.quality = quality;
    this.bufr033020 = bufr033020;
    this.bufrWords = bufrWords;
  }

  /** The term for a quality. */
  static QualityTerm of(Quality quality) {
    return valueOf(quality.name());
  }

  /** Our word. */
  String word() {
    return quality.code();
  }

  /** Our quality. */
  Quality quality() {
    return quality;
  }

  /** Its address in the OGC's vocabulary. */
  String ogcUri() {
    return OGC + word();
  }

  /** Its flag in netCDF. */
  byte flag() {
    return (byte) ordinal();
  }

  /** Its figure in BUFR code table 0 33 020. */
  int bufr033020() {
    return bufr033020;
  }

  /** What that figure says. */
  String bufrWords() {
    return bufrWords;
  }
}
