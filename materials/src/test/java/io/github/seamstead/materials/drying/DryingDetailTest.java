package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the rough march gives away against the fine one. */
class DryingDetailTest {

  private static final DryingDoubt NONE = new DryingDoubt(Range.exactly(1), Range.exactly(1));

  private static DryingCriteria until(double... moistures) {
    List<DryingCriteria.State> states = new ArrayList<>();
    for (double moisture : moistures) {
      states.add(new DryingCriteria.State("at " + moisture, moisture));
    }
    return new DryingCriteria(states);
  }

  private static DryingForecast fine(DryingSlab slab, Weather weather, DryingCriteria criteria) {
    return DryingForecast.of(slab, weather, Optional.empty(), criteria, NONE, 365, Steps.none());
  }

  private static DryingForecast rough(DryingSlab slab, Weather weather, DryingCriteria criteria) {
    return DryingForecast.rough(slab, weather, Optional.empty(), criteria, NONE, 365);
  }

  @Test
  void roughTimesAreWithinThreePerCentOfFineOnes() {
    DryingCriteria criteria = until(0.14, 0.06, 0.025);
    double worst = 0;
    for (double thickness : new double[] {0.01, 0.02, 0.03, 0.06, 0.1}) {
      for (double humidity : new double[] {0.4, 0.6, 0.7}) {
        for (double diffusivity : new double[] {0.3, 1, 3}) {
          EarthMoisture earth = EarthMoisture.sandyMix().timesDiffusivity(diffusivity);
          Weather weather = Weather.constant(new AirState(16, humidity, 0.4));
          for (boolean damp : new boolean[] {false, true}) {
            DryingSlab sealed = DryingSlab.sealed(thickness, 1750, 0.19, earth);
            DryingSlab slab = damp ? sealed.drawingInto(0.06, 0.03) : sealed;
            DryingForecast fine = fine(slab, weather, criteria);
            DryingForecast rough = rough(slab, weather, criteria);
            for (int state = 0; state < 3; state++) {
              Milestone was = fine.milestones().get(state);
              Milestone is = rough.milestones().get(state);
              assertThat(is.likely().isPresent()).isEqualTo(was.likely().isPresent());
              if (was.likely().isPresent()) {
                // A twentieth of a day is below what any crew can plan by.
                double off = Math.abs(is.likely().get() - was.likely().get());
                double part = Math.max(0, off - 0.05) / was.likely().get();
                worst = Math.max(worst, part);
              }
            }
          }
        }
      }
    }
    assertThat(worst).isLessThan(0.03);
  }

  @Test
  void noDropIsLost() {
    DryingSlab slab =
        DryingSlab.sealed(0.05, 1750, 0.2, EarthMoisture.sandyMix()).drawingInto(0.05, 0.04);
    DryingCurve curve =
        new DryingRun(slab, Weather.constant(new AirState(18, 0.6, 0.2)), 1)
            .until(60 * Weather.DAY, 0, DryingDetail.ROUGH);
    assertThat((curve.evaporated() + curve.waterLeft()) / slab.initialWater())
        .isCloseTo(1, within(1e-9));
  }

  @Test
  void airThatIsTooDampIsFoundOutWithoutTheMarch() {
    DryingSlab slab = DryingSlab.sealed(0.03, 1750, 0.2, EarthMoisture.sandyMix());
    Weather damp = Weather.constant(new AirState(14, 0.93, 0.3));
    DryingCriteria criteria = until(0.14, slab.earth().equilibriumMoisture(0.75));
    DryingForecast rough = rough(slab, damp, criteria);
    DryingForecast fine = fine(slab, damp, criteria);
    assertThat(rough.neverDries()).isTrue().isEqualTo(fine.neverDries());
    assertThat(rough.likely().duration()).isEqualTo(Weather.DAY);
    assertThat(rough.milestones().get(1).horizon()).isEqualTo(365);
  }

  @Test
  void aDrawOfThePublishedDoubtIsAsFarOffInACalibratedOne() {
    DryingDoubt published = DryingDoubt.published();
    DryingDoubt tile = new DryingDoubt(new Range(0.5, 0.6, 0.9), new Range(1, 1.1, 1.21));
    assertThat(tile.supposing(published)).isEqualTo(tile);
    DryingDoubt high =
        tile.supposing(
            new DryingDoubt(
                Range.exactly(published.diffusivity().high()),
                Range.exactly(published.exchange().low())));
    assertThat(high.diffusivity().likely()).isCloseTo(0.9, within(1e-12));
    assertThat(high.exchange().likely()).isCloseTo(1, within(1e-12));
    DryingDoubt middle = tile.supposing(NONE);
    assertThat(middle.diffusivity()).isEqualTo(Range.exactly(0.6));
    assertThat(middle.exchange()).isEqualTo(Range.exactly(1.1));
  }
}
