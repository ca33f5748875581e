package io.github.seamstead.materials.drying;

/**
 * The moisture of the surface, where what diffuses up is what evaporates: G (Φ_1 − Φ(u)) = k (a(u)
 * − r), with Φ the integral of D and a(u) = 1 − exp(−c u^m).
 *
 * <p>The left side falls and the right side rises with u, so there is one root. Newton's method
 * from the last root, held inside a bracket that shrinks at every trial; a few trials as a rule, at
 * most 100.
 */
final class DryingSurface {

  private static final int MOST = 100;
  private static final double CLOSE = 1e-13;

  /** First guess where the last root was nothing; keeps powers of the moisture above nothing. */
  private static final double DRIEST = 1e-12;

  private final double growth;
  private final double wet;
  private final double scale;
  private final double exponent;

  private double moisture;
  private double evaporation;
  private double evaporationSlope;

  DryingSurface(EarthMoisture earth) {
    growth = earth.growth();
    wet = earth.wetMoisture();
    scale = earth.scale();
    exponent = earth.exponent();
  }

  /**
   * Finds the surface's moisture.
   *
   * @param guess the last root
   * @param potential Φ of the first cell
   * @param conductance G between the first cell's middle and the surface
   * @param dry D of dry earth at the air's temperature
   * @param exchange k
   * @param humidity r
   */
  void solve(
      double guess,
      double potential,
      double conductance,
      double dry,
      double exchange,
      double humidity) {
    double low = 0;
    double high = Double.POSITIVE_INFINITY;
    double u = Math.max(guess, DRIEST);
    for (int trial = 0; ; trial++) {
      double diffusivity = growth == 0 ? dry : dry * StrictMath.exp(growth * Math.min(u, wet));
      double own =
          growth == 0 ? dry * u : diffusivity / growth + diffusivity * Math.max(0, u - wet);
      double load = scale * StrictMath.pow(u, exponent);
      double rest = StrictMath.exp(-load);
      double activitySlope = rest * load * exponent / u;
      double arriving = conductance * (potential - own);
      double leaving = exchange * (1 - rest - humidity);
      double slope = conductance * diffusivity + exchange * activitySlope;
      double step = (arriving - leaving) / slope;
      if (step > 0) {
        low = u;
      } else {
        high = u;
      }
      boolean last = Math.abs(step) <= CLOSE * u || high - low <= CLOSE * u || trial == MOST;
      if (last) {
        moisture = u;
        evaporation = leaving;
        evaporationSlope = exchange * activitySlope * conductance / slope;
        return;
      }
      double next = u + step;
      if (!(next > low && next < high)) {
        next = high < Double.POSITIVE_INFINITY ? (low + high) / 2 : 2 * u;
      }
      u = next;
    }
  }

  double moisture() {
    return moisture;
  }

  /** k (a − r), in kg/(m² s). */
  double evaporation() {
    return evaporation;
  }

  /** Change of the evaporation with Φ of the first cell. */
  double evaporationSlope() {
    return evaporationSlope;
  }
}
