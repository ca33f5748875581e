package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;

/**
 * The two unknowns of drying, fitted to the weighings of a test tile.
 *
 * <p>Least squares in the logarithms of the two factors, with the published scatter as prior (a
 * tenfold range and ± 40 % taken as 90 % intervals), so that weighings too few or too early to tell
 * the two apart leave the prior's doubt where it was. The model itself is trusted to 2 % of the
 * water lost. Solved by damped Gauss-Newton steps; cost: about five simulations a step, ten steps.
 *
 * @param diffusivity factor on the tile's diffusivity, 90 % interval
 * @param exchange factor on the evaporation, 90 % interval
 * @param misfit root mean square of weighed less computed loss, in kg
 * @param plausible false if the misfit is more than three times what scale and model explain, or a
 *     factor lies outside the published scatter
 */
public record TileCalibration(Range diffusivity, Range exchange, double misfit, boolean plausible) {

  private static final double NORMAL_90 = 1.6448536269514722;
  private static final double MODEL_TRUST = 0.02;
  private static final double PROBE = 0.04;
  private static final double LIMIT = StrictMath.log(30);

  /**
   * Fits the factors.
   *
   * @param tile the tile and its weighings
   * @param weather the air over the tile from the moment it was filled
   * @return factors with their intervals
   */
  public static TileCalibration of(TestTile tile, Weather weather) {
    Fit fit = new Fit(tile, weather);
    double[] x = {0, 0};
    double[] r = fit.residuals(x);
    double damping = 1e-3;
    double[][] normal = new double[2][2];
    for (int iteration = 0; iteration < 25; iteration++) {
      double[][] jacobian = fit.jacobian(x);
      double[] gradient = new double[2];
      normal = new double[2][2];
      for (int j = 0; j < r.length; j++) {
        for (int a = 0; a < 2; a++) {
          gradient[a] += jacobian[a][j] * r[j];
          for (int b = 0; b < 2; b++) {
            normal[a][b] += jacobian[a][j] * jacobian[b][j];
          }
        }
      }
      double[] step = solve(normal, gradient, damping);
      double[] next = {limited(x[0] - step[0]), limited(x[1] - step[1])};
      double[] after = fit.residuals(next);
      double moved = StrictMath.hypot(next[0] - x[0], next[1] - x[1]);
      if (square(after) <= square(r)) {
        x = next;
        r = after;
        damping = Math.max(damping / 10, 1e-9);
      } else {
        damping *= 10;
      }
      if (moved < 1e-4) {
        break;
      }
    }
    return fit.result(x, normal);
  }

  /**
   * Gives the doubt that the weighings leave, for a forecast of the same mix.
   *
   * @return the fitted factors
   */
  public DryingDoubt doubt() {
    return new DryingDoubt(diffusivity, exchange);
  }

  private static double limited(double log) {
    return Math.max(-LIMIT, Math.min(LIMIT, log));
  }

  private static double square(double[] r) {
    double sum = 0;
    for (double value : r) {
      sum += value * value;
    }
    return sum;
  }

  private static double[] solve(double[][] m, double[] g, double damping) {
    double a = m[0][0] * (1 + damping);
    double d = m[1][1] * (1 + damping);
    double determinant = a * d - m[0][1] * m[1][0];
    return new double[] {
      (d * g[0] - m[0][1] * g[1]) / determinant, (a * g[1] - m[1][0] * g[0]) / determinant
    };
  }

  /** The residuals in units of their standard uncertainty, the two priors last. */
  private static final class Fit {

    private final TestTile tile;
    private final Weather weather;
    private final double[] deviation;

    Fit(TestTile tile, Weather weather) {
      this.tile = tile;
      this.weather = weather;
      deviation = new double[tile.weighings().size() - 1];
      for (int i = 0; i < deviation.length; i++) {
        deviation[i] =
            StrictMath.hypot(
                tile.scaleUncertainty() * Math.sqrt(2), MODEL_TRUST * Math.abs(weighedLoss(i)));
      }
    }

    private double weighedLoss(int i) {
      List<TestTile.Weighing> weighings = tile.weighings();
      return weighings.get(0).mass() - weighings.get(i + 1).mass();
    }

    private double[] losses(double[] x) {
      List<TestTile.Weighing> weighings = tile.weighings();
      DryingSlab slab = tile.slab();
      DryingSlab scaled = slab.with(slab.earth().timesDiffusivity(StrictMath.exp(x[0])));
      double last = weighings.get(weighings.size() - 1).time();
      DryingCurve curve = new DryingRun(scaled, weather, StrictMath.exp(x[1])).until(last, 0);
      double first = curve.evaporatedAt(weighings.get(0).time());
      double[] losses = new double[deviation.length];
      for (int i = 0; i < losses.length; i++) {
        losses[i] = tile.area() * (curve.evaporatedAt(weighings.get(i + 1).time()) - first);
      }
      return losses;
    }

    double[] residuals(double[] x) {
      double[] losses = losses(x);
      double[] r = new double[losses.length + 2];
      for (int i = 0; i < losses.length; i++) {
        r[i] = (losses[i] - weighedLoss(i)) / deviation[i];
      }
      r[losses.length] = x[0] * NORMAL_90 / StrictMath.log(EarthMoisture.SCATTER);
      r[losses.length + 1] = x[1] * NORMAL_90 / StrictMath.log(Evaporation.SCATTER);
      return r;
    }

    double[][] jacobian(double[] x) {
      double[][] jacobian = new double[2][];
      for (int a = 0; a < 2; a++) {
        double[] up = x.clone();
        double[] down = x.clone();
        up[a] += PROBE;
        down[a] -= PROBE;
        double[] high = residuals(up);
        double[] low = residuals(down);
        jacobian[a] = new double[high.length];
        for (int j = 0; j < high.length; j++) {
          jacobian[a][j] = (high[j] - low[j]) / (2 * PROBE);
        }
      }
      return jacobian;
    }

    TileCalibration result(double[] x, double[][] normal) {
      double[] losses = losses(x);
      double sum = 0;
      double scaled = 0;
      for (int i = 0; i < losses.length; i++) {
        double off = losses[i] - weighedLoss(i);
        sum += off * off;
        scaled += off * off / (deviation[i] * deviation[i]);
      }
      double spread = Math.max(1, Math.sqrt(scaled / losses.length));
      double determinant = normal[0][0] * normal[1][1] - normal[0][1] * normal[1][0];
      double diffusivity = spread * Math.sqrt(normal[1][1] / determinant);
      double exchange = spread * Math.sqrt(normal[0][0] / determinant);
      boolean within =
          Math.abs(x[0]) <= 1.5 * StrictMath.log(EarthMoisture.SCATTER)
              && Math.abs(x[1]) <= 1.5 * StrictMath.log(Evaporation.SCATTER);
      return new TileCalibration(
          interval(x[0], diffusivity),
          interval(x[1], exchange),
          Math.sqrt(sum / losses.length),
          within && spread <= 3);
    }

    private static Range interval(double log, double deviation) {
      double half = NORMAL_90 * deviation;
      return new Range(StrictMath.exp(log - half), StrictMath.exp(log), StrictMath.exp(log + half));
    }
  }
}
