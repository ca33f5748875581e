package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The everyday case in closed form: one triangle or trapezoid many times on a strip of given width.
 *
 * <p><b>Class of arrangements.</b> The strip is divided by straight cuts across it into sections. A
 * section holds some rows along the strip, one above the other, all on the same base, and above
 * them at most one band of rows across the strip, each row of the band equally long. In a row all
 * bases are parallel to it and every second panel is turned by half a turn (head to tail) where the
 * half turn is allowed, else all stand the same way up. Every base with a parallel top may be used,
 * each edge of a triangle too. Turns, grain, spacing and margin of the piece are kept.
 *
 * <p><b>Optimal within the class.</b> (1) In one row the pitch cannot be less: neighbours touch (or
 * keep the spacing) along a whole leg, so the row of n is the shortest for its order, and rotating
 * the row by half a turn shows that beginning with a turned panel gives the same lengths. (2) Rows
 * of one section are independent, so for a rows the section's length for m panels is the least L at
 * which {@code a N(L) + k c(L) >= m}, where N(L) is the most panels of a row of length L, k the
 * most panels of a row across the width that the a rows leave, and c(L) the number of such rows;
 * two bands side by side hold no more than one of their joint width, because a row's length is
 * subadditive. Both counts step only at lengths of rows or of whole columns, so trying those finds
 * the least L exactly. (3) All a and all pairs of bases are tried, which gives the shortest section
 * g(m) for each m; (4) an arrangement is a sequence of sections, so {@code F(n) = min over m of F(n
 * - m) + s + g(m)} is the least length. All steps are exhaustive, hence F(n) is the optimum of the
 * class.
 *
 * <p>Costs O(n r log n + n²) for n panels and r rows across the width: some milliseconds for 200.
 */
public final class PanelRows {

  private static final int MOST_ROWS = 200;

  private final Piece piece;
  private final double width;
  private final double spacing;
  private final List<PanelStand> along = new ArrayList<>();
  private final List<PanelStand> across = new ArrayList<>();
  private final Section[] best;
  private final double[] total;
  private final int[] lastSection;

  /** Some rows along and a band of rows across, over a stretch of the strip. */
  private record Section(
      double length, int rows, PanelStand rowStand, int perBandRow, PanelStand bandStand) {}

  /**
   * Panels on a strip.
   *
   * @param length how much of the strip is used, margin at both ends included, in metres
   * @param placements one for each panel, strip along x from 0 and across y from 0
   */
  public record Arrangement(double length, List<Placement> placements) {

    /**
     * Copies the list.
     *
     * @param length in metres, greater than 0
     * @param placements at least one
     * @throws IllegalArgumentException if the length is not positive or there is no placement
     */
    public Arrangement {
      Args.positive("length", length, "m");
      placements = Args.notEmpty("placements", placements);
    }
  }

  private PanelRows(Piece piece, int count, double width, double spacing) {
    this.piece = piece;
    this.width = width;
    this.spacing = spacing;
    for (PanelStand stand : PanelStand.all(piece)) {
      (stand.across() ? across : along).add(stand);
    }
    best = new Section[count + 1];
    total = new double[count + 1];
    lastSection = new int[count + 1];
    solve(count);
  }

  /**
   * Lays panels on a strip as short as the class of arrangements allows.
   *
   * @param piece the panel, a triangle or a trapezoid; its hem edge is not considered
   * @param count how many to lay, 1 to {@link LayoutRequest#MOST_COPIES}
   * @param width of the strip, in metres
   * @param mostLength how long the strip may become, in metres; positive infinity for no limit
   * @param spacing between panels, in metres, 0 or more
   * @param margin to all four edges of the strip, in metres, 0 or more
   * @return as many panels as fit, at most {@code count}; empty if not one fits or the piece is
   *     neither a triangle nor a trapezoid
   * @throws IllegalArgumentException if a number is out of range
   */
  public static java.util.Optional<Arrangement> onStrip(
      Piece piece, int count, double width, double mostLength, double spacing, double margin) {
    Args.within("count", count, 1, LayoutRequest.MOST_COPIES);
    Args.positive("width", width, "m");
    Args.require(mostLength > 0, "most length: given " + mostLength + ", must be greater than 0");
    Args.notNegative("spacing", spacing, "m");
    Args.notNegative("margin", margin, "m");
    double inside = width - 2 * margin;
    if (inside <= 0) {
      return java.util.Optional.empty();
    }
    PanelRows rows = new PanelRows(piece, count, inside, spacing);
    double limit = (mostLength - 2 * margin) * (1 + 1e-12);
    int n = count;
    while (n > 0 && (rows.total[n] > limit || rows.total[n] == Double.POSITIVE_INFINITY)) {
      n--;
    }
    if (n == 0) {
      return java.util.Optional.empty();
    }
    return java.util.Optional.of(
        new Arrangement(rows.total[n] + 2 * margin, rows.placements(n, margin)));
  }

