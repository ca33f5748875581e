package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VentilationTest {

  private static final AirState OUTSIDE = new AirState(18, 0.65, 0.2);
  private static final Source BY_HAND =
      Source.derived("27 kg a day into 29 m3 at 18 degC, 15.36 g/m3 at saturation, by hand");

  @ParameterizedTest
  @CsvSource({"1.00, 173.2", "0.85, 303.1", "0.75, 606.1"})
  void airChangesThatCarryTheWaterOff(double leaving, double changes) {
    StepRecorder steps = new StepRecorder();
    double got = Ventilation.changesFor(27, 29, 18, 0.65, leaving, steps);
    OutsideCheck.of("materials.drying", "air changes a day, leaving at " + leaving, BY_HAND)
        .expect(changes)
        .within(0.005 * changes)
        .got(got);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.drying.air-changes", "n"), got);
  }

  @Test
  void theBalanceHolds() {
    Ventilation room = new Ventilation(40, 29, 17);
    StepRecorder steps = new StepRecorder();
    double inside = room.humidityOverWetFloor(OUTSIDE, steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.drying.closed-cover", "r"), inside);
    double given =
        17 * Evaporation.wetFloor(new AirState(18, inside, 0.2), Steps.none()) * Weather.DAY;
    // What the floor gives into the air inside needs just the changes that made that air.
    assertThat(Ventilation.changesFor(given, 29, 18, 0.65, inside, Steps.none()))
        .isCloseTo(40, within(1e-6));
    assertThat(room.exchangeLeft(OUTSIDE, 1) * (1 - 0.65)).isCloseTo(1 - inside, within(1e-12));
  }

  @Test
  void aShutCoverIsNearlySaturatedAndDriesMuchLater() {
    Ventilation shut = new Ventilation(Ventilation.SHUT, 29, 17);
    assertThat(shut.humidityOverWetFloor(OUTSIDE)).isBetween(0.9, 1.0);
    Ventilation storm = new Ventilation(20_000, 29, 17);
    assertThat(storm.humidityOverWetFloor(OUTSIDE)).isCloseTo(0.65, within(0.01));
    EarthMoisture earth = EarthMoisture.sandyMix();
    DryingSlab coat = DryingSlab.sealed(0.025, 1780, 0.18, earth);
    DryingCriteria criteria = DryingCriteria.wetLaid(0.14, earth);
    Weather weather = Weather.constant(OUTSIDE);
    double open = firm(coat, weather, Optional.empty(), criteria);
    double aired = firm(coat, weather, Optional.of(storm), criteria);
    double closed = firm(coat, weather, Optional.of(shut), criteria);
    assertThat(aired).isCloseTo(open, within(0.05 * open));
    assertThat(closed).isGreaterThan(5 * open);
  }

  private static double firm(
      DryingSlab coat, Weather weather, Optional<Ventilation> air, DryingCriteria criteria) {
    return DryingForecast.of(
            coat, weather, air, criteria, DryingDoubt.published(), 365, Steps.none())
        .milestones()
        .get(0)
        .likely()
        .orElseThrow();
  }

  @Test
  void badNumbersAreNamed() {
    assertThatThrownBy(() -> new Ventilation(0, 29, 17)).hasMessageContaining("air changes");
    assertThatThrownBy(() -> Ventilation.changesFor(1, 1, 18, 0.7, 0.7, Steps.none()))
        .hasMessageContaining("must be above that of the air that comes in");
  }
}
