package io.github.seamstead.geometry.layout.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a simple polygon into convex parts: ears are clipped into triangles, preferring the ear with
 * the widest least angle so that slivers are rare, and triangles are then merged over diagonals
 * that leave no reflex corner (Hertel and Mehlhorn 1983: at most four times the least number of
 * parts). O(n²) to O(n³) for n corners; done once per piece.
 */
public final class ConvexParts {

  private ConvexParts() {}

  public static List<double[]> of(double[] polygon) {
    List<int[]> parts = triangles(polygon);
    merge(polygon, parts);
    List<double[]> out = new ArrayList<>(parts.size());
    for (int[] part : parts) {
      double[] p = new double[2 * part.length];
      for (int i = 0; i < part.length; i++) {
        p[2 * i] = polygon[2 * part[i]];
        p[2 * i + 1] = polygon[2 * part[i] + 1];
      }
      out.add(p);
    }
    return out;
  }

  private static List<int[]> triangles(double[] p) {
    List<Integer> ring = new ArrayList<>();
    for (int i = 0; i < p.length / 2; i++) {
      ring.add(i);
    }
    List<int[]> out = new ArrayList<>();
    while (ring.size() > 3) {
      int best = -1;
      double bestQuality = Double.NEGATIVE_INFINITY;
      int n = ring.size();
      for (int i = 0; i < n; i++) {
        int a = ring.get((i + n - 1) % n);
        int b = ring.get(i);
        int c = ring.get((i + 1) % n);
        double turn = turn(p, a, b, c);
        if (turn < 0 || (turn > 0 && !isEar(p, ring, a, b, c))) {
          continue;
        }
        double quality = turn == 0 ? Double.POSITIVE_INFINITY : quality(p, a, b, c, turn);
        if (quality > bestQuality) {
          bestQuality = quality;
          best = i;
        }
      }
      if (best < 0) {
        // Rounding hid every ear of a nearly degenerate ring: take the most convex corner.
        for (int i = 0; i < n; i++) {
          double t = turn(p, ring.get((i + n - 1) % n), ring.get(i), ring.get((i + 1) % n));
          if (best < 0 || t > bestQuality) {
            bestQuality = t;
            best = i;
          }
        }
      }
      int a = ring.get((best + n - 1) % n);
      int b = ring.get(best);
      int c = ring.get((best + 1) % n);
      if (turn(p, a, b, c) > 0) {
        out.add(new int[] {a, b, c});
      }
      ring.remove(best);
    }
    if (turn(p, ring.get(0), ring.get(1), ring.get(2)) > 0) {
      out.add(new int[] {ring.get(0), ring.get(1), ring.get(2)});
    }
    return out;
  }

  private static double quality(double[] p, int a, int b, int c, double turn) {
    double longest = Math.max(square(p, a, b), Math.max(square(p, b, c), square(p, c, a)));
    return turn / longest;
  }

  private static boolean isEar(double[] p, List<Integer> ring, int a, int b, int c) {
    for (int v : ring) {
      if (v == a || v == b || v == c || same(p, v, a) || same(p, v, c) || same(p, v, b)) {
        continue;
      }
      if (turn(p, a, b, v) >= 0 && turn(p, b, c, v) >= 0 && turn(p, c, a, v) >= 0) {
        return false;
      }
    }
    return true;
  }

  private static void merge(double[] p, List<int[]> parts) {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < parts.size() && !changed; i++) {
        for (int j = i + 1; j < parts.size() && !changed; j++) {
          int[] joined = joined(p, parts.get(i), parts.get(j));
          if (joined.length > 0) {
            parts.set(i, joined);
            parts.remove(j);
            changed = true;
          }
        }
      }
    }
  }

  /** Joins two parts over a common edge if that is convex, else gives an empty array. */
  private static int[] joined(double[] p, int[] a, int[] b) {
    for (int i = 0; i < a.length; i++) {
      int u = a[i];
      int v = a[(i + 1) % a.length];
      for (int j = 0; j < b.length; j++) {
        if (b[j] != v || b[(j + 1) % b.length] != u) {
          continue;
        }
        int[] out = new int[a.length + b.length - 2];
        int k = 0;
        for (int s = 1; s <= a.length; s++) {
          out[k++] = a[(i + s) % a.length];
        }
        for (int s = 2; s < b.length; s++) {
          out[k++] = b[(j + s) % b.length];
        }
        for (int s = 0; s < k; s++) {
          if (turn(p, out[s], out[(s + 1) % k], out[(s + 2) % k]) < 0) {
            return new int[0];
          }
        }
        return out;
      }
    }
    return new int[0];
  }

  private static boolean same(double[] p, int a, int b) {
    return p[2 * a] == p[2 * b] && p[2 * a + 1] == p[2 * b + 1];
  }

  private static double square(double[] p, int a, int b) {
    double dx = p[2 * b] - p[2 * a];
    double dy = p[2 * b + 1] - p[2 * a + 1];
    return dx * dx + dy * dy;
  }

  private static double turn(double[] p, int a, int b, int c) {
    return (p[2 * b] - p[2 * a]) * (p[2 * c + 1] - p[2 * a + 1])
        - (p[2 * b + 1] - p[2 * a + 1]) * (p[2 * c] - p[2 * a]);
  }
}
