package io.github.seamstead.geometry.layout.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Where pieces may lie: for each orientation and each stock copy the upright rectangle that the
 * piece must not leave, or the line along which its reference point moves when its hem lies on a
 * reinforced edge. Also holds which regions each kind of piece may choose from.
 */
public final class Regions {

  /**
   * Stands for the orientation of a piece that lies at any angle; one less if it is turned over.
   */
  public static final int ANY = -1;

  int count;

  /** Index of the orientation, or {@link #ANY}, or {@link #ANY} less 1. */
  public int[] orientation = new int[8];

  public int[] bin = new int[8];
  public double[] x0 = new double[8];
  public double[] y0 = new double[8];
  public double[] x1 = new double[8];
  public double[] y1 = new double[8];

  /** True for a line from (x0, y0) to (x1, y1), false for the rectangle between them. */
  public boolean[] line = new boolean[8];

  private final List<int[]> ofKind = new ArrayList<>();

  public int add(int o, int inBin, double ax, double ay, double bx, double by, boolean isLine) {
    if (count == bin.length) {
      int more = 2 * count;
      orientation = Arrays.copyOf(orientation, more);
      bin = Arrays.copyOf(bin, more);
      x0 = Arrays.copyOf(x0, more);
      y0 = Arrays.copyOf(y0, more);
      x1 = Arrays.copyOf(x1, more);
      y1 = Arrays.copyOf(y1, more);
      line = Arrays.copyOf(line, more);
    }
    orientation[count] = o;
    bin[count] = inBin;
    x0[count] = ax;
    y0[count] = ay;
    x1[count] = bx;
    y1[count] = by;
    line[count] = isLine;
    return count++;
  }

  /** Names the regions of the next kind of piece. */
  public void addKind(int[] regions) {
    ofKind.add(regions);
  }

  public int[] ofKind(int kind) {
    return ofKind.get(kind);
  }

  /** The regions on some of the bins, with their own coordinates, so that an end may be moved. */
  public Regions on(IntPredicate onBin) {
    Regions r = new Regions();
    r.count = count;
    r.orientation = orientation;
    r.bin = bin;
    r.line = line;
    r.x0 = x0.clone();
    r.y0 = y0.clone();
    r.x1 = x1.clone();
    r.y1 = y1.clone();
    for (int[] choice : ofKind) {
      r.ofKind.add(Arrays.stream(choice).filter(k -> onBin.test(bin[k])).toArray());
    }
    return r;
  }
}
