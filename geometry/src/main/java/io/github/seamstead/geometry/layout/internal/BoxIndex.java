package io.github.seamstead.geometry.layout.internal;

import java.util.Arrays;

/**
 * Boxes that move, and which of them meet a given box.
 *
 * <p>Each axis is cut into slots. For each slot one row of bits tells which boxes begin there or
 * before, another which end there or after; the candidates are the bits set in four rows at once.
 * {@link #find} costs O(n/64) for n boxes plus the candidates, {@link #put} O(slots passed).
 */
final class BoxIndex {

  private static final int SLOTS = 128;

  /** Left, right, low and high side of each box, so that a box lies in one line of the cache. */
  private final double[] box;

  private final int[] slot;
  final int words;
  private final int last;
  private int aimBegins;
  private int aimEnds;
  private int aimLow;
  private int aimHigh;
  private final Axis across;
  private final Axis along;

  /** One axis: the rows of bits. */
  private static final class Axis {
    final long[] begins;
    final long[] ends;
    double from;
    double perUnit = 1;

    Axis(int words) {
      begins = new long[SLOTS * words];
      ends = new long[SLOTS * words];
    }

    int slot(double at) {
      // Boxes beyond the span count to the slots at its ends, so that nothing is missed.
      return (int) Math.max(0, Math.min(SLOTS - 1, (at - from) * perUnit));
    }
  }

  BoxIndex(int boxes) {
    words = (boxes + 63) >> 6;
    last = boxes;
    box = new double[4 * boxes];
    slot = new int[4 * boxes];
    Arrays.fill(slot, -1);
    along = new Axis(words);
    across = new Axis(words);
    for (int i = 0; i < boxes; i++) {
      hide(i);
    }
  }

  /** Spreads the slots over a rectangle; boxes may lie beyond it. */
  void span(double x0, double x1, double y0, double y1) {
    along.from = x0;
    along.perUnit = SLOTS / Math.max(1e-9, x1 - x0);
    across.from = y0;
    across.perUnit = SLOTS / Math.max(1e-9, y1 - y0);
    for (int i = 0; i < last; i++) {
      if (slot[4 * i] >= 0) {
        enter(i);
      }
    }
  }

  /** Sets a box. */
  void put(int i, double left, double right, double low, double high) {
    int k = 4 * i;
    box[k] = left;
    box[k + 1] = right;
    box[k + 2] = low;
    box[k + 3] = high;
    enter(i);
  }

  private void enter(int i) {
    int k = 4 * i;
    begin(along.begins, i, k, along.slot(box[k]));
    end(along.ends, i, k + 1, along.slot(box[k + 1]));
    begin(across.begins, i, k + 2, across.slot(box[k + 2]));
    end(across.ends, i, k + 3, across.slot(box[k + 3]));
  }

  /** Takes a box away: it meets nothing. */
  void hide(int i) {
    int k = 4 * i;
    begin(along.begins, i, k, SLOTS);
    end(along.ends, i, k + 1, -1);
    begin(across.begins, i, k + 2, SLOTS);
    end(across.ends, i, k + 3, -1);
    Arrays.fill(slot, k, k + 4, -1);
    box[k] = Double.POSITIVE_INFINITY;
    box[k + 1] = Double.NEGATIVE_INFINITY;
  }

  /** Sets the bit in the rows from a slot on. */
  private void begin(long[] rows, int i, int k, int now) {
    int before = slot[k] < 0 ? SLOTS : slot[k];
    long bit = 1L << i;
    for (int s = now; s < before; s++) {
      rows[s * words + (i >> 6)] |= bit;
    }
    for (int s = before; s < now; s++) {
      rows[s * words + (i >> 6)] &= ~bit;
    }
    slot[k] = now;
  }

  /** Sets the bit in the rows up to a slot. */
  private void end(long[] rows, int i, int k, int now) {
    int before = slot[k];
    long bit = 1L << i;
    for (int s = before + 1; s <= now; s++) {
      rows[s * words + (i >> 6)] |= bit;
    }
    for (int s = now + 1; s <= before; s++) {
      rows[s * words + (i >> 6)] &= ~bit;
    }
    slot[k] = now;
  }

  /** Aims {@link #near} at a box. */
  void aim(double left, double right, double low, double high) {
    aimBegins = along.slot(right) * words;
    aimEnds = along.slot(left) * words;
    aimLow = across.slot(high) * words;
    aimHigh = across.slot(low) * words;
  }

  /** The boxes from index 64 w on, one for each bit, that may meet the box aimed at. */
  long near(int w) {
    return along.begins[aimBegins + w]
        & along.ends[aimEnds + w]
        & across.begins[aimLow + w]
        & across.ends[aimHigh + w];
  }

  /**
   * Finds the boxes that overlap a box.
   *
   * @param skip a box left out
   * @param found takes their indices, rising
   * @return how many
   */
  int find(int skip, double left, double right, double low, double high, int[] found) {
    aim(left, right, low, high);
    int count = 0;
    for (int w = 0; w < words; w++) {
      long bits = near(w);
      while (bits != 0) {
        int j = (w << 6) + Long.numberOfTrailingZeros(bits);
        bits &= bits - 1;
        int k = 4 * j;
        if (left < box[k + 1]
            && right > box[k]
            && low < box[k + 3]
            && high > box[k + 2]
            && j != skip) {
          found[count++] = j;
        }
      }
    }
    return count;
  }
}
