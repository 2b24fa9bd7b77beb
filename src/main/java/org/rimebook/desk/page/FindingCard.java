package org.rimebook.desk.page;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Insets;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.look.Sheet;
import org.rimebook.desk.look.WrapRow;
import org.rimebook.desk.model.EntryTimes;
import org.rimebook.desk.model.FindingWalk;
import org.rimebook.desk.model.FindingWords;
import org.rimebook.desk.model.FindingsLeft;
import org.rimebook.desk.model.Workspace;
import org.rimebook.findings.Finding;

/**
 * The finding under review: what and where it is, why it looks wrong, what it proposes and what
 * that would do, and what can be decided. Says how many are left while none is under review.
 */
final class FindingCard extends JPanel {

  private static final long serialVersionUID = 1;

  private final transient FindingWalk walk;
  private final transient Workspace workspace;
  private final Words title = new Words(1.08, true, false);
  private final Words place = new Words(1, false, true);
  private final Words reason = new Words(1, false, false);
  private final Words proposal = new Words(1, true, false);
  private final Words note = new Words(1, false, true);
  private final Words effect = new Words(1, false, false);
  private final Words method = new Words(0.92, false, true);
  private final JLabel count =
      org.rimebook.desk.form.Words.label("", () -> Look.text(1), Look::muted);
  private final Words strength = new Words(1, false, true);
  private final StrengthMarks marks = new StrengthMarks();
  private final JButton order = new JButton();
  private final JToggleButton how = new JToggleButton("How it's found");
  private final JPanel decisions = row();
  private final JPanel steps = row();
  private final Sheet content =
      new Sheet(new MigLayout("insets 4 12 4 8, wrap 1, hidemode 3, gap 0", "[grow, fill, 0:0]"));

  FindingCard(FindingWalk walk) {
    super(new BorderLayout());
    this.walk = walk;
    this.workspace = walk.marking().workspace();
    setName("finding");
    setOpaque(false);
    getAccessibleContext().setAccessibleName("Finding under review");
    buttons();
    lay();
    JScrollPane scroll = Sheet.scrolling(content);
    add(scroll);
    workspace.findings().follow(left -> show(left));
    workspace.computed().watch(computed -> tellEffect());
    workspace.draft().watch(draft -> tellEffect());
    workspace.opened().watch(opened -> show(walk.left()));
    walk.marking().task().watch(task -> enableButtons());
  }

  private static JPanel row() {
    JPanel row = new JPanel(new WrapRow());
    row.setOpaque(false);
    row.putClientProperty("migLayout.dynamicAspectRatio", true);
    return row;
  }

  private void lay() {
    JPanel head = new JPanel(new MigLayout("insets 0, gap 4 0, hidemode 3", "[grow, fill, 0:0][]"));
    head.setOpaque(false);
    head.add(count);
    head.add(order);
    JPanel sure = new JPanel(new MigLayout("insets 0, gap 6 0", "[][grow, fill, 0:0]"));
    sure.setOpaque(false);
    sure.add(marks, "top");
    sure.add(strength, "wmin 0");
    content.add(head);
    content.add(title, "wmin 0, gaptop 4");
    content.add(place, "wmin 0");
    content.add(sure, "gaptop 2");
    content.add(reason, "wmin 0, gaptop 6");
    content.add(proposal, "wmin 0, gaptop 6");
    content.add(note, "wmin 0");
    content.add(effect, "wmin 0, gaptop 2");
    content.add(decisions, "wmin 0, gaptop 4, pad 0 -8 0 0");
    content.add(steps, "wmin 0, pad 0 -8 0 0");
    content.add(method, "wmin 0, gaptop 4");
  }

  private void buttons() {
    decisions.add(button("Accept", "A", "Writes what is proposed", walk::accept));
    decisions.add(button("Change", "M", "Opens the fields of what is proposed", walk::change));
    decisions.add(button("Dismiss", "X", "Asks why, and never raises it again", walk::dismiss));
    steps.add(button("Next", "N", "Goes to the next finding", walk::next));
    steps.add(button("Previous", "P", "Goes to the finding before", walk::previous));
    steps.add(how);
    how.setMargin(new Insets(2, 5, 2, 5));
    how.addActionListener(event -> show(walk.left()));
    order.putClientProperty("JButton.buttonType", "borderless");
    order.setToolTipText("Walk the findings in the other order (O)");
    order.addActionListener(event -> walk.turnOrder());
    workspace.findingOrder().follow(now -> order.setText(now.words()));
    count.getAccessibleContext().setAccessibleName("Findings left");
  }

