package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The everyday case in closed form: one triangle or trapezoid many times on a strip of given width.
 *
 * <p><b>Class of arrangements.</b> The strip is divided by straight cuts across it into sections.
 * In a row all panels stand on the same base, which is parallel to the row; every second one is
 * turned by half a turn (head to tail) where the half turn is allowed, else all stand the same way
 * up. Each panel of a row may be moved up across it within the row's free height, a row's legs keep
 * the spacing line by line, and the heights are those of {@link RowContacts#levels}. A section is
 * one of these:
 *
 * <ul>
 *   <li>rows along the strip of one kind or of two, each with its own lane; the width left over is
 *       free height, shared evenly by some or all rows of one kind, or had by all in phase where
 *       panels stand one way up;
 *   <li>rows of one kind and above them a band of equal rows across the strip;
 *   <li>rows across the whole width, level or, up to twelve panels each, with the least free height
 *       that lets them hold more;
 *   <li>rows of triangles head to tail that slide together along straight cuts ({@link
 *       SlidSection});
 *   <li>rows along the strip of trapezoids that stand on a leg, head to tail with one rise ({@link
 *       LegSection}).
 * </ul>
 *
 * <p>Every base with a parallel top may be used, each edge of a triangle too, and in the last kind
 * each leg. Turns, grain, spacing and margin of the piece are kept.
 *
 * <p>Where more than twelve rows fit one above the other, all rows are of one kind and share the
 * free height evenly.
 *
 * <p><b>One row.</b> Let c be the run of the leg in contact per height and {@code tau = t / (cR +
 * cL)}. A contact at which the turned panel lies by {@code tau + g} above the standing one is
 * shorter by {@code c (tau + g)}. No g exceeds {@code e = D - tau} for the free height D; of two
 * successive contacts one has g at most 0, or the outer panels would overlap; and {@code g1 - g2 +
 * g3} at most e, being a difference of two heights. If g2 is at most 0 then {@code g1 + g2 + g3} is
 * at most {@code e + 2 g2}, else g1 and g3 are at most 0 and the sum is at most g2: in each case at
 * most e. So with equal legs n panels gain at most {@code (n - 1) c tau + ceil((n - 1) / 3) c e},
 * and all of {@code (n - 1) c D} if D is at most tau; the heights 0, D, e and tau reach it. With
 * unequal legs these rules are differences of heights bounded by constants, and the length is a sum
 * of heights, so that some shortest row has its heights at sums of the constants, which are the
 * levels; {@link RowGrowth} takes the shortest of all sequences of them. That holds while no second
 * panel begins before the first ({@code cR D} at most {@code l + t}, {@code cL D} at most {@code b
 * - l}) and without spacing; beyond, the row is the shortest on those levels.
 *
 * <p>So with equal legs a wider strip is never used worse. With unequal ones its greater free
 * height can make the ends of a row of few panels reach further, by a percent or two.
 *
 * <p><b>Panels one way up.</b> Moving up gains {@code cR} a metre and moving down {@code cL}; with
 * heights within D up and down in turn at every contact gains most.
 *
 * <p><b>Sections and their sequence.</b> The lanes of a section do not depend on one another, so
 * its length for m panels is the least at which the lanes' counts add up to m; the counts step only
 * at the lengths of rows or columns, and all of those are tried. All numbers of rows, pairs of
 * bases and sharings of the free height that the class names are tried, which gives the shortest
 * section g(m) for each m. An arrangement is a sequence of sections, so {@code F(n) = min over m of
 * F(n - m) + s + g(m)} is the least length. All steps are exhaustive, hence F(n) is the optimum of
 * the class.
 *
 * <p><b>Not in the class,</b> and shorter at times by some percent: panels of one row on different
 * bases or at slanting angles, rows that interlock other than by the slides above, slides that come
 * nearer one another at a section's ends, and rows across that slide together. {@link
 * CuttingLayout} searches on from here.
 *
 * <p>Costs O(s n + n²) for n panels and s sections tried, with up to 1500 operations for a panel of
 * a row: some 10 ms for 200 panels of a shelter.
 */
public final class PanelRows {

  private PanelRows() {}

  /**
   * Panels on a strip.
   *
   * @param length how much of the strip is used, margin at both ends included, in metres; greater
   *     than 0
   * @param placements one for each panel, strip along x from 0 and across y from 0; at least one
   */
  public record Arrangement(double length, List<Placement> placements) {

    public Arrangement {
      Args.positive("length", length, "m");
      placements = Args.notEmpty("placements", placements);
    }
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
  public static Optional<Arrangement> onStrip(
      Piece piece, int count, double width, double mostLength, double spacing, double margin) {
    return onStrip(piece, count, width, mostLength, spacing, margin, () -> false);
  }

  /** The same, left out if the work is to end. */
  static Optional<Arrangement> onStrip(
      Piece piece,
      int count,
      double width,
      double mostLength,
      double spacing,
      double margin,
      BooleanSupplier ended) {
    Args.within("count", count, 1, LayoutRequest.MOST_COPIES);
    Args.positive("width", width, "m");
    Args.require(
        mostLength > 0,
        "most length",
        Numbers.plain(mostLength) + " m",
        "must be greater than 0 m");
    Args.notNegative("spacing", spacing, "m");
    Args.notNegative("margin", margin, "m");
    double inside = width - 2 * margin;
    if (inside <= 0) {
      return Optional.empty();
    }
    SectionTable table = new SectionTable(count, spacing, ended);
    new LaneSections(piece, inside, spacing, table).offerAll();
    LegSection.offerAll(piece, inside, spacing, table);
    if (table.isEnded()) {
      return Optional.empty();
    }
    int n = table.solve((mostLength - 2 * margin) * (1 + 1e-12));
    if (n == 0) {
      return Optional.empty();
    }
    return Optional.of(new Arrangement(table.total(n) + 2 * margin, table.placements(n, margin)));
  }

  /** The first row where panels stand on a base and none on a leg; empty if none fits so. */
  static Optional<PanelRow> firstRow(
      Piece piece, int count, double width, double spacing, double margin) {
    double inside = width - 2 * margin;
    if (inside <= 0) {
      return Optional.empty();
    }
    SectionTable table = new SectionTable(count, spacing, () -> false);
    new LaneSections(piece, inside, spacing, table).offerAll();
    return table.solve(Double.MAX_VALUE) == count ? table.firstRow(count) : Optional.empty();
  }
}
