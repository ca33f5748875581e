package io.github.seamstead.materials.water;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Optional;

/**
 * Bulking of damp sand over the whole range of moisture: how much more room it takes than the same
 * sand dry or flooded. Films of water hold the grains apart, so bulking rises to a broad top; more
 * water breaks the films and it falls back to nothing.
 *
 * <p>The likely curve is that of a medium sand: the published points up to 5 % ({@link #SOURCE}), a
 * top as broad as measured sands have ({@link #TOP}) and a straight fall to nothing ({@link
 * #FALL}). The ends of the range are a coarse and a fine sand. Sands differ by half and more, so a
 * tin test of the sand itself ({@link #ofTin}) is worth more than the curve.
 *
 * @param measured bulking measured in a tin, over that of the likely curve at the tin's moisture;
 *     empty for the published curve; 0 to 3
 */
public record SandBulking(Optional<Double> measured) {

  /** The rise of a medium sand: 2 to 5 % of moisture. */
  public static final Source SOURCE =
      Source.found("IS 2386 Part 3 (as quoted)", "Bulkage of sand", "", "moisture and bulking");

  /** The top: 36 to 41 % of bulking from 6 to 10 % of water in a measured fine sand. */
  public static final Source TOP =
      Source.found("", "Bulking of sand, student laboratory report", "", "no fall up to 10 %");

  /** The fall: coarse sand back at nothing at 12 to 15 %, medium at 17 %, fine at 20 %. */
  public static final Source FALL =
      Source.fromMemory("Neville", "Properties of Concrete", "", "bulking of three sands, figure");

  /** The tin test is read over the flooded volume. */
  private static final Source TIN =
      Source.found("IS 2386 Part 3 (as quoted)", "Bulkage of sand", "", "flooded height");

  private static final double[] LIKELY_AT = {0, 0.02, 0.03, 0.04, 0.05, 0.08, 0.17};
  private static final double[] LIKELY = {0, 0.15, 0.20, 0.25, 0.30, 0.30, 0};
  private static final double[] COARSE_AT = {0, 0.02, 0.05, 0.06, 0.12};
  private static final double[] COARSE = {0, 0.10, 0.15, 0.15, 0};
  private static final double[] FINE_AT = {0, 0.02, 0.03, 0.04, 0.06, 0.08, 0.10, 0.20};
  private static final double[] FINE = {0, 0.19, 0.294, 0.322, 0.364, 0.408, 0.408, 0};

  /** Doubt that is left after a tin test: the crew's filling and the moisture's guess. */
  private static final double TIN_DOUBT = 0.15;

  private static final double MOST = 1;

  public SandBulking {
    measured.ifPresent(
        factor ->
            Args.require(
                factor >= 0 && factor <= 3,
                "tin test",
                Numbers.significant(factor, 3)
                    + " times the bulking of a usual sand at that moisture",
                "must be from 0 to 3 times (was the moisture measured on the same sand?)"));
  }

  /**
   * Takes the published curve.
   *
   * @return bulking of a medium sand, its ends a coarse and a fine one
   */
  public static SandBulking published() {
    return new SandBulking(Optional.empty());
  }

  /**
   * Takes a tin test of the sand itself: fill a straight tin with the damp sand, note the height,
   * flood and stir it, note the height again.
   *
   * @param dampHeight height of the damp sand, in any unit of length
   * @param floodedHeight height after flooding, same unit, more than 0, at most {@code dampHeight}
   * @param moisture water over dry mass of the sand in the tin, 0.005 to 0.15
   * @return the curve through the measured point
   * @throws IllegalArgumentException if a value is out of range
   */
  public static SandBulking ofTin(double dampHeight, double floodedHeight, double moisture) {
    return ofTin(tin(dampHeight, floodedHeight, Steps.none()), moisture);
  }

