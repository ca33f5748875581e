package io.github.seamstead.materials.drying;

/**
 * Moisture against depth and time: C_i du_i/dt = J_(i+1) − J_i, J = ρ_d Δ∫D du / Δz, surface J_1 =
 * k (a(u_0) − r).
 *
 * <p>Finite volumes, fine at the surface; the integral of D (Kirchhoff's transform) makes the flux
 * between two cells exact for any step in D. The surface has no capacity: its moisture is solved
 * apart ({@link DryingSurface}) and what evaporates there is what the first cell loses. In time a
 * two-stage, L-stable, diagonally implicit Runge-Kutta method of order 2 (γ = 1 − 1/√2) with step
 * control; each stage is solved by Newton's method on a tridiagonal system. The cells are updated
 * by the same fluxes that are added up as evaporated water, so water is conserved to rounding.
 * Cost: steps × cells; at least one step for each interval of the weather.
 */
final class DryingSolver {

  private static final double GAMMA = 1 - Math.sqrt(0.5);
  private static final double NEWTON = 1e-8;
  private static final int NEWTON_MOST = 25;
  private static final double LEAST_STEP = 1e-3;
  private static final double NOTHING = 1e-16;

  private final double[] capacity;
  private final double[] conductance;
  private final double growth;
  private final double dry;
  private final double wet;
  private final DryingSurface surface;
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

  DryingSolver(DryingSlab slab, DryingGrid grid) {
    EarthMoisture earth = slab.earth();
    growth = earth.growth();
    dry = earth.dryDiffusivity();
    wet = earth.wetMoisture();
    surface = new DryingSurface(earth);
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
    double evaporated1 = flux[1];
    for (int i = 1; i <= cells; i++) {
      base[i] = moisture[i] + (1 - GAMMA) * dt * rate1[i];
      stage2[i] = stage1[i];
    }
    stage2[0] = stage1[0];
    if (!solve(stage2, GAMMA * dt, rate2)) {
      return Outcome.FAILED;
    }
    double evaporated2 = flux[1];
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
    for (int i = 0; i <= cells; i++) {
      // Rounding may leave a bone-dry cell a trace below nothing.
      moisture[i] = Math.max(stage2[i], NOTHING);
    }
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
        // So small a step solves the linear system and the true one alike to rounding (their
        // difference goes with its square): each cell gained what the fluxes brought it.
        for (int i = 1; i <= cells; i++) {
          rate[i] = (u[i] - base[i]) / w;
        }
        return true;
      }
    }
    return false;
  }

  private void fluxes(double[] u) {
    double scale = dry * mobility;
    for (int i = 1; i <= cells; i++) {
      if (growth == 0) {
        slope[i] = scale;
        potential[i] = scale * u[i];
      } else {
        slope[i] = scale * StrictMath.exp(growth * Math.min(u[i], wet));
        potential[i] = slope[i] / growth + slope[i] * Math.max(0, u[i] - wet);
      }
    }
    surface.solve(u[0], potential[1], conductance[1], scale, exchange, humidity);
    u[0] = surface.moisture();
    flux[1] = surface.evaporation();
    for (int i = 2; i <= cells; i++) {
      flux[i] = conductance[i] * (potential[i] - potential[i - 1]);
    }
    flux[cells + 1] = 0;
  }

  /**
   * One Newton step by the Thomas algorithm, of the cells and of what evaporates; returns the
   * largest change of a moisture.
   */
  private double correct(double[] u, double w) {
    double above = surface.evaporationSlope() * slope[1];
    double upperBefore = 0;
    double rightBefore = 0;
    for (int i = 1; i <= cells; i++) {
      double below = i < cells ? conductance[i + 1] : 0;
      double residual = capacity[i] * (u[i] - base[i]) - w * (flux[i + 1] - flux[i]);
      double lower = i > 1 ? -w * conductance[i] * slope[i - 1] : 0;
      double upwards = i > 1 ? conductance[i] * slope[i] : above;
      double pivot = capacity[i] + w * (below * slope[i] + upwards) - lower * upperBefore;
      upperBefore = i < cells ? -w * below * slope[i + 1] / pivot : 0;
      rightBefore = (-residual - lower * rightBefore) / pivot;
      upper[i] = upperBefore;
      right[i] = rightBefore;
    }
    double change = 0;
    double step = 0;
    for (int i = cells; i >= 1; i--) {
      step = right[i] - upper[i] * step;
      double next = u[i] + step;
      if (next < 0.1 * u[i]) {
        // Moisture stays above nothing; a step that was cut short never counts as the last one.
        next = 0.1 * u[i];
        change = Math.max(change, 1);
      }
      change = Math.max(change, Math.abs(next - u[i]));
      u[i] = next;
    }
    flux[1] += above * step;
    return change;
  }
}
