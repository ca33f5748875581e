package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The shortest section known for every number of panels, and the shortest sequence of sections.
 *
 * <p>A sequence of sections with straight cuts between them has {@code F(n) = min over m of F(n -
 * m) + s + g(m)}, where g(m) is the shortest section of m panels and s the spacing. O(n²).
 */
final class SectionTable {

  /** A way to lay any number of panels over a stretch of the strip. */
  interface Section {

    /**
     * Adds m panels.
     *
     * @param length of the stretch, in metres, at which m panels fit
     */
    void place(List<Placement> out, int m, double length, double x, double y);

    /** The first row of m panels on a stretch, if all its panels stand on one base. */
    default Optional<PanelRow> firstRow(int m, double length) {
      return Optional.empty();
    }
  }

  private final double spacing;
  private final BooleanSupplier ended;
  private final double[] length;
  private final List<Section> section;
  private final double[] total;
  private final int[] lastSection;

  /**
   * A table of no sections.
   *
   * @param ended asked often by those who offer; true leaves further sections out
   */
  SectionTable(int count, double spacing, BooleanSupplier ended) {
    this.spacing = spacing;
    this.ended = ended;
    length = new double[count + 1];
    Arrays.fill(length, Double.POSITIVE_INFINITY);
    section = new ArrayList<>(Collections.nCopies(count + 1, NONE));
    total = new double[count + 1];
    lastSection = new int[count + 1];
  }

  int count() {
    return length.length - 1;
  }

  /** Whether no more sections are wanted. */
  boolean isEnded() {
    return ended.getAsBoolean();
  }

  /** The shortest section for all panels so far: nothing longer can be of use. */
  double longest() {
    return length[count()];
  }

  /** Offers a section that holds up to {@code to} panels at a length. */
  void offer(Section candidate, double at, int from, int to) {
    for (int m = from; m <= Math.min(to, count()); m++) {
      // An earlier section wins a tie, as the simpler one is offered first.
      if (at < length[m] * (1 - 1e-13) || length[m] == Double.POSITIVE_INFINITY) {
        length[m] = at;
        section.set(m, candidate);
      }
    }
  }

  /** The most panels whose sequence is at most so long; 0 if not even one. */
  int solve(double limit) {
    Arrays.fill(total, Double.POSITIVE_INFINITY);
    total[0] = -spacing;
    int most = 0;
    for (int n = 1; n <= count(); n++) {
      for (int m = 1; m <= n; m++) {
        double sum = total[n - m] + spacing + length[m];
        // A longer last section wins a tie: fewer cuts across.
        if (sum <= total[n] * (1 + 1e-13)) {
          total[n] = Math.min(sum, total[n]);
          lastSection[n] = m;
        }
      }
      if (total[n] <= limit && total[n] < Double.POSITIVE_INFINITY) {
        most = n;
      }
    }
    return most;
  }

  double total(int n) {
    return total[n];
  }

  List<Placement> placements(int count, double margin) {
    List<Placement> out = new ArrayList<>(count);
    double x = margin;
    int n = count;
    while (n > 0) {
      int m = lastSection[n];
      section.get(m).place(out, m, length[m], x, margin);
      x += length[m] + spacing;
      n -= m;
    }
    return out;
  }

  /** The first row of so many panels, if all its panels stand on one base. */
  Optional<PanelRow> firstRow(int count) {
    int m = lastSection[count];
    return section.get(m).firstRow(m, length[m]);
  }

  private static final Section NONE = (out, m, length, x, y) -> {};
}
