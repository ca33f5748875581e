package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;

/**
 * Refines a grid over a {@link NoFit} by quarters, handing down only what can still be nearest or
 * decide.
 */
final class DepthGridBuilder {

  /** Where so few segments can be nearest throughout a block, its corners are measured at once. */
  private static final int FEW = 3;

  private final NoFit fit;
  private final int size;
  private final double width;
  private final double height;
  private final short[] codes;
  private final float[] depths;
  private int[] start = new int[64];
  private int entries = 1;
  private int[] pool = new int[256];
  private int poolSize;

  private DepthGridBuilder(NoFit fit, int size) {
    this.fit = fit;
    this.size = size;
    width = (fit.maxX - fit.minX) / size;
    height = (fit.maxY - fit.minY) / size;
    codes = new short[size * size];
    depths = new float[(size + 1) * (size + 1)];
    Arrays.fill(depths, Float.NaN);
  }

  /** Makes the grid of a region. */
  static DepthGrid over(NoFit fit) {
    return new DepthGridBuilder(fit, DepthGrid.SIZE).made(fit.segments.length / 5);
  }

  private DepthGrid made(int segmentCount) {
    int[] allSegments = new int[segmentCount];
    for (int i = 0; i < segmentCount; i++) {
      allSegments[i] = 5 * i;
    }
    int[] allParts = new int[fit.partStart.length - 1];
    for (int i = 0; i < allParts.length; i++) {
      allParts[i] = i;
    }
    refine(0, 0, size, allSegments, allParts);
    return new DepthGrid(
        fit, codes, depths, Arrays.copyOf(start, entries), Arrays.copyOf(pool, poolSize));
  }

  private void refine(int ix, int iy, int span, int[] segmentsNear, int[] partsNear) {
    double cx = fit.minX + width * (ix + span / 2.0);
    double cy = fit.minY + height * (iy + span / 2.0);
    double r = Math.sqrt(width * width + height * height) * span / 2 * (1 + 1e-9) + 1e-12;
    int[] parts = new int[partsNear.length];
    int partCount = 0;
    boolean whole = false;
    for (int part : partsNear) {
      double worst = worst(part, cx, cy);
      if (worst < r) {
        parts[partCount++] = part;
        whole |= worst < -r - NoFit.TOUCH;
      }
    }
    if (partCount == 0) {
      return;
    }
    int[] near = near(cx, cy, r, segmentsNear);
    if (span == 1 || (whole && near.length <= FEW)) {
      fill(
          ix, iy, span, store(cx, cy, r, near, whole ? new int[0] : parts, partCount), whole, near);
      return;
    }
    parts = Arrays.copyOf(parts, partCount);
    int half = span / 2;
    refine(ix, iy, half, near, parts);
    refine(ix + half, iy, half, near, parts);
    refine(ix, iy + half, half, near, parts);
    refine(ix + half, iy + half, half, near, parts);
  }

  /** How far a point lies outside a part; negative inside. */
  private double worst(int part, double cx, double cy) {
    double worst = Double.NEGATIVE_INFINITY;
    double[] planes = fit.halfPlanes;
    for (int k = fit.partStart[part]; k < fit.partStart[part + 1]; k += 3) {
      double out = planes[k] * cx + planes[k + 1] * cy - planes[k + 2];
      if (out > worst) {
        worst = out;
      }
    }
    return worst;
  }

  /** The segments that can be nearest to a point of a circle. */
  private int[] near(double cx, double cy, double r, int[] among) {
    double[] far = new double[among.length];
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < far.length; i++) {
      far[i] = fit.square(among[i], cx, cy);
      if (far[i] < least) {
        least = far[i];
      }
    }
    double limit = (Math.sqrt(least) + 2 * r) * (Math.sqrt(least) + 2 * r);
    int[] near = new int[far.length];
    int count = 0;
    for (int i = 0; i < far.length; i++) {
      if (far[i] <= limit) {
        near[count++] = among[i];
      }
    }
    return Arrays.copyOf(near, count);
  }

  /** Gives cells their entry; where they lie inside the region, depths at their corners. */
  private void fill(int ix, int iy, int span, int entry, boolean whole, int[] near) {
    for (int y = iy; y < iy + span; y++) {
      Arrays.fill(codes, y * size + ix, y * size + ix + span, (short) (whole ? -entry : entry));
    }
    for (int y = iy; whole && y <= iy + span; y++) {
      for (int x = ix; x <= ix + span; x++) {
        int k = y * (size + 1) + x;
        if (Float.isNaN(depths[k])) {
          depths[k] = depth(fit.minX + width * x, fit.minY + height * y, near);
        }
      }
    }
  }

  private float depth(double dx, double dy, int[] near) {
    double least = Double.POSITIVE_INFINITY;
    for (int k : near) {
      double its = fit.square(k, dx, dy);
      if (its < least) {
        least = its;
      }
    }
    return (float) Math.sqrt(least);
  }

  private int store(double cx, double cy, double r, int[] near, int[] parts, int partCount) {
    if (entries == start.length) {
      start = Arrays.copyOf(start, 2 * entries);
    }
    start[entries] = poolSize;
    int count = Math.min(parts.length, partCount);
    push(count);
    for (int i = 0; i < count; i++) {
      int part = parts[i];
      int planes = poolSize;
      push(0);
      for (int k = fit.partStart[part]; k < fit.partStart[part + 1]; k += 3) {
        // Half-planes that hold throughout the cell need no test.
        if (fit.halfPlanes[k] * cx + fit.halfPlanes[k + 1] * cy - fit.halfPlanes[k + 2]
            > -r - NoFit.TOUCH) {
          push(k);
          pool[planes]++;
        }
      }
    }
    push(near.length);
    for (int k : near) {
      push(k);
    }
    return entries++;
  }

  private void push(int value) {
    if (poolSize == pool.length) {
      pool = Arrays.copyOf(pool, 2 * poolSize);
    }
    pool[poolSize++] = value;
  }
}
