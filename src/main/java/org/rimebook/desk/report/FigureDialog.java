package org.rimebook.desk.report;

import java.awt.BorderLayout;
import java.awt.Window;
import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.model.ExportModel;
import org.rimebook.desk.model.FigureModel;
import org.rimebook.desk.table.DeskDialog;
import org.rimebook.desk.table.Prose;
import org.rimebook.export.figure.FigureFile;
import org.rimebook.export.figure.FigureSpec;
import org.rimebook.export.figure.FigureStrip;

/** Asks where the figure of the view in sight goes and how large it is. */
final class FigureDialog extends DeskDialog {

  private final transient FigureModel model;
  private final JTextField file = new JTextField(36);
  private final JSpinner width = millimetres(170);
  private final JSpinner height = millimetres(150);
  private final JSpinner dpi = new JSpinner(new SpinnerNumberModel(FigureFile.DPI, 36, 1200, 50));
  private final JProgressBar bar = new JProgressBar();
  private final Prose words = Prose.quiet("");
  private final JButton save = new JButton("Save");
  private boolean begun;

  FigureDialog(Window owner, FigureModel model) {
    super(owner, "Export figure", new JPanel(new BorderLayout()));
    this.model = model;
    file.setText(model.suggestedFile().toString());
    bar.getAccessibleContext().setAccessibleName("How far the drawing is");
    bar.setIndeterminate(true);
    words.setText(
        "The strips in sight over the time in sight: "
            + model.strips().stream().map(FigureStrip::code).collect(Collectors.joining(", "))
            + ". The ending says as what: .svg, .pdf or .png.");
    add(fields(), BorderLayout.CENTER);
    add(foot(), BorderLayout.SOUTH);
    getRootPane().setDefaultButton(save);
    until(model.state().follow(this::show));
    pack();
    setLocationRelativeTo(owner);
  }

  private static JSpinner millimetres(double first) {
    return new JSpinner(new SpinnerNumberModel(first, FigureSpec.LEAST_MM, FigureSpec.MOST_MM, 5));
  }

  private JPanel fields() {
    JPanel fields = new JPanel(new MigLayout("insets 16, gap 8 8, wrap 3", "[80!][grow, fill][]"));
    JButton choose = new JButton("Choose…");
    choose.setMnemonic('C');
    choose.addActionListener(event -> choose());
    fields.add(label("File", 'F', file));
    fields.add(file, "growx, wmin 0");
    fields.add(choose);
    row(fields, label("Width", 'W', width), width, "mm");
    row(fields, label("Height", 'H', height), height, "mm");
    row(fields, label("Dots an inch", 'D', dpi), dpi, "for .png");
    fields.add(words, "skip 1, spanx, growx, wmin 0, hmin 36");
    fields.add(bar, "skip 1, spanx, growx");
    return fields;
  }

  private static void row(JPanel fields, JLabel label, JComponent field, String unit) {
    fields.add(label);
    fields.add(field, "split 2, growx 0, w 96!");
    fields.add(new JLabel(unit), "wrap");
  }

  private static JLabel label(String words, char mnemonic, JComponent field) {
    JLabel label = new JLabel(words);
    label.setDisplayedMnemonic(mnemonic);
    label.setLabelFor(field);
    return label;
  }

  private JPanel foot() {
    JButton cancel = new JButton("Cancel");
    cancel.addActionListener(
        event -> {
          model.cancel();
          dispose();
        });
    save.addActionListener(event -> start());
    JPanel foot = new JPanel(new MigLayout("insets 0 16 16 16, gap 8", "push[][]"));
    foot.add(cancel);
    foot.add(save);
    return foot;
  }

  private void choose() {
    JFileChooser chooser = new JFileChooser();
    chooser.setDialogTitle("File for the figure");
    chooser.setSelectedFile(new File(file.getText()));
    if (chooser.showDialog(this, "Choose") == JFileChooser.APPROVE_OPTION) {
      file.setText(chooser.getSelectedFile().toString());
    }
  }

  private void start() {
    Optional<FigureModel.Wish> wish = wish();
    Optional<String> obstacle =
        wish.map(model::obstacle).orElse(Optional.of("That isn't the name of a file: choose one"));
    if (obstacle.isPresent()) {
      words.setText(obstacle.get());
      return;
    }
    begun = true;
    model.start(wish.orElseThrow());
  }

  private Optional<FigureModel.Wish> wish() {
    try {
      return file.getText().isBlank()
          ? Optional.empty()
          : Optional.of(
              new FigureModel.Wish(
                  Path.of(file.getText().strip()),
                  ((Number) width.getValue()).doubleValue(),
                  ((Number) height.getValue()).doubleValue(),
                  ((Number) dpi.getValue()).intValue()));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private void show(ExportModel.State state) {
    bar.setVisible(state.busy());
    save.setEnabled(!state.busy());
    if (state.busy()) {
      words.setText(state.words());
    } else if (begun) {
      dispose();
    }
  }
}
