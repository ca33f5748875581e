package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.derivation.Steps;

/** Computes all measures of one pyramid in the order in which a teacher would. */
final class MeasureCalculation {

  private final RegularPyramid pyramid;
  private final int n;
  private final double a;
  private final double height;
  private final double b;
  private final Steps steps;

  MeasureCalculation(RegularPyramid pyramid, Steps steps) {
    this.pyramid = pyramid;
    this.n = pyramid.sides();
    this.a = pyramid.baseSide();
    this.height = pyramid.apexHeight();
    this.b = pyramid.openingSide();
    this.steps = steps;
  }

  FrameMeasures run() {
    given();
    steps.section("Plan");
    RegularPolygon base = pyramid.base();
    double inradius = inradius("r", "inradius of the base", "a", a, base.inradius());
    double circumradius =
        circumradius("R", "circumradius of the base", "a", a, base.circumradius());
    acrossFlats(base, inradius, circumradius);
    acrossCorners(base, circumradius);
    steps
        .step("P", "perimeter of the base")
        .formula("n * a")
        .with("n", n, "")
        .with("a", a, "m")
        .from(FrameSources.POLYGON)
        .gives(base.perimeter(), "m");
    double baseArea = area("A_b", "area of the base", "a", a, base.area());

    steps.section("Edges and slopes");
    double slant =
        steps
            .step("s", "slant height")
            .formula("sqrt(r^2 + H^2)")
            .with("r", inradius, "m")
            .with("H", height, "m")
            .from(FrameSources.PYRAMID)
            .gives(StrictMath.hypot(inradius, height), "m");
    double hip =
        steps
            .step("e", "hip edge")
            .formula("sqrt(R^2 + H^2)")
            .with("R", circumradius, "m")
            .with("H", height, "m")
            .from(FrameSources.PYRAMID)
            .gives(StrictMath.hypot(circumradius, height), "m");
    double faceSlope =
        steps
            .step("theta", "face slope")
            .formula("atan(H / r)")
            .with("H", height, "m")
            .with("r", inradius, "m")
            .from(FrameSources.PYRAMID)
            .gives(StrictMath.atan(height / inradius), "rad");
    double hipSlope =
        steps
            .step("gamma", "hip slope")
            .formula("atan(H / R)")
            .with("H", height, "m")
            .with("R", circumradius, "m")
            .from(FrameSources.PYRAMID)
            .note("Hips are flatter than faces; laps and ponding are judged by the hips.")
            .gives(StrictMath.atan(height / circumradius), "rad");

    steps.section("Angles");
    double apexAngle =
        steps
            .step("alpha", "apex angle of a face")
            .formula("2 * atan(a / (2 * s))")
            .with("a", a, "m")
            .with("s", slant, "m")
            .from(FrameSources.PYRAMID)
            .gives(2 * StrictMath.atan(a / (2 * slant)), "rad");
    double baseAngle =
        steps
            .step("beta", "base angle of a face")
            .formula("atan(2 * s / a)")
            .with("s", slant, "m")
            .with("a", a, "m")
            .from(FrameSources.PYRAMID)
            .gives(StrictMath.atan(2 * slant / a), "rad");
    double dihedral =
        steps
            .step("delta", "dihedral angle at a hip")
            .formula("pi - 2 * asin(sin(pi/n) * sin(theta))")
            .with("n", n, "")
            .with("theta", faceSlope, "rad")
            .from(FrameSources.DIHEDRAL)
            .gives(
                Math.PI
                    - 2 * StrictMath.asin(StrictMath.sin(Math.PI / n) * StrictMath.sin(faceSlope)),
                "rad");
    steps
        .step("omega", "dihedral angle at the opening")
        .formula("pi - theta")
        .with("theta", faceSlope, "rad")
        .from(FrameSources.PYRAMID)
        .note("The dihedral angle at the base is the face slope itself.")
        .gives(Math.PI - faceSlope, "rad");
    double developed =
        steps
            .step("sigma", "sum of the apex angles")
            .formula("n * alpha")
            .with("n", n, "")
            .with("alpha", apexAngle, "rad")
            .from(FrameSources.PYRAMID)
            .gives(n * apexAngle, "rad");
    double cone =
        steps
            .step("kappa", "sector angle of the cone through the base corners")
            .formula("2 * pi * R / e")
            .with("R", circumradius, "m")
            .with("e", hip, "m")
            .from(FrameSources.PYRAMID)
            .gives(2 * Math.PI * circumradius / hip, "rad");

    Opening opening = opening(slant, hip);
    steps.section("Areas and volume");
    double faceArea =
        steps
            .step("A_f", "area of a face")
            .formula("(a + b) / 2 * f")
            .with("a", a, "m")
            .with("b", b, "m")
            .with("f", opening.faceHeight(), "m")
            .from(FrameSources.PYRAMID)
            .gives((a + b) / 2 * opening.faceHeight(), "m2");
    double volume = volume(baseArea, opening);
    double centroid = centroid(baseArea, opening);
    double coverCentroid =
        steps
            .step("z_s", "height of the centroid of the faces")
            .formula("z / 3 * (a + 2 * b) / (a + b)")
            .with("z", opening.height(), "m")
            .with("a", a, "m")
            .with("b", b, "m")
            .from(FrameSources.FRUSTUM)
            .gives(opening.height() / 3 * (a + 2 * b) / (a + b), "m");
    double cover =
        steps
            .step("A_c", "area of the cover")
            .formula("n * A_f")
            .with("n", n, "")
            .with("A_f", faceArea, "m2")
            .from(FrameSources.PYRAMID)
            .gives(n * faceArea, "m2");
    return new FrameMeasures(
        pyramid,
        new FrameMeasures.Edges(
            hip, slant, opening.hipLength(), opening.faceHeight(), opening.height()),
        new FrameMeasures.Angles(
            faceSlope, hipSlope, apexAngle, baseAngle, dihedral, developed, cone),
        opening.ring(),
        new FrameMeasures.Sizes(faceArea, cover, volume, centroid, coverCentroid));
  }

