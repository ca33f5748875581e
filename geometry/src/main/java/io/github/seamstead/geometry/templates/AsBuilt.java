package io.github.seamstead.geometry.templates;

import io.github.seamstead.geometry.survey.Adjustment;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.geometry.survey.SurveyShape;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * The frame as built: its faces laid flat, its seams and its base corners.
 *
 * <p>A face with an opening has four corners that need not lie in one plane. It is laid flat so
 * that all four edges keep their lengths in space, so that neighbouring panels made from the faces
 * themselves meet in seams of exactly equal length; what the twist costs goes into the two
 * diagonals alike.
 *
 * <pre>{@code
 * List<Reading> readings = new ArrayList<>();
 * for (int i = 1; i <= 4; i++) {
 *   readings.add(Reading.distance(Node.APEX, Node.base(i), 2.06, 0.003));
 *   readings.add(Reading.distance(Node.base(i), Node.base(i % 4 + 1), 2, 0.003));
 * }
 * readings.add(Reading.distance(Node.base(1), Node.base(3), 2.828, 0.003));
 * if (Survey.of(SurveyShape.whole(4), readings).adjust() instanceof Adjustment found) {
 *   AsBuilt.of(found).faces().size(); // 4
 * }
 * }</pre>
 *
 * @param faces face 1 to n
 * @param seams seam 1 to n; seam i lies on hip i, between face i and face i + 1
 * @param corners base corner 1 to n
 * @param levelled whether heights mean something: levels or plumb offsets were read
 */
public record AsBuilt(
    List<AsBuiltFace> faces, List<SeamLine> seams, List<BaseCorner> corners, boolean levelled) {

  /**
   * A seam of the cover as the frame asks for it.
   *
   * @param number 1 to n
   * @param line from the base corner up
   * @param length along the hip, in metres
   */
  public record SeamLine(int number, SurveyShape.PanelEdge line, Uncertain length) {}

  /**
   * A corner of the base.
   *
   * @param node the corner
   * @param aboveLowest its height above the lowest corner, in metres; empty if nothing was levelled
   */
  public record BaseCorner(Node node, Optional<Uncertain> aboveLowest) {}

  public AsBuilt {
    faces = List.copyOf(faces);
    seams = List.copyOf(seams);
    corners = List.copyOf(corners);
  }

  /**
   * Lays the faces of an adjusted survey flat.
   *
   * @param adjustment the adjustment, best without blunders
   * @return the frame as built
   * @throws IllegalArgumentException if a face as adjusted is no simple triangle or quadrilateral
   */
  public static AsBuilt of(Adjustment adjustment) {
    SurveyShape shape = adjustment.survey().shape();
    List<AsBuiltFace> faces = new ArrayList<>();
    List<SeamLine> seams = new ArrayList<>();
    for (int i = 1; i <= shape.sides(); i++) {
      faces.add(face(adjustment, shape, i));
      SurveyShape.PanelEdge line = new SurveyShape.PanelEdge(shape.baseCorner(i), shape.hipTop(i));
      seams.add(new SeamLine(i, line, adjustment.distance(line.from(), line.to())));
    }
    return new AsBuilt(faces, seams, corners(adjustment, shape), adjustment.isLevelled());
  }

  private static List<BaseCorner> corners(Adjustment adjustment, SurveyShape shape) {
    Node lowest = shape.baseCorner(1);
    for (int i = 2; i <= shape.sides(); i++) {
      Node corner = shape.baseCorner(i);
      if (adjustment.position(corner).getZ() < adjustment.position(lowest).getZ()) {
        lowest = corner;
      }
    }
    List<BaseCorner> corners = new ArrayList<>();
    for (int i = 1; i <= shape.sides(); i++) {
      Node corner = shape.baseCorner(i);
      corners.add(
          new BaseCorner(
              corner,
              adjustment.isLevelled()
                  ? Optional.of(adjustment.heightDifference(lowest, corner))
                  : Optional.empty()));
    }
    return corners;
  }

  private static AsBuiltFace face(Adjustment adjustment, SurveyShape shape, int number) {
    Node left = shape.baseCorner(number - 1);
    Node right = shape.baseCorner(number);
    Node topRight = shape.hipTop(number);
    Node topLeft = shape.hipTop(number - 1);
    Map<FaceMeasure, Uncertain> measures = new EnumMap<>(FaceMeasure.class);
    measures.put(FaceMeasure.BASE, adjustment.distance(left, right));
    measures.put(FaceMeasure.RIGHT_HIP, adjustment.distance(right, topRight));
    measures.put(FaceMeasure.LEFT_HIP, adjustment.distance(topLeft, left));
    double outOfPlane = 0;
    List<Node> top = List.of(topRight);
    Optional<Uncertain> other = Optional.empty();
    if (shape.truncated()) {
      top = List.of(topRight, topLeft);
      measures.put(FaceMeasure.TOP, adjustment.distance(topRight, topLeft));
      Uncertain diagonal = adjustment.distance(left, topRight);
      Uncertain second = adjustment.distance(right, topLeft);
      double flat =
          FaceShape.flatDiagonal(
              measures.get(FaceMeasure.BASE).value(),
              measures.get(FaceMeasure.RIGHT_HIP).value(),
              measures.get(FaceMeasure.TOP).value(),
              measures.get(FaceMeasure.LEFT_HIP).value(),
              diagonal.value(),
              second.value());
      measures.put(FaceMeasure.DIAGONAL, new Uncertain(flat, diagonal.standardUncertainty()));
      // Laid flat, both diagonals come out longer by the same.
      double longer = flat - diagonal.value();
      other = Optional.of(new Uncertain(second.value() + longer, second.standardUncertainty()));
      outOfPlane = outOfPlane(adjustment, left, right, topRight, topLeft);
    }
    Map<FaceMeasure, Double> values = new EnumMap<>(FaceMeasure.class);
    measures.forEach((measure, value) -> values.put(measure, value.value()));
    return new AsBuiltFace(
        number,
        FaceShape.outline(values),
        measures,
        other,
        adjustment.middleDistance(List.of(left, right), top),
        outOfPlane);
  }

  /** Half the gap between the diagonals: each corner lies that far off the plane midway. */
  private static double outOfPlane(Adjustment adjustment, Node a, Node b, Node c, Node d) {
    Vector3D p = adjustment.position(c).subtract(adjustment.position(a));
    Vector3D q = adjustment.position(d).subtract(adjustment.position(b));
    Vector3D normal = p.cross(q);
    double size = normal.norm();
    if (!(size > 0)) {
      return 0;
    }
    Vector3D between = adjustment.position(b).subtract(adjustment.position(a));
    return Math.abs(between.dot(normal)) / size / 2;
  }
}
