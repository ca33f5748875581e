package io.github.seamstead.materials.soil;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Joins the outer edges of a set of grid cells into closed outlines. An edge between two cells of
 * the set is walked once each way and drops out; what is left are the outlines. Linear in the
 * number of cells.
 */
final class RegionTracer {

  private final int steps;

  /** For each corner the corners that edges lead to from it. */
  private final Map<Integer, List<Integer>> edges = new HashMap<>();

  RegionTracer(TextureGrid grid) {
    this.steps = grid.steps();
  }

  /** Adds the cell at a place of a row of equal clay. */
  void add(int row, int place) {
    int j = place / 2;
    if ((place & 1) == 0) {
      triangle(node(row, j), node(row, j + 1), node(row + 1, j));
    } else {
      triangle(node(row, j + 1), node(row + 1, j + 1), node(row + 1, j));
    }
  }

  List<List<Texture>> outlines() {
    List<List<Texture>> outlines = new ArrayList<>();
    while (!edges.isEmpty()) {
      int start = edges.keySet().iterator().next();
      List<Integer> loop = new ArrayList<>();
      int at = start;
      do {
        loop.add(at);
        at = take(at);
      } while (at != start);
      outlines.add(withoutStraightCorners(loop));
    }
    return outlines;
  }

  private void triangle(int a, int b, int c) {
    edge(a, b);
    edge(b, c);
    edge(c, a);
  }

  private void edge(int from, int to) {
    List<Integer> back = edges.get(to);
    if (back != null && back.remove(Integer.valueOf(from))) {
      if (back.isEmpty()) {
        edges.remove(to);
      }
      return;
    }
    edges.computeIfAbsent(from, k -> new ArrayList<>(2)).add(to);
  }

  private int take(int from) {
    List<Integer> list = edges.get(from);
    if (list == null) {
      throw new IllegalStateException("an outline is not closed");
    }
    int to = list.remove(list.size() - 1);
    if (list.isEmpty()) {
      edges.remove(from);
    }
    return to;
  }

  private List<Texture> withoutStraightCorners(List<Integer> loop) {
    List<Texture> corners = new ArrayList<>();
    int n = loop.size();
    for (int k = 0; k < n; k++) {
      int before = loop.get((k + n - 1) % n);
      int here = loop.get(k);
      int after = loop.get((k + 1) % n);
      if (here - before != after - here) {
        corners.add(texture(here));
      }
    }
    return corners;
  }

  private int node(int clay, int silt) {
    return clay * (steps + 2) + silt;
  }

  private Texture texture(int node) {
    int clay = node / (steps + 2);
    int silt = node % (steps + 2);
    return new Texture(
        (double) clay / steps, (double) silt / steps, (double) (steps - clay - silt) / steps);
  }
}
