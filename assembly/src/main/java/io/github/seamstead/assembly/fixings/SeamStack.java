package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * The layers that a fixing goes through.
 *
 * @param layers layers of cloth, 1 to {@link #MOST_LAYERS}
 * @param clothMetres thickness of one layer, in metres, greater than 0
 * @param extraMetres tape, washers or a batten in the way, in metres, 0 or more
 */
public record SeamStack(int layers, double clothMetres, double extraMetres) {

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
    Args.positive("thickness of the cloth", clothMetres, "m");
    Args.notNegative("tape or batten in the seam", extraMetres, "m");
  }

  /**
   * Computes what a fixing goes through.
   *
   * @return in metres
   */
  public double thicknessMetres() {
    return layers * clothMetres + extraMetres;
  }

  /**
   * Computes the least length of a staple leg or screw.
   *
   * @param beyondMetres what turns over or bites on the far side, in metres, greater than 0
   * @return in metres
   * @throws IllegalArgumentException if the length is not positive
   */
  public double leastLegMetres(double beyondMetres) {
    return leastLegMetres(beyondMetres, Steps.none());
  }

  /**
   * Computes the least length of a staple leg or screw with the steps.
   *
   * @param beyondMetres what turns over or bites on the far side, in metres, greater than 0
   * @param steps where the steps go
   * @return in metres
   * @throws IllegalArgumentException if the length is not positive
   */
  @Calculation("assembly.fixings.leg")
  public double leastLegMetres(double beyondMetres, Steps steps) {
    Args.positive("length beyond the layers", beyondMetres, "m");
    double thick = thickness(steps);
    return steps
        .step("l", "least length of a leg")
        .formula("T + b")
        .with("T", thick, "m")
        .with("b", beyondMetres, "m")
        .from(CLINCH)
        .gives(thick + beyondMetres, "m");
  }

  /**
   * Computes the thread of a lockstitched seam.
   *
   * @param stitchMetres length of a stitch, in metres, 0.0001 to 1
   * @param seamMetres length of the seam, in metres, greater than 0
   * @param rows rows of stitches, 1 to {@link FixingPattern#MOST_ROWS}
   * @return needle and bobbin thread together, in metres, without ends and waste
   * @throws IllegalArgumentException if a number is out of range
   */
  public double threadMetres(double stitchMetres, double seamMetres, int rows) {
    return threadMetres(stitchMetres, seamMetres, rows, Steps.none());
  }

  /**
   * Computes the thread of a lockstitched seam with the steps: {@code 2 rows L (1 + T / s)}. Slack
   * threads use more.
   *
   * @param stitchMetres length of a stitch, in metres, 0.0001 to 1
   * @param seamMetres length of the seam, in metres, greater than 0
   * @param rows rows of stitches, 1 to {@link FixingPattern#MOST_ROWS}
   * @param steps where the steps go
   * @return needle and bobbin thread together, in metres, without ends and waste
   * @throws IllegalArgumentException if a number is out of range
   */
  @Calculation("assembly.fixings.thread")
  public double threadMetres(double stitchMetres, double seamMetres, int rows, Steps steps) {
    Args.within("stitch", stitchMetres, 0.0001, 1, "m");
    Args.positive("seam", seamMetres, "m");
    Args.within("rows of stitches", rows, 1, FixingPattern.MOST_ROWS);
    double thick = thickness(steps);
    return steps
        .step("l_thread", "thread of the seam")
        .formula("2 * m * L * (1 + T / s)")
        .with("m", rows, "")
        .with("L", seamMetres, "m")
        .with("T", thick, "m")
        .with("s", stitchMetres, "m")
        .from(LOCKSTITCH)
        .gives(2 * rows * seamMetres * (1 + thick / stitchMetres), "m");
  }

  private double thickness(Steps steps) {
    return steps
        .step("T", "thickness of the layers")
        .formula("k * t + x")
        .with("k", layers, "")
        .with("t", clothMetres, "m")
        .with("x", extraMetres, "m")
        .gives(thicknessMetres(), "m");
  }
}