  private void given() {
    steps.section("Given");
    steps.step("n", "number of sides").gives(n, "");
    steps.step("a", "base side").gives(a, "m");
    steps.step("H", "height of the whole pyramid").gives(height, "m");
    steps.step("b", "side of the opening").note("0 for a whole pyramid").gives(b, "m");
  }

  private double inradius(String symbol, String name, String side, double value, double gives) {
    return steps
        .step(symbol, name)
        .formula(side + " / (2 * tan(pi/n))")
        .with(side, value, "m")
        .with("n", n, "")
        .from(FrameSources.POLYGON)
        .gives(gives, "m");
  }

  private double circumradius(String symbol, String name, String side, double value, double gives) {
    return steps
        .step(symbol, name)
        .formula(side + " / (2 * sin(pi/n))")
        .with(side, value, "m")
        .with("n", n, "")
        .from(FrameSources.POLYGON)
        .gives(gives, "m");
  }

  private double area(String symbol, String name, String side, double value, double gives) {
    return steps
        .step(symbol, name)
        .formula("n * " + side + "^2 / (4 * tan(pi/n))")
        .with(side, value, "m")
        .with("n", n, "")
        .from(FrameSources.POLYGON)
        .gives(gives, "m2");
  }

  private void acrossFlats(RegularPolygon base, double inradius, double circumradius) {
    Steps.Entry entry = steps.step("F", "distance across flats");
    if (base.isEven()) {
      entry.formula("2 * r").with("r", inradius, "m");
    } else {
      entry
          .formula("r + R")
          .with("r", inradius, "m")
          .with("R", circumradius, "m")
          .note("An odd polygon has no opposite side: from a side to the opposite corner.");
    }
    entry.from(FrameSources.POLYGON).gives(base.acrossFlats(), "m");
  }

