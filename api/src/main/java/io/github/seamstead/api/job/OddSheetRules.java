package io.github.seamstead.api.job;

import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** What must hold of a sheet that is no rectangle. */
final class OddSheetRules {

  /**
   * How far the corners may stay off the rectangle stated round them; common practice of a tape.
   */
  private static final double CLOSE = 0.01;

  private OddSheetRules() {}

  /** The outline is one, it fills the rectangle stated, and its bands are edges of it. */
  static void check(
      List<SheetCorner> outline,
      double length,
      double width,
      List<Integer> bands,
      boolean hasReinforced,
      Shape.Faults faults) {
    if (outline.isEmpty()) {
      if (!bands.isEmpty()) {
        faults.note(
            "bands", "bands of a rectangle", "must be stated as reinforced, or state outline");
      }
      return;
    }
    if (hasReinforced) {
      faults.note(
          "reinforced",
          "named edges of a sheet with an outline",
          "must be stated as bands: numbers of edges, edge 1 from the first corner to the second");
    }
    for (int i = 0; i < bands.size(); i++) {
      if (bands.get(i) > outline.size()) {
        faults.note(
            "bands[" + i + "]",
            "edge " + bands.get(i),
            "must be from 1 to " + outline.size() + ", the number of edges");
      }
    }
    try {
      fills(
          new Outline(outline.stream().map(c -> Vector2D.of(c.x(), c.y())).toList()).bounds(),
          length,
          width,
          faults);
    } catch (IllegalArgumentException crossing) {
      faults.note(
          "outline",
          "corners whose edges cross or meet",
          "must follow the edge of the sheet, each corner once");
    }
  }

  private static void fills(Bounds box, double length, double width, Shape.Faults faults) {
    if (box.minX() > CLOSE
        || box.minY() > CLOSE
        || Math.abs(box.maxX() - length) > CLOSE
        || Math.abs(box.maxY() - width) > CLOSE) {
      faults.note(
          "outline",
          "corners from " + at(box.minX(), box.minY()) + " to " + at(box.maxX(), box.maxY()),
          "must reach from 0 m, 0 m to "
              + Numbers.plain(length)
              + " m, "
              + Numbers.plain(width)
              + " m, the length and width stated");
    }
  }

  private static String at(double x, double y) {
    return Numbers.plain(x) + " m, " + Numbers.plain(y) + " m";
  }
}
