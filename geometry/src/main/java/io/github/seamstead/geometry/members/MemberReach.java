package io.github.seamstead.geometry.members;

import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.members.MemberSection.Shape;
import io.github.seamstead.geometry.members.MemberSpec.Stance;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * How far the members stand out from the faces of their centre lines, square to a face. The section
 * is the same on both sides of its centre line, so this is also how far they stand in.
 *
 * <p>A pipe reaches its radius. Of a timber it is the outermost arris that counts: of a level ring
 * {@code w/2 sin(theta) + d/2 cos(theta)} for a face slope theta; of a ring or purlin that lies in
 * the faces {@code d/2}; of a hip without backing bevel {@code d/2 cos(beta/2) + w/2 sin(beta/2)}
 * for a hip bend beta, since either face leans by {@code beta/2} from the hip's own upright. A
 * cover that goes over all members lies on the outermost of them.
 *
 * @param hip of the hip poles, in metres
 * @param ring of base ring and opening ring, in metres
 * @param purlin of purlin rings, in metres; 0 where there is none
 */
public record MemberReach(double hip, double ring, double purlin) {

  private static final Source ARRIS =
      Source.derived("corner of the section, projected on the normal of the face");

  /**
   * Gives the reach of a frame's members.
   *
   * @param frame the pyramid of the centre lines
   * @param spec what it is built of
   * @return how far hips, rings and purlins stand out
   */
  public static MemberReach of(RegularPyramid frame, MemberSpec spec) {
    return of(frame, spec, Steps.none());
  }

  /**
   * Gives the reach of a frame's members with the worked steps; the last step is the greatest of
   * all.
   *
   * @param frame the pyramid of the centre lines
   * @param spec what it is built of
   * @param steps where the steps are written
   * @return how far hips, rings and purlins stand out
   */
  @Calculation("geometry.members.memberreach")
  public static MemberReach of(RegularPyramid frame, MemberSpec spec, Steps steps) {
    FrameMeasures measures = frame.measures();
    double hip = hip(spec.hips(), measures.hipBend(), steps);
    double ring =
        ring("x_r", "base and opening ring", spec.rings(), spec.stance(), measures, steps);
    boolean purlins = !spec.purlinHeights().isEmpty();
    double purlin =
        purlins ? ring("x_p", "purlin rings", spec.rings(), Stance.IN_FACE, measures, steps) : 0;
    MemberReach reach = new MemberReach(hip, ring, purlin);
    Steps.Entry last =
        steps
            .step("x", "outermost member, on which the cover lies")
            .formula(purlins ? "max(x_h, max(x_r, x_p))" : "max(x_h, x_r)")
            .with("x_h", hip, "m")
            .with("x_r", ring, "m");
    if (purlins) {
      last.with("x_p", purlin, "m");
    }
    last.from(ARRIS).gives(reach.outermost(), "m");
    return reach;
  }

  /**
   * Gives the greatest reach of all members.
   *
   * @return in metres
   */
  public double outermost() {
    return Math.max(hip, Math.max(ring, purlin));
  }

  private static double hip(MemberSection section, double bend, Steps steps) {
    if (section.shape() == Shape.PIPE) {
      return pipe("x_h", "hip poles", section, steps);
    }
    return steps
        .step("x_h", "hip poles, upper arris without backing bevel")
        .formula("d / 2 * cos(beta / 2) + w / 2 * sin(beta / 2)")
        .with("d", section.depth(), "m")
        .with("w", section.width(), "m")
        .with("beta", bend, "rad")
        .from(ARRIS)
        .gives(
            section.depth() / 2 * StrictMath.cos(bend / 2)
                + section.width() / 2 * StrictMath.sin(bend / 2),
            "m");
  }

  private static double ring(
      String symbol,
      String what,
      MemberSection section,
      Stance stance,
      FrameMeasures measures,
      Steps steps) {
    if (section.shape() == Shape.PIPE) {
      return pipe(symbol, what, section, steps);
    }
    if (stance == Stance.IN_FACE) {
      return steps
          .step(symbol, what + ", lying in the faces")
          .formula("d / 2")
          .with("d", section.depth(), "m")
          .from(ARRIS)
          .gives(section.depth() / 2, "m");
    }
    double slope = measures.faceSlope();
    return steps
        .step(symbol, what + ", outer upper arris of a level timber")
        .formula("w / 2 * sin(theta) + d / 2 * cos(theta)")
        .with("w", section.width(), "m")
        .with("d", section.depth(), "m")
        .with("theta", slope, "rad")
        .from(ARRIS)
        .gives(
            section.width() / 2 * StrictMath.sin(slope)
                + section.depth() / 2 * StrictMath.cos(slope),
            "m");
  }

  private static double pipe(String symbol, String what, MemberSection section, Steps steps) {
    return steps
        .step(symbol, what + ", outside radius")
        .formula("D / 2")
        .with("D", section.width(), "m")
        .from(ARRIS)
        .gives(section.width() / 2, "m");
  }
}
