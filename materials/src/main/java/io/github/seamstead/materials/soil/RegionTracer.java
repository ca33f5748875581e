package io.github.seamstead.materials.soil;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Draws the line of equal density round a region. Densities at the corners of the grid are the
 * means of the cells that meet there; in each cell the part above the threshold is cut off by a
 * straight line. An edge between two cells is walked once each way and drops out; what is left are
 * the outlines. Linear in the number of cells.
 */
final class RegionTracer {

  private final int steps;
  private final double threshold;
  private final double[] density;

  /** For each point, by its key, the points that edges lead to from it. */
  private final Map<Long, List<Long>> edges = new LinkedHashMap<>();

  private RegionTracer(TextureGrid grid, double[] weights, double threshold) {
    this.steps = grid.steps();
    this.threshold = threshold;
    density = new double[(steps + 1) * (steps + 1)];
    int[] cells = new int[density.length];
    int cell = 0;
    for (int row = 0; row < steps; row++) {
      for (int place = 0; place < grid.cellsInRow(row); place++, cell++) {
        for (int node : corners(row, place)) {
          density[node] += weights[cell];
          cells[node]++;
        }
      }
    }
    for (int node = 0; node < density.length; node++) {
      density[node] /= Math.max(1, cells[node]);
    }
  }

  static List<List<Texture>> outlines(TextureGrid grid, double[] weights, double threshold) {
    RegionTracer tracer = new RegionTracer(grid, weights, threshold);
    for (int row = 0; row < grid.steps(); row++) {
      for (int place = 0; place < grid.cellsInRow(row); place++) {
        tracer.add(tracer.corners(row, place));
      }
    }
    return tracer.loops();
  }

  private int[] corners(int row, int place) {
    int j = place / 2;
    return (place & 1) == 0
        ? new int[] {node(row, j), node(row, j + 1), node(row + 1, j)}
        : new int[] {node(row, j + 1), node(row + 1, j + 1), node(row + 1, j)};
  }

  /** Adds the part of a cell that lies above the threshold. */
  private void add(int[] corners) {
    List<Long> part = new ArrayList<>(4);
    for (int k = 0; k < corners.length; k++) {
      int a = corners[k];
      int b = corners[(k + 1) % corners.length];
      if (density[a] >= threshold) {
        part.add(key(a, a));
      }
      if (density[a] >= threshold != density[b] >= threshold) {
        part.add(key(Math.min(a, b), Math.max(a, b)));
      }
    }
    for (int k = 0; k < part.size(); k++) {
      edge(part.get(k), part.get((k + 1) % part.size()));
    }
  }

  private void edge(Long from, Long to) {
    List<Long> back = edges.get(to);
    if (back != null && back.remove(from)) {
      if (back.isEmpty()) {
        edges.remove(to);
      }
      return;
    }
    edges.computeIfAbsent(from, k -> new ArrayList<>(2)).add(to);
  }

  private List<List<Texture>> loops() {
    List<List<Texture>> loops = new ArrayList<>();
    while (!edges.isEmpty()) {
      Long start = edges.keySet().iterator().next();
      List<Texture> loop = new ArrayList<>();
      Long at = start;
      do {
        loop.add(texture(at));
        at = take(at);
      } while (!at.equals(start));
      loops.add(loop);
    }
    return loops;
  }

  private Long take(Long from) {
    List<Long> list = edges.get(from);
    if (list == null) {
      throw new IllegalStateException("an outline is not closed");
    }
    Long to = list.remove(list.size() - 1);
    if (list.isEmpty()) {
      edges.remove(from);
    }
    return to;
  }

  private int node(int clay, int silt) {
    return clay * (steps + 1) + silt;
  }

  private long key(int a, int b) {
    return (long) a * density.length + b;
  }

  /** The point of a key: a corner, or where the density between two corners is the threshold. */
  private Texture texture(long key) {
    int a = (int) (key / density.length);
    int b = (int) (key % density.length);
    double part = a == b ? 0 : (threshold - density[a]) / (density[b] - density[a]);
    double clay = clay(a) + part * (clay(b) - clay(a));
    double silt = silt(a) + part * (silt(b) - silt(a));
    return Texture.ofClayAndSand(clay, Math.max(0, 1 - clay - silt));
  }

  private double clay(int node) {
    int row = node / (steps + 1);
    return (double) row / steps;
  }

  private double silt(int node) {
    int column = node % (steps + 1);
    return (double) column / steps;
  }
}
