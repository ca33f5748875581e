package io.github.seamstead.geometry.frame;

import static io.github.seamstead.geometry.frame.PairSteps.in;
import static io.github.seamstead.geometry.frame.PairSteps.tooShort;

import io.github.seamstead.geometry.frame.PyramidMeasure.Kind;
import io.github.seamstead.shared.derivation.Steps;

/**
 * Finds inradius r and height H from two independent measures, each pair in closed form.
 *
 * <p>With m = tan(π/n) and k = n m: base area k r², cover k r s, volume k r² H / 3. Where two
 * pyramids exist the sum ends in a quadratic or a cubic.
 */
final class PairSolver {

  private final double cos;
  private final double m;
  private final double k;
  private final PlanReduction reduction;
  private final TwoPyramidPairs twoPyramids;
  private final PairSteps at;

  PairSolver(int sides, Steps steps) {
    this.cos = StrictMath.cos(Math.PI / sides);
    this.m = StrictMath.tan(Math.PI / sides);
    this.k = sides * m;
    this.reduction = new PlanReduction(sides, steps);
    this.twoPyramids = new TwoPyramidPairs(sides, steps);
    this.at = new PairSteps(sides, steps);
  }

  /** The measures come in the order of their kinds. */
  Roots solve(PyramidMeasure first, double x, PyramidMeasure second, double y) {
    return switch (first.kind()) {
      case PLAN -> withInradius(reduction.inradius(first, x), second, y);
      case SHAPE -> withSteepness(reduction.steepness(first, x), second.kind(), y);
      case HEIGHT -> withHeight(x, second.kind(), y);
      case SLANT -> withSlant(x, second.kind(), y);
      case HIP ->
          second.kind() == Kind.VOLUME
              ? twoPyramids.hipAndVolume(x, y)
              : twoPyramids.hipAndCover(x, y);
      default -> twoPyramids.volumeAndCover(x, y);
    };
  }

  private Roots withInradius(double r, PyramidMeasure other, double y) {
    return switch (other.kind()) {
      case SHAPE -> steepHeight(r, reduction.steepness(other, y));
      case HEIGHT -> Roots.of(r, y);
      case SLANT -> heightFromSlant(r, y);
      case HIP -> {
        double corner =
            at.step(
                "R", "circumradius of the base", "r / cos(pi/n)", "m", r / cos, in("r", r, "m"));
        yield corner < y
            ? Roots.of(r, at.leg("H", "height", "e", y, "R", corner))
            : Roots.none(tooShort("hip edge", y, "circumradius", corner));
      }
      case VOLUME ->
          Roots.of(
              r,
              at.step(
                  "H",
                  "height",
                  "3 * V / (n * tan(pi/n) * r^2)",
                  "m",
                  3 * y / (k * r * r),
                  in("V", y, "m3"),
                  in("r", r, "m")));
      default -> heightFromSlant(r, slantFromCover(r, y));
    };
  }

  private Roots withSteepness(double t, Kind other, double y) {
    PairSteps.In steep = in("t", t, "");
    double r =
        switch (other) {
          case HEIGHT -> radius("H / t", y / t, in("H", y, "m"), steep);
          case SLANT ->
              radius("s / sqrt(1 + t^2)", y / StrictMath.hypot(1, t), in("s", y, "m"), steep);
          case HIP ->
              radius(
                  "e / sqrt(1 / cos(pi/n)^2 + t^2)",
                  y / StrictMath.hypot(1 / cos, t),
                  in("e", y, "m"),
                  steep);
          case VOLUME ->
              radius(
                  "cbrt(3 * V / (n * tan(pi/n) * t))",
                  StrictMath.cbrt(3 * y / (k * t)),
                  in("V", y, "m3"),
                  steep);
          default ->
              radius(
                  "sqrt(A_c / (n * tan(pi/n) * sqrt(1 + t^2)))",
                  Math.sqrt(y / (k * StrictMath.hypot(1, t))),
                  in("A_c", y, "m2"),
                  steep);
        };
    return other == Kind.HEIGHT ? Roots.of(r, y) : steepHeight(r, t);
  }

  private Roots withHeight(double height, Kind other, double y) {
    return switch (other) {
      case SLANT ->
          height < y
              ? Roots.of(at.leg("r", "inradius of the base", "s", y, "H", height), height)
              : Roots.none(tooShort("slant height", y, "height", height));
      case HIP ->
          height < y
              ? Roots.of(
                  inradiusOf(at.leg("R", "circumradius of the base", "e", y, "H", height)), height)
              : Roots.none(tooShort("hip edge", y, "height", height));
      case VOLUME ->
          Roots.of(
              radius(
                  "sqrt(3 * V / (n * tan(pi/n) * H))",
                  Math.sqrt(3 * y / (k * height)),
                  in("V", y, "m3"),
                  in("H", height, "m")),
              height);
      default -> Roots.of(inradiusUnderCover(height, at.product(y)), height);
    };
  }

  /** The positive root of r⁴ + H² r² = w², in the form that loses no digits where w is small. */
  private double inradiusUnderCover(double height, double w) {
    double h2 = height * height;
    return radius(
        "sqrt(2 * w^2 / (H^2 + sqrt(H^4 + 4 * w^2)))",
        Math.sqrt(2 * w * w / (h2 + Math.sqrt(h2 * h2 + 4 * w * w))),
        in("w", w, "m2"),
        in("H", height, "m"));
  }

  private Roots withSlant(double slant, Kind other, double y) {
    return switch (other) {
      case HIP -> {
        if (slant >= y) {
          yield Roots.none(tooShort("hip edge", y, "slant height", slant));
        }
        double half = at.leg("h", "half the base side", "e", y, "s", slant);
        yield heightFromSlant(radius("h / tan(pi/n)", half / m, in("h", half, "m")), slant);
      }
      case COVER ->
          heightFromSlant(
              radius(
                  "A_c / (n * tan(pi/n) * s)",
                  y / (k * slant),
                  in("A_c", y, "m2"),
                  in("s", slant, "m")),
              slant);
      default -> twoPyramids.slantAndVolume(slant, y);
    };
  }

  private Roots steepHeight(double r, double t) {
    return Roots.of(
        r, at.step("H", "height", "t * r", "m", t * r, in("t", t, ""), in("r", r, "m")));
  }

  private Roots heightFromSlant(double r, double slant) {
    return r < slant
        ? Roots.of(r, at.leg("H", "height", "s", slant, "r", r))
        : Roots.none(tooShort("slant height", slant, "inradius", r));
  }

  private double slantFromCover(double r, double cover) {
    return at.step(
        "s",
        "slant height",
        "A_c / (n * tan(pi/n) * r)",
        "m",
        cover / (k * r),
        in("A_c", cover, "m2"),
        in("r", r, "m"));
  }

  private double inradiusOf(double corner) {
    return radius("R * cos(pi/n)", corner * cos, in("R", corner, "m"));
  }

  private double radius(String formula, double value, PairSteps.In... inputs) {
    return at.step("r", "inradius of the base", formula, "m", value, inputs);
  }
}
