package io.github.seamstead.materials.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.mix.TrialOutcome.Drop;
import io.github.seamstead.materials.mix.TrialOutcome.Dusting;
import io.github.seamstead.materials.mix.TrialOutcome.Scratch;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Ladders whose rungs follow from a soil that is known, and samples that are clear. */
class TrialByHandTest {

  private static final double LIMIT = TrialReading.FLOOR_CRACK_LIMIT;

  private static MixComponent soil(double density, double doubt, double moisture) {
    return MixComponent.claySoil("soil", Uncertain.exact(0.61))
        .damp(moisture, 0)
        .withDensities(2650, new Uncertain(density, doubt), 1700);
  }

  private static MixComponent sand(double density, double doubt) {
    return MixComponent.washedSand("sand").withDensities(2650, new Uncertain(density, doubt), 1700);
  }

  private static List<Double> ladder(MixComponent soil, MixComponent sand, Basis basis) {
    return TrialLadder.design(soil, sand, ClayBand.FLOOR, basis, 0.25, 10).sandParts();
  }

  /** 61 % of clay: above a fifth up to 2.05 dry parts, at 17 % from 2.588 dry parts on. */
  @Test
  void aKnownSoilIsBracketedByTheRungsNextToItsLimits() {
    MixComponent soil = soil(1200, 0, 0.6);
    MixComponent sand = sand(1500, 0);
    assertThat(ladder(soil, sand, Basis.DRY_MASS)).containsExactly(2.0, 2.25, 2.5, 2.75);
    // Soil with 60 % of water: a damp part of it is 1/1.6 dry, so 1.281 and 1.618 parts of sand.
    assertThat(ladder(soil, sand, Basis.DAMP_MASS)).containsExactly(1.25, 1.5, 1.75);
    // A bucket of sand weighs 1.25 times one of soil: 1.64 and 2.071 buckets.
    assertThat(ladder(soil, sand, Basis.LOOSE_VOLUME)).containsExactly(1.5, 1.75, 2.0, 2.25);
  }

  /**
   * Densities doubtful by 10 and 5 %, together 11.18 %: three points keep the doubt, the outer ones
   * root three times as far, a factor of 1.2137. Both limits move outward by it: 1.351 and 2.513.
   */
  @Test
  void doubtfulDensitiesWidenTheLadder() {
    List<Double> rungs = ladder(soil(1200, 120, 0), sand(1500, 75), Basis.LOOSE_VOLUME);
    assertThat(rungs.get(0)).isEqualTo(1.25);
    assertThat(rungs.get(rungs.size() - 1)).isEqualTo(2.75);
    // By mass the density has no say.
    assertThat(ladder(soil(1200, 120, 0), sand(1500, 75), Basis.DRY_MASS))
        .containsExactly(2.0, 2.25, 2.5, 2.75);
  }

  /** Fewer samples stand farther apart, but from the same first to at least the same last. */
  @Test
  void aShorterLadderReachesAsFar() {
    for (double doubt : new double[] {0.03, 0.08, 0.15, 0.2}) {
      MixComponent soil = MixComponent.claySoil("soil", new Uncertain(0.5, doubt));
      for (double step : new double[] {0.25, 0.5, 1}) {
        List<Double> whole =
            TrialLadder.design(soil, sand(1500, 0), ClayBand.FLOOR, Basis.DRY_MASS, step, 10)
                .sandParts();
        for (int most = 2; most <= 10 && whole.get(1) - whole.get(0) < 1.5 * step; most++) {
          List<Double> rungs =
              TrialLadder.design(soil, sand(1500, 0), ClayBand.FLOOR, Basis.DRY_MASS, step, most)
                  .sandParts();
          assertThat(rungs).hasSizeBetween(2, most);
          assertThat(rungs.get(0)).isEqualTo(whole.get(0));
          double last = rungs.get(rungs.size() - 1);
          assertThat(last).isGreaterThanOrEqualTo(whole.get(whole.size() - 1) - 1e-9);
          double apart = rungs.get(1) - rungs.get(0);
          // No rung more than is needed.
          assertThat(last - apart).isLessThan(whole.get(whole.size() - 1));
        }
      }
    }
  }

