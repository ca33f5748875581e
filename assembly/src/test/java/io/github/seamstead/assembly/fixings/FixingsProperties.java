package io.github.seamstead.assembly.fixings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

class FixingsProperties {

  @Property(tries = 100, seed = "93589")
  void noGapIsWiderThanTheSpacingAndNoneIsWasted(
      @ForAll @DoubleRange(min = 0.05, max = 20) double joint,
      @ForAll @DoubleRange(min = 0.003, max = 1) @Scale(5) double spacing,
      @ForAll @IntRange(min = 1, max = 4) int rows) {
    double count = FixingPattern.of(FixingKind.STAPLES, spacing, rows).count(joint);
    double gaps = count / rows - 1;
    assertThat(gaps).isEqualTo(Math.rint(gaps));
    assertThat(joint / gaps).isLessThanOrEqualTo(spacing * (1 + 2e-5));
    if (gaps > 1) {
      assertThat(joint / (gaps - 1)).isGreaterThan(spacing * (1 - 1e-12));
    }
  }

  @Property(tries = 100, seed = "91054")
  void cartridgesHoldTheAdhesiveAndOneFewerDoesNot(
      @ForAll @DoubleRange(min = 0.001, max = 0.03) @Scale(5) double diameter,
      @ForAll @Size(min = 1, max = 20) List<@DoubleRange(min = 0.1, max = 20) Double> joints,
      @ForAll @DoubleRange(min = 0, max = 0.9) double waste) {
    AdhesiveNeed need = AdhesiveNeed.of(Bead.round(diameter), joints, 1, 310e-6, waste);
    double wanted = need.volume() * (1 + waste);
    assertThat(need.cartridges() * 310e-6).isGreaterThanOrEqualTo(wanted - 1e-9);
    if (need.cartridges() > 1) {
      assertThat((need.cartridges() - 1) * 310e-6).isLessThan(wanted + 1e-12);
    }
    assertThat(need.rivalCartridges()).isGreaterThanOrEqualTo(need.cartridges());
    assertThat(need.item().packs()).isEqualTo(need.cartridges());
  }

  @Property(tries = 100, seed = "58156")
  void rollsLieBetweenTheBoundAndOneForEachRun(
      @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 0.1, max = 10) Double> runs) {
    Runs cut = Runs.of("rope", runs, 0, 0, 10, true);
    assertThat(cut.rolls()).isBetween(cut.leastRolls(), runs.size());
    // First fit leaves at most one roll half empty.
    assertThat(cut.rolls()).isLessThanOrEqualTo((int) Math.ceil(2 * cut.totalLength() / 10) + 1);
  }

  @Property(tries = 100, seed = "83573")
  void theLowerRopeRuleIsUsed(
      @ForAll Fibre fibre,
      @ForAll @DoubleRange(min = 0.003, max = 0.06) @Scale(5) double diameter) {
    RopeStrength rope = RopeStrength.of(fibre, diameter, false, 6);
    assertThat(rope.breakingLoad()).isLessThan(rope.rivalBreakingLoad());
    assertThat(rope.workingLoad()).isLessThan(rope.breakingLoad() / 5);
  }
}
