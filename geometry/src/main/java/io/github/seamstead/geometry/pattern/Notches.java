package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * Where match notches stand on a seam: at whole multiples of a spacing from the base, so that both
 * mating edges have them at the same distances although the panels are cut apart.
 */
public final class Notches {

  private static final Source PRACTICE =
      Source.commonPractice("match notches at equal distances from the hem on both edges");

  /** A notch nearer the seam's end than this part of the spacing is left out. */
  private static final double END_PART = 0.1;

  private Notches() {}

  /**
   * Gives the number of notches without worked steps; see {@link #count(double, double, Steps)}.
   *
   * @param seam length of the seam, in metres, greater than 0
   * @param spacing distance from notch to notch, in metres, greater than 0
   * @return the number of notches
   * @throws IllegalArgumentException if an argument is not positive or more than 10 000 notches
   *     result
   */
  public static int count(double seam, double spacing) {
    return count(seam, spacing, Steps.none());
  }

  /**
   * Gives the number of notches {@code floor(L / t − 0.1)}: all at whole multiples of the spacing t
   * but one that would stand nearer than a tenth of the spacing to the seam's end.
   *
   * @param seam length L of the seam, in metres, greater than 0
   * @param spacing t, from notch to notch and from the base to the first, in metres, greater than 0
   * @param steps takes the worked steps
   * @return the number of notches, 0 on a seam shorter than 1.1 spacings
   * @throws IllegalArgumentException if an argument is not positive or more than 10 000 notches
   *     result
   */
  @Calculation("geometry.pattern.notches")
  public static int count(double seam, double spacing, Steps steps) {
    Args.positive("seam length", seam, "m");
    Args.positive("notch spacing", spacing, "m");
    double ratio = seam / spacing;
    Args.require(
        ratio <= 10_000,
        "notch spacing",
        () -> Numbers.plain(spacing) + " m on a seam of " + Numbers.plain(seam) + " m",
        "must be wider");
    return (int)
        steps
            .step("N", "notches on the seam")
            .formula("max(0, floor(L / t - 0.1))")
            .with("L", seam, "m")
            .with("t", spacing, "m")
            .from(PRACTICE)
            .note("none nearer than a tenth of the spacing to the seam's end")
            .gives(Math.max(0, Math.floor(ratio - END_PART)), "");
  }

  /**
   * Gives the distances of the notches from the base.
   *
   * @param seam length of the seam, in metres, greater than 0
   * @param spacing from notch to notch and from the base to the first, in metres, greater than 0
   * @return the distances in rising order, in metres; empty on a short seam
   * @throws IllegalArgumentException as {@link #count(double, double)} does
   */
  public static List<Double> distances(double seam, double spacing) {
    int count = count(seam, spacing);
    List<Double> distances = new ArrayList<>(count);
    for (int i = 1; i <= count; i++) {
      distances.add(i * spacing);
    }
    return distances;
  }
}
