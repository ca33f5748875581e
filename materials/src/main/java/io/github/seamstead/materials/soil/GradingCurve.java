package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * A grain size curve: the share of the dry mass that is finer than each diameter, straight between
 * its points on a logarithmic axis of the diameter.
 *
 * <p>Below the first point the curve falls straight to zero at 0.0002 mm (an assumption, which
 * matters only where no point lies near 0.002 mm); above the last it is 1. Invariant: diameters
 * rise strictly, shares never fall, the last share is 1.
 *
 * @param points two or more, finest first; the last with a share of 1
 */
public record GradingCurve(List<Point> points) {

  private static final double FINEST = GrainSizes.CLAY_FROM;

  /**
   * One point of the curve.
   *
   * @param diameter diameter or sieve opening, in metres; 1e-7 to 0.2 m
   * @param finerRatio share of the dry mass that is finer, 0 to 1
   */
  public record Point(double diameter, double finerRatio) {

    public Point {
      Args.within("grain diameter", diameter, 1e-7, 0.2, "m");
      Args.within("share finer", finerRatio, 0, 1, "");
    }
  }

  public GradingCurve {
    points = List.copyOf(points);
    Args.require(
        points.size() >= 2, "grading curve", points.size() + " point(s)", "must have 2 or more");
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      Args.require(
          b.diameter > a.diameter && b.finerRatio >= a.finerRatio,
          "grading curve: point "
              + (i + 1)
              + " ("
              + Numbers.plain(b.diameter * 1000)
              + " mm, "
              + Numbers.plain(b.finerRatio)
              + ") must be coarser than the one before and its share finer must not fall");
    }
    double last = points.get(points.size() - 1).finerRatio;
    Args.agree(
        last == 1,
        "grading curve: share finer than the largest size: given " + Numbers.plain(last),
        "must be 1");
  }

  /**
   * Makes the curve of a texture with gravel: straight lines between the USDA limits, gravel
   * straight from 2 mm to the largest stone.
   *
   * @param texture the part below 2 mm
   * @param gravelRatio share of gravel in the whole dry mass, 0 to 0.95
   * @param largest largest stone, 0.0021 to 0.2 m; has no effect if there is no gravel
   * @return the curve
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static GradingCurve ofTexture(Texture texture, double gravelRatio, double largest) {
    Args.within("gravel ratio", gravelRatio, 0, 0.95, "");
    double fine = 1 - gravelRatio;
    List<Point> list = new ArrayList<>();
    list.add(new Point(FINEST, 0));
    list.add(new Point(GrainSizes.CLAY_TO, fine * texture.clayRatio()));
    list.add(
        new Point(
            GrainSizes.SILT_TO, fine * Math.min(1, texture.clayRatio() + texture.siltRatio())));
    list.add(new Point(GrainSizes.SAND_TO, fine));
    if (gravelRatio > 0) {
      list.add(new Point(Args.within("largest stone", largest, 0.0021, 0.2, "m"), 1));
    }
    return new GradingCurve(list);
  }

  /**
   * Gives the share of the dry mass finer than a diameter.
   *
   * @param diameter above 0, in metres
   * @return 0 to 1
   */
  public double finer(double diameter) {
    Args.positive("grain diameter", diameter, "m");
    double x0 = FINEST;
    double y0 = 0;
    for (Point point : points) {
      if (diameter == point.diameter) {
        return point.finerRatio;
      }
      if (diameter < point.diameter) {
        return diameter <= x0
            ? 0
            : y0
                + (point.finerRatio - y0)
                    * StrictMath.log(diameter / x0)
                    / StrictMath.log(point.diameter / x0);
      }
      x0 = point.diameter;
      y0 = point.finerRatio;
    }
    return 1;
  }

  /**
   * Gives the diameter below which a share of the dry mass lies, such as D10 or D60.
   *
   * @param finerRatio above 0, at most 1
   * @return diameter in metres, read on the logarithmic axis
   */
  public double diameterAt(double finerRatio) {
    Args.require(
        finerRatio > 0 && finerRatio <= 1,
        "share finer",
        Numbers.plain(finerRatio),
        "must be above 0 and at most 1");
    double x0 = FINEST;
    double y0 = 0;
    for (Point point : points) {
      if (point.finerRatio >= finerRatio) {
        return y0 == point.finerRatio || point.diameter <= x0
            ? point.diameter
            : x0
                * StrictMath.exp(
                    StrictMath.log(point.diameter / x0)
                        * (finerRatio - y0)
                        / (point.finerRatio - y0));
      }
      x0 = point.diameter;
      y0 = point.finerRatio;
    }
    return points.get(points.size() - 1).diameter();
  }

  /**
   * Gives the coefficient of uniformity {@code Cu = D60 / D10}.
   *
   * @return 1 or more
   */
  public double uniformity() {
    return diameterAt(0.6) / diameterAt(0.1);
  }

  /**
   * Gives the coefficient of curvature {@code Cc = D30^2 / (D10 D60)}.
   *
   * @return above 0
   */
  public double curvature() {
    double d30 = diameterAt(0.3);
    return d30 * d30 / (diameterAt(0.1) * diameterAt(0.6));
  }

  /**
   * Gives the texture of the part below 2 mm by the USDA limits.
   *
   * @return the texture
   * @throws IllegalArgumentException if nothing is finer than 2 mm
   */
  public Texture texture() {
    double fine = finer(GrainSizes.SAND_TO);
    Args.require(fine > 0, "grading curve: nothing is finer than 2 mm, so it has no texture");
    double clay = finer(GrainSizes.CLAY_TO) / fine;
    double claySilt = finer(GrainSizes.SILT_TO) / fine;
    return Texture.ofClayAndSand(clay, Math.max(0, 1 - claySilt));
  }

  /**
   * Gives the share of gravel and stones, coarser than 2 mm.
   *
   * @return share of the whole dry mass, 0 to 1
   */
  public double gravelRatio() {
    return 1 - finer(GrainSizes.SAND_TO);
  }
}
