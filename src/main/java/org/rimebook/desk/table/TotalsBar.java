package org.rimebook.desk.table;

import java.awt.Component;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.form.Words;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.WrapRow;
import org.rimebook.desk.model.TotalsChoice;
import org.rimebook.desk.model.TotalsList;
import org.rimebook.desk.model.TotalsScale;
import org.rimebook.desk.model.Workspace;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Resolution;

/** What stands above the table: scale, filters, resolution, and whether totals are settled. */
final class TotalsBar extends JPanel {

  private final TotalsList list;
  private final JLabel standing = Words.label(" ", () -> Look.text(1), Look::accent);

  TotalsBar(Workspace workspace, TotalsList list) {
    super(new WrapRow());
    this.list = list;
    add(scales());
    add(withCatch());
    add(qualities());
    add(resolutions(workspace));
    add(standing);
    standing.getAccessibleContext().setAccessibleName("How the totals stand");
    list.shown().follow(rows -> stand());
  }

  private void stand() {
    String words = list.standing();
    standing.setText(words.isEmpty() ? " " : words);
  }

  private JPanel scales() {
    JPanel scales = new JPanel(new MigLayout("insets 0, gap 0, novisualpadding"));
    ButtonGroup group = new ButtonGroup();
    for (TotalsScale scale : TotalsScale.values()) {
      JToggleButton button = new JToggleButton(scale.words());
      button.putClientProperty("JButton.buttonType", "toolBarButton");
      button.addActionListener(event -> change(list.choice().get().at(scale)));
      list.choice().follow(chosen -> button.setSelected(chosen.scale() == scale));
      group.add(button);
      scales.add(button);
    }
    return scales;
  }

  private void change(TotalsChoice choice) {
    list.choice().set(choice);
  }

  private JCheckBox withCatch() {
    JCheckBox box = new JCheckBox("With catch only");
    box.addActionListener(event -> change(list.choice().get().withCatch(box.isSelected())));
    list.choice().follow(chosen -> box.setSelected(chosen.withCatch()));
    return box;
  }

  private JComboBox<Optional<Quality>> qualities() {
    List<Optional<Quality>> items = new ArrayList<>();
    items.add(Optional.empty());
    Arrays.stream(Quality.values()).map(Optional::of).forEach(items::add);
    JComboBox<Optional<Quality>> box = new JComboBox<>();
    items.forEach(box::addItem);
    box.setRenderer(new QualityItem());
    box.getAccessibleContext().setAccessibleName("Quality shown");
    list.choice().follow(chosen -> box.setSelectedItem(chosen.quality()));
    box.addActionListener(
        event -> change(list.choice().get().of(items.get(box.getSelectedIndex()))));
    return box;
  }

  private static JComboBox<String> resolutions(Workspace workspace) {
    JComboBox<String> box = new JComboBox<>();
    for (Resolution resolution : Resolution.values()) {
      box.addItem("to " + resolution.mm() + " mm");
    }
    box.getAccessibleContext().setAccessibleName("Resolution of the totals");
    workspace.resolution().follow(shown -> box.setSelectedIndex(shown.ordinal()));
    box.addActionListener(
        event -> workspace.resolution().set(Resolution.values()[box.getSelectedIndex()]));
    return box;
  }

  private static final class QualityItem extends DefaultListCellRenderer {
    @Override
    public Component getListCellRendererComponent(
        JList<?> shown, Object value, int index, boolean selected, boolean focused) {
      Object words =
          value instanceof Optional<?> quality && quality.isPresent()
              ? ((Quality) quality.get()).code()
              : "All qualities";
      return super.getListCellRendererComponent(shown, words, index, selected, focused);
    }
  }
}
