package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.findings.ExchangedStretch.Evidence;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/**
 * Wires whose frequencies fit each other's calibrations better than their own: columns exchanged in
 * the station sheet, or leads exchanged at a visit. Depths at the same load and their increments
 * over the load have both to agree under the other order.
 */
final class ExchangedWiresCheck implements Check {

  /** More wires have too many orders, and no gauge has them. */
  private static final int MOST_WIRES = 4;

  /** Days of hours an order has to hold; own choice. */
  private static final int LEAST_HOURS = 48;

  @Override
  public FindingKind kind() {
    return FindingKind.EXCHANGED_WIRES;
  }

  @Override
  public String method() {
    return "Every order of the calibrations over the wires is tried hour by hour; the order that"
        + " changes seldom and makes depths agree best is taken (own choice). It is raised when"
        + " depths under the sheet's order stand three times further apart and beyond what sound"
        + " wires do (1 mm and 0.7 % of the depth), and slopes of one depth against another come"
        + " nearer 1 (common practice).";
  }

  @Override
  public List<Finding> look(Scene scene) {
    int wires = scene.sheet().wires().size();
    if (wires < 2 || wires > MOST_WIRES || scene.record().size() == 0) {
      return List.of();
    }
    SharedHours hours = SharedHours.of(scene);
    WireOrders orders = new WireOrders(hours);
    int[] path = orders.likeliest(visited(scene, hours));
    List<Finding> findings = new ArrayList<>();
    int from = 0;
    while (from < path.length) {
      int to = from;
      while (to < path.length && path[to] == path[from]) {
        to++;
      }
      ExchangedStretch stretch =
          new ExchangedStretch(scene, hours, orders, new WireOrders.Run(path[from], from, to));
      if (path[from] != 0 && stretch.known() >= LEAST_HOURS) {
        stretch.evidence().ifPresent(evidence -> findings.add(finding(scene, stretch, evidence)));
      }
      from = to;
    }
    return findings;
  }

  private static boolean[] visited(Scene scene, SharedHours hours) {
    boolean[] visited = new boolean[hours.size()];
    List<Interval> visits = scene.spans(Entry.ServiceVisit.class);
    for (int hour = 0; hour < visited.length; hour++) {
      Interval about =
          new Interval(hours.startMs(Math.max(0, hour - 1)), hours.startMs(hour + 1) + 1);
      visited[hour] = visits.stream().anyMatch(about::overlaps);
    }
    return visited;
  }

  private Finding finding(Scene scene, ExchangedStretch stretch, Evidence evidence) {
    int[] order = stretch.order();
    List<Wire> wires = scene.sheet().wires();
    List<String> moved =
        IntStream.range(0, order.length)
            .filter(w -> order[w] != w)
            .mapToObj(scene::wireName)
            .toList();
    Interval span = stretch.span();
    String reason = evidence.words() + " " + remedy(wires, order, stretch);
    Entry proposal =
        moved.size() < wires.size()
            ? Proposals.bad(span, moved, BadReason.WIRE_FAULT, "Wires exchanged.")
            : Proposals.remark(span, "Wires exchanged: " + remedy(wires, order, stretch));
    return Finding.doubting(
        kind(), new Finding.Subject(span, moved), reason, evidence.strength(), proposal);
  }

  private static String remedy(List<Wire> wires, int[] order, ExchangedStretch stretch) {
    List<String> columns = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int wire = 0; wire < order.length; wire++) {
      if (order[wire] != wire) {
        names.add(wires.get(wire).name());
        columns.add(
            wires.get(wire).frequencyColumn() + " is " + wires.get(order[wire]).name() + "'s");
      }
    }
    String belongs = Wording.names(columns);
    Optional<String> since = stretch.part();
    return since.isEmpty()
        ? "By its readings, column "
            + belongs
            + ": in the station sheet, exchange the frequency columns of "
            + Wording.names(names)
            + "."
        : "By its readings, column "
            + belongs
            + " "
            + since.get()
            + ": in the station sheet, exchange the calibrations of "
            + Wording.names(names)
            + " for that time.";
  }
}
