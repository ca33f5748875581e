package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/** Density, lower bound and gap of a layout on a strip. */
public final class LayoutMeasures {

  private static final Source AREA = Source.derived("areas of pieces that do not overlap add up");

  private LayoutMeasures() {}

  /**
   * Density of a layout: {@code d = A / S}.
   *
   * @param pieceArea sum of the areas of all pieces placed A, in square metres
   * @param stockArea area of the stock used S: whole sheets, strips and rolls up to the used
   *     length, in square metres
   * @param steps takes the worked steps
   * @return the density, 0 to 1
   */
  @Calculation("geometry.layout.density")
  public static double density(double pieceArea, double stockArea, Steps steps) {
    return steps
        .step("d", "density: area of the pieces over area of the stock used")
        .formula("A / S")
        .with("A", pieceArea, "m2")
        .with("S", stockArea, "m2")
        .from(AREA)
        .gives(pieceArea / stockArea, "");
  }

  /**
   * Length below which no layout on a strip can be, of pieces that may touch: as the other without
   * spacing.
   *
   * @param pieceArea sum of the areas of all pieces, in square metres
   * @param width of the strip, in metres
   * @param longest as in the other, in metres
   * @param stacked as in the other, in metres
   * @param margin to the strip's edges, in metres
   * @param steps takes the worked steps
   * @return the bound, in metres
   */
  public static double lowerBound(
      double pieceArea, double width, double longest, double stacked, double margin, Steps steps) {
    return lowerBound(pieceArea, width, longest, stacked, margin, 0, steps);
  }

  /**
   * Length below which no layout on a strip can be: the pieces' area must fit, and the longest of
   * the pieces' least lengths, with margins at both ends. The area bound spreads the area over the
   * width inside the margins; pieces that keep a spacing stay apart with half of it around each,
   * and so does what they may lie on.
   *
   * @param pieceArea sum of the areas of all pieces, each with half of the spacing around it, in
   *     square metres
   * @param width of the strip, in metres
   * @param longest greatest over the pieces of the least length that a piece takes up along the
   *     strip in any turn allowed, in metres
   * @param stacked length that pieces need because of those beside which there is no room: the sum
   *     of the least chords along the strip's middle line of all pieces too tall to miss it, or
   *     what the sections across the strip add up to under a dual feasible function, in metres
   * @param margin to the strip's edges, in metres
   * @param spacing between pieces, in metres
   * @param steps takes the worked steps
   * @return the bound, in metres
   */
  @Calculation("geometry.layout.bound")
  public static double lowerBound(
      double pieceArea,
      double width,
      double longest,
      double stacked,
      double margin,
      double spacing,
      Steps steps) {
    double byArea =
        steps
            .step("LA", "length that the area needs")
            .formula("A_s / (W - 2 * m + s) - s")
            .with("A_s", pieceArea, "m2")
            .with("W", width, "m")
            .with("m", margin, "m")
            .with("s", spacing, "m")
            .from(AREA)
            .note(
                "A_s: areas with half of the spacing s around each piece; as much around the stock")
            .gives(pieceArea / (width - 2 * margin + spacing) - spacing, "m");
    double bySize =
        steps
            .step("LP", "length that single pieces need")
            .formula("max(p, q)")
            .with("p", longest, "m")
            .with("q", stacked, "m")
            .from(Source.derived("a piece is no shorter than in its shortest turn"))
            .note("q: pieces with no room beside them across the strip lie one behind the other")
            .gives(Math.max(longest, stacked), "m");
    return steps
        .step("LB", "lower bound")
        .formula("max(LA, LP) + 2 * m")
        .with("LA", byArea, "m")
        .with("LP", bySize, "m")
        .with("m", margin, "m")
        .from(AREA)
        .gives(Math.max(byArea, bySize) + 2 * margin, "m");
  }
}
