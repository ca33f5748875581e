package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * What one straight cut frees: the end of an item beyond the last piece, and the strip above the
 * highest piece. Pieces smaller than a fiftieth of the item are waste and not reported.
 */
final class Remnants {

  private static final double LEAST_PART = 0.02;

  private Remnants() {}

  /** Remnants of an item in its own coordinates, largest first. */
  static List<Outline> of(Bin bin, double usedLength, List<Outline> pieces) {
    Bounds box = bin.bounds();
    double cut = box.minX() + usedLength;
    double top = box.minY();
    for (Outline o : pieces) {
      top = Math.max(top, o.bounds().maxY());
    }
    Outline whole = bin.item().outline();
    List<Outline> out = new ArrayList<>();
    if (whole.isConvex()) {
      List<Vector2D> corners = whole.vertices();
      keep(out, clip(corners, -1, 0, -cut), bin);
      keep(out, clip(clip(corners, 1, 0, cut), 0, -1, -top), bin);
    }
    out.sort(Comparator.comparingDouble(o -> -o.area()));
    return out;
  }

  private static void keep(List<Outline> out, List<Vector2D> corners, Bin bin) {
    double least = LEAST_PART * bin.item().outline().area();
    if (corners.size() < 3 || Outline.signedArea(corners) < least) {
      return;
    }
    Outline remnant = new Outline(corners);
    boolean flawed = bin.item().flaws().stream().anyMatch(f -> meet(f.bounds(), remnant.bounds()));
    if (!flawed) {
      out.add(remnant);
    }
  }

  private static boolean meet(Bounds a, Bounds b) {
    return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
  }

  /** The part of a convex polygon where {@code nx x + ny y <= c}. */
  private static List<Vector2D> clip(List<Vector2D> p, double nx, double ny, double c) {
    List<Vector2D> out = new ArrayList<>();
    for (int i = 0; i < p.size(); i++) {
      Vector2D a = p.get(i);
      Vector2D b = p.get((i + 1) % p.size());
      double va = nx * a.getX() + ny * a.getY() - c;
      double vb = nx * b.getX() + ny * b.getY() - c;
      if (va <= 0) {
        out.add(a);
      }
      if ((va < 0 && vb > 0) || (va > 0 && vb < 0)) {
        out.add(a.add(b.subtract(a).multiply(va / (va - vb))));
      }
    }
    return out;
  }
}
