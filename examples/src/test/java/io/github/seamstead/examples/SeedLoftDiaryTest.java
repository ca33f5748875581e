package io.github.seamstead.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.StockCloth;
import io.github.seamstead.api.chapter.drying.DryingPart;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.floor.LayerRest;
import io.github.seamstead.api.chapter.pieces.PieceNames;
import io.github.seamstead.api.chapter.progress.ProgressPart;
import io.github.seamstead.api.chapter.rigging.FixingsPart;
import io.github.seamstead.api.diary.CutPiece;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.DiaryReader;
import io.github.seamstead.api.job.DiaryWriter;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.fixings.SeamsLeft;
import io.github.seamstead.assembly.fixings.ShoppingItem;
import io.github.seamstead.geometry.layout.ContinuedLayout;
import io.github.seamstead.geometry.layout.LaidPiece;
import io.github.seamstead.geometry.layout.LayoutCheck;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.StockUse;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demo diary, planned on after each of its days. */
class SeedLoftDiaryTest {

  private static final Job JOB = JobReader.read(Path.of("jobs/seed-loft.json"));
  private static final Diary DIARY = DiaryReader.read(Path.of("jobs/diaries/seed-loft-diary.json"));
  private static final PlanOptions OPTIONS =
      PlanOptions.defaults()
          .only(
              Chapter.SITE,
              Chapter.PATTERN,
              Chapter.LAYOUT,
              Chapter.JOINING,
              Chapter.FIXINGS,
              Chapter.FLOOR,
              Chapter.DRYING);
  private static final List<JobPlan> EVENINGS = new ArrayList<>();

  @BeforeAll
  static void planEachEvening() {
    List<LocalDate> days = DIARY.lines().stream().map(l -> l.date()).distinct().toList();
    assertThat(days).hasSize(10);
    for (LocalDate day : days) {
      Diary soFar = DIARY.until(day.plusDays(1));
      EVENINGS.add(JobPlanner.plan(JOB, soFar, OPTIONS));
    }
  }

  private static Map<String, LaidPiece> laid(JobPlan plan) {
    PieceNames names = PieceNames.of(plan.cover().orElseThrow().cuts());
    Map<String, LaidPiece> laid = new HashMap<>();
    for (StockUse use : plan.layout().orElseThrow().result().used()) {
      for (Placement p : use.placements()) {
        laid.put(names.name(p.pieceId(), p.copy()), new LaidPiece(use.stockId(), use.copy(), p));
      }
    }
    return laid;
  }

  @Test
  void nothingThatIsDoneChanges() {
    for (int i = 1; i < EVENINGS.size(); i++) {
      JobPlan before = EVENINGS.get(i - 1);
      JobPlan after = EVENINGS.get(i);
      PieceNames then = PieceNames.of(before.cover().orElseThrow().cuts());
      PieceNames now = PieceNames.of(after.cover().orElseThrow().cuts());
      Map<String, LaidPiece> places = laid(after);
      for (CutPiece piece : before.done().cut().values()) {
        if (!after.done().cut().containsKey(piece.name())) {
          assertThat(after.done().spoiled()).containsKey(piece.name());
          continue;
        }
        assertThat(now.find(piece.name()).orElseThrow().piece())
            .isEqualTo(then.find(piece.name()).orElseThrow().piece());
        assertThat(places.get(piece.name()).placement().shift())
            .isEqualTo(laid(before).get(piece.name()).placement().shift());
      }
      before
          .joining()
          .flatMap(j -> j.log())
          .ifPresent(
              log ->
                  assertThat(after.joining().orElseThrow().log().orElseThrow().kept())
                      .containsAll(log.kept()));
    }
  }

  @Test
  void whatIsDoneAndWhatIsLeftAreTheWhole() {
    JobPlan whole = JobPlanner.plan(JOB, OPTIONS);
    int pieces = laid(whole).size();
    for (JobPlan evening : EVENINGS) {
      ProgressPart progress = evening.parts().one(ProgressPart.class).orElseThrow();
      assertThat(progress.pieces()).hasSize(pieces);
      assertThat(laid(evening)).hasSize(pieces);
      assertThat(progress.open().size() + evening.done().cut().size()).isEqualTo(pieces);
      assertThat(progress.seamsMade().size() + progress.seamsOpen().size()).isEqualTo(12);
      evening
          .joining()
          .orElseThrow()
          .order()
          .ifPresent(order -> assertThat(order.steps()).hasSize(progress.seamsOpen().size()));
      FloorPart floor = evening.floor().orElseThrow();
      for (LayerRest rest : floor.rest()) {
        assertThat(rest.laidShare()).isBetween(0.0, 1.0);
        assertThat(rest.isDone()).isEqualTo(rest.laidShare() > 1 - 1e-9);
      }
    }
  }

