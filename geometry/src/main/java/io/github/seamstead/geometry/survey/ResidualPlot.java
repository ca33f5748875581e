package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * What a drawing of the residuals needs: the readings as lines between adjusted nodes with their
 * residuals, and the nodes with their way from the regular frame, both to be drawn to a larger
 * scale that the drawing states.
 *
 * @param lines one per reading, in the order of the field book
 * @param nodes one per node
 * @param greatestResidual the greatest residual without sign, in metres
 * @param greatestDeviation the greatest way of a node from the regular frame, in metres
 * @param extent the greatest coordinate without sign, in metres
 */
public record ResidualPlot(
    List<Line> lines,
    List<Deviation> nodes,
    double greatestResidual,
    double greatestDeviation,
    double extent) {

  /** The share of the drawing's half width that the greatest residual should take. */
  private static final double SHARE = 0.1;

  /**
   * A reading.
   *
   * @param number its place in the field book, from 1
   * @param name such as {@code B1-B2}
   * @param from one end as adjusted, in metres
   * @param to the other end as adjusted, in metres
   * @param residual adjusted - observed, in metres
   * @param statistic the standardised residual; empty where nothing controls the reading
   * @param suspect whether the test finds it too large
   */
  public record Line(
      int number,
      String name,
      Vector3D from,
      Vector3D to,
      double residual,
      Optional<Double> statistic,
      boolean suspect) {}

  /**
   * A node beside its place in the regular frame.
   *
   * @param node the node
   * @param regular its place in the regular frame that lies nearest, in metres
   * @param adjusted its adjusted place, in metres
   */
  public record Deviation(Node node, Vector3D regular, Vector3D adjusted) {

    /**
     * Gives the way from the regular to the adjusted place.
     *
     * @return in metres
     */
    public Vector3D way() {
      return adjusted.subtract(regular);
    }
  }

  public ResidualPlot {
    lines = List.copyOf(lines);
    nodes = List.copyOf(nodes);
  }

  /**
   * Gathers the plot of an adjustment.
   *
   * @param adjustment the adjustment
   * @return its plot
   */
  public static ResidualPlot of(Adjustment adjustment) {
    List<Line> lines = new ArrayList<>();
    double residual = 0;
    for (ReadingResult result : adjustment.readings()) {
      List<Node> ends = result.reading().nodes();
      lines.add(
          new Line(
              result.number(),
              result.reading().name(),
              adjustment.position(ends.get(0)),
              adjustment.position(ends.get(1)),
              result.residual(),
              result.statistic(),
              result.suspect()));
      residual = Math.max(residual, Math.abs(result.residual()));
    }
    List<Deviation> nodes = new ArrayList<>();
    double deviation = 0;
    double extent = 0;
    for (Node node : adjustment.nodeNames()) {
      Deviation one = new Deviation(node, adjustment.regular(node), adjustment.position(node));
      nodes.add(one);
      deviation = Math.max(deviation, one.way().norm());
      for (double coordinate : one.adjusted().toArray()) {
        extent = Math.max(extent, Math.abs(coordinate));
      }
    }
    return new ResidualPlot(lines, nodes, residual, deviation, extent);
  }

  /**
   * Proposes a round factor (1, 2 or 5 times a power of ten) by which to draw residuals larger than
   * the frame.
   *
   * @return the factor, 1 or more
   */
  public double residualMagnification() {
    return magnification(greatestResidual);
  }

  /**
   * Proposes a round factor by which to draw deviations from the regular frame larger.
   *
   * @return the factor, 1 or more
   */
  public double deviationMagnification() {
    return magnification(greatestDeviation);
  }

  private double magnification(double greatest) {
    // Residuals of exact readings are rounding: nothing is gained by drawing that larger.
    if (!(greatest > 1e-9 * extent)) {
      return 1;
    }
    double wanted = SHARE * extent / greatest;
    double power = StrictMath.pow(10, Math.floor(StrictMath.log10(wanted)));
    double digit = wanted / power;
    double round = digit >= 5 ? 5 : digit >= 2 ? 2 : 1;
    return Math.max(1, round * power);
  }
}
