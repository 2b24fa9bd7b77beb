package org.rimebook.desk;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.bench.BenchActions;
import org.rimebook.desk.bench.BenchPage;
import org.rimebook.desk.model.bench.BenchModel;
import org.rimebook.desk.task.Tasks;

/** What stands under the header of a season: the strips, or the bench in their place. */
final class SeasonPages extends JPanel {

  private static final String STRIPS = "strips";
  private static final String BENCH = "bench";

  private final SeasonPane strips;
  private final Deck deck = new Deck(0, 0);
  private transient Optional<BenchPage> bench = Optional.empty();

  SeasonPages(SeasonPane strips) {
    super(new BorderLayout());
    this.strips = strips;
    deck.add(strips, STRIPS);
    add(deck);
  }

  /**
   * Lets the bench be opened; its page is made when it first is.
   *
   * @return its commands
   */
  List<DeskAction> complete(BenchModel model, Tasks tasks, Consumer<String> told) {
    model.shown().watch(shown -> show(model, tasks, told));
    strips.whenWanted(
        () -> {
          if (model.shown().get()) {
            model.close();
          }
        });
    return BenchActions.of(model);
  }

  private void show(BenchModel model, Tasks tasks, Consumer<String> told) {
    if (!model.shown().get()) {
      deck.show(STRIPS);
      strips.stack().requestFocusInWindow();
      return;
    }
    if (bench.isEmpty()) {
      BenchPage page = new BenchPage(model, tasks, told);
      strips.keep("bench", page.split(), 0.4);
      deck.add(page, BENCH);
      bench = Optional.of(page);
    }
    deck.show(BENCH);
    deck.validate();
    bench.get().focus();
  }

  /** Gives the focus back to the bench, if it is what shows. */
  void resume() {
    bench.filter(BenchPage::isShowing).ifPresent(BenchPage::focus);
  }
}
