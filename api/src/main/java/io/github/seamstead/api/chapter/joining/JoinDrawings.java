package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.assembly.ring.JointMap;
import io.github.seamstead.assembly.ring.PlacedPiece;
import io.github.seamstead.assembly.ring.View;
import java.util.List;
import java.util.Optional;

/** The map of pieces and joints, as the cover stands and as it lies. */
final class JoinDrawings {

  private static final double OUTER = 1;
  private static final double INNER = 0.2;
  private static final double LETTERS = 0.86;
  private static final double NAMES = 0.62;
  private static final double JOINTS = 1.12;
  private static final int MOST_WITH_LETTERS = 12;

  private JoinDrawings() {}

  /**
   * Draws a ring as wedges about its top.
   *
   * @param map the map
   * @param door the face whose panel lies at the bottom
   */
  static Drawing map(JointMap map, int door) {
    Canvas canvas = Canvas.fit(-1.22, -1.22, 1.22, 1.22, 6, 360);
    int n = map.places().size();
    double half = Math.PI / n;
    double turn =
        map.places().stream()
            .filter(place -> place.piece() == door)
            .mapToDouble(PlacedPiece::angle)
            .findFirst()
            .orElse(0);
    for (PlacedPiece place : map.places()) {
      double middle = place.angle() - turn - Math.PI / 2;
      canvas.path(
          List.of(
              at(middle - half, INNER),
              at(middle - half, OUTER),
              at(middle + half, OUTER),
              at(middle + half, INNER)),
          true,
          Ink.CUT,
          place.piece() % 2 == 0 ? Shade.PALE : Shade.PAPER);
      double[] name = at(middle, NAMES);
      canvas.text(name[0], name[1], place.name(), 14, "middle", 0);
      if (n <= MOST_WITH_LETTERS) {
        // Seen from outside or from the plain side: the reader stands at the hem and looks to the
        // top.
        double[] left = at(middle - half * 0.62, LETTERS);
        double[] right = at(middle + half * 0.62, LETTERS);
        canvas.text(left[0], left[1], place.onLeft().label(), Canvas.SMALL_TEXT, "middle", 0);
        canvas.text(right[0], right[1], place.onRight().label(), Canvas.SMALL_TEXT, "middle", 0);
      }
      place
          .rightJoint()
          .ifPresent(
              joint -> {
                double[] mark = at(middle + half, JOINTS);
                canvas.text(mark[0], mark[1], joint.mark().text(), Canvas.TEXT, "middle", 0);
              });
    }
    boolean stands = map.view() == View.AS_IT_STANDS;
    return canvas.drawing(
        stands ? "map-as-it-stands" : "map-as-it-lies",
        stands ? "The cover as it stands, seen from outside" : "The cover as it lies, inside out",
        (stands
                ? "Good sides towards you. Pieces run "
                : "Plain sides towards you, mirrored: pieces run ")
            + order(map)
            + (stands ? " counter-clockwise seen from above" : " clockwise seen from above")
            + ". The door panel is at the bottom. Joint names stand outside, each on its seam.");
  }

  private static String order(JointMap map) {
    List<PlacedPiece> places = map.places();
    Optional<String> last =
        places.size() > 3
            ? Optional.of(" … " + places.get(places.size() - 1).name())
            : Optional.empty();
    StringBuilder order = new StringBuilder();
    for (PlacedPiece place : places.subList(0, Math.min(3, places.size()))) {
      order.append(order.isEmpty() ? "" : ", ").append(place.name());
    }
    return order + last.orElse("");
  }

  private static double[] at(double angle, double radius) {
    return new double[] {radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)};
  }
}
