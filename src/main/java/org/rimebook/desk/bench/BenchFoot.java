package org.rimebook.desk.bench;

import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.WrapRow;
import org.rimebook.desk.model.bench.BenchModel;
import org.rimebook.desk.model.bench.BenchPaper;
import org.rimebook.desk.model.bench.BenchPaper.Made;
import org.rimebook.desk.model.bench.BenchTask;
import org.rimebook.desk.model.bench.Fact;
import org.rimebook.desk.report.PdfChooser;

/** What is missing for a paper, or for storing it, and what can be done with it. */
final class BenchFoot extends JPanel {

  private final transient Component page;
  private final transient BenchModel model;
  private final JTextArea words = Words.text("", () -> Look.text(1), Look::ink);
  private final JButton store = new JButton("Store…");
  private final JButton save = new JButton("Save PDF…");
  private final JButton print = new JButton("Print…");
  private transient BenchPaper paper;

  BenchFoot(Component page, BenchModel model, Printing printing) {
    super(new MigLayout("insets 8 16 12 16, wrap 1, gapy 6, hidemode 3, fillx", "[grow, fill]"));
    this.page = page;
    this.model = model;
    this.paper = model.paper(model.task().get()).get();
    words.getAccessibleContext().setAccessibleName("What is missing");
    store.setMnemonic('O');
    save.setMnemonic('D');
    print.setMnemonic('P');
    store.setToolTipText("Puts it on record");
    save.setToolTipText("Saves the paper as a PDF");
    print.setToolTipText("Prints the paper");
    store.addActionListener(event -> paper.fact().ifPresent(this::store));
    save.addActionListener(event -> now().ifPresent(this::save));
    print.addActionListener(
        event -> now().ifPresent(made -> printing.print(made.pdf(), made.leaflet().title())));
    JPanel buttons = new JPanel(new WrapRow());
    buttons.add(store);
    buttons.add(save);
    buttons.add(print);
    buttons.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            buttons.revalidate();
          }
        });
    add(words, "wmin 0");
    add(buttons, "wmin 0, pad 0 -8 0 0");
    dress();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    dress();
  }

  private void dress() {
    setBorder(BorderFactory.createMatteBorder(1, 0, 0, 0, Look.hairline()));
  }

  private Optional<Made> now() {
    return paper.current() ? paper.made() : Optional.empty();
  }

  void show(BenchTask task, BenchPaper made) {
    paper = made;
    boolean facts = task != BenchTask.CHARGE && task != BenchTask.NEXT_VISIT;
    store.setVisible(facts);
    store.setText(
        task == BenchTask.CALIBRATION || task == BenchTask.TEMPERATURE ? "Store…" : "Store");
    store.setEnabled(made.fact().isPresent());
    save.setEnabled(made.current());
    print.setEnabled(made.current());
    String said = made.current() ? made.made().map(Made::words).orElse("") : made.words();
    if (!said.equals(words.getText())) {
      words.setText(said);
      words.setVisible(!said.isEmpty());
      revalidate();
    }
  }

  private void store(Fact fact) {
    if (fact.question().isEmpty() || sure(fact.question())) {
      model.store(fact);
    }
  }

  private boolean sure(String question) {
    JTextArea asked = Words.text(question, () -> Look.text(1), Look::ink);
    asked.setColumns(44);
    asked.setSize(asked.getPreferredSize().width, Short.MAX_VALUE);
    Object[] answers = {"Store", "Cancel"};
    return JOptionPane.showOptionDialog(
            page,
            asked,
            "Store in the station sheet",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.QUESTION_MESSAGE,
            null,
            answers,
            answers[1])
        == 0;
  }

  private void save(Made made) {
    Optional<Path> file =
        new PdfChooser(page, made.leaflet().title())
            .ask(model.suggestedFile(made), model::obstacle);
    file.ifPresent(chosen -> model.save(made, chosen));
  }
}
