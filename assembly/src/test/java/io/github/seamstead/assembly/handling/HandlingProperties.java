package io.github.seamstead.assembly.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.assembly.merge.TeamLift;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class HandlingProperties {

  @Property(tries = 150, seed = "16297")
  void aHarderLiftNeverHasAHigherLimit(
      @ForAll @DoubleRange(min = 0.2, max = 0.7) double reach,
      @ForAll @DoubleRange(min = 0, max = 1.7) double from,
      @ForAll @DoubleRange(min = 0, max = 1.7) double to,
      @ForAll @DoubleRange(min = 0, max = 2) double twist,
      @ForAll @DoubleRange(min = 0, max = 15) double perMinute,
      @ForAll LiftDuration duration,
      @ForAll Coupling coupling,
      @ForAll LiftForm form) {
    double limit = limit(reach, from, to, twist, perMinute, duration, coupling, form);
    assertThat(limit).isBetween(0.0, 23.14);
    assertThat(limit(reach + 0.02, from, to, twist, perMinute, duration, coupling, form))
        .isLessThanOrEqualTo(limit);
    assertThat(limit(reach, from, to, twist + 0.1, perMinute, duration, coupling, form))
        .isLessThanOrEqualTo(limit);
    assertThat(limit(reach, from, to, twist, perMinute + 0.7, duration, coupling, form))
        .isLessThanOrEqualTo(limit);
    assertThat(limit(reach, from, to, twist, perMinute, duration, Coupling.POOR, form))
        .isLessThanOrEqualTo(limit);
    assertThat(
            limit(
                reach, from, to, twist, perMinute, LiftDuration.UP_TO_EIGHT_HOURS, coupling, form))
        .isLessThanOrEqualTo(limit);
  }

  private static double limit(
      double reach,
      double from,
      double to,
      double twist,
      double perMinute,
      LiftDuration duration,
      Coupling coupling,
      LiftForm form) {
    return LiftLimit.of(LiftTask.of(reach, from, to, twist, perMinute, duration, coupling), form)
        .mass();
  }

  @Property(tries = 100, seed = "92583")
  void theTeamIsTheLeastThatMayLift(@ForAll @DoubleRange(min = 0.5, max = 60) double load) {
    LiftLimit limit = LiftLimit.of(LiftTask.ofBundle());
    Optional<TeamLift> team = LiftTeam.of(load, limit).team();
    int people = team.map(TeamLift::people).orElse(TeamLift.MOST_PEOPLE + 1);
    team.ifPresent(t -> assertThat(t.capacity()).isGreaterThanOrEqualTo(load - 1e-9));
    if (people > 1) {
      assertThat(TeamLift.of(people - 1, limit.mass()).capacity()).isLessThan(load);
    }
  }

  @Property(tries = 100, seed = "81229")
  void raisingAndHoldingMeetAtTheLoad(
      @ForAll @DoubleRange(min = 1, max = 5000) double load,
      @ForAll @DoubleRange(min = 0, max = 1) double friction,
      @ForAll @DoubleRange(min = 0, max = 6) double wrap,
      @ForAll @IntRange(min = 1, max = 6) int ropes) {
    RopePull pull = new RopePull(load, friction, wrap, ropes, 250);
    assertThat(Math.sqrt(pull.raisePull() * pull.hold())).isCloseTo(load, within(1e-9 * load));
    assertThat(pull.people() * 250.0).isGreaterThanOrEqualTo(pull.raisePull() * (1 - 1e-5));
    assertThat(pull.people() % ropes).isZero();
    if (wrap > 0) {
      assertThat(RopePull.friction(pull.raisePull(), pull.hold(), wrap))
          .isCloseTo(friction, within(1e-9 / wrap));
    }
  }

  @Property(tries = 100, seed = "29006")
  void aWiderOpeningNeverPassesWorse(
      @ForAll @DoubleRange(min = 0.2, max = 18) double loop,
      @ForAll @DoubleRange(min = 0, max = 1) double wider) {
    assertThat(passage(loop + wider)).isLessThanOrEqualTo(passage(loop));
  }

  private static TurnRoute.Passage passage(double loop) {
    return Turning.of(
            new CoverEnds(20, Optional.of(loop), Optional.empty()), 0.0006, 0.003, Packing.BUNCHED)
        .routes()
        .stream()
        .filter(route -> route.through().contains("top"))
        .findFirst()
        .orElseThrow()
        .passage();
  }

  @Property(tries = 100, seed = "83386")
  void moreHandsHoldMoreWindButNeverAboveTheLimit(
      @ForAll @DoubleRange(min = 1, max = 200) double area,
      @ForAll @IntRange(min = 1, max = 40) int people) {
    RaisingWind wind = RaisingWind.of(area, people);
    assertThat(wind.limitGust()).isLessThanOrEqualTo(RaisingWind.BEGIN_GUST);
    assertThat(wind.stopGust())
        .isGreaterThan(wind.limitGust())
        .isLessThanOrEqualTo(wind.crewGust());
    assertThat(wind.limitMean())
        .isLessThanOrEqualTo(RaisingWind.BEGIN_MEAN)
        .isLessThanOrEqualTo(wind.limitGust());
    assertThat(RaisingWind.of(area, people + 1).limitGust())
        .isGreaterThanOrEqualTo(wind.limitGust());
  }
}
