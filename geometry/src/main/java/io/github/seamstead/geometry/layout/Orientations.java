package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Every shape in every turn that it may take, with the no-fit region of each pair. Regions depend
 * on the two shapes and their relative turn alone, so they are built once for each of those, on
 * first use. Safe for use by several threads: a region is immutable, and whoever builds it builds
 * the same.
 */
final class Orientations {

  private final List<List<double[]>> shapes = new ArrayList<>();
  private final List<double[]> outlines = new ArrayList<>();
  private final List<Double> clearances = new ArrayList<>();
  private final List<Boolean> fixed = new ArrayList<>();
  private final Map<Key, NoFit> built = new ConcurrentHashMap<>();

  /** The greatest distance that any pair keeps. */
  double pad;

  int count;
  int[] shape = new int[8];
  double[] angle = new double[8];
  double[] cos = new double[8];
  double[] sin = new double[8];
  double[] minX = new double[8];
  double[] maxX = new double[8];
  double[] minY = new double[8];
  double[] maxY = new double[8];
  private @Nullable NoFit[] table = new NoFit[0];

  private record Key(int a, int b, long relative) {}

  /**
   * Adds a shape.
   *
   * @param outline corners about the reference point
   * @param parts the convex parts of what it covers
   * @param clearance the distance it keeps from others; an obstacle's counts before a piece's
   * @param obstacle true for what no piece may cover
   * @return its index
   */
  int addShape(double[] outline, List<double[]> parts, double clearance, boolean obstacle) {
    fixed.add(obstacle);
    pad = Math.max(pad, clearance);
    outlines.add(outline);
    shapes.add(parts);
    clearances.add(clearance);
    return shapes.size() - 1;
  }

  /** Adds a turn of a shape and gives its index. All must be added before the first use. */
  int addTurn(int shapeIndex, double turn) {
    if (count == shape.length) {
      int more = 2 * count;
      shape = Arrays.copyOf(shape, more);
      angle = Arrays.copyOf(angle, more);
      cos = Arrays.copyOf(cos, more);
      sin = Arrays.copyOf(sin, more);
      minX = Arrays.copyOf(minX, more);
      maxX = Arrays.copyOf(maxX, more);
      minY = Arrays.copyOf(minY, more);
      maxY = Arrays.copyOf(maxY, more);
    }
    int o = count++;
    shape[o] = shapeIndex;
    angle[o] = turn;
    cos[o] = Turns.cos(turn);
    sin[o] = Turns.sin(turn);
    double[] p = Convex.turned(outlines.get(shapeIndex), cos[o], sin[o]);
    minX[o] = Double.POSITIVE_INFINITY;
    minY[o] = Double.POSITIVE_INFINITY;
    maxX[o] = Double.NEGATIVE_INFINITY;
    maxY[o] = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < p.length; i += 2) {
      minX[o] = Math.min(minX[o], p[i]);
      maxX[o] = Math.max(maxX[o], p[i]);
      minY[o] = Math.min(minY[o], p[i + 1]);
      maxY[o] = Math.max(maxY[o], p[i + 1]);
    }
    return o;
  }

  /** Ends the adding. */
  void close() {
    table = new NoFit[count * count];
  }

  /** The no-fit region of orientation b around orientation a, in a's own frame. */
  NoFit fit(int a, int b) {
    NoFit fit = table[a * count + b];
    return fit != null ? fit : build(a, b);
  }

  private NoFit build(int a, int b) {
    double relative = angle[b] - angle[a];
    double full = 2 * Math.PI;
    relative -= full * Math.floor(relative / full);
    if (full - relative < 1e-10) {
      relative = 0;
    }
    double turn = relative;
    Key key = new Key(shape[a], shape[b], Math.round(turn * 1e10));
    NoFit fit =
        built.computeIfAbsent(
            key,
            k -> {
              double c = Turns.cos(turn);
              double s = Turns.sin(turn);
              List<double[]> turned = new ArrayList<>();
              for (double[] part : shapes.get(shape[b])) {
                turned.add(Convex.turned(part, c, s));
              }
              return NoFitBuilder.build(
                  shapes.get(shape[a]),
                  turned,
                  clearances.get(fixed.get(shape[b]) ? shape[b] : shape[a]));
            });
    table[a * count + b] = fit;
    return fit;
  }
}
