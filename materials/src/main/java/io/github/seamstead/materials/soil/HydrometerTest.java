package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * Hydrometer analysis with an ASTM 152H hydrometer.
 *
 * <p>Each reading gives a diameter by Stokes' law, {@code D = sqrt(18 mu L / ((rho_s - rho_w) g
 * t))} with the effective depth {@code L = 10.5 - 0.164 R + (14 - 67/27.8)/2} cm of the raw
 * reading, and a share finer, {@code P = a (R - R_blank + C_T) / m}. Likelihood: the shares below
 * 0.002 and 0.05 mm, read on the logarithmic axis, are normal about the texture's with a standard
 * deviation of 0.025 plus 0.04 for each factor of e that the reading reaches beyond its points;
 * with probability 0.02 it misleads.
 *
 * @param readings two or more, in order of time; readings not rising
 * @param soilPerLitre dry soil in the suspension, g/L, 10 to 120
 * @param celsius temperature, 15 to 30 degC
 * @param blankReading reading in the dispersant solution alone, g/L, -5 to 15
 * @param particleDensity density of the grains, 2400 to 3000 kg/m3
 */
public record HydrometerTest(
    List<Reading> readings,
    double soilPerLitre,
    double celsius,
    double blankReading,
    double particleDensity)
    implements SoilEvidence {

  /** The method. */
  public static final Source SOURCE =
      Source.found("ASTM", "D422-63", "2007", "hydrometer analysis, 152H");

  private static final double MISLEADS = 0.02;
  private static final double[] CORRECTION = {
    -1.10, -0.90, -0.70, -0.50, -0.30, 0, 0.20, 0.40, 0.70, 1.00, 1.30, 1.65, 2.00, 2.50, 3.05, 3.80
  };

  /**
   * One reading.
   *
   * @param time time since the start, s; 20 s to 10 days
   * @param reading reading of the hydrometer, g/L; -5 to 60 g/L, the scale of a 152H
   */
  public record Reading(double time, double reading) {

    public Reading {
      Args.within("time of the hydrometer reading", time, 20, 864000, "s");
      Args.within("hydrometer reading", reading, -5, 60, "g/L");
    }
  }

  public HydrometerTest {
    readings = List.copyOf(readings);
    Args.require(
        readings.size() >= 2,
        "hydrometer readings",
        String.valueOf(readings.size()),
        "must be 2 or more");
    for (int i = 1; i < readings.size(); i++) {
      Args.require(
          readings.get(i).time > readings.get(i - 1).time
              && readings.get(i).reading <= readings.get(i - 1).reading,
          "hydrometer reading "
              + (i + 1)
              + ": must be later than the one before and not higher (grains only sink)");
    }
    Args.within("soil in suspension", soilPerLitre, 10, 120, "g/L");
    Args.within("temperature of the suspension", celsius, 15, 30, "degC");
    Args.within("blank reading", blankReading, -5, 15, "g/L");
    Args.within("particle density", particleDensity, 2400, 3000, "kg/m3");
  }

  /**
   * Gives the diameter that a reading stands for.
   *
   * @param reading the reading
   * @return diameter in metres
   */
  public double diameter(Reading reading) {
    return diameter(reading, Steps.none());
  }

  /**
   * As {@link #diameter(Reading)}, with its worked steps.
   *
   * @param reading the reading
   * @param steps receives the worked steps
   * @return diameter in metres
   */
  @Calculation("materials.soil.hydrometer_diameter")
  public double diameter(Reading reading, Steps steps) {
    double depth =
        steps
            .step("L", "effective depth")
            .formula("(10.5 - 0.164 * R + 0.5 * (14 - 67 / 27.8)) / 100")
            .with("R", reading.reading, "g/L")
            .from(SOURCE)
            .gives((10.5 - 0.164 * reading.reading + 0.5 * (14 - 67 / 27.8)) / 100, "m");
    return Stokes.smallestSettled(depth, reading.time, celsius, particleDensity, steps);
  }

  /**
   * Gives the share finer than the reading's diameter.
   *
   * @param reading the reading
   * @return share of the dry mass in the suspension, cut to 0 to 1
   */
  public double finerRatio(Reading reading) {
    return finerRatio(reading, Steps.none());
  }

  /**
   * As {@link #finerRatio(Reading)}, with its worked steps.
   *
   * @param reading the reading
   * @param steps receives the worked steps
   * @return share of the dry mass in the suspension, cut to 0 to 1
   */
  @Calculation("materials.soil.hydrometer_finer")
  public double finerRatio(Reading reading, Steps steps) {
    double gravity = particleDensity / 1000;
    double factor =
        steps
            .step("a", "correction for the density of the grains")
            .formula("G * 1.65 / ((G - 1) * 2.65)")
            .with("G", gravity, "")
            .from(SOURCE)
            .gives(gravity * 1.65 / ((gravity - 1) * 2.65), "");
    double correction = correction();
    double share = factor * (reading.reading - blankReading + correction) / soilPerLitre;
    return steps
        .step("P", "share finer")
        .formula("min(1, max(0, a * (R - R_b + C_T) / m))")
        .with("a", factor, "")
        .with("R", reading.reading, "g/L")
        .with("R_b", blankReading, "g/L")
        .with("C_T", correction, "g/L")
        .with("m", soilPerLitre, "g/L")
        .from(SOURCE)
        .note("C_T: temperature correction, from its table")
        .gives(Math.min(1, Math.max(0, share)), "");
  }

  /** Temperature correction in reading units, straight between whole degrees. */
  private double correction() {
    int i = Math.min((int) (celsius - 15), CORRECTION.length - 2);
    return CORRECTION[i] + (CORRECTION[i + 1] - CORRECTION[i]) * (celsius - 15 - i);
  }

  /**
   * Reads the share finer than a diameter from the points, straight on the logarithmic axis and
   * straight on beyond the ends.
   *
   * @param diameter diameter, in metres
   * @return share finer, cut to 0 to 1
   */
  public double finerAt(double diameter) {
    Args.positive("grain diameter", diameter, "m");
    List<double[]> points = points();
    int i = 1;
    while (i < points.size() - 1 && diameter < points.get(i)[0]) {
      i++;
    }
    double[] coarse = points.get(i - 1);
    double[] fine = points.get(i);
    double slope = (coarse[1] - fine[1]) / StrictMath.log(coarse[0] / fine[0]);
    return Math.min(1, Math.max(0, fine[1] + slope * StrictMath.log(diameter / fine[0])));
  }

  private List<double[]> points() {
    List<double[]> points = new ArrayList<>();
    for (Reading reading : readings) {
      points.add(new double[] {diameter(reading), finerRatio(reading)});
    }
    return points;
  }

  @Override
  public String label() {
    return "hydrometer: "
        + readings.size()
        + " readings at "
        + Numbers.significant(celsius, 3)
        + " degC";
  }

  @Override
  public List<Source> sources() {
    return List.of(SOURCE, Stokes.SOURCE);
  }

  @Override
  public TextureLikelihood likelihood() {
    double seenClay = finerAt(GrainSizes.CLAY_TO);
    double seenFines = finerAt(GrainSizes.SILT_TO);
    double clayVariance = StrictMath.pow(deviation(GrainSizes.CLAY_TO), 2);
    double finesVariance = StrictMath.pow(deviation(GrainSizes.SILT_TO), 2);
    return (clay, silt, sand) ->
        (1 - MISLEADS)
                * Densities.normal(
                    seenClay - clay, seenFines - clay - silt, clayVariance, finesVariance)
            + 2 * MISLEADS;
  }

  private double deviation(double diameter) {
    double coarsest = diameter(readings.get(0));
    double finest = diameter(readings.get(readings.size() - 1));
    double beyond =
        Math.max(
            0, Math.max(StrictMath.log(diameter / coarsest), StrictMath.log(finest / diameter)));
    return 0.025 + 0.04 * beyond;
  }

  @Override
  public List<String> remarks() {
    double finest = diameter(readings.get(readings.size() - 1));
    return finest > 1.5 * GrainSizes.CLAY_TO
        ? List.of(
            "The last reading stands for "
                + Numbers.significant(finest * 1e6, 2)
                + " micrometres, not 2: clay below it is reached by drawing the curve on. Read"
                + " again after 6 to 8 hours or more.")
        : List.of();
  }
}
