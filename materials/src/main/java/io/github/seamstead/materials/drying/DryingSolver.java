package io.github.seamstead.materials.drying;

/**
 * Moisture against depth and time: C_i du_i/dt = J_(i+1) − J_i, J = ρ_d Δ∫D du / Δz, surface J_1 =
 * k (a(u_0) − r).
 *
 * <p>Finite volumes, fine at the surface; the integral of D (Kirchhoff's transform) makes the flux
 * between two cells exact for any step in D. In time a two-stage, L-stable, diagonally implicit
 * Runge-Kutta method of order 2 (γ = 1 − 1/√2) with step control; each stage is solved by Newton's
 * method on a tridiagonal system. The cells are updated by the same fluxes that are added up as
 * evaporated water, so water is conserved to rounding. Cost: steps × cells; at least one step for
 * each interval of the weather.
 */
final class DryingSolver {

  private static final double GAMMA = 1 - Math.sqrt(0.5);
  private static final double NEWTON = 1e-8;
  private static final int NEWTON_MOST = 25;
  private static final double LEAST_STEP = 1e-3;

  private final double[] capacity;
  private final double[] conductance;
  private final double growth;
  private final double dry;
  private final double isothermScale;
  private final double isothermExponent;
  private final int cells;

  private final double[] moisture;
  private final double[] stage1;
  private final double[] stage2;
  private final double[] base;
  private final double[] rate1;
  private final double[] rate2;
  private final double[] potential;
  private final double[] slope;
  private final double[] flux;
  private final double[] upper;
  private final double[] right;

  private double exchange;
  private double humidity;
  private double mobility;
  private double activity;
  private double activitySlope;

  DryingSolver(DryingSlab slab, DryingGrid grid) {
    EarthMoisture earth = slab.earth();
    growth = earth.growth();
    dry = earth.dryDiffusivity();
    isothermExponent = earth.exponent();
    isothermScale = earth.scale();
    cells = grid.cells();
    capacity = new double[cells + 1];
    conductance = new double[cells + 2];
    moisture = new double[cells + 1];
    for (int i = 1; i <= cells; i++) {
      capacity[i] = slab.dryDensity() * grid.size(i - 1);
      double above = i == 1 ? 0 : grid.size(i - 2);
      conductance[i] = slab.dryDensity() / ((grid.size(i - 1) + above) / 2);
      moisture[i] = i <= grid.coatCells() ? slab.initialMoisture() : slab.baseMoisture();
    }
    moisture[0] = slab.initialMoisture();
    stage1 = new double[cells + 1];
    stage2 = new double[cells + 1];
    base = new double[cells + 1];
    rate1 = new double[cells + 1];
    rate2 = new double[cells + 1];
    potential = new double[cells + 1];
    slope = new double[cells + 1];
    flux = new double[cells + 2];
    upper = new double[cells + 1];
    right = new double[cells + 1];
  }

  /**
   * Sets the air of the coming steps.
   *
   * @param evaporationIntoDryAir k, in kg/(m² s)
   * @param relativeHumidity r, 0 to 1
   * @param diffusivityFactor D over D at 20 °C
   */
  void air(double evaporationIntoDryAir, double relativeHumidity, double diffusivityFactor) {
    exchange = evaporationIntoDryAir;
    humidity = relativeHumidity;
    mobility = diffusivityFactor;
  }

  double[] moisture() {
    return moisture;
  }

  double capacity(int cell) {
    return capacity[cell];
  }

  /** What a step did: the error of the mean moisture by the first-order method, and the water. */
  record Outcome(boolean solved, double error, double evaporated) {

    static final Outcome FAILED = new Outcome(false, Double.POSITIVE_INFINITY, 0);
  }

