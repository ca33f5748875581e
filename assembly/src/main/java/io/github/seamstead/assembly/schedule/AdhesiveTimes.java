package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import java.util.Optional;

/**
 * Open and cure time of an adhesive, and how fast the crew spreads and presses.
 *
 * <p>A portion of length l is spread from end to end, then pressed from the same end. The place at
 * x waits {@code (l - x) / v_spread + x / v_press}, at most {@code l * max(1 / v_spread, 1 /
 * v_press)}. Every place is pressed within the open time if {@code l <= open / max(...)}.
 *
 * @param openTime how long a bead may wait before it is pressed, in seconds, greater than 0; the
 *     maker states it for a temperature
 * @param cureTime how long the joint must rest before its group is handled, in seconds, 0 or more
 * @param spreadTimePerLength time to spread a metre, in s/m, greater than 0
 * @param pressTimePerLength time to press a metre, in s/m, greater than 0
 */
public record AdhesiveTimes(
    double openTime, double cureTime, double spreadTimePerLength, double pressTimePerLength) {

  private static final Source DERIVED =
      Source.derived("longest wait between spreading and pressing");

  public AdhesiveTimes {
    Args.positive("open time", openTime, "s");
    Args.notNegative("cure time", cureTime, "s");
    Args.positive("spreading", spreadTimePerLength, "s/m");
    Args.positive("pressing", pressTimePerLength, "s/m");
  }

  /**
   * Computes the longest portion that may be spread at once.
   *
   * @return in metres
   */
  public double longestPortion() {
    return openTime / Math.max(spreadTimePerLength, pressTimePerLength);
  }

  /**
   * Computes in how many portions a joint must be glued.
   *
   * @param jointLength length of the joint, in metres, greater than 0
   * @return 1 or more
   */
  public double portions(double jointLength) {
    return portions(jointLength, Steps.none());
  }

  /**
   * Computes in how many portions a joint must be glued, with the steps.
   *
   * @param jointLength length of the joint, in metres, greater than 0
   * @param steps where the steps go
   * @return 1 or more, a whole number
   */
  @Calculation("assembly.schedule.adhesive")
  public double portions(double jointLength, Steps steps) {
    Args.positive("joint length", jointLength, "m");
    double longest =
        steps
            .step("l_max", "longest portion within the open time")
            .formula("t_open / max(k_spread, k_press)")
            .with("t_open", openTime, "s")
            .with("k_spread", spreadTimePerLength, "s/m")
            .with("k_press", pressTimePerLength, "s/m")
            .from(DERIVED)
            .gives(longestPortion(), "m");
    return steps
        .step("N", "portions of the joint")
        .formula("max(1, ceil(L / l_max - 0.000001))")
        .with("L", jointLength, "m")
        .with("l_max", longest, "m")
        .note("a millionth of a portion is left out of account, so that rounding adds none")
        .gives(Math.max(1, Math.ceil(jointLength / longest - 0.000001)), "");
  }

  /**
   * Computes how long a joint keeps the team.
   *
   * @param jointLength length of the joint, in metres, greater than 0
   * @return spreading and pressing, in seconds; the cure comes on top but needs nobody
   */
  public double workTime(double jointLength) {
    return Args.positive("joint length", jointLength, "m")
        * (spreadTimePerLength + pressTimePerLength);
  }

  /**
   * Gives the caution that goes with gluing.
   *
   * @return fire and vapour
   */
  public Caution caution() {
    return new Caution(
        Hazard.FIRE,
        "Many adhesives give off vapour that burns and harms while they are spread and while they"
            + " cure.",
        "Keep flames, heaters and sparks away from adhesive, work in moving air, follow the maker's"
            + " sheet for open time, cure and protection.",
        Optional.empty());
  }
}
