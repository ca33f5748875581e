package io.github.seamstead.materials.water;

import static io.github.seamstead.shared.quantity.PhysicalConstants.WATER_DENSITY;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A compaction test: optimum moisture and maximum dry density.
 *
 * <p>The top of the parabola through the densest point and its neighbours. Where the specific
 * gravity is known and that top lies above the zero-air-voids line, which nothing can, the densest
 * point on or under the line stands. Optimum means greatest <em>dry</em> density; the heaviest
 * cylinder is wetter than that.
 *
 * @param points in order of moisture
 * @param optimumMoisture from the densest point to the top: low, likely, high
 * @param maximumDryDensity in kg/m³, from the densest point to the top
 * @param specificGravity of the grains, if known
 * @param remarks what is doubtful about the data, plain sentences
 */
public record ProctorCurve(
    List<ProctorPoint> points,
    Range optimumMoisture,
    Range maximumDryDensity,
    Optional<Double> specificGravity,
    List<String> remarks) {

  private static final Source ZERO_AIR =
      Source.found("Das", "Principles of Geotechnical Engineering", "9th ed. SI", "ch. 6");
  private static final Source PARABOLA =
      Source.derived("Newton's interpolation by the densest point and its neighbours");

  public ProctorCurve {
    points = List.copyOf(points);
    remarks = List.copyOf(remarks);
  }

  /**
   * Fits the curve without worked steps.
   *
   * @param points three or more, of different moisture, in any order
   * @param specificGravity of the grains, if known
   * @return the curve
   * @throws IllegalArgumentException as {@link #fit(List, Optional, Steps)}
   */
  public static ProctorCurve fit(List<ProctorPoint> points, Optional<Double> specificGravity) {
    return fit(points, specificGravity, Steps.none());
  }

  /**
   * Fits the curve. Costs O(n log n).
   *
   * @param points three or more, of different moisture, in any order
   * @param specificGravity of the grains, if known, 1 to 6
   * @param steps receives slopes, curvature, optimum and, last, the maximum dry density
   * @return the curve
   * @throws IllegalArgumentException if there are too few points, two have the same moisture, or
   *     the densest is the driest or the wettest, so that the optimum lies outside the test
   */
  @Calculation("materials.water.proctor")
  public static ProctorCurve fit(
      List<ProctorPoint> points, Optional<Double> specificGravity, Steps steps) {
    Args.require(
        points.size() >= 3, "compaction test", points.size() + " points", "must be 3 or more");
    specificGravity.ifPresent(g -> Args.within("specific gravity of the grains", g, 1, 6, ""));
    List<ProctorPoint> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(ProctorPoint::moisture));
    for (int i = 1; i < sorted.size(); i++) {
      Args.agree(
          sorted.get(i).moisture() > sorted.get(i - 1).moisture(),
          "compaction test: two points have the moisture "
              + Numbers.plain(sorted.get(i).moisture()),
          "must differ");
    }
    List<String> remarks = new ArrayList<>();
    specificGravity.ifPresent(g -> remarks.addAll(aboveTheLine(sorted, g)));
    int top = densest(sorted, Optional.empty());
    ProctorPoint best = sorted.get(top);
    boolean driest = top == 0;
    Args.agree(
        !driest && top < sorted.size() - 1,
        "compaction test: the densest point is the " + (driest ? "driest" : "wettest"),
        "must have a " + (driest ? "drier" : "wetter") + " one beside it");
    double[] vertex = vertex(sorted.get(top - 1), best, sorted.get(top + 1), steps);
    if (specificGravity.isPresent()
        && vertex[1] > zeroAirVoids(specificGravity.get(), vertex[0], 1)) {
      ProctorPoint held = sorted.get(densest(sorted, specificGravity));
      remarks.add(
          "the fitted top lies above the zero-air-voids line; the densest point on or under it"
              + " stands");
      double density =
          steps
              .step("rho_max", "densest point on or under the zero-air-voids line")
              .note("the fitted top is not possible")
              .gives(held.dryDensity(), "kg/m3");
      return new ProctorCurve(
          sorted, Range.exactly(held.moisture()), Range.exactly(density), specificGravity, remarks);
    }
    return new ProctorCurve(
        sorted,
        new Range(
            Math.min(best.moisture(), vertex[0]), vertex[0], Math.max(best.moisture(), vertex[0])),
        new Range(Math.min(best.dryDensity(), vertex[1]), vertex[1], vertex[1]),
        specificGravity,
        remarks);
  }

  private static int densest(List<ProctorPoint> points, Optional<Double> gravity) {
    int best = 0;
    double most = -1;
    for (int i = 0; i < points.size(); i++) {
      ProctorPoint point = points.get(i);
      boolean possible =
          gravity.isEmpty()
              || point.dryDensity() <= zeroAirVoids(gravity.get(), point.moisture(), 1);
      if (possible && point.dryDensity() > most) {
        best = i;
        most = point.dryDensity();
      }
    }
    return best;
  }

  private static List<String> aboveTheLine(List<ProctorPoint> points, double gravity) {
    List<String> remarks = new ArrayList<>();
    for (ProctorPoint point : points) {
      if (point.dryDensity() > zeroAirVoids(gravity, point.moisture(), 1)) {
        remarks.add(
            "the point at "
                + Numbers.significant(point.moisture() * 100, 3)
                + " % lies above the zero-air-voids line: a mass, a moisture or the specific"
                + " gravity is wrong");
      }
    }
    return remarks;
  }

  private static double[] vertex(ProctorPoint a, ProctorPoint b, ProctorPoint c, Steps steps) {
    double rise =
        steps
            .step("s_1", "slope before the densest point")
            .formula("(y_2 - y_1) / (x_2 - x_1)")
            .with("y_2", b.dryDensity(), "kg/m3")
            .with("y_1", a.dryDensity(), "kg/m3")
            .with("x_2", b.moisture(), "")
            .with("x_1", a.moisture(), "")
            .from(PARABOLA)
            .gives((b.dryDensity() - a.dryDensity()) / (b.moisture() - a.moisture()), "kg/m3");
    double drop =
        steps
            .step("s_2", "slope after the densest point")
            .formula("(y_3 - y_2) / (x_3 - x_2)")
            .with("y_3", c.dryDensity(), "kg/m3")
            .with("y_2", b.dryDensity(), "kg/m3")
            .with("x_3", c.moisture(), "")
            .with("x_2", b.moisture(), "")
            .from(PARABOLA)
            .gives((c.dryDensity() - b.dryDensity()) / (c.moisture() - b.moisture()), "kg/m3");
    double bend =
        steps
            .step("c", "curvature")
            .formula("(s_2 - s_1) / (x_3 - x_1)")
            .with("s_2", drop, "kg/m3")
            .with("s_1", rise, "kg/m3")
            .with("x_3", c.moisture(), "")
            .with("x_1", a.moisture(), "")
            .gives((drop - rise) / (c.moisture() - a.moisture()), "kg/m3");
    Args.agree(bend < 0, "compaction test: the three densest points lie on a line", "must bend");
    double optimum =
        steps
            .step("w_opt", "optimum moisture: top of the parabola")
            .formula("(x_1 + x_2) / 2 - s_1 / (2 * c)")
            .with("x_1", a.moisture(), "")
            .with("x_2", b.moisture(), "")
            .with("s_1", rise, "kg/m3")
            .with("c", bend, "kg/m3")
            .gives((a.moisture() + b.moisture()) / 2 - rise / (2 * bend), "");
    double maximum =
        steps
            .step("rho_max", "maximum dry density")
            .formula("y_1 + s_1 * (w_opt - x_1) + c * (w_opt - x_1) * (w_opt - x_2)")
            .with("y_1", a.dryDensity(), "kg/m3")
            .with("s_1", rise, "kg/m3")
            .with("w_opt", optimum, "")
            .with("x_1", a.moisture(), "")
            .with("c", bend, "kg/m3")
            .with("x_2", b.moisture(), "")
            .gives(
                a.dryDensity()
                    + rise * (optimum - a.moisture())
                    + bend * (optimum - a.moisture()) * (optimum - b.moisture()),
                "kg/m3");
    return new double[] {optimum, maximum};
  }

  /**
   * Gives the dry density at a saturation: G ρ_w / (1 + w G / S), with water of 1000 kg/m³.
   *
   * @param specificGravity of the grains, 1 to 6
   * @param moisture water over dry mass, 0 to 5
   * @param saturation more than 0, at most 1; 1 for the zero-air-voids line
   * @return in kg/m³
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double zeroAirVoids(double specificGravity, double moisture, double saturation) {
    return zeroAirVoids(specificGravity, moisture, saturation, Steps.none());
  }

  /**
   * Computes the dry density at a saturation.
   *
   * @param specificGravity of the grains, 1 to 6
   * @param moisture water over dry mass, 0 to 5
   * @param saturation more than 0, at most 1; 1 for the zero-air-voids line
   * @param steps receives the formula
   * @return in kg/m³
   * @throws IllegalArgumentException if a value is out of range
   */
  @Calculation("materials.water.zero-air-voids")
  public static double zeroAirVoids(
      double specificGravity, double moisture, double saturation, Steps steps) {
    Args.within("specific gravity of the grains", specificGravity, 1, 6, "");
    Args.within("moisture", moisture, 0, 5, "");
    Args.positive("saturation", saturation, "");
    Args.within("saturation", saturation, 0, 1, "");
    return steps
        .step("rho_zav", "dry density without air at that moisture")
        .formula("G * rho_w / (1 + w * G / S)")
        .with("G", specificGravity, "")
        .with("rho_w", WATER_DENSITY, "kg/m3")
        .with("w", moisture, "")
        .with("S", saturation, "")
        .from(ZERO_AIR)
        .gives(
            specificGravity * WATER_DENSITY / (1 + moisture * specificGravity / saturation),
            "kg/m3");
  }

  /**
   * Gives how dense a place is against the test.
   *
   * @param fieldDryDensity in kg/m³, greater than 0
   * @return field over maximum dry density; 0.95 is a common demand
   * @throws IllegalArgumentException if the density is not positive
   */
  public double relativeCompaction(double fieldDryDensity) {
    return Args.positive("field dry density", fieldDryDensity, "kg/m3")
        / maximumDryDensity.likely();
  }

  /**
   * Gives points of the fitted parabola for the plot, from the drier to the wetter neighbour of the
   * densest point.
   *
   * @param count 2 to 500
   * @return in order of moisture; empty where the densest possible point stands without a fit
   * @throws IllegalArgumentException if the count is out of range
   */
  public List<ProctorPoint> fittedLine(int count) {
    Args.within("points of the line", count, 2, 500);
    List<ProctorPoint> line = new ArrayList<>();
    double top = maximumDryDensity.likely();
    int densest = densest(points, Optional.empty());
    ProctorPoint best = points.get(densest);
    if (top == best.dryDensity() && optimumMoisture.low() == optimumMoisture.high()) {
      return List.of();
    }
    ProctorPoint drier = points.get(densest - 1);
    ProctorPoint wetter = points.get(densest + 1);
    double optimum = optimumMoisture.likely();
    double off = drier.moisture() - optimum;
    double bend = (drier.dryDensity() - top) / (off * off);
    for (int i = 0; i < count; i++) {
      double moisture = drier.moisture() + (wetter.moisture() - drier.moisture()) * i / (count - 1);
      double away = moisture - optimum;
      line.add(new ProctorPoint(moisture, top + bend * away * away));
    }
    return List.copyOf(line);
  }

  /**
   * Gives points of the zero-air-voids line for the plot.
   *
   * @param count 2 to 500
   * @return from the driest to the wettest point of the test; empty if the specific gravity is not
   *     known
   * @throws IllegalArgumentException if the count is out of range
   */
  public List<ProctorPoint> zeroAirVoidsLine(int count) {
    Args.within("points of the line", count, 2, 500);
    List<ProctorPoint> line = new ArrayList<>();
    if (specificGravity.isPresent()) {
      double from = points.get(0).moisture();
      double to = points.get(points.size() - 1).moisture();
      for (int i = 0; i < count; i++) {
        double moisture = from + (to - from) * i / (count - 1);
        line.add(new ProctorPoint(moisture, zeroAirVoids(specificGravity.get(), moisture, 1)));
      }
    }
    return List.copyOf(line);
  }
}
