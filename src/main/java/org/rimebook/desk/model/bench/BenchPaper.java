package org.rimebook.desk.model.bench;

import java.util.Locale;
import java.util.Optional;
import org.rimebook.export.leaflet.Leaflet;

/**
 * The paper of one task, as far as it is made.
 *
 * @param made the paper made last
 * @param current whether it is what the form and the season come to now
 * @param words why there is no newer one, and what to do; empty text otherwise
 */
public record BenchPaper(Optional<Made> made, boolean current, String words) {

  /** Nothing was made yet. */
  static final BenchPaper NONE = new BenchPaper(Optional.empty(), false, "");

  /** A paper, to be shown, saved and printed. */
  public static final class Made {
    private final Leaflet leaflet;
    private final byte[] pdf;
    private final Optional<Fact> fact;
    private final String words;

    Made(Preparation.Outcome outcome, byte[] pdf) {
      this.leaflet = outcome.leaflet();
      this.pdf = pdf;
      this.fact = outcome.fact();
      this.words = outcome.words();
    }

    /** What it says. */
    public Leaflet leaflet() {
      return leaflet;
    }

    /** Its bytes; not to be changed. */
    public byte[] pdf() {
      return pdf;
    }

    /** What may be stored, if anything. */
    public Optional<Fact> fact() {
      return fact;
    }

    /** About storing: why it can't be, or what to look at first; may be empty. */
    public String words() {
      return words;
    }

    /** Name of its file unless told otherwise. */
    public String fileName() {
      return leaflet.title().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-") + ".pdf";
    }
  }

  /** What may be stored now. */
  public Optional<Fact> fact() {
    return current ? made.flatMap(Made::fact) : Optional.empty();
  }

  BenchPaper outdated(String why) {
    return new BenchPaper(made, false, why);
  }
}
