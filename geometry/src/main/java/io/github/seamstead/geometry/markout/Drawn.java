package io.github.seamstead.geometry.markout;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Compares a template drawn from rounded numbers with the true one, corner by corner. */
final class Drawn {

  private Drawn() {}

  static List<CheckLength> checks(
      List<Vector2D> places, List<List<Vector2D>> drawings, TapeDivision division) {
    int count = places.size();
    List<CheckLength> checks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      for (int j = i + 1; j < count; j++) {
        boolean side = j == i + 1 || (i == 0 && j == count - 1);
        boolean all = count <= MarkOut.ALL_DIAGONALS;
        boolean opposite = j - i == count / 2;
        if (side || all || opposite) {
          checks.add(check(i, j, side, places, drawings, division));
        }
      }
    }
    return checks;
  }

  private static CheckLength check(
      int i,
      int j,
      boolean side,
      List<Vector2D> places,
      List<List<Vector2D>> drawings,
      TapeDivision division) {
    double length = places.get(i).distance(places.get(j));
    double error = 0;
    for (List<Vector2D> drawn : drawings) {
      error = Math.max(error, Math.abs(drawn.get(i).distance(drawn.get(j)) - length));
    }
    return new CheckLength(i, j, side, length, division.round(length), error);
  }

  static TemplateFit fit(List<Vector2D> places, List<Vector2D> drawn, double tolerance) {
    int count = places.size();
    int worst = 0;
    double sideError = 0;
    double shortness = 0;
    double fullness = 0;
    for (int i = 0; i < count; i++) {
      int next = (i + 1) % count;
      if (error(places, drawn, i) > error(places, drawn, worst)) {
        worst = i;
      }
      Vector2D side = places.get(next).subtract(places.get(i));
      sideError =
          Math.max(sideError, Math.abs(drawn.get(i).distance(drawn.get(next)) - side.norm()));
      for (int end : new int[] {i, next}) {
        Vector2D moved = drawn.get(end).subtract(places.get(end));
        double inward = side.normalize().signedArea(moved);
        shortness = Math.max(shortness, inward);
        fullness = Math.max(fullness, -inward);
      }
    }
    return new TemplateFit(
        tolerance,
        worst,
        error(places, drawn, worst),
        sideError,
        shortness,
        fullness,
        Outline.signedArea(drawn) - Outline.signedArea(places));
  }

  private static double error(List<Vector2D> places, List<Vector2D> drawn, int corner) {
    return drawn.get(corner).distance(places.get(corner));
  }
}
