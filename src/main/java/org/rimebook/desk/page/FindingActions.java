package org.rimebook.desk.page;

import java.util.List;
import java.util.stream.Stream;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.FindingWalk;

/** The commands of walking findings and deciding on them. */
final class FindingActions {

  private final List<DeskAction> all;

  FindingActions(FindingWalk walk) {
    this.all =
        Stream.of(walking(walk), deciding(walk), leaving(walk)).flatMap(List::stream).toList();
    walk.marking().workspace().findings().watch(left -> refresh());
    walk.marking().task().watch(task -> refresh());
  }

  private static List<DeskAction> walking(FindingWalk walk) {
    return List.of(
        DeskAction.named(Group.FINDINGS, "Next finding", walk::next)
            .key("N")
            .mnemonic('N')
            .saying("Shows the next finding that is left, with what it proposes drawn in")
            .when(walk::canWalk)
            .done(),
        DeskAction.named(Group.FINDINGS, "Previous finding", walk::previous)
            .key("P")
            .mnemonic('P')
            .saying("Shows the finding before")
            .when(walk::canWalk)
            .done());
  }

  private static List<DeskAction> deciding(FindingWalk walk) {
    return List.of(
        DeskAction.named(Group.FINDINGS, "Accept finding", walk::accept)
            .key("A")
            .mnemonic('A')
            .saying("Writes what the finding under review proposes, and goes on")
            .when(walk::canDecide)
            .done(),
        DeskAction.named(Group.FINDINGS, "Change what it proposes", walk::change)
            .key("M")
            .mnemonic('C')
            .saying("Opens the fields of what is proposed; its edges can be dragged")
            .when(walk::canDecide)
            .done(),
        DeskAction.named(Group.FINDINGS, "Dismiss finding", walk::dismiss)
            .key("X")
            .mnemonic('D')
            .saying("Asks why; the finding isn't raised again")
            .when(walk::canDecide)
            .done());
  }

  private static List<DeskAction> leaving(FindingWalk walk) {
    return List.of(
        DeskAction.named(Group.FINDINGS, "Strongest first, or in order of time", walk::turnOrder)
            .key("O")
            .mnemonic('S')
            .saying("Walks the findings in the other order")
            .when(() -> walk.left().open().size() > 1)
            .done(),
        DeskAction.named(Group.FINDINGS, "Leave finding", walk::leave)
            .mnemonic('L')
            .saying("Decides nothing; Esc does the same")
            .when(walk::canDecide)
            .done());
  }

  List<DeskAction> all() {
    return all;
  }

  private void refresh() {
    all.forEach(DeskAction::refresh);
  }
}
