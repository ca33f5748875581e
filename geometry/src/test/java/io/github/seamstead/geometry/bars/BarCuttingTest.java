package io.github.seamstead.geometry.bars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.bars.BarPlan.CutBar;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.members.FrameMembers;
import io.github.seamstead.geometry.members.MemberSection;
import io.github.seamstead.geometry.members.MemberSpec;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class BarCuttingTest {

  private static final Source CHVATAL =
      Source.fromMemory("V. Chvátal", "Linear Programming", "1983", "ch. 13");
  private static final Source ENCYCLOPAEDIA =
      Source.fromMemory(
          "Encyclopaedia article", "Cutting stock problem", "", "master roll 5600 mm");

  /** Numbers alternate length and count, lengths in centimetres. */
  private static List<BarPiece> pieces(int... lengthsAndCounts) {
    List<BarPiece> pieces = new ArrayList<>();
    for (int i = 0; i < lengthsAndCounts.length; i += 2) {
      pieces.add(
          new BarPiece(
              "p" + lengthsAndCounts[i], lengthsAndCounts[i] / 100.0, lengthsAndCounts[i + 1]));
    }
    return pieces;
  }

  static void assertSound(BarPlan plan, List<BarPiece> pieces) {
    Map<String, Integer> cut =
        plan.bars().stream()
            .flatMap(
                bar ->
                    bar.pieces().stream()
                        .map(p -> new BarPiece(p.name(), p.length(), p.count() * bar.times())))
            .collect(Collectors.groupingBy(BarPiece::name, Collectors.summingInt(BarPiece::count)));
    plan.missing().forEach(p -> cut.merge(p.name(), p.count(), Integer::sum));
    assertThat(cut)
        .isEqualTo(
            pieces.stream()
                .collect(
                    Collectors.groupingBy(BarPiece::name, Collectors.summingInt(BarPiece::count))));
    for (CutBar bar : plan.bars()) {
      int count = bar.pieces().stream().mapToInt(BarPiece::count).sum();
      double taken =
          bar.pieces().stream().mapToDouble(p -> p.length() * p.count()).sum()
              + (count - 1) * plan.kerf();
      assertThat(taken).isLessThanOrEqualTo(bar.stock().length() + 1e-9);
      assertThat(bar.offcut())
          .isCloseTo(Math.max(0, bar.stock().length() - taken - plan.kerf()), within(1e-9));
    }
    assertThat(plan.lowerBound()).isLessThanOrEqualTo(plan.usedLength() + 1e-9);
  }

  @Test
  void chvatalsRaws() {
    List<BarPiece> pieces = pieces(14, 211, 31, 395, 36, 610, 45, 97);
    BarPlan plan = BarCutting.plan(pieces, List.of(BarStock.unlimited("raw", 1)), 0);
    OutsideCheck.of("geometry.bars", "raws of 100 for 14, 31, 36, 45: number of raws", CHVATAL)
        .expect(453)
        .within(0)
        .got(plan.barCount());
    assertThat(plan.proven()).isTrue();
    assertSound(plan, pieces);
  }

  @Test
  void thirteenWidthsFromOneRoll() {
    List<BarPiece> pieces =
        pieces(
            1380, 22, 1520, 25, 1560, 12, 1710, 14, 1820, 18, 1880, 18, 1930, 20, 2000, 10, 2050,
            12, 2100, 14, 2140, 16, 2150, 18, 2200, 20);
    BarPlan plan = BarCutting.plan(pieces, List.of(BarStock.unlimited("roll", 56)), 0);
    OutsideCheck.of("geometry.bars", "rolls of 5600 for 13 widths: number of rolls", ENCYCLOPAEDIA)
        .expect(73)
        .within(0)
        .got(plan.barCount());
    OutsideCheck.of("geometry.bars", "rolls of 5600 for 13 widths: waste, %", ENCYCLOPAEDIA)
        .expect(0.401)
        .within(5e-4)
        .got(100 * plan.wasteRatio());
    assertThat(plan.proven()).isTrue();
    assertSound(plan, pieces);
  }

  @Test
  void demoFrameIsProvenBest() {
    RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(10, 1.95, 2.1).withOpeningSide(0.3);
    MemberSection pipe = MemberSection.pipe(0.048);
    List<BarPiece> pieces =
        FrameMembers.of(
                frame,
                MemberSpec.of(pipe, pipe)
                    .withSetBacks(0.05, 0.08, 0.03)
                    .withPurlinsAt(List.of(0.6, 1.2)))
            .cutList()
            .get(pipe);
    for (double length : new double[] {4.0, 6.0, 6.4}) {
      BarPlan plan = BarCutting.plan(pieces, List.of(BarStock.unlimited("pipe", length)), 0.003);
      assertThat(plan.proven()).as("bars of %s m", length).isTrue();
      assertThat(plan.gapRatio()).isZero();
      assertSound(plan, pieces);
    }
  }

  @Test
  void severalBarLengthsAreMixed() {
    List<BarPiece> pieces = pieces(240, 3, 170, 2);
    BarPlan plan =
        BarCutting.plan(
            pieces,
            List.of(BarStock.unlimited("short", 2.5), BarStock.unlimited("long", 6.0)),
            0.003);
    // 2.4 | 2.4 | 2.4 and 1.7 + 1.7 on a long one: 13.5 m; or 2.4 + 1.7 + 1.7 on a long one: 11 m.
    assertThat(plan.usedLength()).isCloseTo(11, within(1e-9));
    assertThat(plan.proven()).isTrue();
    assertSound(plan, pieces);
  }

  @Test
  void theKerfCounts() {
    List<BarStock> bars = List.of(BarStock.unlimited("bar", 6));
    assertThat(BarCutting.plan(pieces(200, 3), bars, 0).barCount()).isEqualTo(1);
    assertThat(BarCutting.plan(pieces(200, 3), bars, 0.003).barCount()).isEqualTo(2);
    BarPlan exact = BarCutting.plan(List.of(new BarPiece("x", 1.998, 3)), bars, 0.003);
    assertThat(exact.barCount()).as("two kerfs of 3 mm fit exactly").isEqualTo(1);
    assertThat(exact.bars().get(0).offcut()).isZero();
  }

  @Test
  void barsOnHandRunOut() {
    List<BarPiece> pieces = pieces(300, 5);
    BarPlan plan = BarCutting.plan(pieces, List.of(BarStock.onHand("found", 6.5, 2)), 0.003);
    assertThat(plan.barCount()).isEqualTo(2);
    assertThat(plan.missing()).containsExactly(new BarPiece("p300", 3, 1));
    assertSound(plan, pieces);
    BarPlan filled =
        BarCutting.plan(
            pieces,
            List.of(BarStock.onHand("found", 6.5, 2), BarStock.unlimited("bought", 3.2)),
            0.003);
    assertThat(filled.missing()).isEmpty();
    // Five short bars; two found and one short would be 16.2 m.
    assertThat(filled.usedLength()).isCloseTo(16, within(1e-9));
    assertThat(filled.proven()).isTrue();
  }

  @Test
  void equalLengthsKeepTheirNames() {
    List<BarPiece> pieces =
        List.of(new BarPiece("base ring", 1.2, 4), new BarPiece("purlin ring 1", 1.2, 4));
    BarPlan plan = BarCutting.plan(pieces, List.of(BarStock.unlimited("bar", 3)), 0.003);
    assertThat(plan.barCount()).isEqualTo(4);
    assertSound(plan, pieces);
  }

  @Test
  void budgetAndSeedRepeat() {
    List<BarPiece> pieces = pieces(221, 7, 187, 9, 143, 11, 97, 13, 61, 17, 53, 19);
    List<BarStock> bars = List.of(BarStock.unlimited("bar", 6), BarStock.unlimited("half", 4.3));
    Work work = Work.of(Budget.ofWork(5000), 3);
    BarPlan one = BarCutting.plan(pieces, bars, 0.003, work, Steps.none());
    assertThat(BarCutting.plan(pieces, bars, 0.003, work, Steps.none())).isEqualTo(one);
    assertSound(one, pieces);
  }

  @Test
  void withoutBudgetThereIsStillASoundPlanAndABound() {
    List<BarPiece> pieces = pieces(221, 7, 187, 9, 143, 11, 97, 13);
    List<BarStock> bars = List.of(BarStock.unlimited("bar", 6));
    for (Budget budget : List.of(Budget.ofWork(0), Budget.ofTime(Duration.ZERO))) {
      BarPlan plan = BarCutting.plan(pieces, bars, 0.003, Work.of(budget, 1), Steps.none());
      assertSound(plan, pieces);
      assertThat(plan.lowerBound()).isPositive();
      assertThat(plan.proven() || plan.gapRatio() > 0).isTrue();
    }
    Work cancelled = Work.of(Budget.ofWork(100_000), 1);
    cancelled.cancellation().cancel();
    assertSound(BarCutting.plan(pieces, bars, 0.003, cancelled, Steps.none()), pieces);
  }

  @Test
  void stepsCanBeFollowed() {
    StepRecorder recorder = new StepRecorder();
    BarPlan plan =
        BarCutting.plan(
            pieces(240, 3, 170, 2),
            List.of(BarStock.unlimited("short", 2.5), BarStock.unlimited("long", 6.0)),
            0.003,
            Work.of(BarCutting.DEFAULT_BUDGET, 1),
            recorder);
    DerivationChecks.assertFollowsTo(
        recorder.derivation("geometry.bars.plan", "Bars"), plan.wasteRatio());
  }

  @Test
  void badInputIsNamed() {
    List<BarStock> bars = List.of(BarStock.unlimited("bar", 6));
    assertThatThrownBy(() -> BarCutting.plan(pieces(700, 1), bars, 0.003))
        .hasMessage(
            "length of p700: given 7 m, must be at most the longest bar's 6 m; splice it or find"
                + " longer bars");
    assertThatThrownBy(() -> BarCutting.plan(pieces(100, 1), bars, 0.1))
        .hasMessageContaining("kerf: given 0.1 m");
    assertThatThrownBy(() -> BarCutting.plan(List.of(), bars, 0)).hasMessageContaining("pieces");
    assertThatThrownBy(() -> BarCutting.plan(pieces(100, 1), List.of(), 0))
        .hasMessageContaining("bars: given none");
    assertThatThrownBy(() -> BarStock.onHand("old", 6, 0)).hasMessageContaining("number of old");
    assertThatThrownBy(() -> BarStock.unlimited("old", Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> BarCutting.plan(pieces(100, 60_000, 101, 60_000), bars, 0))
        .hasMessageContaining("120000 in all");
  }

  /**
   * What is called proved after a little work must be as good as what much work finds, and what is
   * easy must be proved.
   */
  @Test
  void aShortSearchProvesNothingWrong() {
    SplittableRandom random = new SplittableRandom(20261128);
    int proven = 0;
    int better = 0;
    for (int i = 0; i < 60; i++) {
      List<BarPiece> pieces = new ArrayList<>();
      for (int kind = 0; kind < 8; kind++) {
        pieces.add(new BarPiece("p" + kind, random.nextInt(70, 330) / 100.0, random.nextInt(1, 9)));
      }
      List<BarStock> stock =
          List.of(BarStock.unlimited("long", 6), BarStock.unlimited("short", 4.2));
      BarPlan quick = plan(pieces, stock, 40);
      BarPlan patient = plan(pieces, stock, 20_000);
      assertThat(quick.lowerBound()).isLessThanOrEqualTo(patient.usedLength() + 1e-9);
      if (quick.proven()) {
        proven++;
        assertThat(patient.usedLength()).isGreaterThanOrEqualTo(quick.usedLength() - 1e-9);
      }
      better += patient.usedLength() < quick.usedLength() - 1e-9 ? 1 : 0;
    }
    assertThat(proven).isPositive();
    assertThat(better).as("cases that a short search does not finish").isPositive();
  }

  private static BarPlan plan(List<BarPiece> pieces, List<BarStock> stock, long work) {
    return BarCutting.plan(pieces, stock, 0.003, Work.of(Budget.ofWork(work), 1), Steps.none());
  }
}