  /** Tries a step and leaves its result in stage2 until {@link #accept}. */
  Outcome attempt(double dt) {
    System.arraycopy(moisture, 0, base, 0, cells + 1);
    System.arraycopy(moisture, 0, stage1, 0, cells + 1);
    if (dt < LEAST_STEP || !solve(stage1, GAMMA * dt, rate1)) {
      return Outcome.FAILED;
    }
    double evaporated1 = exchange * (activity - humidity);
    for (int i = 1; i <= cells; i++) {
      base[i] = moisture[i] + (1 - GAMMA) * dt * rate1[i];
      stage2[i] = stage1[i];
    }
    stage2[0] = stage1[0];
    if (!solve(stage2, GAMMA * dt, rate2)) {
      return Outcome.FAILED;
    }
    double evaporated2 = exchange * (activity - humidity);
    double error = 0;
    double mass = 0;
    for (int i = 1; i <= cells; i++) {
      stage2[i] = base[i] + GAMMA * dt * rate2[i];
      error += capacity[i] * Math.abs(rate2[i] - rate1[i]);
      mass += capacity[i];
    }
    return new Outcome(
        true, GAMMA * dt * error / mass, dt * ((1 - GAMMA) * evaporated1 + GAMMA * evaporated2));
  }

  void accept() {
    System.arraycopy(stage2, 0, moisture, 0, cells + 1);
  }

  /**
   * Newton's method for C (u − base) = w (J_(i+1) − J_i); leaves the rates du/dt in {@code rate}.
   */
  private boolean solve(double[] u, double w, double[] rate) {
    for (int iteration = 0; iteration < NEWTON_MOST; iteration++) {
      fluxes(u);
      double change = correct(u, w);
      if (!(change < Double.POSITIVE_INFINITY)) {
        return false;
      }
      if (change < NEWTON) {
        fluxes(u);
        for (int i = 1; i <= cells; i++) {
          rate[i] = (flux[i + 1] - flux[i]) / capacity[i];
        }
        return true;
      }
    }
    return false;
  }

  private void fluxes(double[] u) {
    double scale = dry * mobility;
    for (int i = 0; i <= cells; i++) {
      if (growth == 0) {
        slope[i] = scale;
        potential[i] = scale * u[i];
      } else {
        slope[i] = scale * Math.exp(growth * u[i]);
        potential[i] = slope[i] / growth;
      }
    }
    for (int i = 1; i <= cells; i++) {
      flux[i] = conductance[i] * (potential[i] - potential[i - 1]);
    }
    flux[cells + 1] = 0;
    double load = isothermScale * Math.pow(u[0], isothermExponent);
    double rest = Math.exp(-load);
    activity = 1 - rest;
    activitySlope = rest * load * isothermExponent / u[0];
  }

  /** One Newton step by the Thomas algorithm; returns the largest change of a moisture. */
  private double correct(double[] u, double w) {
    double diagonal = conductance[1] * slope[0] + exchange * activitySlope;
    upper[0] = -conductance[1] * slope[1] / diagonal;
    right[0] = (flux[1] - exchange * (activity - humidity)) / diagonal;
    for (int i = 1; i <= cells; i++) {
      double below = i < cells ? conductance[i + 1] : 0;
      double residual = capacity[i] * (u[i] - base[i]) - w * (flux[i + 1] - flux[i]);
      double lower = -w * conductance[i] * slope[i - 1];
      double pivot = capacity[i] + w * (below + conductance[i]) * slope[i] - lower * upper[i - 1];
      upper[i] = i < cells ? -w * below * slope[i + 1] / pivot : 0;
      right[i] = (-residual - lower * right[i - 1]) / pivot;
    }
    double change = 0;
    double step = 0;
    for (int i = cells; i >= 0; i--) {
      step = right[i] - upper[i] * step;
      double next = u[i] + step;
      // Moisture stays above nothing: a Newton step may take at most nine tenths of it away.
      double held = next < 0.1 * u[i] ? 0.1 * u[i] : next;
      change = Math.max(change, Math.abs(held - u[i]));
      u[i] = held;
    }
    return change;
  }
}
