package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Neighbouring faces laid flat side by side, hip on hip, so that a panel may be cut over them in
 * one piece. Where two of them meet the cloth is bent over the pole and not sewn.
 *
 * <p>The outline runs along the bases from left to right, up the last face's right hip, back along
 * the edges at the top if there are any, and down the first face's left hip. Its middle is upright:
 * the line that halves the angle between the first base and the last.
 *
 * @param outline the faces together, in metres
 * @param faces the faces where they lie in it, from left to right, in metres
 * @param turns by how much each face is turned from its own coordinates, in radians
 */
public record Fan(Outline outline, List<Outline> faces, List<Double> turns) {

  /** Hips that differ by less are one line to any hand, in metres; common practice of chalk. */
  public static final double HIP_TOLERANCE = 0.001;

  public Fan {
    faces = List.copyOf(faces);
    turns = List.copyOf(turns);
  }

  /**
   * Lays faces flat.
   *
   * @param faces the faces from left to right seen from outside, each in its own plane with its
   *     base first and its left hip last, in metres; one or more, all with as many corners
   * @return the fan; empty if two hips that meet differ by more than {@link #HIP_TOLERANCE}, or if
   *     the faces go so far round that the first and the last would overlap. O(n²) for n faces
   */
  public static Optional<Fan> of(List<Outline> faces) {
    Args.notEmpty("faces of a fan", faces);
    List<Outline> laid = new ArrayList<>(List.of(faces.get(0)));
    List<Double> turns = new ArrayList<>(List.of(0.0));
    for (int i = 1; i < faces.size(); i++) {
      Outline before = laid.get(i - 1);
      Outline face = faces.get(i);
      if (face.size() != before.size()
          || Math.abs(before.edgeLength(1) - face.edgeLength(-1)) > HIP_TOLERANCE) {
        return Optional.empty();
      }
      double turn =
          angle(before.vertex(1), before.vertex(2)) - angle(face.vertex(0), face.vertex(-1));
      Outline turned = face.placed(turn, Vector2D.ZERO);
      laid.add(turned.placed(0, before.vertex(1).subtract(turned.vertex(0))));
      turns.add(turn);
    }
    return upright(laid, turns);
  }

  private static Optional<Fan> upright(List<Outline> laid, List<Double> turns) {
    // Each face turns by less than half a turn from the last; what they add up to is kept.
    double all = 0;
    for (int i = 1; i < turns.size(); i++) {
      all += Math.IEEEremainder(turns.get(i) - turns.get(i - 1), 2 * Math.PI);
    }
    if (Math.abs(all) >= 2 * Math.PI) {
      return Optional.empty();
    }
    double back = -all / 2;
    List<Outline> faces = new ArrayList<>();
    List<Double> angles = new ArrayList<>();
    for (int i = 0; i < laid.size(); i++) {
      faces.add(laid.get(i).placed(back, Vector2D.ZERO));
      angles.add(turns.get(i) + back);
    }
    try {
      return Optional.of(new Fan(new Outline(corners(faces)), faces, angles));
    } catch (IllegalArgumentException overlapping) {
      return Optional.empty();
    }
  }

  private static List<Vector2D> corners(List<Outline> faces) {
    List<Vector2D> corners = new ArrayList<>();
    faces.forEach(face -> corners.add(face.vertex(0)));
    Outline last = faces.get(faces.size() - 1);
    corners.add(last.vertex(1));
    corners.add(last.vertex(2));
    for (int i = faces.size() - 1; i >= 0; i--) {
      // Of a face that ends in a point nothing lies between the hips.
      for (int k = 3; k < faces.get(i).size(); k++) {
        corners.add(faces.get(i).vertex(k));
      }
    }
    return corners;
  }

  private static double angle(Vector2D from, Vector2D to) {
    Vector2D way = to.subtract(from);
    return StrictMath.atan2(way.getY(), way.getX());
  }

  /**
   * Takes what is drawn on one of the faces to where that face lies.
   *
   * @param face the face's place in the fan, counted from 0
   * @param drawn an outline in the face's own coordinates, in metres
   * @param own the face in its own coordinates, in metres
   * @return the outline in the fan's coordinates
   */
  public Outline place(int face, Outline drawn, Outline own) {
    double turn = turns.get(face);
    Vector2D foot = own.placed(turn, Vector2D.ZERO).vertex(0);
    return drawn.placed(turn, faces.get(face).vertex(0).subtract(foot));
  }
}