  private static JButton button(String name, String key, String effect, Runnable deed) {
    JButton button = MarkBar.button(name, key, effect, deed);
    button.setName(name);
    button.setMargin(new Insets(2, 5, 2, 5));
    return button;
  }

  private void show(FindingsLeft left) {
    Optional<Finding> reviewed = left.reviewed();
    setVisible(workspace.opened().get().isPresent());
    count.setText(reviewed.isPresent() ? "Finding " + left.position() : left.count());
    order.setVisible(left.open().size() > 1);
    for (Component part : content.getComponents()) {
      part.setVisible(reviewed.isPresent());
    }
    content.getComponent(0).setVisible(true);
    steps.setVisible(!left.open().isEmpty());
    how.setVisible(reviewed.isPresent());
    reviewed.ifPresent(finding -> walk.marking().times().ifPresent(t -> fill(finding, t)));
    tellEffect();
    enableButtons();
    revalidate();
    repaint();
  }

  private void fill(Finding finding, EntryTimes times) {
    title.setText(FindingWords.kind(finding));
    place.setText(
        times.span(finding.span())
            + " ("
            + EntryTimes.length(finding.span().lengthMs())
            + "), "
            + FindingWords.subject(finding));
    marks.show(FindingWords.marks(finding));
    strength.setText(FindingWords.strength(finding) + evidence(finding));
    reason.setText(finding.reason());
    proposal.setText("Proposed: " + FindingWords.proposal(finding, times));
    String own = finding.proposal().header().note();
    note.setText(own);
    note.setVisible(!own.isEmpty() && !own.equals(finding.reason()));
    String source = FindingWords.method(finding);
    method.setText(source);
    method.setVisible(how.isSelected() && !source.isEmpty());
    how.setVisible(!source.isEmpty());
    how.setToolTipText(source);
  }

  private static String evidence(Finding finding) {
    return finding.doubted().isPresent()
        ? " evidence; totals are suspect"
        : " evidence; totals stand";
  }

  private void tellEffect() {
    boolean reviewing = walk.left().reviewed().isPresent();
    String words = reviewing ? walk.effect() : "";
    // A line is kept for it, so that nothing moves when it comes.
    effect.setText(words.isEmpty() ? " " : words);
  }

  private void enableButtons() {
    for (Component button : decisions.getComponents()) {
      button.setEnabled(walk.canDecide());
    }
    for (Component button : List.of(steps.getComponent(0), steps.getComponent(1))) {
      button.setEnabled(walk.canWalk());
    }
  }

  /** As high as what is in it, but not more than three fifths of the page; then it scrolls. */
  @Override
  public Dimension getPreferredSize() {
    Dimension wanted = content.getPreferredSize();
    int page = getParent() == null ? 0 : getParent().getHeight();
    int most = page == 0 ? wanted.height : Math.max(Look.px(64), page * 3 / 5);
    return new Dimension(wanted.width, Math.min(wanted.height, most));
  }

  /** Words that wrap, in type and colour of the theme in force. */
  private static final class Words extends JTextArea {
    private static final long serialVersionUID = 1;
    private final double share;
    private final boolean bold;
    private final boolean quiet;

    Words(double share, boolean bold, boolean quiet) {
      this.share = share;
      this.bold = bold;
      this.quiet = quiet;
      setEditable(false);
      setFocusable(false);
      setOpaque(false);
      setLineWrap(true);
      setWrapStyleWord(true);
      putClientProperty("migLayout.dynamicAspectRatio", true);
      updateUI();
    }

    @Override
    public void scrollRectToVisible(java.awt.Rectangle place) {
      // The card scrolls where its reader scrolls it.
    }

    @Override
    public void updateUI() {
      super.updateUI();
      setBorder(BorderFactory.createEmptyBorder());
      if (share > 0) {
        Font font = bold ? Look.bold(share) : Look.text(share);
        setFont(font);
        setForeground(quiet ? Look.muted() : Look.ink());
      }
    }
  }
}
