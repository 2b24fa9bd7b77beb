package org.rimebook.desk.model;

import static org.rimebook.station.Words.counted;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/**
 * The rows of the totals table: which there are, in what order, and which changed. While an entry
 * is being made rows stay where they are, whatever becomes of their values; they are ordered and
 * filtered anew once totals are settled.
 */
public final class TotalsList {

  private final Workspace workspace;
  private final Watched<TotalsChoice> choice = new Watched<>(TotalsChoice.FIRST);
  private final Watched<Shown> shown = new Watched<>(new Shown(List.of()));
  private final TotalsSource source = new TotalsSource();
  private List<Integer> order = List.of();
  private TotalsChoice ordered = TotalsChoice.FIRST;
  private int orderedOf;

  /**
   * @param workspace whose totals are listed
   */
  public TotalsList(Workspace workspace) {
    this.workspace = workspace;
    workspace.computed().follow(computed -> renew());
    choice.watch(chosen -> renew());
  }

  /** Which rows are asked for, and in what order. */
  public Watched<TotalsChoice> choice() {
    return choice;
  }

  /** The rows; told of each time totals are made, changed or not. */
  public Watched<Shown> shown() {
    return shown;
  }

  /** Rows in their order. Two are never equal: to compare thousands of rows costs a frame. */
  public static final class Shown {
    private final List<TotalsRow> rows;

    private Shown(List<TotalsRow> rows) {
      this.rows = rows;
    }

    /** The rows in their order. */
    public List<TotalsRow> rows() {
      return rows;
    }
  }

  /** What stands in the cells. */
  public TotalsText text() {
    Optional<StationSheet> sheet = workspace.computed().get().map(c -> c.result().season().sheet());
    Resolution resolution =
        workspace.computed().get().map(c -> c.totals().resolution()).orElse(Resolution.TENTH);
    return new TotalsText(
        choice.get().scale(),
        resolution,
        new ShortTime(sheet.map(StationSheet::utcOffset).orElse(ZoneOffset.UTC)),
        sheet.map(s -> s.dayStartsAt().equals(LocalTime.MIDNIGHT)).orElse(true));
  }

  /** Why totals aren't those of the notebook yet, in words; empty when they are. */
  public String standing() {
    return workspace
        .computed()
        .get()
        .map(
            computed ->
                switch (computed.state()) {
                  case FORESEEN -> "with the entry being made" + changes();
                  case CLOSE -> "being computed anew" + changes();
                  case SETTLED -> "";
                })
        .orElse("");
  }

  private String changes() {
    long changed = shown.get().rows().stream().filter(TotalsRow::changed).count();
    return ": "
        + (changed == 0 ? "no row changes" : counted(changed, choice.get().scale().unit()))
        + (changed == 0 ? "" : changed == 1 ? " changes" : " change");
  }

  /** What to do when there is no row, in words. */
  public String hint() {
    if (workspace.opened().get().isEmpty()) {
      return "Totals stand here once a season is open";
    }
    if (workspace.computed().get().isEmpty()) {
      return "The totals are being computed";
    }
    return "No " + choice.get().scale().unit() + " passes the filter: show all, or another quality";
  }

  private void renew() {
    Optional<Computed> computed = workspace.computed().get();
    if (computed.isEmpty()) {
      source.forget();
      order = List.of();
      orderedOf = 0;
      shown.set(new Shown(List.of()));
      return;
    }
    List<TotalsRow> all = source.rows(computed.get(), choice.get().scale());
    boolean stays =
        computed.get().state() != Computed.State.SETTLED
            && ordered.equals(choice.get())
            && orderedOf == all.size();
    if (!stays) {
      order = choice.get().order(all);
      ordered = choice.get();
      orderedOf = all.size();
    }
    shown.set(new Shown(order.stream().map(all::get).toList()));
  }

  /** The rows that share time with what is selected. */
  public List<Integer> selected(Selection selection) {
    List<TotalsRow> now = shown.get().rows();
    return IntStream.range(0, now.size())
        .filter(i -> touches(selection.intervals(), now.get(i).total()))
        .boxed()
        .toList();
  }

  private static boolean touches(List<Interval> intervals, TotalRow total) {
    return intervals.stream().anyMatch(total.interval()::overlaps);
  }

  /** Selects the time of rows in all views, and has the strips go there. */
  public void select(List<TotalsRow> picked) {
    List<Interval> intervals = new ArrayList<>();
    picked.forEach(row -> intervals.add(row.total().interval()));
    workspace.selection().set(workspace.selection().get().with(intervals));
    if (!intervals.isEmpty()) {
      List<Interval> merged = workspace.selection().get().intervals();
      Interval whole = new Interval(merged.get(0).fromMs(), merged.get(merged.size() - 1).toMs());
      CloseUp.of(workspace.view().visible().get(), whole).ifPresent(workspace.view()::go);
    }
  }

  /** Asks why a row is what it is; a month is opened into its days instead. */
  public void ask(TotalsRow row) {
    if (choice.get().scale() == TotalsScale.MONTHLY) {
      choice.set(choice.get().at(TotalsScale.DAILY));
      select(List.of(row));
    } else {
      workspace.asked().set(Optional.of(row.total().interval()));
    }
  }
}
