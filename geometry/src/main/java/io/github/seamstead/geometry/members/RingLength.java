package io.github.seamstead.geometry.members;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/** The length of bar that a member of a ring takes. */
public final class RingLength {

  private static final Source GROUND =
      Source.derived("side less set-backs, or between the long points of the mitre plane");

  private RingLength() {}

  /**
   * Gives the cut length of a ring member. A pipe with a set-back is cut square: {@code a - 2 b}.
   * All else is cut to the mitre, parallel to the plane that halves the corner and the set-back
   * short of the node along the centre line, and is measured between its longest points: {@code a -
   * 2 b + w tan(M) + d tan(T) / cos(M)}. The last step is the cut length.
   *
   * @param name the member's name, for messages
   * @param side node to node, in metres, greater than 0
   * @param cut the saw setting at both ends; not used for a pipe with a set-back
   * @param section the member's section, its width lying on the saw table
   * @param setBack from the node to the cut at each end, along the centre line, in metres, 0 or
   *     more
   * @param steps where the steps are written
   * @return the cut length, in metres
   * @throws IllegalArgumentException if an argument is outside its range or nothing is left
   */
  @Calculation("geometry.members.ringlength")
  public static double cutLength(
      String name,
      double side,
      CompoundCut cut,
      MemberSection section,
      double setBack,
      Steps steps) {
    Args.positive("side of " + name, side, "m");
    Args.notNegative("set-back of " + name, setBack, "m");
    Args.require(
        2 * setBack < side,
        "set-back of " + name,
        Numbers.plain(setBack) + " m at each end",
        "must leave something of the " + Numbers.significant(side, 6) + " m between the nodes");
    double a = steps.step("a", "side between the nodes").gives(side, "m");
    if (section.endsSquareAt(setBack)) {
      return steps
          .step("C", "cut length of the ring member, square ends")
          .formula("a - 2 * b")
          .with("a", a, "m")
          .with("b", setBack, "m")
          .from(GROUND)
          .gives(a - 2 * setBack, "m");
    }
    return steps
        .step("C", "cut length of the ring member, long point to long point")
        .formula("a - 2 * b + w * tan(M) + d * tan(T) / cos(M)")
        .with("a", a, "m")
        .with("b", setBack, "m")
        .with("w", section.width(), "m")
        .with("d", section.depth(), "m")
        .with("M", cut.mitre(), "rad")
        .with("T", cut.tilt(), "rad")
        .from(GROUND)
        .gives(
            a
                - 2 * setBack
                + section.width() * StrictMath.tan(cut.mitre())
                + section.depth() * StrictMath.tan(cut.tilt()) / StrictMath.cos(cut.mitre()),
            "m");
  }
}
