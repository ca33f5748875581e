package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.cover.Misfit;
import io.github.seamstead.api.chapter.floor.LayerRest;
import io.github.seamstead.api.chapter.progress.ProgressPart;
import io.github.seamstead.api.chapter.rigging.FixingsLeft;
import io.github.seamstead.api.chapter.rigging.FixingsPart;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.diary.PlanChanges.Change;
import io.github.seamstead.api.diary.PlanChanges.Kind;
import io.github.seamstead.api.diary.internal.PlanThen;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.api.testing.SmallJob;
import io.github.seamstead.assembly.fixings.SeamsLeft;
import io.github.seamstead.assembly.fixings.ShoppingItem;
import io.github.seamstead.materials.floor.OrderLine;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DiaryPlanTest {

  private static final PlanOptions OPTIONS = PlanOptions.defaults();
  private static final String CUT =
      "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\", \"3\", \"cap 1\"]}}";

  /** The plan before anything was done, which most diaries are held against. */
  private static final JobPlan FIRST = JobPlanner.plan(SmallJob.job(), OPTIONS);

  private static JobPlan plan(String lines) {
    return JobPlanner.plan(SmallJob.job(), SmallJob.diary(lines), OPTIONS);
  }

  private static Map<String, PlanThen.Piece> pieces(JobPlan plan) {
    return new PlannedBefore(plan).pieces();
  }

  private static double ordered(JobPlan plan, String material) {
    return plan.floor().orElseThrow().orders().orElseThrow().lines().stream()
        .filter(l -> l.material().equals(material))
        .mapToDouble(OrderLine::ordered)
        .sum();
  }

  @Test
  void whatIsCutStaysAndOneSpoiledIsLaidAgain() {
    JobPlan then =
        plan(
            CUT
                + ", {\"date\": \"2031-05-06\", \"spoiled\": {\"pieces\": [\"2\"], \"why\":"
                + " \"x\"}}");
    Map<String, PlanThen.Piece> before = pieces(FIRST);
    Map<String, PlanThen.Piece> now = pieces(then);
    for (String name : List.of("1", "3", "cap 1")) {
      assertThat(now.get(name)).isEqualTo(before.get(name));
    }
    assertThat(then.done().cut()).containsOnlyKeys("1", "3", "cap 1");
    assertThat(now.get("2").place()).isPresent().isNotEqualTo(before.get("2").place());
    assertThat(now.get("2").drawn()).isEqualTo(before.get("2").drawn());
    ProgressPart progress = then.parts().one(ProgressPart.class).orElseThrow();
    assertThat(progress.open()).hasSize(progress.pieces().size() - 3);
    assertThat(then.changes().orElseThrow().of(Kind.PIECE)).extracting(Change::name).contains("2");
    assertThat(then.changes().orElseThrow().reasons().get(0).text())
        .isEqualTo("2031-05-06: spoiled 2 (x)");
    assertThat(ResultsJson.text(then)).contains("\"progress\"").contains("to cut again");
  }

  @Test
  void aPieceCutAgainLiesWhereThePlanOfTheEveningBeforePutsIt() {
    String spoiled = CUT + ", {\"date\": \"2031-05-06\", \"spoiled\": {\"pieces\": [\"2\"]}}";
    Map<String, PlanThen.Piece> evening = pieces(plan(spoiled));
    JobPlan then =
        plan(
            spoiled
                + ", {\"date\": \"2031-05-07\", \"cut\": {\"pieces\": [\"2\"]}},"
                + " {\"date\": \"2031-05-09\", \"note\": \"rest\"}");
    assertThat(pieces(then).get("2")).isEqualTo(evening.get("2"));
    assertThat(then.changes().orElseThrow().of(Kind.PIECE)).isEmpty();
  }

  @Test
  void clothTornAndBoughtMovesOnlyWhatLayThere() {
    Map<String, PlanThen.Piece> before = pieces(FIRST);
    JobPlan then =
        plan(
            CUT
                + ", {\"date\": \"2031-05-06\", \"clothBought\": {\"sheet\": {\"id\": \"new\","
                + " \"length\": \"4 m\", \"width\": \"2.6 m\"}}},"
                + " {\"date\": \"2031-05-06\", \"clothTorn\": {\"stock\": \"tarp\", \"copy\": 2,"
                + " \"x\": \"0 m\", \"y\": \"0 m\", \"width\": \"4 m\", \"height\": \"2.6 m\"}}");
    assertThat(then.unmet()).isEmpty();
    pieces(then)
        .forEach(
            (name, piece) -> {
              assertThat(piece.place()).as(name).isPresent();
              boolean torn =
                  piece.place().get().stock().equals("tarp") && piece.place().get().copy() == 2;
              if (then.done().cut().containsKey(name)) {
                assertThat(piece).isEqualTo(before.get(name));
              } else {
                assertThat(torn).as(name).isFalse();
              }
            });
  }

  @Test
  void aReadingTakenAgainSaysWhichCutPiecesNoLongerFit() {
    JobPlan then =
        plan(
            CUT
                + ", {\"date\": \"2031-05-06\", \"retaken\": {\"measures\": {\"height\": \"2.03"
                + " m\"}}}");
    List<Misfit> misfits = then.cover().orElseThrow().misfits();
    assertThat(misfits).extracting(Misfit::name).contains("panel 1", "panel 2", "panel 3");
    // The hip grows from sqrt(1.2² + 2²) to sqrt(1.2² + 2.03²); the opening cuts its share off.
    double hip = Math.hypot(1.2, 2.03) - Math.hypot(1.2, 2);
    double left = hip * (1.2 - 0.2 / Math.cos(Math.PI / 6)) / 1.2;
    Misfit panel = misfits.stream().filter(m -> m.name().equals("panel 1")).findFirst().get();
    assertThat(panel.difference().edges().get(0)).isCloseTo(0, within(1e-3));
    assertThat(panel.difference().edges().get(1)).isBetween(left * 0.9, hip);
    assertThat(panel.text()).contains("no longer fits").contains("the right edge").contains("mm");
    assertThat(then.unmet()).anyMatch(u -> u.what().startsWith("panel 1 is cut"));
    // What is not cut is drawn by the new reading.
    JobPlan drawn = JobPlanner.plan(SmallJob.ofHeight("2.03 m"), OPTIONS);
    assertThat(pieces(then).get("4").drawn().cut().perimeter())
        .isCloseTo(pieces(drawn).get("4").drawn().cut().perimeter(), within(1e-9));
    assertThat(pieces(then).get("1")).isEqualTo(pieces(FIRST).get("1"));
  }

  @Test
  void aChangedDocumentKeepsWhatWasCutByTheEarlierOne() {
    JobPlan then =
        JobPlanner.plan(SmallJob.job(), SmallJob.ofHeight("2.03 m"), SmallJob.diary(CUT), OPTIONS);
    for (String name : List.of("1", "2", "3", "cap 1")) {
      assertThat(pieces(then).get(name)).isEqualTo(pieces(FIRST).get(name));
    }
    assertThat(then.cover().orElseThrow().misfits()).isNotEmpty();
    PlanChanges changes = then.changes().orElseThrow();
    assertThat(changes.reasons().get(0).text())
        .isEqualTo("$.frame.measures.height: 2 m, now 2.03 m");
    assertThat(changes.of(Kind.PIECE))
        .extracting(Change::name)
        .contains("4", "5", "6")
        .doesNotContain("1", "2", "3");
  }

  @Test
  void seamsGoOnFromTheGroupsThatExist() {
    String cut =
        "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\":"
            + " [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\"]}}";
    JobPlan then =
        plan(
            cut
                + ", {\"date\": \"2031-05-06\", \"joined\": {\"edges\": [\"1R\", \"2L\"]}},"
                + " {\"date\": \"2031-05-06\", \"joined\": {\"edges\": [\"3R\", \"5L\"]}}");
    var joining = then.joining().orElseThrow();
    assertThat(joining.log().orElseThrow().undo()).hasSize(1);
    assertThat(joining.order().orElseThrow().steps()).hasSize(5);
    assertThat(then.unmet()).anyMatch(u -> u.what().contains("undo this seam"));
    assertThat(then.schedule().orElseThrow().simulation().p50())
        .isLessThan(FIRST.schedule().orElseThrow().simulation().p50());
  }

  private static final String ALL_CUT =
      "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\":"
          + " [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\"]}}";

  private static String joined(String first, String second) {
    return ", {\"date\": \"2031-05-06\", \"joined\": {\"edges\": [\""
        + first
        + "\", \""
        + second
        + "\"]}}";
  }

  @ParameterizedTest
  @ValueSource(strings = {"staples", "screws", "stitches"})
  void whatIsJoinedNeedsNoMoreFixings(String method) {
    Job job = SmallJob.heldBy(method);
    FixingsPart whole = JobPlanner.plan(job, OPTIONS).fixings().orElseThrow();
    String kind = whole.fixings().pattern().kind().label();
    StringBuilder lines = new StringBuilder(ALL_CUT);
    int before = whole.fixings().total();
    for (int i = 1; i <= 6; i++) {
      lines.append(joined(i + "R", (i % 6 + 1) + "L"));
      JobPlan then = JobPlanner.plan(job, SmallJob.diary(lines.toString()), OPTIONS);
      FixingsPart part = then.fixings().orElseThrow();
      FixingsLeft left = part.left();
      assertThat(left.made() + left.open()).isEqualTo(whole.fixings().total());
      assertThat(left.open()).isLessThan(before);
      assertThat(need(part, kind)).isEqualTo(left.open());
      before = left.open();
      SeamsLeft seams = then.joining().orElseThrow().left();
      assertThat(seams.madeLength() + seams.leftLength())
          .isCloseTo(whole.seams().length(), within(1e-9));
      double share = seams.leftLength() / whole.seams().length();
      assertThat(left.adhesive().orElseThrow().volume())
          .isCloseTo(share * whole.adhesive().orElseThrow().volume(), within(1e-12));
      whole
          .through()
          .thread()
          .ifPresent(
              thread -> {
                assertThat(left.thread().orElseThrow()).isCloseTo(share * thread, within(1e-9));
                assertThat(need(part, "thread")).isEqualTo(left.thread().orElseThrow());
              });
      assertThat(need(part, "pegs")).isEqualTo(need(whole, "pegs"));
    }
    JobPlan last = JobPlanner.plan(job, SmallJob.diary(lines.toString()), OPTIONS);
    int made = last.fixings().orElseThrow().left().made();
    assertThat(last.changes().orElseThrow().of(Kind.ORDER))
        .anyMatch(c -> c.name().startsWith(kind));
    assertThat(ResultsJson.text(last)).contains("\"made\": " + made);
    assertThat(Book.of(last).html())
        .contains(made + " of them are in: those of the seams that the diary says are joined");
  }

  @Test
  void aWrongSeamsFixingsAreLostAndTheRightOneTakesNewOnes() {
    String lines = ALL_CUT + joined("1R", "3L");
    JobPlan then = JobPlanner.plan(SmallJob.heldBy("staples"), SmallJob.diary(lines), OPTIONS);
    assertThat(then.fixings().orElseThrow().left().made()).isZero();
    assertThat(then.joining().orElseThrow().left().made()).isEmpty();
  }

  private static double need(FixingsPart part, String name) {
    return part.shopping().items().stream()
        .filter(item -> item.name().equals(name))
        .mapToDouble(ShoppingItem::need)
        .sum();
  }

  @Test
  void aRingThatIsClosedHasNoOrderLeft() {
    StringBuilder lines =
        new StringBuilder(
            "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\":"
                + " [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\"]}}");
    for (int i = 1; i <= 6; i++) {
      lines.append(
          ", {\"date\": \"2031-05-06\", \"joined\": {\"edges\": [\""
              + i
              + "R\", \""
              + (i % 6 + 1)
              + "L\"]}}");
    }
    JobPlan then = plan(lines.toString());
    assertThat(then.unmet()).isEmpty();
    assertThat(then.joining().orElseThrow().order()).isEmpty();
    assertThat(then.schedule()).isEmpty();
    io.github.seamstead.api.book.Book book = io.github.seamstead.api.book.Book.of(then);
    assertThat(book.html()).contains("Every joint of the ring is made");
  }

  @Test
  void laidAndLeftTogetherAreTheWholeFloor() {
    JobPlan then =
        plan(
            "{\"date\": \"2031-05-05\", \"delivered\": {\"material\": \"sand\", \"mass\": \"900"
                + " kg\"}}, {\"date\": \"2031-05-06\", \"laid\": {\"layer\": \"levelling\"}},"
                + " {\"date\": \"2031-05-07\", \"laid\": {\"layer\": \"coat\", \"sector\": 1}},"
                + " {\"date\": \"2031-05-07\", \"laid\": {\"layer\": \"coat\", \"sector\": 2,"
                + " \"loads\": 0.2}}");
    List<LayerRest> rest = then.floor().orElseThrow().rest();
    assertThat(rest.get(0).isDone()).isTrue();
    assertThat(rest.get(0).laidOn()).contains(java.time.LocalDate.of(2031, 5, 6));
    LayerRest coat = rest.get(1);
    assertThat(coat.sectorsLeft()).hasSize(5).doesNotContain(1);
    var batch = FIRST.floor().orElseThrow().batches().get(0);
    double all = batch.quantity().dryMass().likely() / batch.batch().dryMass();
    double left = all * (1 - coat.laidShare());
    assertThat(coat.loadsLeft().likely()).isEqualTo(Math.ceil(left));
    assertThat(coat.laidShare()).isBetween(1 / 6.0, 2 / 6.0);
    double need =
        FIRST.floor().orElseThrow().orders().orElseThrow().lines().stream()
            .filter(l -> l.material().equals("sand"))
            .mapToDouble(l -> l.rawNeed().likely())
            .sum();
    // What is on site and what is ordered are enough for the rest, and not for a step more.
    assertThat(ordered(then, "sand"))
        .isLessThan(ordered(FIRST, "sand"))
        .isGreaterThan(need - 900 - 100);
    assertThat(then.floor().orElseThrow().work().orElseThrow().personHours().likely())
        .isLessThan(FIRST.floor().orElseThrow().work().orElseThrow().personHours().likely());
  }

  @Test
  void testsOfTheDiaryReplaceThoseOfTheJob() {
    JobPlan then =
        plan(
            "{\"date\": \"2031-05-05\", \"soilTested\": {\"soil\": \"pit\", \"ribbon\": \"20"
                + " mm\"}}, {\"date\": \"2031-05-05\", \"trialMade\": {\"mix\": \"coat\","
                + " \"sample\": {\"sandParts\": 3, \"crack\": \"0.5 mm\", \"mould\": \"500 mm\","
                + " \"dusting\": \"heavy\", \"scratch\": \"marked\"}}}");
    assertThat(then.soils().get(0).sample().ribbon()).contains(0.02);
    assertThat(then.job().document().trialMixes().get(0).samples()).hasSize(2);
    assertThat(then.soils().get(0).finding().texture().clay().value())
        .isLessThan(FIRST.soils().get(0).finding().texture().clay().value());
  }

  @Test
  void twoPlansOfOneJobDoNotDiffer() {
    JobPlan b = JobPlanner.plan(SmallJob.job(), OPTIONS);
    PlanChanges changes = JobPlanner.changes(FIRST, b);
    assertThat(changes.changes()).isEmpty();
    assertThat(changes.reasons()).isEmpty();
    JobPlan c = JobPlanner.plan(SmallJob.ofHeight("2.0004 m"), OPTIONS);
    PlanChanges small = JobPlanner.changes(FIRST, c);
    assertThat(small.reasons()).hasSize(1);
    assertThat(small.of(Kind.PIECE)).isEmpty();
  }
}