  @Test
  void clayOfASampleWithDirtySand() {
    MixComponent dirty = MixComponent.pitSand("sand", Uncertain.exact(0.1));
    MixComponent soil = MixComponent.claySoil("soil", new Uncertain(0.6, 0.06));
    Uncertain clay = TrialLadder.clay(soil, dirty, 2, Basis.DRY_MASS);
    assertThat(clay.value()).isCloseTo((0.6 + 2 * 0.1) / 3, within(1e-9));
    assertThat(clay.standardUncertainty()).isCloseTo(0.02, within(1e-9));
    MixComponent tooDirty = MixComponent.pitSand("sand", Uncertain.exact(0.18));
    assertThatThrownBy(
            () -> TrialLadder.design(soil, tooDirty, ClayBand.FLOOR, Basis.DRY_MASS, 1, 5))
        .hasMessageContaining("must be below the middle of the band 0.17");
    TrialLadder common = TrialLadder.common("soil", "sand", Basis.DRY_MASS);
    assertThatThrownBy(() -> common.proportion(common.sandParts().size()))
        .hasMessageContaining("rung");
  }

  private static TrialOutcome cracked(double parts) {
    return TrialOutcome.of(parts, 0.010, 0.5, Dusting.NONE);
  }

  private static TrialOutcome sound(double parts) {
    return TrialOutcome.of(parts, 0.001, 0.5, Dusting.NONE);
  }

  private static TrialOutcome dusty(double parts) {
    return TrialOutcome.of(parts, 0, 0.5, Dusting.HEAVY);
  }

  @Test
  void theNearestSoundSampleSpeaksForARatio() {
    TrialReading reading =
        TrialReading.of(List.of(cracked(1.8), sound(2), sound(2.5), sound(4)), LIMIT, 0.5);
    assertThat(reading.soundSamples()).hasSize(3);
    assertThat(reading.soundNear(2.2).orElseThrow().sandParts()).isEqualTo(2);
    assertThat(reading.soundNear(2.3).orElseThrow().sandParts()).isEqualTo(2.5);
    assertThat(reading.soundNear(1.7).orElseThrow().sandParts()).isEqualTo(2);
    // A quarter of the ratio on either side: 4 speaks for 3.3 and 5.2, and for 5.4 no more.
    assertThat(reading.soundNear(3.3).orElseThrow().sandParts()).isEqualTo(4);
    assertThat(reading.soundNear(5.2).orElseThrow().sandParts()).isEqualTo(4);
    assertThat(reading.soundNear(5.4)).isEmpty();
    // A rule read to half a millimetre at both ends, each evenly spread: 0.41 mm in 500 mm.
    TrialReading one = TrialReading.of(List.of(sound(2), sound(2), cracked(1)), LIMIT, 0.5);
    one.measuredShrinkage()
        .ifPresent(
            s ->
                assertThat(s.standardUncertainty())
                    .isCloseTo(0.0005 * Math.sqrt(2 / 3.0) / 0.5, within(1e-12)));
  }

