package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * The layers that a fixing goes through.
 *
 * @param layers layers of cloth, 1 to {@link #MOST_LAYERS}
 * @param clothThickness thickness of one layer, in metres, greater than 0
 * @param extra tape, washers or a batten in the way, in metres, 0 or more
 */
public record SeamStack(int layers, double clothThickness, double extra) {

  /** The most layers of one seam. */
  public static final int MOST_LAYERS = 40;

  /** Two panels lie on each other in a seam; where seams meet there are more. */
  public static final int USUAL_LAYERS = 2;

  /** What a staple of a plier stapler turns over on the far side: 4 mm, common practice. */
  public static final double STAPLE_CLINCH = 0.004;

  private static final Source CLINCH =
      Source.commonPractice("a staple reaches through the layers and turns over on the far side");
  private static final Source LOCKSTITCH =
      Source.derived(
          "lockstitch: two threads, each as long as the stitch and, as they interlock half way,"
              + " together twice through the layers");

  public SeamStack {
    Args.within("layers of a seam", layers, 1, MOST_LAYERS);
    Args.positive("thickness of the cloth", clothThickness, "m");
    Args.notNegative("tape or batten in the seam", extra, "m");
  }

  /**
   * Computes what a fixing goes through.
   *
   * @return in metres
   */
  public double thickness() {
    return layers * clothThickness + extra;
  }

  /**
   * Computes the least length of a staple leg or screw.
   *
   * @param beyond what turns over or bites on the far side, in metres, greater than 0
   * @return in metres
   * @throws IllegalArgumentException if the length is not positive
   */
  public double leastLeg(double beyond) {
    return leastLeg(beyond, Steps.none());
  }

  /**
   * Computes the least length of a staple leg or screw with the steps.
   *
   * @param beyond what turns over or bites on the far side, in metres, greater than 0
   * @param steps where the steps go
   * @return in metres
   * @throws IllegalArgumentException if the length is not positive
   */
  @Calculation("assembly.fixings.leg")
  public double leastLeg(double beyond, Steps steps) {
    Args.positive("length beyond the layers", beyond, "m");
    double thick = thickness(steps);
    return steps
        .step("l", "least length of a leg")
        .formula("T + b")
        .with("T", thick, "m")
        .with("b", beyond, "m")
        .from(CLINCH)
        .gives(thick + beyond, "m");
  }

  /**
   * Computes the thread of a lockstitched seam.
   *
   * @param stitch length of a stitch, in metres, 0.0001 to 1
   * @param seamLength length of the seam, in metres, greater than 0
   * @param rows rows of stitches, 1 to {@link FixingPattern#MOST_ROWS}
   * @return needle and bobbin thread together, in metres, without ends and waste
   * @throws IllegalArgumentException if a number is out of range
   */
  public double threadLength(double stitch, double seamLength, int rows) {
    return threadLength(stitch, seamLength, rows, Steps.none());
  }

  /**
   * Computes the thread of a lockstitched seam with the steps: {@code 2 rows L (1 + T / s)}. Slack
   * threads use more.
   *
   * @param stitch length of a stitch, in metres, 0.0001 to 1
   * @param seamLength length of the seam, in metres, greater than 0
   * @param rows rows of stitches, 1 to {@link FixingPattern#MOST_ROWS}
   * @param steps where the steps go
   * @return needle and bobbin thread together, in metres, without ends and waste
   * @throws IllegalArgumentException if a number is out of range
   */
  @Calculation("assembly.fixings.thread")
  public double threadLength(double stitch, double seamLength, int rows, Steps steps) {
    Args.within("stitch", stitch, 0.0001, 1, "m");
    Args.positive("seam", seamLength, "m");
    Args.within("rows of stitches", rows, 1, FixingPattern.MOST_ROWS);
    double thick = thickness(steps);
    return steps
        .step("l_thread", "thread of the seam")
        .formula("2 * m * L * (1 + T / s)")
        .with("m", rows, "")
        .with("L", seamLength, "m")
        .with("T", thick, "m")
        .with("s", stitch, "m")
        .from(LOCKSTITCH)
        .gives(2 * rows * seamLength * (1 + thick / stitch), "m");
  }

  private double thickness(Steps steps) {
    return steps
        .step("T", "thickness of the layers")
        .formula("k * t + x")
        .with("k", layers, "")
        .with("t", clothThickness, "m")
        .with("x", extra, "m")
        .gives(thickness(), "m");
  }
}
