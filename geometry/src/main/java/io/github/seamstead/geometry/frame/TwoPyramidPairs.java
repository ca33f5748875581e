package io.github.seamstead.geometry.frame;

import static io.github.seamstead.geometry.frame.PairSteps.in;
import static io.github.seamstead.geometry.frame.PairSteps.text;
import static io.github.seamstead.geometry.frame.PairSteps.tooLarge;

import io.github.seamstead.geometry.frame.Roots.Root;
import io.github.seamstead.shared.derivation.Steps;
import java.util.ArrayList;
import java.util.List;

/** The pairs of measures that two pyramids may share; each ends in a quadratic or a cubic. */
final class TwoPyramidPairs {

  private final double cos;
  private final double m;
  private final double k;
  private final Steps steps;
  private final PairSteps at;

  TwoPyramidPairs(int sides, Steps steps) {
    this.cos = StrictMath.cos(Math.PI / sides);
    this.m = StrictMath.tan(Math.PI / sides);
    this.k = sides * m;
    this.steps = steps;
    this.at = new PairSteps(sides, steps);
  }

  Roots slantAndVolume(double slant, double volume) {
    return heightsFromVolume("s", "slant height", slant, 1, volume);
  }

  Roots hipAndVolume(double hip, double volume) {
    return heightsFromVolume("e", "hip edge", hip, cos * cos, volume);
  }

  /** H³ − x² H + 3 V / (k f) = 0 for the slant height (f = 1) or the hip edge (f = cos² π/n). */
  private Roots heightsFromVolume(
      String x, String name, double length, double factor, double volume) {
    double p =
        at.step("p", "square of the " + name, x + "^2", "m2", length * length, in(x, length, "m"));
    double q =
        at.step(
            "q",
            "constant term of H^3 - p H + q = 0",
            "3 * V / (n * tan(pi/n)" + (factor == 1 ? ")" : " * cos(pi/n)^2)"),
            "m3",
            3 * volume / (k * factor),
            in("V", volume, "m3"));
    double[] heights = Roots.cubic("H", "m", p, q, steps);
    if (heights.length == 0) {
      double most = 2 * StrictMath.pow(p / 3, 1.5) * k * factor / 3;
      return Roots.none(tooLarge("volume", volume, "m3", most, name, length));
    }
    List<Root> roots = new ArrayList<>();
    for (int i = 0; i < heights.length; i++) {
      String number = "_" + (i + 3 - heights.length);
      double r =
          at.step(
              "r" + number,
              "inradius of the base",
              "sqrt(3 * V / (n * tan(pi/n) * H" + number + "))",
              "m",
              Math.sqrt(3 * volume / (k * heights[i])),
              in("V", volume, "m3"),
              in("H" + number, heights[i], "m"));
      roots.add(new Root(r, heights[i], heights.length == 1, number));
    }
    return new Roots(roots, "");
  }

  /** m² r⁴ − e² r² + w² = 0; only roots with a positive height count. */
  Roots hipAndCover(double hip, double cover) {
    double w = at.product(cover);
    double e2 = hip * hip;
    double inner = (e2 - 2 * m * w) * (e2 + 2 * m * w);
    boolean touching = Math.abs(e2 - 2 * m * w) <= 1e-12 * e2;
    if (!(inner >= 0 || touching)) {
      return Roots.none(tooLarge("cover area", cover, "m2", mostCover(e2), "hip edge", hip));
    }
    double d =
        at.step(
            "d",
            "root of the discriminant of m^2 r^4 - e^2 r^2 + w^2 = 0",
            "sqrt(max(0, (e^2 - 2 * tan(pi/n) * w) * (e^2 + 2 * tan(pi/n) * w)))",
            "m2",
            Math.sqrt(Math.max(0, inner)),
            in("e", hip, "m"),
            in("w", w, "m2"));
    double wide =
        at.step(
            "r_1",
            "larger inradius",
            "sqrt((e^2 + d) / 2) / tan(pi/n)",
            "m",
            Math.sqrt((e2 + d) / 2) / m,
            in("e", hip, "m"),
            in("d", d, "m2"));
    double narrow =
        at.step(
            "r_2",
            "smaller inradius",
            "w * sqrt(2 / (e^2 + d))",
            "m",
            w * Math.sqrt(2 / (e2 + d)),
            in("w", w, "m2"),
            in("e", hip, "m"),
            in("d", d, "m2"));
    List<Root> roots = new ArrayList<>();
    double[] radii = touching ? new double[] {narrow} : new double[] {wide, narrow};
    for (double r : radii) {
      String number = r == wide && !touching ? "_1" : "_2";
      double slant =
          at.step(
              "s" + number,
              "slant height",
              "w / r" + number,
              "m",
              w / r,
              in("w", w, "m2"),
              in("r" + number, r, "m"));
      if (slant > r) {
        double height = at.leg("H" + number, "height", "s" + number, slant, "r" + number, r);
        roots.add(new Root(r, height, touching, number));
      }
    }
    return roots.isEmpty()
        ? Roots.none(tooLarge("cover area", cover, "m2", mostCover(e2), "hip edge", hip))
        : new Roots(roots, "");
  }

  /**
   * The greatest cover for a hip edge: of three sides where both roots meet, n e² / 2; of more,
   * they meet lying flat or not at all, and it is the flat polygon, n m e² / (1 + m²).
   */
  private double mostCover(double hipSquared) {
    return k * hipSquared / (m > 1 ? 2 * m : 1 + m * m);
  }

  Roots volumeAndCover(double volume, double cover) {
    double w = at.product(cover);
    double v =
        at.step(
            "v",
            "volume factor, r^2 H",
            "3 * V / (n * tan(pi/n))",
            "m3",
            3 * volume / k,
            in("V", volume, "m3"));
    double p = at.step("p", "square of w", "w^2", "m4", w * w, in("w", w, "m2"));
    double q =
        at.step(
            "q",
            "constant term of u^3 - p u + q = 0 with u = r^2",
            "v^2",
            "m6",
            v * v,
            in("v", v, "m3"));
    double[] squares = Roots.cubic("u", "m2", p, q, steps);
    if (squares.length == 0) {
      double most = Math.sqrt(2 * StrictMath.pow(p / 3, 1.5)) * k / 3;
      return Roots.none(
          "volume: given "
              + text(volume)
              + " m3, a cover of "
              + text(cover)
              + " m2 encloses at most "
              + text(most)
              + " m3.");
    }
    List<Root> roots = new ArrayList<>();
    for (int i = squares.length - 1; i >= 0; i--) {
      String number = "_" + (i + 3 - squares.length);
      double r =
          at.step(
              "r" + number,
              "inradius of the base",
              "sqrt(u" + number + ")",
              "m",
              Math.sqrt(squares[i]),
              in("u" + number, squares[i], "m2"));
      double height =
          at.step(
              "H" + number,
              "height",
              "v / u" + number,
              "m",
              v / squares[i],
              in("v", v, "m3"),
              in("u" + number, squares[i], "m2"));
      roots.add(new Root(r, height, squares.length == 1, number));
    }
    return new Roots(roots, "");
  }
}
