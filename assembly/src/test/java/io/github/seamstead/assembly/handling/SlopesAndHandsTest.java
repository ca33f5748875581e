package io.github.seamstead.assembly.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.assembly.merge.TeamLift;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;

/** Slopes other than upright, lifts of both heights, and teams. */
class SlopesAndHandsTest {

  private static final Source TABLE =
      Source.fromMemory(
          "Waters, Putz-Anderson and Garg",
          "Applications Manual for the Revised NIOSH Lifting Equation, 94-110",
          "1994",
          "table 5");

  /** Weight along the slope and friction of the weight square to it, by vectors. */
  private static double drawn(double degrees, double friction) {
    double a = Math.toRadians(degrees);
    double[] up = {Math.cos(a), Math.sin(a)};
    double[] out = {-Math.sin(a), Math.cos(a)};
    double weight = 10 * 9.80665;
    double against = weight * up[1];
    double square = weight * out[1];
    return against + friction * square;
  }

  @Test
  void aCoverIsDrawnUpAnySlope() {
    for (double degrees : new double[] {0, 10, 30, 45, 60, 80, 90}) {
      for (double friction : new double[] {0, 0.3, 0.5, 1}) {
        assertThat(RopePull.drawnUp(10, Math.toRadians(degrees), friction))
            .as("%s degrees, friction %s", degrees, friction)
            .isCloseTo(drawn(degrees, friction), within(1e-9));
      }
    }
    // 98.0665 x (0.5 + 0.5 x 0.866)
    assertThat(RopePull.drawnUp(10, Math.PI / 6, 0.5)).isCloseTo(91.4963, within(1e-3));
  }

  @Test
  void whatIsHeldIsReckonedWithTheSmoothestEdge() {
    RopePull pull = new RopePull(300, 0.25, 1.2, 2, 267);
    assertThat(pull.hold(0.14)).isCloseTo(300 * Math.exp(-0.14 * 1.2), within(1e-9));
    assertThat(pull.hold(0.14)).isGreaterThan(pull.hold());
  }

  private static LiftLimit lift(double fromMetres, double perMinute, LiftDuration duration) {
    return LiftLimit.of(LiftTask.of(0.3, fromMetres, 1.1, 0, perMinute, duration, Coupling.GOOD));
  }

  private static void frequency(
      double fromMetres, double perMinute, LiftDuration duration, double expected) {
    OutsideCheck.of(
            "assembly.handling",
            "FM, hands at " + fromMetres + " m, " + perMinute + "/min, " + duration.label(),
            TABLE)
        .expect(expected)
        .within(0.0001)
        .got(lift(fromMetres, perMinute, duration).start().frequency());
  }

  @Test
  void highAndLowHandsHaveTheirOwnRows() {
    frequency(0.8, 13, LiftDuration.UP_TO_ONE_HOUR, 0.34);
    frequency(0.5, 13, LiftDuration.UP_TO_ONE_HOUR, 0);
    frequency(0.5, 12, LiftDuration.UP_TO_ONE_HOUR, 0.37);
    frequency(0.8, 15, LiftDuration.UP_TO_ONE_HOUR, 0.28);
    frequency(0.8, 11, LiftDuration.UP_TO_TWO_HOURS, 0.23);
    frequency(0.5, 11, LiftDuration.UP_TO_TWO_HOURS, 0);
    frequency(0.8, 9, LiftDuration.UP_TO_EIGHT_HOURS, 0.15);
    frequency(0.5, 9, LiftDuration.UP_TO_EIGHT_HOURS, 0);
    frequency(0.5, 8, LiftDuration.UP_TO_EIGHT_HOURS, 0.18);
    frequency(0.5, 0.2, LiftDuration.UP_TO_EIGHT_HOURS, 0.85);
    frequency(0.5, 0.5, LiftDuration.UP_TO_TWO_HOURS, 0.92);
    frequency(0.8, 1, LiftDuration.UP_TO_TWO_HOURS, 0.88);
  }

  @Test
  void rareLiftsLieBetweenTheRowsInAStraightLine() {
    assertThat(LiftDuration.UP_TO_ONE_HOUR.multiplier(0.3, false)).isCloseTo(0.99, within(1e-9));
    assertThat(LiftDuration.UP_TO_TWO_HOURS.multiplier(0.35, true)).isCloseTo(0.935, within(1e-9));
    assertThat(LiftDuration.UP_TO_EIGHT_HOURS.multiplier(0.75, false))
        .isCloseTo(0.78, within(1e-9));
    assertThat(LiftDuration.UP_TO_ONE_HOUR.multiplier(0.1, false)).isEqualTo(1);
  }

  @Test
  void oneLimitForEveryChapter() {
    LiftLimit limit = LiftLimit.of(LiftTask.ofBundle());
    // Three people of 8.82 kg carry half of their sum.
    assertThat(TeamLift.ofCrew(6, 2, limit.mass()).capacity()).isCloseTo(13.235, within(5e-3));
    assertThat(TeamLift.ofCrew(4, 1, limit.mass()).capacity()).isCloseTo(17.647, within(5e-3));
    assertThat(TeamLift.ofCrew(11, 1, 10).people()).isEqualTo(TeamLift.MOST_PEOPLE);
    assertThat(TeamLift.ofCrew(5, 4, 10).people()).isEqualTo(1);
    assertThat(TeamLift.peopleFor(10, 10)).hasValue(1);
    assertThat(TeamLift.peopleFor(13.3, 10)).hasValue(2);
    assertThat(TeamLift.peopleFor(15, 10)).hasValue(3);
    assertThat(TeamLift.peopleFor(20, 10)).hasValue(4);
    assertThat(TeamLift.peopleFor(20.1, 10)).isEmpty();
    assertThat(LiftTeam.of(8, limit, 5).team().orElseThrow().people()).isEqualTo(4);
    assertThat(LiftTeam.of(8, limit, 5).onePersonMass()).isEqualTo(5);
    assertThat(LiftTeam.of(8, limit, 50).onePersonMass()).isEqualTo(limit.mass());
  }

  @Test
  void theLeastTackleThatDoes() {
    // Two parts, two sheaves, a tenth lost at each: 600 N, three parts: 433 N, four: 350 N.
    assertThat(Tackle.least(1000, 1, 600).orElseThrow().parts()).isEqualTo(2);
    assertThat(Tackle.least(1000, 1, 450).orElseThrow().parts()).isEqualTo(3);
    assertThat(Tackle.least(1000, 1, 360).orElseThrow().parts()).isEqualTo(4);
    assertThat(Tackle.least(1000, 2, 300).orElseThrow().parts()).isEqualTo(2);
    assertThat(Tackle.least(1000, 1, 100)).isEmpty();
  }
}
