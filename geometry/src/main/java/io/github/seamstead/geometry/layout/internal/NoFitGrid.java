package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;

/**
 * Refines a grid over a {@link NoFit} by quarters, handing down only what can still be nearest or
 * decide.
 */
final class NoFitGrid {

  private final NoFit fit;
  private final int gridSize;
  private final int[] cells;
  private final double[] least;
  private int[] pool = new int[256];
  private int poolSize;

  private NoFitGrid(NoFit fit, int gridSize) {
    this.fit = fit;
    this.gridSize = gridSize;
    cells = new int[gridSize * gridSize];
    least = new double[gridSize * gridSize];
    Arrays.fill(least, -1);
  }

  /** Makes the grid of a region: the more boundary segments it has, the finer. */
  static NoFit.Grid over(NoFit fit) {
    int segmentCount = fit.segments.length / 5;
    int levels = 3;
    while (levels < 6 && (1 << (2 * levels)) < 10 * (segmentCount + 4)) {
      levels++;
    }
    return new NoFitGrid(fit, 1 << levels).made(segmentCount);
  }

  private NoFit.Grid made(int segmentCount) {
    int[] allSegments = new int[segmentCount];
    for (int i = 0; i < segmentCount; i++) {
      allSegments[i] = 5 * i;
    }
    int[] allParts = new int[fit.partStart.length - 1];
    for (int i = 0; i < allParts.length; i++) {
      allParts[i] = i;
    }
    double[] bounds = {fit.minX, fit.minY, fit.maxX, fit.maxY};
    refine(bounds, 0, 0, gridSize, allSegments, allParts);
    double step = Math.max(1e-300, Arrays.stream(least).max().orElse(0) / 253);
    return new NoFit.Grid(
        gridSize,
        gridSize / (fit.maxX - fit.minX),
        gridSize / (fit.maxY - fit.minY),
        cells,
        steps(least, step),
        step,
        Arrays.copyOf(pool, poolSize));
  }

  /** Depths in whole steps, rounded down so that they stay bounds. */
  private static byte[] steps(double[] least, double step) {
    byte[] steps = new byte[least.length];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = (byte) (least[i] < 0 ? 0 : 1 + (int) (least[i] / step * (1 - 1e-9)));
    }
    return steps;
  }

  private void refine(
      double[] bounds, int ix, int iy, int span, int[] segmentsNear, int[] partsNear) {
    double w = (bounds[2] - bounds[0]) / gridSize;
    double h = (bounds[3] - bounds[1]) / gridSize;
    double cx = bounds[0] + w * (ix + span / 2.0);
    double cy = bounds[1] + h * (iy + span / 2.0);
    double r = Math.sqrt(w * w + h * h) * span / 2 * (1 + 1e-9) + 1e-12;
    int[] parts = new int[partsNear.length];
    int partCount = 0;
    boolean whole = false;
    for (int part : partsNear) {
      double worst = Double.NEGATIVE_INFINITY;
      for (int k = fit.partStart[part]; k < fit.partStart[part + 1]; k += 3) {
        double out = fit.halfPlanes[k] * cx + fit.halfPlanes[k + 1] * cy - fit.halfPlanes[k + 2];
        if (out > worst) {
          worst = out;
        }
      }
      if (worst < r) {
        parts[partCount++] = part;
        whole |= worst < -r - NoFit.TOUCH;
      }
    }
    if (partCount == 0) {
      return;
    }
    double[] far = new double[segmentsNear.length];
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < far.length; i++) {
      far[i] = fit.square(segmentsNear[i], cx, cy);
      if (far[i] < least) {
        least = far[i];
      }
    }
    double limit = (Math.sqrt(least) + 2 * r) * (Math.sqrt(least) + 2 * r);
    int[] near = new int[far.length];
    int nearCount = 0;
    for (int i = 0; i < far.length; i++) {
      if (far[i] <= limit) {
        near[nearCount++] = segmentsNear[i];
      }
    }
    near = Arrays.copyOf(near, nearCount);
    parts = Arrays.copyOf(parts, partCount);
    if (span == 1 || (whole && nearCount == 1)) {
      int at = store(cx, cy, r, near, whole ? new int[0] : parts);
      fill(bounds, ix, iy, span, at, whole ? near : new int[0]);
      return;
    }
    int half = span / 2;
    refine(bounds, ix, iy, half, near, parts);
    refine(bounds, ix + half, iy, half, near, parts);
    refine(bounds, ix, iy + half, half, near, parts);
    refine(bounds, ix + half, iy + half, half, near, parts);
  }

  /** Fills cells; if they lie inside the region, with the least depth from the segments near. */
  private void fill(double[] bounds, int ix, int iy, int span, int at, int[] near) {
    double w = (bounds[2] - bounds[0]) / gridSize;
    double h = (bounds[3] - bounds[1]) / gridSize;
    double r = Math.sqrt(w * w + h * h) / 2 * (1 + 1e-6) + 1e-12;
    for (int y = iy; y < iy + span; y++) {
      for (int x = ix; x < ix + span; x++) {
        double far = near.length == 0 ? 0 : Double.POSITIVE_INFINITY;
        for (int k : near) {
          double its = fit.square(k, bounds[0] + w * (x + 0.5), bounds[1] + h * (y + 0.5));
          if (its < far) {
            far = its;
          }
        }
        least[y * gridSize + x] = Math.max(0, Math.sqrt(far) - r);
        cells[y * gridSize + x] = at;
      }
    }
  }

  private int store(double cx, double cy, double r, int[] near, int[] parts) {
    int start = poolSize;
    push(parts.length);
    for (int part : parts) {
      int count = poolSize;
      push(0);
      for (int k = fit.partStart[part]; k < fit.partStart[part + 1]; k += 3) {
        // Half-planes that hold throughout the cell need no test.
        if (fit.halfPlanes[k] * cx + fit.halfPlanes[k + 1] * cy - fit.halfPlanes[k + 2]
            > -r - NoFit.TOUCH) {
          push(k);
          pool[count]++;
        }
      }
    }
    push(near.length);
    for (int k : near) {
      push(k);
    }
    return start;
  }

  private void push(int value) {
    if (poolSize == pool.length) {
      pool = Arrays.copyOf(pool, 2 * poolSize);
    }
    pool[poolSize++] = value;
  }
}
