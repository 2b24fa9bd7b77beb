package org.rimebook.notebook;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.rimebook.station.Interval;

/** One entry of the notebook. What an entry does to the totals is told at each kind. */
public sealed interface Entry {

  /** Members every entry has. */
  Header header();

  /** The word for its kind in the notebook. */
  String kind();

  /** The span of time the entry is about; empty for entries about other entries. */
  Optional<Interval> span();

  /**
   * Members every entry has.
   *
   * @param id unique in the notebook
   * @param at when it was written, ISO 8601 with offset, as it stands in the file
   * @param by initials of the writer
   * @param note words; may be empty
   */
  record Header(String id, String at, String by, String note) {
    public Header {
      Objects.requireNonNull(id, "id");
    }
  }

  /** An entry about a span of time. */
  sealed interface Spanning extends Entry {
    /** The span, half-open. */
    Interval interval();

    @Override
    default Optional<Interval> span() {
      return Optional.of(interval());
    }
  }

  /** An entry about something other than a span of time. */
  sealed interface Spanless extends Entry {
    @Override
    default Optional<Interval> span() {
      return Optional.empty();
    }
  }

  /**
   * Someone was at the gauge: readings inside are left out, and no change of level from before to
   * after is catch.
   *
   * @param actions what was done
   * @param antifreezeL antifreeze poured in [L]
   * @param oilL oil poured in [L]
   */
  record ServiceVisit(
      Header header,
      Interval interval,
      List<VisitAction> actions,
      OptionalDouble antifreezeL,
      OptionalDouble oilL)
      implements Spanning {
    /** The word for this kind. */
    public static final String KIND = "service-visit";

    @Override
    public String kind() {
      return KIND;
    }

    public ServiceVisit {
      actions = List.copyOf(actions);
    }
  }

  /**
   * Wires not to be believed.
   *
   * @param wires names of the wires left out; empty = all
   * @param reason why
   */
  record BadInterval(Header header, Interval interval, Set<String> wires, BadReason reason)
      implements Spanning {
    /** The word for this kind. */
    public static final String KIND = "bad-interval";

    @Override
    public String kind() {
      return KIND;
    }

    public BadInterval {
      wires = Set.copyOf(wires);
    }
  }

  /** Total kept, timing unknown: what the bucket gained inside fell some time inside. */
  record LateCatch(Header header, Interval interval) implements Spanning {
    /** The word for this kind. */
    public static final String KIND = "late-catch";

    @Override
    public String kind() {
      return KIND;
    }
  }

  /** Nothing fell inside: changes of level are drift or evaporation. */
  record DrySpell(Header header, Interval interval) implements Spanning {
    /** The word for this kind. */
    public static final String KIND = "dry-spell";

    @Override
    public String kind() {
      return KIND;
    }
  }

  /**
   * The analyst's own total for a span the gauge can't give.
   *
   * @param totalMm the total [mm], not negative
   * @param source where it comes from
   */
  record Estimate(Header header, Interval interval, double totalMm, String source)
      implements Spanning {
    /** The word for this kind. */
    public static final String KIND = "estimate";

    @Override
    public String kind() {
      return KIND;
    }
  }

  /**
   * Words without effect.
   *
   * @param about the span they are about, if any
   */
  record Remark(Header header, Optional<Interval> about) implements Entry {
    /** The word for this kind. */
    public static final String KIND = "remark";

    @Override
    public String kind() {
      return KIND;
    }

    @Override
    public Optional<Interval> span() {
      return about;
    }
  }

  /**
   * A finding that isn't to be raised again.
   *
   * @param finding its identifier
   */
  record Dismissal(Header header, String finding) implements Spanless {
    /** The word for this kind. */
    public static final String KIND = "dismissal";

    @Override
    public String kind() {
      return KIND;
    }
  }

  /**
   * An entry that no longer counts.
   *
   * @param entry its id
   */
  record Withdrawal(Header header, String entry) implements Spanless {
    /** The word for this kind. */
    public static final String KIND = "withdrawal";

    @Override
    public String kind() {
      return KIND;
    }
  }

  /**
   * States with which record, sheet and entries the totals were defended.
   *
   * @param recordSha256 digest of the record
   * @param stationSha256 digest of the station sheet's bytes
   * @param entries ids of the entries that counted
   */
  record SignOff(Header header, String recordSha256, String stationSha256, List<String> entries)
      implements Spanless {
    /** The word for this kind. */
    public static final String KIND = "sign-off";

    @Override
    public String kind() {
      return KIND;
    }

    public SignOff {
      entries = List.copyOf(entries);
    }
  }

  /**
   * An entry of a kind this version doesn't know. It is kept and has no effect.
   *
   * @param kind the kind as written
   */
  record Unknown(Header header, String kind) implements Spanless {}
}
