package io.github.seamstead.geometry.internal;

import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Which pieces are congruent as they are cut: one template serves them all.
 *
 * <p>Pieces of one group are of one kind, have the same corners of the cut outline in the same
 * order, the same holes and the same edge on a reinforced band. Their labels and the names on their
 * edges may differ.
 */
public final class SameCut {

  /** Corners nearer than this are the same for any saw, knife or pen, in metres (chosen). */
  public static final double TOLERANCE = 1e-6;

  private SameCut() {}

  /**
   * Groups pieces by what is cut. Costs time proportional to the pieces times the groups times the
   * corners.
   *
   * @param pieces the pieces; one with a count stands in its group that often
   * @return the groups in the order in which their first piece comes
   */
  public static List<List<PatternPiece>> groups(List<PatternPiece> pieces) {
    List<List<PatternPiece>> groups = new ArrayList<>();
    for (PatternPiece piece : pieces) {
      groups.stream()
          .filter(group -> test(group.get(0), piece))
          .findFirst()
          .orElseGet(
              () -> {
                List<PatternPiece> fresh = new ArrayList<>();
                groups.add(fresh);
                return fresh;
              })
          .addAll(Collections.nCopies(piece.count(), piece));
    }
    return groups;
  }

  /**
   * Tells whether two pieces are cut alike.
   *
   * @param a a piece
   * @param b another
   * @return whether one template serves both
   */
  public static boolean test(PatternPiece a, PatternPiece b) {
    if (a.kind() != b.kind()
        || !a.reinforcedCutEdge().equals(b.reinforcedCutEdge())
        || a.holes().size() != b.holes().size()
        || !same(a.cut().vertices(), b.cut().vertices())) {
      return false;
    }
    for (int i = 0; i < a.holes().size(); i++) {
      if (!same(a.holes().get(i).cut().vertices(), b.holes().get(i).cut().vertices())) {
        return false;
      }
    }
    return true;
  }

  /**
   * Tells whether two outlines are the same, corner by corner within {@link #TOLERANCE}.
   *
   * @param a an outline, in metres
   * @param b another
   * @return true if no hand could cut one from the other
   */
  public static boolean sameOutline(Outline a, Outline b) {
    return same(a.vertices(), b.vertices());
  }

  private static boolean same(List<Vector2D> a, List<Vector2D> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i).distance(b.get(i)) > TOLERANCE) {
        return false;
      }
    }
    return true;
  }
}
