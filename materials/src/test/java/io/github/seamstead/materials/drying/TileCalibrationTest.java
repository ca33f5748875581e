package io.github.seamstead.materials.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Fits to tiles whose truth is known, beside least squares written down once more. */
class TileCalibrationTest {

  private static final Weather ROOM = Weather.constant(new AirState(18, 0.6, 0.2));
  private static final DryingSlab TILE =
      DryingSlab.sealed(0.025, 1750, 0.18, EarthMoisture.sandyMix());
  private static final double AREA = 0.09;
  private static final double SCALE = 0.002;
  private static final double[] DAYS = {0, 1, 2, 3, 5, 7, 10, 14, 20};

  /** Nine tenths of a normal spread lie within so many standard deviations. */
  private static final double NINE_TENTHS = 1.6448536;

  private static double[] losses(double diffusivity, double exchange) {
    DryingSlab slab = TILE.with(TILE.earth().timesDiffusivity(diffusivity));
    DryingCurve curve = new DryingRun(slab, ROOM, exchange).until(20 * Weather.DAY, 0);
    double[] losses = new double[DAYS.length - 1];
    for (int i = 1; i < DAYS.length; i++) {
      losses[i - 1] = AREA * curve.evaporatedAt(DAYS[i] * Weather.DAY);
    }
    return losses;
  }

  /** A tile of that truth; every other weighing reads so many kilograms more. */
  private static TestTile tile(double diffusivity, double exchange, double off) {
    List<TestTile.Weighing> weighings = new ArrayList<>();
    weighings.add(new TestTile.Weighing(0, 6));
    double[] losses = losses(diffusivity, exchange);
    for (int i = 0; i < losses.length; i++) {
      double mass = 6 - losses[i] + (i % 2 == 0 ? off : -off);
      weighings.add(new TestTile.Weighing(DAYS[i + 1] * Weather.DAY, mass));
    }
    return new TestTile(TILE, AREA, weighings, SCALE);
  }

  @Test
  void theTruthOfAnExactTileIsFound() {
    TileCalibration fit = TileCalibration.of(tile(0.6, 1.2, 0), ROOM);
    assertThat(fit.diffusivity().likely()).isCloseTo(0.6, within(0.02));
    assertThat(fit.exchange().likely()).isCloseTo(1.2, within(0.02));
    assertThat(fit.misfit()).isLessThan(0.0015);
    assertThat(fit.plausible()).isTrue();
    // As far above as below, as a factor.
    assertThat(fit.exchange().high() / fit.exchange().likely())
        .isCloseTo(fit.exchange().likely() / fit.exchange().low(), within(1e-9));
    assertThat(fit.doubt().diffusivity()).isEqualTo(fit.diffusivity());
    assertThat(fit.doubt().exchange()).isEqualTo(fit.exchange());
  }

  /**
   * Least squares by hand at the fit: each loss is doubted by two weighings and by a fiftieth of
   * itself, each factor by its published scatter, nine times in ten.
   */
  @Test
  void theIntervalsAreThoseOfLeastSquares() {
    TileCalibration fit = TileCalibration.of(tile(0.6, 1.2, 0), ROOM);
    double d = Math.log(fit.diffusivity().likely());
    double e = Math.log(fit.exchange().likely());
    double step = 0.05;
    double[] dUp = losses(Math.exp(d + step), Math.exp(e));
    double[] dDown = losses(Math.exp(d - step), Math.exp(e));
    double[] eUp = losses(Math.exp(d), Math.exp(e + step));
    double[] eDown = losses(Math.exp(d), Math.exp(e - step));
    double[] seen = losses(0.6, 1.2);
    double dd = Math.pow(NINE_TENTHS / Math.log(Math.sqrt(10)), 2);
    double ee = Math.pow(NINE_TENTHS / Math.log(1.4), 2);
    double de = 0;
    for (int i = 0; i < seen.length; i++) {
      double doubt = Math.hypot(SCALE * Math.sqrt(2), 0.02 * seen[i]);
      double byD = (dUp[i] - dDown[i]) / (2 * step) / doubt;
      double byE = (eUp[i] - eDown[i]) / (2 * step) / doubt;
      dd += byD * byD;
      ee += byE * byE;
      de += byD * byE;
    }
    double determinant = dd * ee - de * de;
    double ofD = NINE_TENTHS * Math.sqrt(ee / determinant);
    double ofE = NINE_TENTHS * Math.sqrt(dd / determinant);
    assertThat(Math.log(fit.diffusivity().high()) - d).isCloseTo(ofD, within(0.05 * ofD));
    assertThat(Math.log(fit.exchange().high()) - e).isCloseTo(ofE, within(0.05 * ofE));
  }

  /** Weighings that are 15 g off by turns leave just that, and a range as much wider. */
  @Test
  void scatterWidensTheRange() {
    TileCalibration exact = TileCalibration.of(tile(0.6, 1.2, 0), ROOM);
    TileCalibration rough = TileCalibration.of(tile(0.6, 1.2, 0.015), ROOM);
    assertThat(rough.misfit()).isBetween(0.011, 0.0155);
    double was = Math.log(exact.exchange().high() / exact.exchange().likely());
    double is = Math.log(rough.exchange().high() / rough.exchange().likely());
    // Off by 15 g where 3 g and a fiftieth of the loss are expected.
    double sum = 0;
    double[] seen = losses(0.6, 1.2);
    for (double loss : seen) {
      double part = 0.014 / Math.hypot(SCALE * Math.sqrt(2), 0.02 * loss);
      sum += part * part;
    }
    assertThat(is / was).isCloseTo(Math.sqrt(sum / seen.length), within(0.35));
  }

  /** Plausible is what half as far again as the published scatter holds. */
  @Test
  void tilesBeyondTheScatterAreNotPlausible() {
    assertThat(TileCalibration.of(tile(1, 0.68, 0), ROOM).plausible()).isTrue();
    assertThat(TileCalibration.of(tile(1, 0.5, 0), ROOM).plausible()).isFalse();
    assertThat(TileCalibration.of(tile(0.24, 1, 0), ROOM).plausible()).isTrue();
    assertThat(TileCalibration.of(tile(0.1, 1, 0), ROOM).plausible()).isFalse();
    assertThat(TileCalibration.of(tile(0.6, 1.2, 0.06), ROOM).plausible()).isFalse();
  }

  /** A scale that is a kilogram off says nothing: what is published stays. */
  @Test
  void aScaleThatSaysNothingLeavesWhatIsPublished() {
    TestTile exact = tile(1, 1, 0);
    TileCalibration fit = TileCalibration.of(new TestTile(TILE, AREA, exact.weighings(), 1), ROOM);
    assertThat(fit.diffusivity().likely()).isCloseTo(1, within(0.01));
    assertThat(fit.diffusivity().high()).isCloseTo(Math.sqrt(10), within(0.05));
    assertThat(fit.exchange().low()).isCloseTo(1 / 1.4, within(0.01));
    assertThat(fit.exchange().high()).isCloseTo(1.4, within(0.02));
  }

  /** Losses count from the first weighing, also where it came a day after the filling. */
  @Test
  void lossesCountFromTheFirstWeighing() {
    List<TestTile.Weighing> all = tile(0.6, 1.2, 0).weighings();
    TestTile later = new TestTile(TILE, AREA, all.subList(1, all.size()), SCALE);
    TileCalibration fit = TileCalibration.of(later, ROOM);
    assertThat(fit.diffusivity().likely()).isCloseTo(0.6, within(0.03));
    assertThat(fit.exchange().likely()).isCloseTo(1.2, within(0.05));
  }
}
