package org.rimebook.desk.bench;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.bench.BenchModel;
import org.rimebook.desk.model.bench.BenchTask;

/** The commands of the bench. */
public final class BenchActions {

  private BenchActions() {}

  /** One that opens and closes it, and one for each task. */
  public static List<DeskAction> of(BenchModel model) {
    List<DeskAction> actions = new ArrayList<>();
    actions.add(
        DeskAction.named(Group.BENCH, "Open or close the bench", model::toggle)
            .saying("The page of calibration and upkeep, in place of the strips")
            .key("control B")
            .mnemonic('B')
            .when(model::canOpen)
            .done());
    for (BenchTask task : BenchTask.values()) {
      actions.add(
          DeskAction.named(Group.BENCH, task.words(), () -> model.open(task))
              .saying(task.sentence())
              .mnemonic(task.mnemonic())
              .when(model::canOpen)
              .done());
    }
    return actions;
  }
}
