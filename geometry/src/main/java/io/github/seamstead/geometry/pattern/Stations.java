package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * Divides a length into the fewest pieces that the cloth allows, nearly equal in what they need of
 * it, with splice lines clear of openings. O(pieces × zones).
 *
 * @param start where the first piece starts
 * @param end where the last piece ends
 * @param before cloth that the first piece needs below its start
 * @param after cloth that the last piece needs beyond its end
 * @param size the cloth's size
 * @param lap cloth of each piece but the last beyond its splice line
 * @param zones intervals that no lap may touch
 */
record Stations(
    double start,
    double end,
    double before,
    double after,
    double size,
    double lap,
    List<double[]> zones) {

  private static final int HALVINGS = 40;

  /** Gives the splice lines; the first piece is kept short by {@code shift}. */
  List<Double> lines(String where, double shift) {
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
    return greedy(where, high, shift);
  }

  private boolean reaches(double limit, int count) {
    double at = start;
    for (int i = 0; i < count; i++) {
      double next = next(at, limit, i == 0 ? before : 0);
      if (next <= at + lap) {
        return false;
      }
      at = next;
    }
    return end - at + after <= limit;
  }

  private List<Double> greedy(String where, double limit, double shift) {
    List<Double> lines = new ArrayList<>();
    double at = start;
    double below = before;
    double held = shift;
    while (below + end - at + after > size) {
      double next = next(at, limit, below + held);
      Args.require(
          next > at + lap,
          where
              + ": no room for a splice beyond "
              + Numbers.fixed(at, 3)
              + " m; given cloth of "
              + Numbers.plain(size)
              + " m, an opening with its patch and hems must fit on one piece of cloth");
      lines.add(next);
      at = next;
      below = 0;
      held = 0;
    }
    return lines;
  }

  private double next(double at, double limit, double below) {
    double next = at + limit - lap - below;
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