  private void acrossCorners(RegularPolygon base, double circumradius) {
    Steps.Entry entry = steps.step("K", "distance across corners");
    if (base.isEven()) {
      entry.formula("2 * R").with("R", circumradius, "m");
    } else {
      entry
          .formula("2 * R * cos(pi / (2 * n))")
          .with("R", circumradius, "m")
          .with("n", n, "")
          .note("An odd polygon has no opposite corner: between the two furthest corners.");
    }
    entry.from(FrameSources.POLYGON).gives(base.acrossCorners(), "m");
  }

  /** The frame's upper end; a whole pyramid has an opening of nothing at its apex. */
  private record Opening(
      double height, double hipLength, double faceHeight, FrameMeasures.Opening ring) {}

  private Opening opening(double slant, double hip) {
    if (!pyramid.isTruncated()) {
      steps.section("Top");
      steps.step("z", "height of the frame").formula("H").with("H", height, "m").gives(height, "m");
      steps
          .step("f", "height of a face along its slope")
          .formula("s")
          .with("s", slant, "m")
          .gives(slant, "m");
      return new Opening(height, hip, slant, new FrameMeasures.Opening(0, 0, 0));
    }
    steps.section("Opening");
    RegularPolygon ring = new RegularPolygon(n, b);
    double share =
        steps
            .step("q", "share of the whole pyramid below the cut")
            .formula("(a - b) / a")
            .with("a", a, "m")
            .with("b", b, "m")
            .from(FrameSources.FRUSTUM)
            .gives((a - b) / a, "");
    double cut =
        steps
            .step("z", "height of the opening")
            .formula("H * q")
            .with("H", height, "m")
            .with("q", share, "")
            .from(FrameSources.FRUSTUM)
            .gives(height * share, "m");
    double hipLength =
        steps
            .step("l", "length of a hip")
            .formula("e * q")
            .with("e", hip, "m")
            .with("q", share, "")
            .from(FrameSources.FRUSTUM)
            .gives(hip * share, "m");
    double faceHeight =
        steps
            .step("f", "height of a face along its slope")
            .formula("s * q")
            .with("s", slant, "m")
            .with("q", share, "")
            .from(FrameSources.FRUSTUM)
            .gives(slant * share, "m");
    double in = inradius("r_o", "inradius of the opening", "b", b, ring.inradius());
    double out = circumradius("R_o", "circumradius of the opening", "b", b, ring.circumradius());
    return new Opening(
        cut,
        hipLength,
        faceHeight,
        new FrameMeasures.Opening(
            in, out, area("A_o", "area of the opening", "b", b, ring.area())));
  }

  private double volume(double baseArea, Opening opening) {
    double top = opening.ring().area();
    return steps
        .step("V", "volume")
        .formula("z / 3 * (A_b + A_o + sqrt(A_b * A_o))")
        .with("z", opening.height(), "m")
        .with("A_b", baseArea, "m2")
        .with("A_o", top, "m2")
        .from(FrameSources.FRUSTUM)
        .gives(opening.height() / 3 * (baseArea + top + Math.sqrt(baseArea * top)), "m3");
  }

  private double centroid(double baseArea, Opening opening) {
    double top = opening.ring().area();
    double mean = Math.sqrt(baseArea * top);
    return steps
        .step("z_v", "height of the centroid of the volume")
        .formula("z / 4 * (A_b + 2 * sqrt(A_b * A_o) + 3 * A_o) / (A_b + sqrt(A_b * A_o) + A_o)")
        .with("z", opening.height(), "m")
        .with("A_b", baseArea, "m2")
        .with("A_o", top, "m2")
        .from(FrameSources.FRUSTUM)
        .gives(
            opening.height() / 4 * (baseArea + 2 * mean + 3 * top) / (baseArea + mean + top), "m");
  }
}
