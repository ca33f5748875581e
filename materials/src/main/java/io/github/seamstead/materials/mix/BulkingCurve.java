package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * Bulking of damp sand: how much more room it takes than the same sand dry or flooded.
 *
 * <p>{@code bulking = (h_damp - h_flooded) / h_flooded}; the base is always the flooded height,
 * which equals the dry settled one. A dry-poured height gives another, smaller number and is not
 * used.
 */
public final class BulkingCurve {

  /** The published points: 2 to 5 % of moisture. */
  public static final Source SOURCE =
      Source.found("IS 2386 Part 3 (as quoted)", "Bulkage of sand", "", "moisture and bulking");

  private static final double[] MOISTURE = {0, 0.02, 0.03, 0.04, 0.05};
  private static final double[] BULKING = {0, 0.15, 0.20, 0.25, 0.30};

  private BulkingCurve() {}

  /**
   * Reads the published curve of medium sand, straight between its points.
   *
   * @param moistureRatio mass of water over dry mass, 0 to 0.05
   * @return bulking as a ratio of the flooded volume, 0 to 0.30
   * @throws IllegalArgumentException above 0.05, where no curve is published: bulking first rises,
   *     then falls back to 0 when flooded
   */
  public static double published(double moistureRatio) {
    Args.require(
        moistureRatio >= 0 && moistureRatio <= 0.05,
        "moisture of sand",
        Numbers.plain(moistureRatio),
        "must be from 0 to 0.05 for the published bulking curve (beyond its end bulking falls back"
            + " to 0): measure it by flooding a sample");
    int i = 1;
    while (moistureRatio > MOISTURE[i]) {
      i++;
    }
    return BULKING[i - 1]
        + (BULKING[i] - BULKING[i - 1])
            * (moistureRatio - MOISTURE[i - 1])
            / (MOISTURE[i] - MOISTURE[i - 1]);
  }

  /**
   * Measures bulking: fill a glass with the damp sand, note the height, flood it, stir, note the
   * height again.
   *
   * @param dampHeight height of the damp sand, in any unit of length or volume
   * @param floodedHeight height after flooding, in the same unit, at most the damp one
   * @param steps receives the worked step
   * @return bulking as a ratio of the flooded volume, 0 to 1
   * @throws IllegalArgumentException if the flooded height exceeds the damp one, or the result is
   *     above 1
   */
  @Calculation("materials.mix.bulking")
  public static double measured(double dampHeight, double floodedHeight, Steps steps) {
    Args.positive("flooded height", floodedHeight, "");
    Args.require(
        dampHeight >= floodedHeight,
        "damp height",
        Numbers.plain(dampHeight),
        "must be at least the flooded height "
            + Numbers.plain(floodedHeight)
            + " (were the two swapped, or was the sand poured dry?)");
    double bulking =
        steps
            .step("B", "bulking on the flooded volume")
            .formula("(h_d - h_f) / h_f")
            .with("h_d", dampHeight, "")
            .with("h_f", floodedHeight, "")
            .from(SOURCE)
            .gives((dampHeight - floodedHeight) / floodedHeight, "");
    return Args.within("bulking", bulking, 0, 1, "");
  }

  /**
   * As {@link #measured(double, double, Steps)}, without steps.
   *
   * @param dampHeight height of the damp sand
   * @param floodedHeight height after flooding
   * @return bulking as a ratio of the flooded volume
   */
  public static double measured(double dampHeight, double floodedHeight) {
    return measured(dampHeight, floodedHeight, Steps.none());
  }
}
