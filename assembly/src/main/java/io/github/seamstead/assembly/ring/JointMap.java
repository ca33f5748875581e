package io.github.seamstead.assembly.ring;

import java.util.ArrayList;
import java.util.List;

/**
 * The pieces as the crew sees them, from one side.
 *
 * @param view from where
 * @param closure ring or line; in a ring the last place meets the first
 * @param places from the reader's left to right
 */
public record JointMap(View view, Closure closure, List<PlacedPiece> places) {

  public JointMap {
    places = List.copyOf(places);
  }

  /**
   * Draws up the map. Costs O(n).
   *
   * <p>Turning a cover inside out mirrors it. Seen from the plain side the order of the pieces runs
   * the other way round and the two edges of each piece change hands, while every joint still has
   * the same two edges and the same mark. Piece 1 keeps the first place of a ring in both views.
   *
   * @param ring the pieces
   * @param view from where
   * @return the map
   */
  public static JointMap of(PieceRing ring, View view) {
    int n = ring.size();
    boolean stands = view == View.AS_IT_STANDS;
    Side left = stands ? Side.LEFT : Side.RIGHT;
    List<PlacedPiece> places = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      int piece = stands ? i + 1 : ring.isRing() ? Math.floorMod(-i, n) + 1 : n - i;
      Edge onLeft = ring.edge(piece, left);
      Edge onRight = ring.edge(piece, left.opposite());
      double turn = 2 * Math.PI * (piece - 0.5) / n;
      places.add(
          new PlacedPiece(
              i + 1,
              piece,
              ring.piece(piece).name(),
              onLeft,
              ring.jointAt(onLeft),
              onRight,
              ring.jointAt(onRight),
              stands ? turn : -turn));
    }
    return new JointMap(view, ring.closure(), places);
  }

  /**
   * Writes the map on one line, joints between the pieces.
   *
   * @return such as {@code H-18 | 1 | A-10 | 2 | B-21 | ...}
   */
  public String text() {
    StringBuilder line = new StringBuilder();
    for (PlacedPiece place : places) {
      line.append(place.leftJoint().map(joint -> joint.mark().text()).orElse("free"))
          .append(" | ")
          .append(place.name())
          .append(" | ");
    }
    return line.append(
            places.get(places.size() - 1).rightJoint().map(j -> j.mark().text()).orElse("free"))
        .toString();
  }
}