  private void solve(int count) {
    Arrays.fill(total, Double.POSITIVE_INFINITY);
    total[0] = -spacing;
    for (int m = 1; m <= count; m++) {
      best[m] = shortest(m);
    }
    for (int n = 1; n <= count; n++) {
      for (int m = 1; m <= n; m++) {
        double length = total[n - m] + spacing + best[m].length();
        // A longer last section wins a tie: fewer cuts across.
        if (length <= total[n] * (1 + 1e-13)) {
          total[n] = Math.min(length, total[n]);
          lastSection[n] = m;
        }
      }
    }
  }

  private Section shortest(int m) {
    Section found = new Section(Double.POSITIVE_INFINITY, 0, NONE, 0, NONE);
    for (PanelStand row : along) {
      double h = row.shape().h();
      int most = fitting(h);
      for (int a = 1; a <= most; a++) {
        found = shorter(found, new Section(rowsLength(row, a, m), a, row, 0, NONE));
        for (PanelStand band : across) {
          double left = width - a * (h + spacing);
          found = shorter(found, withBand(row, a, band, left, m));
        }
      }
    }
    for (PanelStand band : across) {
      found = shorter(found, withBand(NONE, 0, band, width, m));
    }
    return found;
  }

  /** How many rows of a height fit across the width. */
  private int fitting(double h) {
    double room = (width * (1 + 1e-12) + spacing) / (h + spacing);
    return (int) Math.min(MOST_ROWS, Math.floor(room));
  }

  private double rowsLength(PanelStand row, int a, int m) {
    return row.rowLength((m + a - 1) / a, spacing);
  }

  private static Section shorter(Section a, Section b) {
    return b.length() < a.length() * (1 - 1e-13) || a.length() == Double.POSITIVE_INFINITY ? b : a;
  }

  /** The shortest section of m panels with a rows along and a band in the width left. */
  private Section withBand(PanelStand row, int a, PanelStand band, double left, int m) {
    int k = left > 0 ? band.most(left, spacing) : 0;
    if (k == 0) {
      return new Section(Double.POSITIVE_INFINITY, a, row, 0, NONE);
    }
    double h = band.shape().h();
    int low = 1;
    int high = (m + k - 1) / k;
    while (low < high) {
      int c = (low + high) >>> 1;
      double length = c * (h + spacing) - spacing;
      int inRow = a == 0 ? 0 : row.most(length, spacing);
      if ((long) a * inRow + (long) k * c >= m) {
        high = c;
      } else {
        low = c + 1;
      }
    }
    double least = low * (h + spacing) - spacing;
    if (a > 0) {
      int from = 1;
      int to = (m + a - 1) / a;
      while (from < to) {
        int n = (from + to) >>> 1;
        double length = row.rowLength(n, spacing);
        if ((long) a * n + (long) k * columns(length, h) >= m) {
          to = n;
        } else {
          from = n + 1;
        }
      }
      least = Math.min(least, row.rowLength(from, spacing));
    }
    return new Section(least, a, row, k, band);
  }

  private int columns(double length, double h) {
    return (int) Math.floor((length * (1 + 1e-12) + spacing) / (h + spacing));
  }

  private List<Placement> placements(int count, double margin) {
    List<Placement> out = new ArrayList<>(count);
    double x = margin;
    int n = count;
    while (n > 0) {
      int m = lastSection[n];
      Section s = best[m];
      place(out, s, m, x, margin);
      x += s.length() + spacing;
      n -= m;
    }
    return out;
  }

  private void place(List<Placement> out, Section s, int m, double x, double y0) {
    int left = m;
    double y = y0;
    for (int a = 0; a < s.rows() && left > 0; a++) {
      PanelStand row = s.rowStand();
      // Without a band the rows share the panels evenly, so that no row is longer than it must be.
      int n =
          s.perBandRow() == 0
              ? (left + s.rows() - a - 1) / (s.rows() - a)
              : Math.min(left, row.most(s.length(), spacing));
      if (n > 0) {
        row.place(out, piece.id(), n, x, y, spacing);
      }
      left -= n;
      y += row.shape().h() + spacing;
    }
    double at = x;
    while (left > 0) {
      int n = Math.min(left, s.perBandRow());
      s.bandStand().place(out, piece.id(), n, at, y, spacing);
      left -= n;
      at += s.bandStand().shape().h() + spacing;
    }
  }

  private static final PanelStand NONE =
      new PanelStand(
          new PanelShape(1, 0, 1, 0, 0, org.apache.commons.geometry.euclidean.twod.Vector2D.ZERO),
          false,
          false,
          false);
}
