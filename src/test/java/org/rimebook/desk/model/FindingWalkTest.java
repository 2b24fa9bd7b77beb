package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.span;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.findings.Finding;
import org.rimebook.findings.FindingKind;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

class FindingWalkTest {

  private static final Finding GAP = harmless(FindingKind.GAP, 0.25, 0.5, 0.4);
  private static final Finding NOISE = noisy(1, 1.5, 0.9);
  private static final Finding DRIFT = harmless(FindingKind.DRIFTING_WIRE, 1.75, 2.25, 0.6);

  @TempDir private Path folder;
  private KeptSeason season;
  private Workspace workspace;
  private Marking marking;
  private FindingWalk walk;

  @BeforeEach
  void open() throws IOException {
    season = KeptSeason.in(folder);
    workspace = season.workspace();
    marking = new Marking(workspace, season.keeper());
    walk = new FindingWalk(marking);
  }

  private static Entry.Header header(String note) {
    return new Entry.Header("", "", "", note);
  }

  /** Proposes a remark. */
  private static Finding harmless(FindingKind kind, double from, double to, double strength) {
    Interval span = span(from, to);
    return Finding.harmless(
        kind,
        Finding.Subject.bucket(span),
        "it looks odd",
        strength,
        new Entry.Remark(header("what was it?"), Optional.of(span)));
  }

  /** Proposes to leave a wire out. */
  private static Finding noisy(double from, double to, double strength) {
    Interval span = span(from, to);
    return Finding.doubting(
        FindingKind.NOISY_WIRE,
        Finding.Subject.wire(span, "north"),
        "it rattles",
        strength,
        new Entry.BadInterval(header("rattles"), span, Set.of("north"), BadReason.NOISE));
  }

  private void found() {
    walk.found(List.of(GAP, NOISE, DRIFT));
  }

  private Optional<Finding> reviewed() {
    return walk.left().reviewed();
  }

  private void type(MarkForm.Field field, String text) {
    marking.task().get().orElseThrow().form().type(field, text);
  }

  @Test
  void nothingIsKnownUntilTheSeasonWasLookedAt() {
    assertThat(walk.left().count()).isEqualTo("Looking for what is wrong\u2026");
    walk.next();
    assertThat(reviewed()).isEmpty();
    walk.found(List.of());
    assertThat(walk.left().count()).isEqualTo("Nothing is left to decide");
    assertThat(walk.canWalk()).isFalse();
  }

  @Test
  void theStrongestComesFirstAndTheWalkGoesRound() {
    found();
    walk.next();
    assertThat(reviewed()).contains(NOISE);
    assertThat(walk.left().position()).isEqualTo("1 of 3");
    walk.next();
    assertThat(reviewed()).contains(DRIFT);
    walk.next();
    walk.next();
    assertThat(reviewed()).contains(NOISE);
    walk.previous();
    assertThat(reviewed()).contains(GAP);
  }

  @Test
  void inTheOtherOrderTheyFollowEachOtherInTime() {
    found();
    walk.turnOrder();
    assertThat(walk.left().open()).containsExactly(GAP, NOISE, DRIFT);
    assertThat(workspace.findingOrder().get()).isEqualTo(FindingOrder.TIME);
  }

  @Test
  void aFindingIsShownWithItsProposalDrawnInAndItsWiresChosen() {
    found();
    walk.next();
    assertThat(workspace.draft().get())
        .get()
        .isInstanceOfSatisfying(
            Entry.BadInterval.class, bad -> assertThat(bad.interval()).isEqualTo(NOISE.span()));
    assertThat(workspace.selection().get().wires()).containsExactly("north");
    Interval visible = workspace.view().visible().get();
    assertThat(visible.fromMs()).isLessThan(NOISE.span().fromMs());
    assertThat(visible.toMs()).isGreaterThan(NOISE.span().toMs());
    assertThat(season.history()).isEmpty();
  }

  @Test
  void acceptingWritesTheProposalSignedAsOneStepAndGoesOn() {
    found();
    walk.next();
    walk.accept();
    assertThat(season.inForce())
        .singleElement()
        .isInstanceOfSatisfying(
            Entry.BadInterval.class,
            bad -> {
              assertThat(bad.header().by()).isEqualTo("ab");
              assertThat(bad.header().note()).isEqualTo("rattles");
            });
    assertThat(reviewed()).contains(DRIFT);
    assertThat(walk.left().open()).containsExactly(DRIFT, GAP);
    assertThat(workspace.draft().get()).get().isInstanceOf(Entry.Remark.class);
  }

  @Test
  void anAcceptedRemarkIsWrittenWithADismissalAsOneStep() throws IOException {
    found();
    walk.review(GAP);
    walk.accept();
    assertThat(season.inForce()).hasSize(2);
    assertThat(season.inForce().get(0)).isInstanceOf(Entry.Remark.class);
    assertThat(season.inForce().get(1))
        .isInstanceOfSatisfying(
            Entry.Dismissal.class, no -> assertThat(no.finding()).isEqualTo(GAP.id()));
    assertThat(Files.readAllLines(season.notebook())).hasSize(2);
    marking.undo();
    assertThat(season.inForce()).isEmpty();
  }

