package io.github.seamstead.assembly.fixings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class FixingsTest {

  private static final List<Double> JOINTS = Collections.nCopies(10, 3.2);

  @Test
  void staplesRunFromEndToEnd() {
    FixingCount count =
        FixingCount.of(FixingPattern.of(FixingKind.STAPLES, 0.04, 2), JOINTS, 0.1, 1000);
    assertThat(count.perJoint()).containsOnly(162).hasSize(10);
    assertThat(count.total()).isEqualTo(1620);
    assertThat(count.item().packs()).isEqualTo(2);
    assertThat(count.item().bought()).isEqualTo(2000);
    assertThat(count.item().left()).isEqualTo(380);
    assertThat(count.item().text())
        .isEqualTo("staples: 2 packs of 1000 pieces (need 1620, with 10 % spare 1782)");
  }

  @Test
  void aStitchIsAGapAndAScrewAPoint() {
    assertThat(FixingPattern.of(FixingKind.STITCHES, 0.004, 1).count(1)).isEqualTo(250);
    assertThat(FixingPattern.of(FixingKind.SCREWS, 0.25, 1).count(1)).isEqualTo(5);
    assertThat(new FixingPattern(FixingKind.SCREWS, 0.25, 1, 0.05).count(1)).isEqualTo(5);
    assertThat(new FixingPattern(FixingKind.SCREWS, 0.25, 3, 0.7).count(1)).isEqualTo(3);
    // 0.3 / 0.1 is 2.9999999999999996 and 0.7 / 0.1 is 6.999999999999999: rounding adds no gap.
    assertThat(FixingPattern.of(FixingKind.STAPLES, 0.1, 1).count(0.3)).isEqualTo(4);
    assertThat(FixingPattern.of(FixingKind.STAPLES, 0.1, 1).count(0.1 * 3)).isEqualTo(4);
  }

  @Test
  void adhesiveInCartridges() {
    AdhesiveNeed need = AdhesiveNeed.of(Bead.round(0.006), JOINTS, 1, 310e-6, 0.1);
    assertThat(need.seamLength()).isEqualTo(32);
    // 32 m at 28.27 ml/m is 0.905 l, with a tenth 0.995 l.
    assertThat(need.cartridges()).isEqualTo(4);
    assertThat(need.item().packs()).isEqualTo(4);
    assertThat(need.rivalCartridges()).isGreaterThanOrEqualTo(need.cartridges());
    assertThat(need.item().name()).isEqualTo("adhesive in cartridges of 310 ml");
    assertThat(need.caution().text()).endsWith(Caution.DEFERENCE);
  }

  @Test
  void theTwoReadingsOfWasteDisagree() {
    // A joint that is exactly ten cartridges with a tenth of waste.
    double metres = 10 * 300e-6 / 1.1 / 25e-6;
    AdhesiveNeed need =
        AdhesiveNeed.of(Bead.rectangle(0.005, 0.005), List.of(metres), 1, 300e-6, 0.1);
    assertThat(need.cartridges()).isEqualTo(10);
    assertThat(need.rivalCartridges()).isEqualTo(11);
    assertThat(need.rivalRule()).contains("1 - waste");
  }

  @Test
  void halfPacksAreSummedBeforeTheyAreRounded() {
    ShoppingItem seams = ShoppingItem.of("staples", "piece", 450, 0.1, 1000);
    ShoppingItem hem = ShoppingItem.of("staples", "piece", 400, 0.05, 1000);
    ShoppingItem pegs = ShoppingItem.of("pegs", "piece", 30, 0, 10);
    ShoppingList list = ShoppingList.of(List.of(seams, pegs, hem));
    assertThat(list.items()).hasSize(2);
    assertThat(list.items().get(0).packs()).isEqualTo(1);
    assertThat(list.items().get(0).withSpare()).isCloseTo(495 + 420, within());
    assertThat(list.text()).contains("pegs: 3 packs of 10 pieces");
    assertThat(ShoppingList.of(List.of()).text()).isEmpty();
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }

  @Test
  void ropesInOnePieceAndTapeInAny() {
    List<Double> guys = List.of(6.0, 6.0, 6.0, 4.0);
    Runs rope = Runs.of("rope", guys, 0.5, 0, 12, true);
    Runs tape = Runs.of("tape", guys, 0.5, 0, 12, false);
    assertThat(rope.rolls()).isEqualTo(3);
    assertThat(rope.leastRolls()).isEqualTo(2);
    assertThat(tape.rolls()).isEqualTo(2);
    assertThat(rope.totalLength()).isEqualTo(24);
    assertThatThrownBy(() -> Runs.of("rope", List.of(13.0), 0, 0, 12, true))
        .hasMessage(
            "run of rope: given 13 m with extra and spare, must be at most a roll of 12 m as"
                + " it must be in one piece");
  }

  @Test
  void pegsStandAtEveryCorner() {
    HemPegs pegs = new HemPegs(10, 1.6, 0.7);
    assertThat(pegs.pegs()).isEqualTo(30);
    assertThat(pegs.spacing()).isCloseTo(1.6 / 3, within());
    assertThat(pegs.item(0.1, 10).packs()).isEqualTo(4);
  }

  @Test
  void cureNamesEachBrokenLimit() {
    CureConditions maker = new CureConditions(5, 35, 0.85, 600, 86_400, "the maker's sheet");
    assertThat(maker.judge(20, 0.6, 300).within()).isTrue();
    CureVerdict cold = maker.judge(2, 0.9, 900);
    assertThat(cold.within()).isFalse();
    assertThat(cold.reasons())
        .containsExactly(
            "too cold: 2 degC, the maker's sheet states at least 5 degC",
            "too damp: 90 %, the maker's sheet states at most 85 %",
            "open too long: 900 s, the maker's sheet states at most 600 s");
    assertThat(maker.judge(40, 0.5, 0).reasons()).hasSize(1);
    assertThat(cold.caution().text()).contains("the maker's sheet").endsWith(Caution.DEFERENCE);
  }

  @Test
  void ropeWithAKnotKeepsHalf() {
    RopeStrength plain = RopeStrength.of(Fibre.POLYESTER, 0.012, false, 6);
    RopeStrength knotted = RopeStrength.of(Fibre.POLYESTER, 0.012, true, 6);
    assertThat(knotted.workingLoad()).isEqualTo(plain.workingLoad() / 2);
    assertThat(plain.rule()).contains("D^2 / 200");
    assertThat(plain.rivalRule()).contains("900 C^2").contains("2.5");
    assertThat(plain.caution().text()).contains("12 or more");
  }

  @Test
  void messagesSayWhatIsAllowed() {
    assertThatThrownBy(() -> FixingPattern.of(FixingKind.STAPLES, 0, 1))
        .hasMessage("spacing of staples: given 0 m, must be greater than 0 m");
    assertThatThrownBy(() -> FixingPattern.of(FixingKind.STAPLES, 1e-9, 1).count(3))
        .hasMessageContaining("at most ten million");
    assertThatThrownBy(() -> Bead.round(1e-200))
        .hasMessage("width of the bead: given 1.0E-200 m, must be from 0.00001 m to 10 m");
    assertThatThrownBy(() -> AdhesiveNeed.of(Bead.round(0.006), JOINTS, 1, 1e-30, 0.1))
        .hasMessageContaining("over 1e9 would be needed");
    assertThatThrownBy(() -> new Bead(BeadShape.ROUND, 0.006, 0.005))
        .hasMessage("round bead: given two measures, must have its diameter alone");
    assertThatThrownBy(() -> AdhesiveNeed.of(Bead.round(0.006), JOINTS, 1, 3e-4, 1))
        .hasMessage("waste of adhesive: given 1, must be 0 or more and less than 1");
    assertThatThrownBy(() -> RopeStrength.of(Fibre.NYLON, 0.01, false, 2))
        .hasMessage("breaking over working load: given 2, must be from 5 to 50");
    assertThatThrownBy(
            () -> FixingCount.of(FixingPattern.of(FixingKind.SCREWS, 1, 1), List.of(), 0, 1))
        .hasMessage("joints: given none, must have at least one");
  }

  @Test
  void whatIsSoldSinglyIsNotPacked() {
    assertThat(ShoppingItem.of("adhesive", "cartridge", 3.2, 0.1, 1).text())
        .isEqualTo("adhesive: 4 cartridges (need 3.2, with 10 % spare 3.52)");
    assertThat(ShoppingItem.of("adhesive", "cartridge", 0.5, 0, 1).text())
        .startsWith("adhesive: 1 cartridge (");
    assertThat(ShoppingItem.of("rope", "m", 41, 0, 20).text())
        .startsWith("rope: 3 packs of 20 m (");
    assertThat(ShoppingItem.of("rope", "m", 41, 0, 1).text()).startsWith("rope: 41 m (");
    assertThat(ShoppingItem.of("screws", "box", 2, 0, 1).text()).startsWith("screws: 2 boxes (");
    assertThat(ShoppingItem.of("staples", "piece", 9, 0, 1000).text())
        .startsWith("staples: 1 pack of 1000 pieces (");
  }

  @Test
  void derivationsFollow() {
    FixingPattern pattern = new FixingPattern(FixingKind.STAPLES, 0.04, 2, 0.01);
    StepRecorder r = new StepRecorder();
    follow("assembly.fixings.count", r, pattern.count(3.2, r), pattern.count(3.2));
    ShoppingItem item = ShoppingItem.of("staples", "piece", 1620, 0.1, 1000);
    r = new StepRecorder();
    follow("assembly.fixings.packs", r, item.packs(r), item.packs());
    SeamStack stack = new SeamStack(4, 0.0005, 0.001);
    r = new StepRecorder();
    follow("assembly.fixings.leg", r, stack.leastLeg(0.003, r), stack.leastLeg(0.003));
    r = new StepRecorder();
    follow(
        "assembly.fixings.thread",
        r,
        stack.threadLength(0.004, 3.2, 2, r),
        stack.threadLength(0.004, 3.2, 2));
    for (Bead bead :
        List.of(
            Bead.round(0.006),
            Bead.halfRound(0.01),
            Bead.fillet(0.01, 0.005),
            Bead.rectangle(0.04, 0.0005))) {
      r = new StepRecorder();
      follow("assembly.fixings.bead", r, bead.area(r), bead.area());
      AdhesiveNeed need = AdhesiveNeed.of(bead, JOINTS, 2, 310e-6, 0.1);
      r = new StepRecorder();
      follow("assembly.fixings.adhesive", r, need.cartridges(r), need.cartridges());
    }
    HemPegs pegs = new HemPegs(10, 1.6, 0.7);
    r = new StepRecorder();
    follow("assembly.fixings.hempegs", r, pegs.pegs(r), pegs.pegs());
    RopeStrength rope = RopeStrength.of(Fibre.POLYESTER, 0.01, true, 6);
    r = new StepRecorder();
    follow("assembly.fixings.rope", r, rope.workingLoad(r), rope.workingLoad());
  }

  private static void follow(String id, StepRecorder recorder, double worked, double plain) {
    assertThat(worked).isEqualTo(plain);
    DerivationChecks.assertFollowsTo(recorder.derivation(id, id), plain);
  }
}
