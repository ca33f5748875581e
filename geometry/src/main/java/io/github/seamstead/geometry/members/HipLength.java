package io.github.seamstead.geometry.members;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/** The length of bar that a hip pole takes. */
public final class HipLength {

  private static final Source GROUND =
      Source.derived("centre line less set-backs, or on to the long point");

  private HipLength() {}

  /**
   * Gives the cut length of a hip pole: the centre line less the set-backs. A pipe with a set-back
   * is cut square there. All else is cut level at the foot and plumb at the head, the set-back
   * short of the node along the centre line, and its longest point lies half its depth off the
   * centre line: {@code + (d/2) / tan(gamma)} at the foot, {@code + (d/2) tan(gamma)} at the head.
   * The last step is the cut length.
   *
   * @param centreLine node to node along the hip, in metres, greater than 0
   * @param hipSlope γ, in radians, more than 0 and less than π/2
   * @param section the pole's section
   * @param footSetBack in metres, 0 or more
   * @param headSetBack in metres, 0 or more
   * @param steps where the steps are written
   * @return the cut length, in metres
   * @throws IllegalArgumentException if an argument is outside its range or nothing is left
   */
  @Calculation("geometry.members.hiplength")
  public static double cutLength(
      double centreLine,
      double hipSlope,
      MemberSection section,
      double footSetBack,
      double headSetBack,
      Steps steps) {
    Args.positive("centre line of the hip", centreLine, "m");
    Args.between("hip slope", hipSlope, 0, Math.PI / 2, "rad");
    Args.notNegative("set-back at the foot", footSetBack, "m");
    Args.notNegative("set-back at the head", headSetBack, "m");
    Args.require(
        footSetBack + headSetBack < centreLine,
        "set-backs of the hip",
        Numbers.plain(footSetBack) + " m and " + Numbers.plain(headSetBack) + " m",
        "must leave something of the "
            + Numbers.significant(centreLine, 6)
            + " m between the nodes");
    double line = steps.step("L", "centre line of the hip").gives(centreLine, "m");
    double slope = steps.step("gamma", "hip slope").gives(hipSlope, "rad");
    double depth = steps.step("d", "depth of the section").gives(section.depth(), "m");
    double foot =
        end(
            "x_f",
            "foot",
            footSetBack,
            section,
            "d / 2 / tan(gamma)",
            depth / 2 / StrictMath.tan(slope),
            slope,
            steps);
    double head =
        end(
            "x_h",
            "head",
            headSetBack,
            section,
            "d / 2 * tan(gamma)",
            depth / 2 * StrictMath.tan(slope),
            slope,
            steps);
    return steps
        .step("C", "cut length of the hip")
        .formula("L + x_f + x_h")
        .with("L", line, "m")
        .with("x_f", foot, "m")
        .with("x_h", head, "m")
        .from(GROUND)
        .gives(line + foot + head, "m");
  }

  private static double end(
      String symbol,
      String end,
      double setBack,
      MemberSection section,
      String formula,
      double longPoint,
      double slope,
      Steps steps) {
    if (section.endsSquareAt(setBack)) {
      return steps
          .step(symbol, "set-back of the square end at the " + end)
          .formula("-b_" + end)
          .with("b_" + end, setBack, "m")
          .from(GROUND)
          .gives(-setBack, "m");
    }
    return steps
        .step(symbol, "on to the long point at the " + end)
        .formula(formula + " - b_" + end)
        .with("d", section.depth(), "m")
        .with("gamma", slope, "rad")
        .with("b_" + end, setBack, "m")
        .from(GROUND)
        .gives(longPoint - setBack, "m");
  }
}