  /**
   * Takes a bulking that was measured at a moisture.
   *
   * @param bulking over the flooded volume, 0 to 1
   * @param moisture water over dry mass of the sand in the tin, 0.005 to 0.15
   * @return the curve through the measured point
   * @throws IllegalArgumentException if a value is out of range
   */
  public static SandBulking ofTin(double bulking, double moisture) {
    Args.within("bulking", bulking, 0, MOST, "");
    Args.within("moisture of the sand in the tin", moisture, 0.005, 0.15, "");
    return new SandBulking(Optional.of(bulking / curve(LIKELY_AT, LIKELY, moisture)));
  }

  /**
   * Computes the bulking in a tin: (h_d − h_f) / h_f.
   *
   * @param dampHeight height of the damp sand, in any unit of length
   * @param floodedHeight height after flooding, same unit, more than 0, at most {@code dampHeight}
   * @param steps receives the formula
   * @return over the flooded volume, 0 to 1
   * @throws IllegalArgumentException if a height is out of range
   */
  @Calculation("materials.water.bulking")
  public static double tin(double dampHeight, double floodedHeight, Steps steps) {
    Args.positive("flooded height", floodedHeight, "");
    Args.require(
        dampHeight >= floodedHeight && dampHeight <= 2 * floodedHeight,
        "damp height",
        Numbers.plain(dampHeight),
        "must be from the flooded height "
            + Numbers.plain(floodedHeight)
            + " to twice it (were the two swapped, or was the sand poured dry?)");
    return steps
        .step("B", "bulking over the flooded volume")
        .formula("(h_d - h_f) / h_f")
        .with("h_d", dampHeight, "")
        .with("h_f", floodedHeight, "")
        .from(TIN)
        .gives((dampHeight - floodedHeight) / floodedHeight, "");
  }

  /**
   * Gives the bulking of the sand as it lies.
   *
   * @param moisture water over dry mass, 0 to 0.6; from about 0.2 the sand is flooded
   * @return over the dry volume: low, likely, high, each 0 to 1
   * @throws IllegalArgumentException if the moisture is out of range
   */
  public Range at(double moisture) {
    Args.within("moisture of the sand", moisture, 0, 0.6, "");
    double likely = curve(LIKELY_AT, LIKELY, moisture);
    if (measured.isEmpty()) {
      return new Range(curve(COARSE_AT, COARSE, moisture), likely, curve(FINE_AT, FINE, moisture));
    }
    double scaled = Math.min(MOST, likely * measured.get());
    return new Range(scaled * (1 - TIN_DOUBT), scaled, Math.min(MOST, scaled * (1 + TIN_DOUBT)));
  }

  /**
   * Computes the dry mass in a loose cubic metre of damp sand: ρ_l / (1 + B).
   *
   * @param looseDryDensity dry mass over volume of the sand poured dry, in kg/m³, 600 to 2200
   * @param bulking over the dry volume, 0 to 1
   * @param steps receives the formula
   * @return in kg of dry sand per m³ of damp sand
   * @throws IllegalArgumentException if a value is out of range
   */
  @Calculation("materials.water.bulked-density")
  public static double bulkedDensity(double looseDryDensity, double bulking, Steps steps) {
    Args.within("loose dry density", looseDryDensity, 600, 2200, "kg/m3");
    Args.within("bulking", bulking, 0, MOST, "");
    return steps
        .step("rho_b", "dry mass in a loose cubic metre, bulked")
        .formula("rho_l / (1 + B)")
        .with("rho_l", looseDryDensity, "kg/m3")
        .with("B", bulking, "")
        .from(SOURCE)
        .gives(looseDryDensity / (1 + bulking), "kg/m3");
  }

  private static double curve(double[] at, double[] bulking, double moisture) {
    for (int i = 1; i < at.length; i++) {
      if (moisture <= at[i]) {
        double share = (moisture - at[i - 1]) / (at[i] - at[i - 1]);
        return bulking[i - 1] + (bulking[i] - bulking[i - 1]) * share;
      }
    }
    return 0;
  }
}
