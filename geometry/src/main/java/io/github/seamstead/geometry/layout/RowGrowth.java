package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * The shortest row of n panels in a lane of free height, for n = 1, 2, 3 and so on.
 *
 * <p>Each panel takes one of a few levels ({@link RowContacts#levels}). How near panel i + 1 can
 * come depends on the heights of i - 1, i and i + 1, and how far the row reaches depends on its
 * first two and last two panels alone, because each panel lies beyond the last but one. So the
 * least distance from the row's left end to panel i for every pair of levels of i - 1 and i is all
 * that has to be carried on. Both ways to begin, with a standing or a turned panel, are carried.
 *
 * <p>One step costs O(k³) for k levels, at most nine.
 */
final class RowGrowth {

  private final RowContacts contacts;
  private final List<Line> lines = new ArrayList<>();
  private int n = 1;
  private double length;

  /** One way to begin: at [a][b], how far panel n - 1 is from the left end at its best. */
  private static final class Line {
    final boolean firstTurned;
    final double[][] levels;
    double[][] reach = new double[0][0];
    final List<byte[][]> before = new ArrayList<>();

    Line(boolean firstTurned, double[] even, double[] odd) {
      this.firstTurned = firstTurned;
      levels = new double[][] {even, odd};
    }

    double[] levels(int i) {
      return levels[i % 2];
    }
  }

  /** The row's last two levels at its best. */
  private record End(double length, Line line, int lastButOne, int last) {}

  RowGrowth(RowContacts contacts, double free) {
    this.contacts = contacts;
    double[] standing = contacts.levels(false, free);
    double[] turned = contacts.levels(true, free);
    if (contacts.headToTail()) {
      lines.add(new Line(false, standing, turned));
      lines.add(new Line(true, turned, standing));
    } else {
      lines.add(new Line(false, standing, standing));
    }
    length = contacts.rightReach(false) - contacts.leftReach(false);
  }

  /** Panels in the row, 1 at first. */
  int panels() {
    return n;
  }

  /** The least length of a row of so many panels, in metres. */
  double length() {
    return length;
  }

  /** Adds a panel. */
  void grow() {
    n++;
    for (Line line : lines) {
      if (n == 2) {
        begin(line);
      } else {
        extend(line);
      }
    }
    length = end().length();
  }

  private boolean turned(Line line, int i) {
    return contacts.headToTail() && line.firstTurned == (i % 2 == 0);
  }

  private void begin(Line line) {
    double[] first = line.levels(0);
    double[] second = line.levels(1);
    line.reach = new double[first.length][second.length];
    for (int a = 0; a < first.length; a++) {
      for (int b = 0; b < second.length; b++) {
        double pitch = contacts.pitch(turned(line, 0), first[a], second[b]);
        double from =
            Math.min(
                contacts.leftReach(turned(line, 0)), pitch + contacts.leftReach(turned(line, 1)));
        line.reach[a][b] = pitch - from;
      }
    }
  }

  private void extend(Line line) {
    double[] first = line.levels(n - 3);
    double[] middle = line.levels(n - 2);
    double[] last = line.levels(n - 1);
    double[][] reach = new double[middle.length][last.length];
    byte[][] before = new byte[middle.length][last.length];
    boolean turned = turned(line, n - 2);
    for (int b = 0; b < middle.length; b++) {
      for (int c = 0; c < last.length; c++) {
        reach[b][c] = Double.POSITIVE_INFINITY;
        double pitch = contacts.pitch(turned, middle[b], last[c]);
        for (int a = 0; a < first.length; a++) {
          double at = line.reach[a][b] + pitch;
          if (at < reach[b][c] && contacts.clear(turned, first[a], middle[b], last[c])) {
            reach[b][c] = at;
            before[b][c] = (byte) a;
          }
        }
      }
    }
    line.reach = reach;
    line.before.add(before);
  }

  private End end() {
    End best = new End(Double.POSITIVE_INFINITY, lines.get(0), 0, 0);
    for (Line line : lines) {
      double[] first = line.levels(n - 2);
      double[] last = line.levels(n - 1);
      boolean turned = turned(line, n - 2);
      for (int a = 0; a < first.length; a++) {
        for (int b = 0; b < last.length; b++) {
          double at = line.reach[a][b];
          double pitch = contacts.pitch(turned, first[a], last[b]);
          double reach =
              Math.max(
                  at + contacts.rightReach(turned(line, n - 1)),
                  at - pitch + contacts.rightReach(turned));
          // A shorter row by rounding alone would change the pattern without need.
          if (reach < best.length() * (1 - 1e-13) || best.length() == Double.POSITIVE_INFINITY) {
            best = new End(reach, line, a, b);
          }
        }
      }
    }
    return best;
  }

  /** The row of so many panels. */
  PanelRow row() {
    double[] heights = new double[n];
    if (n == 1) {
      return new PanelRow(contacts, false, heights);
    }
    End end = end();
    int next = end.last();
    int at = end.lastButOne();
    heights[n - 1] = end.line().levels(n - 1)[next];
    for (int i = n - 2; i >= 0; i--) {
      heights[i] = end.line().levels(i)[at];
      if (i > 0) {
        int earlier = end.line().before.get(i - 1)[at][next];
        next = at;
        at = earlier;
      }
    }
    return new PanelRow(contacts, end.line().firstTurned, heights);
  }
}
