package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What kind of frame was surveyed: how many sides, with or without an opening at the top, and the
 * measures it was meant to have, if these are known.
 *
 * @param sides number of faces and base corners, 3 to 64
 * @param truncated true if the faces end at an opening with corners {@code T1…Tn}; false if they
 *     meet at the apex {@code A}
 * @param ideal the measures it was meant to have; empty to take them from the readings
 */
public record SurveyShape(int sides, boolean truncated, Optional<Ideal> ideal) {

  /** The most sides that are handled. */
  public static final int MOST_SIDES = 64;

  /**
   * The measures of the regular frame that was meant. They place the start of the adjustment and,
   * by the inner constraints, the axes of the result; they are no readings and carry no weight.
   *
   * @param baseRadius circumradius of the base, in metres, greater than 0
   * @param apexHeight height of the apex (of the whole pyramid) above the base, in metres, greater
   *     than 0
   * @param openingHeight height of the opening above the base, in metres, from 0 to below the apex;
   *     0 when there is no opening; 0 or more
   */
  public record Ideal(double baseRadius, double apexHeight, double openingHeight) {

    public Ideal {
      Args.positive("ideal base radius", baseRadius, "m");
      Args.positive("ideal apex height", apexHeight, "m");
      Args.notNegative("ideal opening height", openingHeight, "m");
      Args.require(
          openingHeight < apexHeight,
          "ideal opening height",
          Numbers.plain(openingHeight) + " m",
          "must be below the apex");
    }

    double openingRadius() {
      return baseRadius * (1 - openingHeight / apexHeight);
    }
  }

  public SurveyShape {
    Args.within("sides", sides, 3, MOST_SIDES);
  }

  /**
   * A frame whose faces meet at the apex.
   *
   * @param sides 3 to 64
   * @return the shape, without ideal measures
   * @throws IllegalArgumentException if the number of sides is out of range
   */
  public static SurveyShape whole(int sides) {
    return new SurveyShape(sides, false, Optional.empty());
  }

  /**
   * A frame whose faces end at an opening.
   *
   * @param sides 3 to 64
   * @return the shape, without ideal measures
   * @throws IllegalArgumentException if the number of sides is out of range
   */
  public static SurveyShape truncated(int sides) {
    return new SurveyShape(sides, true, Optional.empty());
  }

  /**
   * The same shape with the measures it was meant to have.
   *
   * @param measures the ideal measures
   * @return the new shape
   */
  public SurveyShape meant(Ideal measures) {
    return new SurveyShape(sides, truncated, Optional.of(measures));
  }

  /**
   * Lists the nodes that the faces need.
   *
   * @return base corners, then opening corners or the apex
   */
  public List<Node> panelNodes() {
    List<Node> nodes = new ArrayList<>();
    for (int i = 1; i <= sides; i++) {
      nodes.add(Node.base(i));
    }
    for (int i = 1; i <= sides && truncated; i++) {
      nodes.add(Node.opening(i));
    }
    if (!truncated) {
      nodes.add(Node.APEX);
    }
    return List.copyOf(nodes);
  }

  /**
   * Gives a base corner, counted round.
   *
   * @param number any whole number; corner {@code sides + 1} is corner 1 again
   * @return the corner
   */
  public Node baseCorner(int number) {
    return Node.base(Math.floorMod(number - 1, sides) + 1);
  }

  /**
   * Gives the upper end of the hip pole that stands on a base corner.
   *
   * @param number any whole number, counted round
   * @return the opening corner above it, or the apex
   */
  public Node hipTop(int number) {
    return truncated ? Node.opening(Math.floorMod(number - 1, sides) + 1) : Node.APEX;
  }

  /**
   * Lists the edges of the panels once each: base sides of face 1 to n, hips 1 to n, then opening
   * sides of face 1 to n.
   *
   * @return the edges as pairs of nodes
   */
  public List<PanelEdge> panelEdges() {
    List<PanelEdge> edges = new ArrayList<>();
    for (int i = 1; i <= sides; i++) {
      edges.add(new PanelEdge(baseCorner(i - 1), baseCorner(i)));
    }
    for (int i = 1; i <= sides; i++) {
      edges.add(new PanelEdge(baseCorner(i), hipTop(i)));
    }
    for (int i = 1; i <= sides && truncated; i++) {
      edges.add(new PanelEdge(hipTop(i - 1), hipTop(i)));
    }
    return List.copyOf(edges);
  }

  /**
   * An edge of a panel.
   *
   * @param from one end
   * @param to the other end
   */
  public record PanelEdge(Node from, Node to) {

    /**
     * Writes the edge.
     *
     * @return such as {@code B1-B2}
     */
    public String name() {
      return from + "-" + to;
    }
  }
}
