package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DryingForecastTest {

  private static final Weather ROOM = Weather.constant(new AirState(18, 0.6, 0.2));
  private static final DryingSlab COAT =
      DryingSlab.sealed(0.025, 1750, 0.18, EarthMoisture.sandyMix());
  private static final DryingCriteria CRITERIA =
      DryingCriteria.wetLaid(0.14, EarthMoisture.sandyMix());

  @Test
  void milestonesComeInOrderAndHoldTheirRange() {
    DryingForecast forecast = DryingForecast.of(COAT, ROOM, CRITERIA, DryingDoubt.published(), 365);
    double before = 0;
    for (Milestone milestone : forecast.milestones()) {
      double likely = milestone.likely().orElseThrow();
      assertThat(likely).isGreaterThanOrEqualTo(before);
      assertThat(milestone.soonest().orElseThrow()).isLessThanOrEqualTo(likely);
      assertThat(milestone.latest().orElseThrow()).isGreaterThanOrEqualTo(likely);
      before = likely;
    }
    assertThat(forecast.milestones().get(0).text()).startsWith("firm: likely ");
  }

  @Test
  void thePublishedDryingTimesOfCoatsLieWithinTheRange() {
    DryingForecast forecast = DryingForecast.of(COAT, ROOM, CRITERIA, DryingDoubt.published(), 365);
    Milestone walkable = forecast.milestones().get(1);
    Milestone dry = forecast.milestones().get(2);
    Source guides =
        Source.found(
            "", "Earthen floor guides: 4 to 5 days for a 1 in coat, the last 4 to 14", "", "");
    double half = (walkable.latest().orElseThrow() - walkable.soonest().orElseThrow()) / 2;
    double middle = (walkable.latest().orElseThrow() + walkable.soonest().orElseThrow()) / 2;
    OutsideCheck.of(
            "materials.drying",
            "days until a 25 mm coat bears the next, printed 4.5, within the forecast's range",
            guides)
        .expect(4.5)
        .within(half)
        .got(middle);
    assertThat(dry.soonest().orElseThrow()).isLessThan(14);
    assertThat(dry.latest().orElseThrow()).isGreaterThan(14);
  }

  @Test
  void openingTheCoverSavesDaysAndShadeCostsThem() {
    double asIs = firm(ROOM);
    assertThat(firm(ROOM.changed(0, 5))).isLessThan(asIs);
    assertThat(firm(ROOM.changed(-5, 1))).isGreaterThan(asIs);
  }

  private static double firm(Weather weather) {
    return DryingForecast.of(COAT, weather, CRITERIA, DryingDoubt.published(), 365)
        .milestones()
        .get(0)
        .likely()
        .orElseThrow();
  }

  @Test
  void weeksOfRainHoldTheCoatBack() {
    List<Weather.DayWeather> dry =
        Collections.nCopies(28, new Weather.DayWeather(12, 24, 0.55, 0.3));
    List<Weather.DayWeather> wet =
        Collections.nCopies(28, new Weather.DayWeather(9, 14, 0.95, 0.3));
    List<Weather.DayWeather> wetFirst = new ArrayList<>(wet);
    wetFirst.addAll(dry);
    List<Weather.DayWeather> dryFirst = new ArrayList<>(dry);
    dryFirst.addAll(wet);
    Weather rainFirst = Weather.fromDays(wetFirst);
    Weather sunFirst = Weather.fromDays(dryFirst);
    assertThat(firm(rainFirst)).isGreaterThan(2 * firm(sunFirst));
    // What is over when the layer is laid no longer counts.
    assertThat(firm(rainFirst.after(28))).isEqualTo(firm(Weather.fromDays(dry)));
    assertThat(rainFirst.after(400).states()).hasSize(24);
    assertThat(sunFirst.mean().relativeHumidity()).isBetween(0.6, 0.85);
    // Dry by then, it is not called a coat that never dries.
    assertThat(
            DryingForecast.of(COAT, sunFirst, CRITERIA, DryingDoubt.published(), 60).neverDries())
        .isFalse();
  }

  @Test
  void theWaterBalanceCanBeFollowed() {
    for (DryingSlab slab : List.of(COAT.drawingInto(0.05, 0.03), COAT)) {
      StepRecorder steps = new StepRecorder();
      DryingForecast forecast =
          DryingForecast.of(
              slab, ROOM, Optional.empty(), CRITERIA, DryingDoubt.published(), 30, steps);
      DerivationChecks.assertFollowsTo(
          steps.derivation("materials.drying.simulation", "drying"),
          forecast.likely().finalMoisture());
    }
  }

  @Test
  void bricksInStillAirDryInTheTimeOnPrint() {
    // A 71 mm brick open on both faces dries as half of it sealed below.
    DryingSlab brick = DryingSlab.sealed(0.0355, 1700, 0.20, EarthMoisture.sandyMix());
    Milestone dry =
        DryingForecast.of(
                brick,
                Weather.constant(new AirState(23, 0.5, 0.1)),
                CRITERIA,
                DryingDoubt.published(),
                365)
            .milestones()
            .get(2);
    double low = dry.soonest().orElseThrow();
    double high = dry.latest().orElseThrow();
    OutsideCheck.of(
            "materials.drying",
            "days until a brick of loam is dry at 23 degC and 50 %, printed 20 to 30, within the"
                + " range",
            Source.found("Minke", "Building with Earth", "", "drying of brick-size loam"))
        .expect(25)
        .within((high - low) / 2)
        .got((high + low) / 2);
    assertThat(dry.likely().orElseThrow()).isBetween(12.0, 50.0);
  }

  @Test
  void aDrawingBaseFirmsTheCoatSooner() {
    double sealed = first(COAT);
    double drawing = first(COAT.drawingInto(0.05, 0.02));
    assertThat(drawing).isLessThan(sealed);
  }

  private static double first(DryingSlab slab) {
    return DryingForecast.simulate(slab, ROOM, 60).timeTo(0.14).orElseThrow();
  }

  @Test
  void saturatedAirNeverDriesTheCoat() {
    DryingForecast forecast =
        DryingForecast.of(
            COAT,
            Weather.constant(new AirState(18, 1, 0.1)),
            CRITERIA,
            DryingDoubt.published(),
            30);
    assertThat(forecast.milestones().get(0).likely()).isEmpty();
    assertThat(forecast.milestones().get(0).text()).contains("more than 30");
  }

  @Test
  void dampNightsComeFromDays() {
    Weather weather = Weather.fromDays(List.of(new Weather.DayWeather(8, 20, 0.7, 0.2)));
    assertThat(weather.states()).hasSize(24);
    double vapour = weather.states().get(15).vapourPressure();
    double expected = 0.7 * Psychrometrics.meanSaturationPressure(20, 8);
    assertThat(vapour).isCloseTo(expected, within(1e-6));
    assertThat(weather.states().get(3).relativeHumidity()).isGreaterThan(0.85);
    assertThatThrownBy(() -> new Weather.DayWeather(-1, 5, 0.7, 0.2)).hasMessageContaining("frost");
  }

  @Test
  void weighingsOfATileNarrowTheRange() {
    double trueDiffusivity = 0.5;
    double trueExchange = 1.2;
    DryingSlab slab = DryingSlab.sealed(0.025, 1750, 0.18, EarthMoisture.sandyMix());
    DryingSlab truth = slab.with(slab.earth().timesDiffusivity(trueDiffusivity));
    DryingCurve curve = new DryingRun(truth, ROOM, trueExchange).until(20 * Weather.DAY, 0);
    Random scale = new Random(7);
    List<TestTile.Weighing> weighings = new ArrayList<>();
    for (double day : new double[] {0, 1, 2, 3, 5, 7, 10, 14, 20}) {
      double mass = 6 - 0.09 * curve.evaporatedAt(day * Weather.DAY) + 0.002 * scale.nextGaussian();
      weighings.add(new TestTile.Weighing(day * Weather.DAY, mass));
    }
    TileCalibration fit = TileCalibration.of(new TestTile(slab, 0.09, weighings, 0.002), ROOM);
    assertThat(fit.plausible()).isTrue();
    assertThat(fit.diffusivity().low()).isLessThan(trueDiffusivity);
    assertThat(fit.diffusivity().high()).isGreaterThan(trueDiffusivity);
    assertThat(fit.exchange().low()).isLessThan(trueExchange);
    assertThat(fit.exchange().high()).isGreaterThan(trueExchange);
    assertThat(fit.diffusivity().high() / fit.diffusivity().low()).isLessThan(2);
    assertThat(fit.misfit()).isLessThan(0.006);
    Milestone narrow =
        DryingForecast.of(COAT, ROOM, CRITERIA, fit.doubt(), 365).milestones().get(2);
    Milestone wide =
        DryingForecast.of(COAT, ROOM, CRITERIA, DryingDoubt.published(), 365).milestones().get(2);
    assertThat(narrow.latest().orElseThrow() - narrow.soonest().orElseThrow())
        .isLessThan(wide.latest().orElseThrow() - wide.soonest().orElseThrow());
  }

  @Test
  void earlyWeighingsLeaveTheDiffusivityInDoubt() {
    DryingCurve curve = new DryingRun(COAT, ROOM, 1.1).until(2 * Weather.DAY, 0);
    List<TestTile.Weighing> weighings = new ArrayList<>();
    for (double day : new double[] {0, 0.5, 1, 1.5, 2}) {
      weighings.add(
          new TestTile.Weighing(
              day * Weather.DAY, 6 - 0.09 * curve.evaporatedAt(day * Weather.DAY)));
    }
    TileCalibration fit = TileCalibration.of(new TestTile(COAT, 0.09, weighings, 0.001), ROOM);
    assertThat(fit.exchange().likely()).isCloseTo(1.1, within(0.05));
    assertThat(fit.diffusivity().high() / fit.diffusivity().low()).isGreaterThan(4);
  }

  @Test
  void aTileThatLosesMoreThanItHeldIsRefused() {
    assertThatThrownBy(
            () ->
                new TestTile(
                    COAT,
                    0.09,
                    List.of(
                        new TestTile.Weighing(0, 6),
                        new TestTile.Weighing(1, 5),
                        new TestTile.Weighing(2, 4)),
                    0.002))
        .hasMessageContaining("held only");
  }
}
