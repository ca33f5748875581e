package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * The cloth that a panel needs across and up, worked by hand formula: the figures by which a
 * builder judges whether a sheet is large enough. They agree with the bounds of the cut line.
 */
public final class CutSize {

  private static final Source PLANE = Source.derived("right triangles at the panel's corners");

  /** Relative difference of the hips above which a panel is not symmetrical. */
  private static final double SYMMETRY = 1e-9;

  private CutSize() {}

  /**
   * Tells whether the hand formulas hold for a panel: both hips lean inwards, both sides are alike
   * and the base is not joined. The bounds of the cut line hold always.
   *
   * @param face the finished face, in metres
   * @param spec the allowances
   * @return true if {@link #width(Outline, PanelSpec)} and {@link #height(Outline, PanelSpec)} give
   *     the size of the cut panel
   */
  public static boolean holdsFor(Outline face, PanelSpec spec) {
    EdgePlan edges = spec.edges();
    EdgeAllowance base = edges.base();
    return (base.width() == 0 || base.role().isFolded())
        && isSymmetrical(face, edges)
        && isLeaningIn(angleAt(face, 0))
        && isLeaningIn(angleAt(face, 1));
  }

  private static boolean isSymmetrical(Outline face, EdgePlan edges) {
    double leftHip = face.edgeLength(face.size() - 1);
    return face.size() <= 4
        && Math.abs(leftHip - face.edgeLength(1)) <= SYMMETRY * leftHip
        && Math.abs(face.vertex(2).getY() - face.vertex(face.size() - 1).getY())
            <= SYMMETRY * leftHip
        && edges.left().width() == edges.right().width();
  }

  private static boolean isLeaningIn(double angle) {
    return angle <= Math.PI / 2 * (1 + SYMMETRY);
  }

  /**
   * Gives the width without worked steps; see {@link #width(Outline, PanelSpec, Steps)}.
   *
   * @param face the finished face, its hips leaning inwards, in metres
   * @param spec the allowances; the base hemmed, raw or on a reinforced edge
   * @return along the base, in metres
   * @throws IllegalArgumentException if a hip leans outwards or the base is joined
   */
  public static double width(Outline face, PanelSpec spec) {
    return width(face, spec, Steps.none());
  }

  /**
   * Gives the width of the cut panel at its base: {@code w = b + a_l / sin φ_l + a_r / sin φ_r}.
   * Beside a base without a hem each reach is held to the mitre limit times the allowance.
   *
   * @param face the finished face, its hips leaning inwards, in metres
   * @param spec the allowances; the base hemmed, raw or on a reinforced edge
   * @param steps takes the worked steps
   * @return along the base, in metres
   * @throws IllegalArgumentException if a hip leans outwards or the base is joined
   */
  @Calculation("geometry.pattern.width")
  public static double width(Outline face, PanelSpec spec, Steps steps) {
    EdgeAllowance base = spec.edges().base();
    Args.require(
        base.width() == 0 || base.role().isFolded(),
        "panel " + spec.id(),
        "a joined base",
        "must be hemmed, raw or reinforced");
    // Beside a fold the cloth follows the hip down to the base line and is never cut short.
    double limit = base.folds() ? Double.MAX_VALUE : spec.mitreLimit();
    double left = reach("l", "left", angleAt(face, 0), spec.edges().left().width(), limit, steps);
    double right =
        reach("r", "right", angleAt(face, 1), spec.edges().right().width(), limit, steps);
    double length = face.edgeLength(0);
    return steps
        .step("w", "width of the cut panel at the base")
        .formula("b + c_l + c_r")
        .with("b", length, "m")
        .with("c_l", left, "m")
        .with("c_r", right, "m")
        .gives(length + left + right, "m");
  }

  /**
   * Gives the height without worked steps; see {@link #height(Outline, PanelSpec, Steps)}.
   *
   * @param face the finished face, symmetrical, in metres
   * @param spec the allowances, the same on both hips
   * @return square to the base, in metres
   * @throws IllegalArgumentException if the panel is not symmetrical
   */
  public static double height(Outline face, PanelSpec spec) {
    return height(face, spec, Steps.none());
  }

  /**
   * Gives the height of the cut panel: {@code h = k + f + l}, hem, face and what stands above: the
   * turn-in of a top edge, or at an apex the reach of the mitre.
   *
   * @param face the finished face with three or four corners, symmetrical, in metres
   * @param spec the allowances, the same on both hips
   * @param steps takes the worked steps
   * @return square to the base, in metres
   * @throws IllegalArgumentException if the panel is not symmetrical
   */
  @Calculation("geometry.pattern.height")
  public static double height(Outline face, PanelSpec spec, Steps steps) {
    EdgePlan edges = spec.edges();
    double leftHip = face.edgeLength(face.size() - 1);
    double rightHip = face.edgeLength(1);
    Args.require(
        isSymmetrical(face, edges),
        "panel " + spec.id(),
        "hips of " + Numbers.fixed(leftHip, 4) + " m and " + Numbers.fixed(rightHip, 4) + " m",
        "must be symmetrical",
        "else take the bounds of the cut line");
    double rise = face.bounds().height();
    double above = face.size() == 4 ? edges.top().width() : tip(face, spec, steps);
    return steps
        .step("h", "height of the cut panel")
        .formula("k + f + l")
        .with("k", edges.base().width(), "m")
        .with("f", rise, "m")
        .with("l", above, "m")
        .from(PLANE)
        .gives(edges.base().width() + rise + above, "m");
  }

  /**
   * Gives how far the cloth reaches beyond the tip of a face with three corners; see {@link
   * Mitre#reach(double, double, double, double, Steps)}.
   *
   * @param face the finished face with three corners, in metres
   * @param spec the allowances
   * @param steps takes the worked steps; the last is the reach
   * @return in metres
   * @throws IllegalArgumentException if the face has another number of corners
   */
  public static double tip(Outline face, PanelSpec spec, Steps steps) {
    Args.require(
        face.size() == 3,
        "panel " + spec.id(),
        face.size() + " corners",
        "must have three for a tip");
    EdgePlan edges = spec.edges();
    return Mitre.reach(
        angleAt(face, 2), edges.right().width(), edges.left().width(), spec.mitreLimit(), steps);
  }

  private static double reach(
      String symbol, String side, double angle, double allowance, double limit, Steps steps) {
    Args.require(
        isLeaningIn(angle),
        "panel",
        "a base angle of " + Numbers.fixed(Math.toDegrees(angle), 2) + "° at the " + side,
        "must be 90° or less",
        "else take the bounds of the cut line");
    double full = allowance / StrictMath.sin(angle);
    double held = limit * allowance;
    Steps.Entry step =
        steps
            .step("c_" + symbol, "cloth beyond the " + side + " base corner, along the base")
            .with("a_" + symbol, allowance, "m")
            .with("phi_" + symbol, angle, "rad")
            .from(PLANE);
    if (full <= held) {
      return step.formula("a_" + symbol + " / sin(phi_" + symbol + ")").gives(full, "m");
    }
    return step.formula("m * a_" + symbol)
        .with("m", limit, "")
        .note("held to the mitre limit")
        .gives(held, "m");
  }

  private static double angleAt(Outline face, int corner) {
    return face.vertex(corner - 1)
        .subtract(face.vertex(corner))
        .angle(face.vertex(corner + 1).subtract(face.vertex(corner)));
  }
}
