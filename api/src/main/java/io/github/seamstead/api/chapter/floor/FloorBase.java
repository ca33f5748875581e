package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.survey.SurveyPart;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.FloorOutline;
import io.github.seamstead.api.job.OutlineCorner;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.survey.Adjustment;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.materials.floor.Footprint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** What the floor covers, and where its door is. */
final class FloorBase {

  private FloorBase() {}

  /** Tells whether anything gives the floor an outline. */
  static boolean isKnown(Floor floor, Optional<FramePart> frame, Optional<SurveyPart> survey) {
    return floor.outline().isPresent() || frame.isPresent() || survey.isPresent();
  }

  /** The outline stated, else the base as surveyed, else the ideal one. */
  static Footprint of(
      Run run, Floor floor, Optional<FramePart> frame, Optional<SurveyPart> survey) {
    if (floor.outline().isPresent()) {
      return of(floor.outline().get());
    }
    // Edge i lies under face i + 1 in both.
    if (survey.isEmpty()) {
      RegularPyramid pyramid = frame.orElseThrow().pyramid();
      return Footprint.regular(pyramid.sides(), pyramid.baseSide());
    }
    int sides = run.document().frame().orElseThrow().sides();
    Adjustment adjustment = survey.get().report().accepted();
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      Vector3D corner = adjustment.position(Node.base(i == 0 ? sides : i));
      corners.add(Vector2D.of(corner.getX(), corner.getY()));
    }
    return Footprint.of(corners);
  }

  private static Footprint of(FloorOutline outline) {
    if (outline.diameter().isPresent()) {
      return Footprint.round(outline.diameter().get());
    }
    if (outline.sides().isPresent()) {
      return Footprint.regular(outline.sides().get(), outline.side().orElseThrow());
    }
    return Footprint.of(points(outline.corners()));
  }

  private static List<Vector2D> points(List<OutlineCorner> corners) {
    return corners.stream().map(corner -> Vector2D.of(corner.x(), corner.y())).toList();
  }

  /** The edge of the footprint at the door, 0 upwards. */
  static int doorEdge(Run run, Floor floor, Footprint plan) {
    Optional<Integer> stated = floor.doorFace();
    if (stated.isEmpty() && floor.outline().isEmpty()) {
      stated = run.document().cover().flatMap(Cover::door).map(FaceOpening::face);
    }
    if (stated.isEmpty()) {
      run.assume("$.floor.doorFace", "1", "the document states no door");
    }
    int side = stated.orElse(1) - 1;
    return floor.outline().map(outline -> edge(outline, side, plan)).orElse(side);
  }

  private static int edge(FloorOutline outline, int side, Footprint plan) {
    int edges = plan.corners().size();
    if (outline.diameter().isPresent()) {
      return side * edges / outline.doorSides();
    }
    // Corners written clockwise are turned round, and with them their edges.
    boolean turned =
        !outline.corners().isEmpty() && Footprint.runsClockwise(points(outline.corners()));
    return turned ? Math.floorMod(edges - 2 - side, edges) : side;
  }
}
