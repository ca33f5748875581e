package io.github.seamstead.assembly.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tension that falls at each sheave, and lengths that lie on a limit of the lifting equation. */
class TackleAndLimitsTest {

  private static final Source ANNUITIES =
      Source.fromMemory("", "Interest tables, present value of an annuity of 1 at 10 %", "", "");

  /**
   * Where each sheave keeps 1 / 1.1 of the tension, the parts of rope pull like the payments of an
   * annuity at ten per cent: the load over the pull is the printed present value.
   */
  @ParameterizedTest
  @CsvSource({"1, 0.9091", "2, 1.7355", "3, 2.4869", "4, 3.1699", "5, 3.7908", "8, 5.3349"})
  void tensionFallsAtEachSheaveAsAnAnnuityIsDiscounted(int parts, double printed) {
    Tackle hauledDown = new Tackle(parts, parts, 0.1);
    OutsideCheck.of(
            "assembly.handling", "load over pull, " + parts + " parts and sheaves", ANNUITIES)
        .expect(printed)
        .within(5e-5)
        .got(1000 / hauledDown.rivalPull(1000));
    // Paid in advance: the hauling part comes off the moving block, one sheave less.
    Tackle hauledUp = new Tackle(parts, parts - 1, 0.1);
    OutsideCheck.of(
            "assembly.handling",
            "load over pull, " + parts + " parts, one sheave less",
            ANNUITIES.at("payments in advance"))
        .expect(printed * 1.1)
        .within(5.5e-5)
        .got(1000 / hauledUp.rivalPull(1000));
  }

  @Test
  void aTackleWithoutLossDividesTheLoadByItsParts() {
    for (int parts = 1; parts <= Tackle.MOST_PARTS; parts++) {
      Tackle smooth = new Tackle(parts, parts, 0);
      assertThat(smooth.rivalPull(840)).isCloseTo(840.0 / parts, within(1e-9));
      assertThat(smooth.pull(840)).isCloseTo(840.0 / parts, within(1e-9));
      // Loss only ever adds to the pull, and the greater of both rules counts.
      Tackle rough = new Tackle(parts, parts, 0.1);
      assertThat(rough.rivalPull(840)).isGreaterThan(840.0 / parts);
      assertThat(rough.greaterPull(840)).isGreaterThanOrEqualTo(rough.rivalPull(840));
    }
  }

  @Test
  void eightPartsAreTriedToo() {
    // A tenth at each of eight sheaves: 1000 (1 + 0.8) / 8 = 225 N; seven parts ask for 243 N.
    assertThat(Tackle.least(1000, 1, 226).orElseThrow().parts()).isEqualTo(8);
    assertThat(Tackle.least(1000, 1, 224)).isEmpty();
  }

  private static Multipliers at(double reach, double height) {
    return LiftLimit.of(
            LiftTask.of(reach, height, height, 0, 0.2, LiftDuration.UP_TO_ONE_HOUR, Coupling.FAIR))
        .start();
  }

  /** A length put together from parts must not fall off the method by the last bit. */
  @Test
  void lengthsOnALimitStayInTheMethod() {
    for (int part = 1; part < 63; part++) {
      double reach = part * 0.01 + (0.63 - part * 0.01);
      assertThat(at(reach, 0.75).reach()).as("reach of 63 cm").isCloseTo(25 / 63.0, within(1e-9));
    }
    for (int part = 1; part < 175; part++) {
      double height = part * 0.01 + (1.75 - part * 0.01);
      assertThat(at(0.25, height).height()).as("hands at 175 cm").isCloseTo(0.7, within(1e-9));
      double waist = part * 0.01 + (0.75 - part * 0.01);
      assertThat(at(0.25, waist).coupling()).as("hands at 75 cm").isEqualTo(1);
    }
    // A millimetre is no rounding.
    assertThat(at(0.631, 0.75).reach()).isZero();
    assertThat(at(0.25, 1.751).height()).isZero();
    assertThat(at(0.25, 0.749).coupling()).isEqualTo(0.95);
    assertThat(at(0.6304, 0.75).outside()).isNotEmpty();
  }

  @Test
  void lengthsBetweenMillimetresAreNotRounded() {
    assertThat(at(0.40004, 0.75).reach()).isCloseTo(25 / 40.004, within(1e-12));
    assertThat(at(0.25, 0.30007).height()).isCloseTo(1 - 0.003 * 44.993, within(1e-12));
  }

  @Test
  void theLiftingIndexIsTheLoadOverTheLimit() {
    LiftLimit ideal =
        LiftLimit.of(
            LiftTask.of(0.25, 0.75, 0.75, 0, 0.2, LiftDuration.UP_TO_ONE_HOUR, Coupling.GOOD));
    assertThat(LiftTeam.of(34.5, ideal).liftingIndex().orElseThrow()).isCloseTo(1.5, within(1e-12));
    assertThat(LiftTeam.of(11.5, ideal).liftingIndex().orElseThrow()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void aTrialOfPackingHasADoubtBelowOne() {
    assertThat(Packing.measured(4, 0.0005, 0.010, 0).clothRatio().low())
        .isCloseTo(0.2, within(1e-12));
    // Cloth that fills its space whole is the limit, not beyond it.
    assertThat(Packing.measured(4, 0.0005, 0.002, 0.1).clothRatio().high()).isEqualTo(1);
    assertThatThrownBy(() -> Packing.measured(4, 0.0005, 0.010, 1))
        .hasMessageContaining("must be 0 or more, below 1");
    assertThatThrownBy(() -> Packing.measured(4, 0.0005, 0.010, -0.1))
        .hasMessageContaining("must be 0 or more, below 1");
  }
}