  @Test
  void undoBringsTheFindingBackUnderReview() {
    found();
    walk.next();
    walk.accept();
    marking.undo();
    assertThat(walk.left().open()).containsExactly(NOISE, DRIFT, GAP);
    assertThat(reviewed()).contains(NOISE);
    assertThat(workspace.draft().get()).get().isInstanceOf(Entry.BadInterval.class);
    marking.redo();
    assertThat(walk.left().open()).doesNotContain(NOISE);
    assertThat(reviewed()).contains(DRIFT);
  }

  @Test
  void aDismissalNeedsAReason() {
    found();
    walk.next();
    walk.dismiss();
    assertThat(marking.write()).isFalse();
    assertThat(season.history()).isEmpty();
    type(MarkForm.Field.NOTE, "wind, seen from the hut");
    assertThat(marking.write()).isTrue();
    assertThat(season.inForce())
        .singleElement()
        .isInstanceOfSatisfying(
            Entry.Dismissal.class,
            no -> {
              assertThat(no.finding()).isEqualTo(NOISE.id());
              assertThat(no.header().note()).isEqualTo("wind, seen from the hut");
            });
    assertThat(reviewed()).contains(DRIFT);
    assertThat(marking.task().get()).isEmpty();
  }

  @Test
  void aFormGivenUpLeavesTheFindingUnderReviewWithItsProposal() {
    found();
    walk.next();
    walk.dismiss();
    marking.drop();
    assertThat(reviewed()).contains(NOISE);
    assertThat(workspace.draft().get()).get().isInstanceOf(Entry.BadInterval.class);
  }

  @Test
  void aChangedProposalSettlesTheFinding() {
    found();
    walk.next();
    walk.change();
    type(MarkForm.Field.NOTE, "rime");
    assertThat(marking.write()).isTrue();
    assertThat(season.inForce())
        .singleElement()
        .satisfies(e -> assertThat(e.header().note()).isEqualTo("rime"));
    assertThat(walk.left().open()).doesNotContain(NOISE);
  }

  @Test
  void aChangeThatLeavesMostOfTheSpanDismissesTheFindingAsWell() {
    found();
    walk.next();
    walk.change();
    workspace.selection().set(workspace.selection().get().with(List.of(span(1, 1.1))));
    marking.write();
    assertThat(season.inForce()).hasSize(2);
    assertThat(season.inForce().get(1)).isInstanceOf(Entry.Dismissal.class);
    assertThat(walk.left().open()).doesNotContain(NOISE);
    marking.undo();
    assertThat(season.inForce()).isEmpty();
  }

  @Test
  void anotherKindOfEntryMarkedWhileAFindingIsUnderReviewDecidesIt() {
    found();
    walk.next();
    marking.start(MarkKind.SERVICE_VISIT);
    marking.write();
    assertThat(season.inForce().get(0)).isInstanceOf(Entry.ServiceVisit.class);
    assertThat(walk.left().open()).containsExactly(DRIFT, GAP);
  }

  @Test
  void draggingAnEdgeOpensTheFormAndSelectingElsewhereLeavesTheReview() {
    found();
    walk.next();
    workspace.selection().set(workspace.selection().get().with(List.of(span(1, 1.75))));
    assertThat(marking.task().get()).isPresent();
    assertThat(workspace.draft().get().orElseThrow().span()).contains(span(1, 1.75));
    marking.drop();
    assertThat(workspace.draft().get().orElseThrow().span()).contains(NOISE.span());
    workspace.selection().set(Selection.NONE.only(span(0, 0.25)));
    assertThat(reviewed()).isEmpty();
    assertThat(workspace.draft().get()).isEmpty();
    walk.next();
    assertThat(reviewed()).contains(NOISE);
  }

  @Test
  void initialsAreAskedForOnce() {
    season.keeper().writer("");
    found();
    walk.next();
    walk.accept();
    assertThat(season.history()).isEmpty();
    type(MarkForm.Field.INITIALS, "kh");
    assertThat(marking.write()).isTrue();
    walk.accept();
    assertThat(season.inForce()).hasSize(3).allMatch(e -> e.header().by().equals("kh"));
  }

  @Test
  void theLastDecisionLeavesNothing() {
    walk.found(List.of(NOISE));
    walk.next();
    walk.accept();
    assertThat(reviewed()).isEmpty();
    assertThat(workspace.draft().get()).isEmpty();
    assertThat(walk.left().count()).isEqualTo("Nothing is left to decide");
    marking.undo();
    assertThat(reviewed()).contains(NOISE);
  }

  @Test
  void whatAnotherProgramDecidedMeanwhileIsntWrittenTwice() throws IOException {
    found();
    walk.next();
    season.byHand(
        "{\"id\": \"x\", \"at\": \"2025-02-01T12:00:00-07:00\", \"by\": \"zz\","
            + " \"kind\": \"dismissal\", \"finding\": \""
            + NOISE.id()
            + "\"}");
    walk.accept();
    assertThat(season.inForce()).singleElement().isInstanceOf(Entry.Dismissal.class);
    assertThat(workspace.notice().get().weight()).isEqualTo(Notice.Weight.FAULT);
    assertThat(reviewed()).contains(DRIFT);
  }

  @Test
  void anotherSeasonStartsWithNothingKnown() {
    found();
    walk.next();
    season.keeper().close();
    assertThat(walk.left()).isEqualTo(FindingsLeft.UNKNOWN);
    assertThat(workspace.draft().get()).isEmpty();
  }
}
