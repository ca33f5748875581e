package io.github.seamstead.api.book.front;

import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.RegularPyramid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The thing in space: seen from above its door, with five sizes. */
final class ShapeSketch {

  private static final double WIDTH = 100;

  /** Room for the shape itself, and for the sizes above and below it. */
  private static final double WIDEST = 70;

  private static final double TALLEST = 58;
  private static final double ABOVE = 12;
  private static final double BELOW = 18;

  /** How far the eye is above the ground: low enough for the height, high enough for the base. */
  private static final double ELEVATION = Math.toRadians(20);

  private final RegularPyramid pyramid;
  private final double turn;
  private final double low;
  private final Sketch sketch;

  private ShapeSketch(RegularPyramid pyramid, int doorFace) {
    this.pyramid = pyramid;
    List<Vector3D> door = pyramid.faceCorners(doorFace);
    Vector3D middle = door.get(0).lerp(door.get(1), 0.5);
    turn = -Math.PI / 2 - StrictMath.atan2(middle.getY(), middle.getX());
    FrameMeasures m = pyramid.measures();
    low = -m.circumradius() * StrictMath.sin(ELEVATION);
    double high =
        Math.max(
            m.frameHeight() * StrictMath.cos(ELEVATION)
                + m.openingCircumradius() * StrictMath.sin(ELEVATION),
            m.circumradius() * StrictMath.sin(ELEVATION));
    double scale = Math.min(WIDEST / (2 * m.circumradius()), TALLEST / (high - low));
    sketch = new Sketch(WIDTH, ABOVE + (high - low) * scale + BELOW);
    sketch.map(46, ABOVE + high * scale, scale);
  }

  static Drawing of(Desk desk, RegularPyramid pyramid) {
    ShapeSketch shape = new ShapeSketch(pyramid, desk.doorFace());
    return shape.draw(desk);
  }

  private Vector2D seen(Vector3D p) {
    double x = p.getX() * StrictMath.cos(turn) - p.getY() * StrictMath.sin(turn);
    double y = p.getX() * StrictMath.sin(turn) + p.getY() * StrictMath.cos(turn);
    return Vector2D.of(x, p.getZ() * StrictMath.cos(ELEVATION) + y * StrictMath.sin(ELEVATION));
  }

  private Vector2D at(Vector3D p) {
    return sketch.at(seen(p));
  }

  private Drawing draw(Desk desk) {
    FrameMeasures m = pyramid.measures();
    faces();
    desk.document().cover().flatMap(c -> c.door()).ifPresent(d -> opening(d, true));
    desk.document().cover().ifPresent(c -> c.vents().forEach(v -> opening(v, false)));
    sizes(desk, m, low);
    return sketch.drawing(
        "start-shape",
        "The frame in space",
        "A pyramid of "
            + pyramid.sides()
            + " sides seen from above its door, which is at the"
            + " bottom. Base side "
            + desk.sizes().length(m.base().side())
            + ", height "
            + desk.sizes().length(m.frameHeight())
            + ", hip "
            + desk.sizes().length(m.hipLength())
            + ".");
  }

  private void faces() {
    List<Integer> front = new ArrayList<>();
    for (int face = 1; face <= pyramid.sides(); face++) {
      if (faces(face)) {
        front.add(face);
      } else {
        sketch.shape(corners(face), Sketch.THIN, "1 1", "none");
      }
    }
    for (int face : front) {
      String fill = face % 2 == 0 ? "#ffffff" : Sketch.PALE;
      sketch.shape(corners(face), Sketch.OUTLINE, "", fill);
    }
  }

  private boolean faces(int face) {
    Vector3D n = pyramid.faceNormal(face);
    double y = n.getX() * StrictMath.sin(turn) + n.getY() * StrictMath.cos(turn);
    return n.getZ() * StrictMath.sin(ELEVATION) - y * StrictMath.cos(ELEVATION) > 0;
  }

  private List<Vector2D> corners(int face) {
    return pyramid.faceCorners(face).stream().map(this::at).toList();
  }

  private void opening(FaceOpening opening, boolean dark) {
    if (!faces(opening.face())) {
      return;
    }
    List<Vector3D> c = pyramid.faceCorners(opening.face());
    Vector3D along = c.get(1).subtract(c.get(0)).normalize();
    Vector3D up = pyramid.faceNormal(opening.face()).cross(along);
    List<Vector2D> points =
        opening.outline().stream()
            .map(p -> at(c.get(0).add(along.multiply(p.x())).add(up.multiply(p.y()))))
            .toList();
    sketch.shape(points, Sketch.OUTLINE, "", dark ? "#dcdcd4" : "#ffffff");
  }

  private void sizes(Desk desk, FrameMeasures m, double low) {
    Sizes w = desk.sizes();
    double r = m.circumradius();
    double left = -r;
    double right = r;
    Vector2D floor = sketch.at(Vector2D.of(0, low));
    Vector2D a = Vector2D.of(sketch.at(Vector2D.of(left, 0)).getX(), floor.getY());
    Vector2D b = Vector2D.of(sketch.at(Vector2D.of(right, 0)).getX(), floor.getY());
    sketch.dimension(a, b, 13, w.length(m.acrossCorners()) + " across corners");
    List<Vector2D> door = corners(desk.doorFace());
    boolean wide = door.get(0).distance(door.get(1)) > 3;
    if (wide) {
      Vector2D p = Vector2D.of(Math.min(door.get(0).getX(), door.get(1).getX()), floor.getY());
      Vector2D q = Vector2D.of(Math.max(door.get(0).getX(), door.get(1).getX()), floor.getY());
      sketch.dimension(p, q, 6, w.length(m.base().side()));
    }
    Vector2D foot = Vector2D.of(b.getX(), sketch.at(Vector2D.ZERO).getY());
    double top = sketch.at(Vector2D.of(0, m.frameHeight() * StrictMath.cos(ELEVATION))).getY();
    Vector2D peak = Vector2D.of(b.getX(), top);
    sketch.dimension(foot, peak, 9, w.length(m.frameHeight()) + " high");
    hip(w, m);
    Optional<String> opening =
        m.pyramid().isTruncated()
            ? Optional.of("opening " + w.length(2 * m.openingCircumradius()))
            : Optional.empty();
    opening.ifPresent(
        text ->
            sketch.text(
                Vector2D.of(
                    sketch.at(Vector2D.ZERO).getX(),
                    sketch
                            .at(
                                Vector2D.of(
                                    0,
                                    m.frameHeight() * StrictMath.cos(ELEVATION)
                                        + m.openingCircumradius() * StrictMath.sin(ELEVATION)))
                            .getY()
                        - 4),
                text,
                0,
                false));
  }

  private void hip(Sizes w, FrameMeasures m) {
    Vector2D foot = Vector2D.of(1e9, 0);
    Vector2D top = Vector2D.ZERO;
    for (int corner = 1; corner <= pyramid.sides(); corner++) {
      Vector2D p = at(pyramid.baseCorner(corner));
      if (p.getX() < foot.getX() - 1e-9) {
        foot = p;
        top = pyramid.isTruncated() ? at(pyramid.topCorner(corner)) : at(pyramid.apex());
      }
    }
    sketch.dimension(foot, top, -5, "hip " + w.length(m.hipLength()));
  }
}
