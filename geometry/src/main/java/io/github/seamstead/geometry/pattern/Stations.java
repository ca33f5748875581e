package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * Divides a length into the fewest pieces that the cloth allows, nearly equal in what they need of
 * it, with splice lines clear of openings and corners. O(pieces × zones).
 *
 * @param start where the first piece starts
 * @param end where the last piece ends
 * @param before cloth that the first piece needs below its start
 * @param after cloth that the last piece needs beyond its end
 * @param size the cloth's size
 * @param lap cloth of each piece but the last beyond its splice line
 * @param ahead by how much the end of a fold beside a splice reaches beyond that lap
 * @param behind by how much the end of a fold beside a splice reaches back over its line
 * @param keep the least finished length of the last piece
 * @param zones intervals that no lap may touch
 */
record Stations(
    double start,
    double end,
    double before,
    double after,
    double size,
    double lap,
    double ahead,
    double behind,
    double keep,
    List<double[]> zones) {

  private static final int HALVINGS = 40;

  /** The cloth of the shortest first piece, in laps: one under the splice and two in sight. */
  private static final int LEAST_PIECE_LAPS = 3;

  /** Tells whether the cloth leaves no room for a shift. */
  boolean isTight(double shift) {
    return before + LEAST_PIECE_LAPS * lap + ahead + shift > size;
  }

  /**
   * Gives the splice lines; the first piece is kept short by {@code shift}. The division depends on
   * {@code greatestShift} alone, so that neighbours with other shifts have their lines apart by the
   * difference.
   */
  List<Double> lines(String where, double shift, double greatestShift) {
    List<Double> fewest = greedy(where, size, 0);
    if (fewest.isEmpty()) {
      return fewest;
    }
    double low = 0;
    double high = size;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (reaches(middle, fewest.size())) {
        high = middle;
      } else {
        low = middle;
      }
    }
    // Lines at three heights, each a stagger apart, must not meet the next round of lines either.
    double least =
        ahead
            + Math.max(before + LEAST_PIECE_LAPS * lap + greatestShift, lap + 1.5 * greatestShift);
    return greedy(where, Math.min(size, Math.max(high, least)), shift);
  }

  private boolean reaches(double limit, int count) {
    double at = start;
    for (int i = 0; i < count; i++) {
      double next = next(at, limit, i == 0 ? before : behind, 0);
      if (next <= at + lap) {
        return false;
      }
      at = next;
    }
    return behind + end - at + after <= limit;
  }

  private List<Double> greedy(String where, double limit, double shift) {
    List<Double> lines = new ArrayList<>();
    double at = start;
    double below = before;
    double held = shift;
    while (below + end - at + after > size) {
      double next = next(at, limit, below + held, shift);
      Args.agree(
          next > at + lap,
          where + ": no room for a splice beyond " + Numbers.fixed(at, 3) + " m",
          "given cloth of "
              + Numbers.plain(size)
              + " m, which must hold hem, lap, stagger and any opening with its patch, and reach"
              + " past the corners of the face");
      lines.add(next);
      at = next;
      below = behind;
      held = 0;
    }
    return lines;
  }

  private double next(double at, double limit, double below, double shift) {
    // A last piece that is kept long is kept so by each neighbour at another height.
    double next = Math.min(at + limit - lap - ahead - below, end - keep - shift);
    // A zone may push the line into a lower one: as many rounds as there are zones suffice.
    for (int round = 0; round <= zones.size(); round++) {
      for (double[] zone : zones) {
        if (next + lap > zone[0] && next < zone[1]) {
          next = zone[0] - lap;
        }
      }
    }
    return next;
  }
}
