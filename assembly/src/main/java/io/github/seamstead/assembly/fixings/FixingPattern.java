package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * How fixings stand along a joint: in rows, from end to end, no gap wider than the spacing.
 *
 * <p>A row on a joint of length L with end distance e and spacing s has {@code ceil((L - 2 e) / s)}
 * gaps, and one more staple or screw than gaps; a stitch is a gap. No published spacing for cloth
 * on a frame was found: the builder states it.
 *
 * @param kind what holds the seam
 * @param spacing greatest distance between neighbours of a row, in metres, greater than 0
 * @param rows rows side by side, 1 to {@link #MOST_ROWS}
 * @param end distance of the first and last fixing from the ends, in metres, 0 or more
 */
public record FixingPattern(FixingKind kind, double spacing, int rows, double end) {

  /** The most rows of one seam. */
  public static final int MOST_ROWS = 12;

  private static final double MOST_IN_A_ROW = 1e7;
  private static final Source DERIVED =
      Source.derived("equal gaps from end to end, none wider than the spacing");

  public FixingPattern {
    Args.positive("spacing of " + kind.label(), spacing, "m");
    Args.within("rows of " + kind.label(), rows, 1, MOST_ROWS);
    Args.notNegative("end distance of " + kind.label(), end, "m");
  }

  /**
   * Makes a pattern that runs from end to end.
   *
   * @param kind what holds the seam
   * @param spacing greatest distance between neighbours of a row, in metres, greater than 0
   * @param rows rows side by side, 1 to {@link #MOST_ROWS}
   * @return the pattern without end distance
   * @throws IllegalArgumentException if a number is out of range
   */
  public static FixingPattern of(FixingKind kind, double spacing, int rows) {
    return new FixingPattern(kind, spacing, rows, 0);
  }

  /**
   * Counts the fixings of a joint.
   *
   * @param jointLength length of the joint, in metres, greater than 0
   * @return fixings in all rows, a whole number
   * @throws IllegalArgumentException if the length is not positive, or a row has over ten million
   */
  public double count(double jointLength) {
    return count(jointLength, Steps.none());
  }

  /**
   * Counts the fixings of a joint with the steps.
   *
   * @param jointLength length of the joint, in metres, greater than 0
   * @param steps where the steps go
   * @return fixings in all rows, a whole number
   * @throws IllegalArgumentException if the length is not positive, or a row has over ten million
   */
  @Calculation("assembly.fixings.count")
  public double count(double jointLength, Steps steps) {
    Args.positive("joint length", jointLength, "m");
    double free = Math.max(0, jointLength - 2 * end);
    Args.require(
        free / spacing <= MOST_IN_A_ROW,
        "fixings of one row",
        "a spacing of " + Numbers.plain(spacing) + " m on " + Numbers.plain(jointLength) + " m",
        "must be at most ten million");
    double gaps =
        steps
            .step("g", "gaps of a row")
            .formula("max(0, ceil((L - 2 * e) / s - 0.000001))")
            .with("L", jointLength, "m")
            .with("e", end, "m")
            .with("s", spacing, "m")
            .from(DERIVED)
            .note("a millionth of a gap is left out of account, so that rounding adds none")
            .gives(Math.max(0, Math.ceil((jointLength - 2 * end) / spacing - 0.000001)), "");
    double least = 1;
    return steps
        .step("N", kind.label() + " of the joint")
        .formula("m * max(n_least, g + a)")
        .with("m", rows, "")
        .with("n_least", least, "")
        .with("g", gaps, "")
        .with("a", kind.atTheEnd(), "")
        .from(DERIVED)
        .note(
            kind.atTheEnd() == 1
                ? "a row has one more than it has gaps"
                : "a stitch is the step from hole to hole")
        .gives(rows * Math.max(least, gaps + kind.atTheEnd()), "");
  }
}
