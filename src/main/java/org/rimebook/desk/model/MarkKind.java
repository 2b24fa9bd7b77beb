package org.rimebook.desk.model;

import java.util.Arrays;
import java.util.Optional;
import org.rimebook.notebook.Entry;

/** The kinds of entry an analyst makes by marking. */
public enum MarkKind {
  SERVICE_VISIT(Entry.ServiceVisit.KIND, "Service visit", 'V', "left out, and the level joined"),
  BAD_INTERVAL(Entry.BadInterval.KIND, "Bad interval", 'B', "readings left out"),
  LATE_CATCH(Entry.LateCatch.KIND, "Late catch", 'L', "total kept, timing unknown"),
  DRY_SPELL(Entry.DrySpell.KIND, "Dry spell", 'D', "nothing fell"),
  ESTIMATE(Entry.Estimate.KIND, "Estimate", 'E', "a total of your own"),
  REMARK(Entry.Remark.KIND, "Remark", 'R', "words without effect");

  private final String code;
  private final String words;
  private final char key;
  private final String effect;

  MarkKind(String code, String words, char key, String effect) {
    this.code = code;
    this.words = words;
    this.key = key;
    this.effect = effect;
  }

  /** The kind of an entry; empty when it is of a kind that isn't marked. */
  public static Optional<MarkKind> of(Entry entry) {
    return Arrays.stream(values()).filter(kind -> kind.code.equals(entry.kind())).findFirst();
  }

  /** Its name on screen. */
  public String words() {
    return words;
  }

  /** The letter that starts it. */
  public char key() {
    return key;
  }

  /** What it does to the totals, in a few words. */
  public String effect() {
    return effect;
  }
}