  @Test
  void fixingsThatAreInAndThoseToBuyAreTheWhole() {
    FixingsPart whole = JobPlanner.plan(JOB, OPTIONS).fixings().orElseThrow();
    double glue = whole.adhesive().orElseThrow().volume();
    int[] seams = {0, 0, 0, 0, 2, 4, 4, 4, 4, 5};
    for (int i = 0; i < EVENINGS.size(); i++) {
      JobPlan evening = EVENINGS.get(i);
      FixingsPart part = evening.fixings().orElseThrow();
      assertThat(part.fixings().total()).isEqualTo(whole.fixings().total());
      assertThat(part.left().made() + part.left().open()).isEqualTo(whole.fixings().total());
      SeamsLeft left = evening.joining().orElseThrow().left();
      assertThat(left.made().stream().filter(r -> r.kind() == SeamKind.RING)).hasSize(seams[i]);
      assertThat(left.madeLength() + left.leftLength())
          .isCloseTo(whole.seams().length(), within(1e-9));
      double share = left.leftLength() / whole.seams().length();
      assertThat(part.left().adhesive().orElseThrow().volume())
          .isCloseTo(share * glue, within(1e-9));
      ShoppingItem staples = part.shopping().items().get(0);
      assertThat(staples.need()).isEqualTo(part.left().open());
      assertThat(staples.packs()).isLessThanOrEqualTo(whole.shopping().items().get(0).packs());
    }
    assertThat(EVENINGS.get(9).fixings().orElseThrow().shopping().items().get(0).packs())
        .isLessThan(whole.shopping().items().get(0).packs());
  }

  @Test
  void theLayoutHoldsAndIsNotWorseThanTheRestPlannedFromNothing() {
    for (JobPlan evening : EVENINGS) {
      CoverPart cover = evening.cover().orElseThrow();
      LayoutRequest request =
          StockCloth.request(cover.cuts(), evening.job().document().stock().orElseThrow());
      LayoutResult result = evening.layout().orElseThrow().result();
      assertThat(LayoutCheck.faults(request, result)).isEmpty();
      assertThat(result.isComplete()).isTrue();
      PieceNames names = PieceNames.of(cover.cuts());
      List<LaidPiece> cut =
          evening.done().cut().values().stream()
              .map(
                  c -> {
                    PieceNames.Named named = names.find(c.name()).orElseThrow();
                    return c.place().orElseThrow().laid(named.shape().id(), named.copy());
                  })
              .toList();
      LayoutResult anew =
          ContinuedLayout.plan(
              request,
              cut,
              List.of(),
              evening.done().lost(),
              Work.of(Budget.ofWork(2000), OPTIONS.seed()));
      assertThat(result.used().size()).isLessThanOrEqualTo(anew.used().size());
      assertThat(result.objectiveValue() * (1 - result.gap()))
          .isLessThanOrEqualTo(result.lowerBound() + 1e-9);
    }
  }

  @Test
  void theSlipTheWrongSeamTheTileAndTheRainAreTold() {
    JobPlan spoiled = EVENINGS.get(2);
    assertThat(spoiled.changes().orElseThrow().changes())
        .anyMatch(c -> c.name().equals("3-1") && c.after().equals("spoiled, to cut again"))
        .anyMatch(c -> c.name().equals("3-1") && c.after().startsWith("on "));
    JobPlan wrong = EVENINGS.get(4);
    assertThat(wrong.unmet()).anyMatch(u -> u.what().startsWith("1R was joined to 3L"));
    assertThat(EVENINGS.get(5).unmet()).noneMatch(u -> u.what().contains("was joined to"));
    ProgressPart tiles = EVENINGS.get(3).parts().one(ProgressPart.class).orElseThrow();
    assertThat(tiles.tiles()).anyMatch(t -> t.name().equals("t2") && t.crack() == 0.0015);
    // Four weighings of the sound tile narrow the days of the coat.
    double first = width(EVENINGS.get(0));
    double later = width(EVENINGS.get(4));
    assertThat(later).isLessThan(0.5 * first);
    assertThat(EVENINGS.get(9).done().weather()).hasSize(12);
  }

  /** From the soonest to the latest day on which the coat is firm. */
  private static double width(JobPlan plan) {
    DryingPart coat =
        plan.drying().stream()
            .filter(d -> d.layer().name().equals("levelling coat"))
            .findFirst()
            .orElseThrow();
    var firm = coat.forecast().milestones().get(0);
    return firm.latest().orElseThrow() - firm.soonest().orElseThrow();
  }

  @Test
  void theDiaryIsWrittenAsItIsRead() {
    String text = DiaryWriter.text(DIARY);
    assertThat(DiaryReader.parse(text.getBytes(StandardCharsets.UTF_8)).lines())
        .isEqualTo(DIARY.lines());
    assertThat(Stream.of("spoiled", "undone", "tileCracked", "days")).allMatch(text::contains);
  }
}