  /** However sure the limits are, a ratio that nobody has made is not decided. */
  @Test
  void nothingIsDecidedWithoutASampleOfIt() {
    List<TrialOutcome> ends = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      ends.add(cracked(0.8));
      ends.add(dusty(9));
    }
    TrialReading open = TrialReading.of(ends, LIMIT, 0.5);
    assertThat(open.decided()).isFalse();
    assertThat(open.nextSandParts()).isPresent();
    // The most sand of what is nearly as probable is taken.
    double greatest =
        open.curve().stream().mapToDouble(TrialReading.Candidate::probability).max().orElseThrow();
    double most =
        open.curve().stream()
            .filter(c -> c.probability() >= greatest - 0.02)
            .mapToDouble(TrialReading.Candidate::sandParts)
            .max()
            .orElseThrow();
    assertThat(open.sandParts()).isEqualTo(most);
  }

  @Test
  void aSampleWithinAQuarterOfItDecides() {
    List<TrialOutcome> outcomes = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      outcomes.add(cracked(1.5));
      outcomes.add(sound(2.75));
      outcomes.add(dusty(5));
    }
    TrialReading reading = TrialReading.of(outcomes, LIMIT, 0.5);
    assertThat(reading.sandParts()).isNotEqualTo(2.75);
    assertThat(reading.probability()).isGreaterThan(0.7);
    assertThat(reading.decided()).isTrue();
    assertThat(reading.nextSandParts()).isEmpty();
  }

  private static boolean says(TrialReading reading, String words) {
    return reading.advice().stream().anyMatch(text -> text.contains(words));
  }

  @Test
  void adviceFollowsWhatIsSeen() {
    TrialReading clear = TrialReading.of(List.of(cracked(1), sound(3), dusty(6)), LIMIT, 0.5);
    assertThat(says(clear, "swapped")).isFalse();
    assertThat(says(clear, "both cracks and crumbles")).isFalse();
    assertThat(says(clear, "stuck to the trowel")).isFalse();
    TrialOutcome sticky =
        new TrialOutcome(2, 0, 0.5, Dusting.NONE, Scratch.MARKED, Drop.CHIPS, true);
    assertThat(says(TrialReading.of(List.of(sticky), LIMIT, 0.5), "stuck to the trowel")).isTrue();
    TrialOutcome rich =
        new TrialOutcome(1, 0.01, 0.5, Dusting.NONE, Scratch.MARKED, Drop.CHIPS, true);
    assertThat(says(TrialReading.of(List.of(rich), LIMIT, 0.5), "stuck to the trowel")).isFalse();
  }

  private static final ClayBlend BLEND =
      ClayBlend.of(
          MixComponent.claySoil("pit soil", new Uncertain(0.58, 0.1)),
          MixComponent.washedSand("sand"),
          ClayBand.FLOOR,
          BucketRounding.HALF);

  @Test
  void aRatioByHandIsMeasuredAgainstItsSamples() {
    TrialReading reading =
        TrialReading.of(List.of(cracked(1), sound(3), sound(3), sound(3), dusty(6)), LIMIT, 0.5);
    double read = reading.sandParts();
    MixChoice same = MixChoice.of(BLEND, Optional.of(reading), Optional.of(read));
    assertThat(same.remarks()).noneMatch(text -> text.contains("The trial samples point to"));
    assertThat(same.remarks()).noneMatch(text -> text.contains("No sound trial sample"));
    // A rich mix that was made and held: what its clay says is a remark, no refusal.
    TrialReading richly = TrialReading.of(List.of(sound(0.75), sound(0.75), dusty(3)), LIMIT, 0.25);
    MixChoice rich = MixChoice.of(BLEND, Optional.of(richly), Optional.of(0.75));
    assertThat(rich.unmet()).isEmpty();
    assertThat(rich.remarks()).anyMatch(text -> text.startsWith("It gives about"));
    // The same ratio beside samples of another: refused, and both are told.
    MixChoice untried = MixChoice.of(BLEND, Optional.of(reading), Optional.of(0.75));
    assertThat(untried.unmet()).isPresent();
    assertThat(untried.remarks())
        .anyMatch(text -> text.contains("No sound trial sample"))
        .anyMatch(
            text ->
                text.contains("The trial samples point to")
                    && text.contains("do not decide yet") != reading.decided());
    // What the samples chose outranks the reckoned clay, which is told.
    MixChoice chosen = MixChoice.of(BLEND, Optional.of(richly), Optional.empty());
    boolean outside = !ClayBand.FLOOR.holds(chosen.recipe().clayRatio().value());
    assertThat(chosen.remarks().stream().anyMatch(t -> t.contains("outranks the reckoned clay")))
        .isEqualTo(outside);
  }

  @Test
  void aDesignTellsHowFarItIsOffItsGrading() {
    MixComponent soil = MixComponent.claySoil("soil", Uncertain.exact(0.4));
    MixComponent grit = MixComponent.gravel("grit", 0.002, 0.008);
    MixTarget target = MixTarget.near(ClayBand.FLOOR, new GradingTarget(0.008, 0.5));
    MixSolution near =
        MixDesign.solve(
            List.of(soil, MixComponent.washedSand("sand"), grit), target, BucketRounding.HALF);
    assertThat(MixChoice.designed(near).remarks())
        .anyMatch(text -> text.contains("off the grading aimed at"));
    MixSolution middle =
        MixDesign.solve(List.of(soil, grit), MixTarget.of(ClayBand.FLOOR), BucketRounding.HALF);
    assertThat(MixChoice.designed(middle).remarks())
        .noneMatch(text -> text.contains("off the grading aimed at"));
  }
}
