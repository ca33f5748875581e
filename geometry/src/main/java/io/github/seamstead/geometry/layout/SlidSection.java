package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Rows of triangles one above the other that share a free height by sliding along straight cuts.
 *
 * <p><b>Arrangement.</b> Head to tail and base on base, congruent triangles fill the plane, and the
 * lines through their legs run straight through all a rows. Everything on the right of such a line
 * can be slid along it without a new overlap: up by x along a line that leans left, which brings it
 * nearer by {@code cR x}, or down along one that leans right, nearer by {@code cL x}; cR and cL are
 * the legs' run per height. Lines of the two kinds take turns, so all heights stay within 0 to x.
 *
 * <p><b>How many slides.</b> Two successive lines approach each other towards one edge of the rows.
 * If they met there, the panels on both outer sides would, once slid, overlap by {@code (cR + cL)
 * x}; with one base b between them they do not, as {@code (cR + cL) x = b x / h <= b}. So the lines
 * are one base apart at the near ends and {@code (a + 1) b} at the far ends, one slide to every
 * {@code a + 2} contacts of a row, and no denser sequence of slides of this kind exists.
 *
 * <p><b>Spacing.</b> The pattern is laid with the triangles grown by half the spacing on all sides:
 * panels within grown ones that do not overlap keep the spacing.
 */
final class SlidSection {

  private final String id;
  private final PanelStand stand;
  private final int rows;

  /** The most by which the rows may slide, and by how much they do. */
  private final double most;

  private final double free;
  private final double b;
  private final double h;
  private final double l;
  private final double insetX;
  private final double insetY;
  private final List<Spot> spots;

  /** A panel of the pattern by its drawn base corner and its extent along the strip. */
  private record Spot(double left, double right, double x, double y, boolean turned) {}

  private SlidSection(
      String id, PanelStand stand, int rows, double width, double spacing, double part, int count) {
    this.id = id;
    this.stand = stand;
    this.rows = rows;
    PanelShape p = stand.shape();
    double rightLeg = StrictMath.hypot(p.b() - p.l(), p.h());
    double leftLeg = StrictMath.hypot(p.l(), p.h());
    double around = p.b() + rightLeg + leftLeg;
    double inradius = p.b() * p.h() / around;
    double grown = 1 + spacing / 2 / inradius;
    b = grown * p.b();
    h = grown * p.h();
    l = grown * p.l();
    // The grown triangle is the panel drawn larger about its incentre.
    double centreX = (p.b() * p.l() + leftLeg * p.b()) / around;
    insetX = (grown - 1) * centreX;
    insetY = spacing / 2;
    most = Math.min(h, width + spacing - rows * h);
    free = part * most;
    spots = most > 1e-12 * width ? spots(count) : List.of();
  }

  /** Offers all sections of the kind that fit across the width, two rows and more. */
  static void offerAll(
      String id, PanelStand stand, double width, double spacing, SectionTable table) {
    if (stand.shape().t() > 0 || stand.across() || !stand.headToTail()) {
      return;
    }
    for (int a = 2; a <= LaneSections.MOST_MIXED && !table.isEnded(); a++) {
      SlidSection pattern = new SlidSection(id, stand, a, width, spacing, 1, table.count());
      if (pattern.spots.isEmpty()) {
        return;
      }
      pattern.offerWindows(table);
      SlidSection level = new SlidSection(id, stand, a, width, spacing, 0, table.count());
      for (double part : pattern.parts(level)) {
        if (table.isEnded()) {
          return;
        }
        new SlidSection(id, stand, a, width, spacing, part, table.count()).offerWindows(table);
      }
    }
  }

  /**
   * The slides at which two panels begin level, as parts of the greatest. Between them a greater
   * slide only brings each later panel nearer; beyond one of them a panel begins before the one
   * that began the section, which can then reach further. So the least length over all slides up to
   * the greatest is found at these, and a wider strip is never used worse.
   */
  private List<Double> parts(SlidSection level) {
    int period = rows + 2;
    double[] before = level.lefts(0, 3 * period);
    double[] after = lefts(0, 3 * period);
    double[] firstBefore = level.lefts(2 * period, period);
    double[] firstAfter = lefts(2 * period, period);
    List<Double> found = new ArrayList<>();
    for (int i = 0; i < firstBefore.length; i++) {
      for (int j = 0; j < before.length; j++) {
        double off = before[j] - firstBefore[i];
        double slid = after[j] - firstAfter[i];
        if (off > 0 && slid < 0) {
          // A hair less, so that rounding does not put the one before the other.
          found.add(off / (off - slid) * (1 - 1e-12));
        }
      }
    }
    found.sort(null);
    List<Double> distinct = new ArrayList<>();
    for (double part : found) {
      if (distinct.isEmpty() || part - distinct.get(distinct.size() - 1) > 1e-10) {
        distinct.add(part);
      }
    }
    return distinct;
  }

  /** Left ends of the panels of some columns of all rows, standing and turned. */
  private double[] lefts(int column, int columns) {
    double[] lefts = new double[2 * rows * columns];
    for (int i = 0; i < lefts.length; i++) {
      lefts[i] = spot(i / 2 % rows, column + i / 2 / rows, i % 2 == 1).left();
    }
    return lefts;
  }

  /** Every panel of the pattern may be the one that begins a section; the pattern repeats. */
  private void offerWindows(SectionTable table) {
    double period = (rows + 2) * b - (b / h) * free;
    double start = (rows + 2) * b + Math.abs(l) * rows;
    for (Spot first : spots) {
      if (first.left() < start || first.left() >= start + period) {
        continue;
      }
      Window section = new Window(this, first.left());
      int held = 0;
      for (Spot spot : spots) {
        if (spot.left() >= first.left() - 1e-12 * b) {
          double length = spot.right() - first.left();
          if (length > table.longest()) {
            break;
          }
          held++;
          table.offer(section, length, held, held);
        }
      }
    }
  }

  /** The pattern's panels in the order in which they end, enough for n after the first period. */
  private List<Spot> spots(int n) {
    List<Spot> out = new ArrayList<>();
    int periods = n / (2 * rows * (rows + 2)) + 5;
    int columns = periods * (rows + 2) + (int) Math.ceil(Math.abs(l) * rows / b);
    for (int r = 0; r < rows; r++) {
      for (int k = 0; k < columns; k++) {
        out.add(spot(r, k, false));
        out.add(spot(r, k, true));
      }
    }
    out.sort(Comparator.comparingDouble(Spot::right));
    return out;
  }

  private Spot spot(int row, int k, boolean turned) {
    int period = rows + 2;
    // Lines that lean left leave the lower edge at every period-th corner from 0, and one that
    // leans right a base further on; seen from row r the former have moved back by r corners.
    int up = Math.floorDiv(k + row, period) + 1;
    int down = Math.floorDiv((turned ? k - 1 : k) - 1, period) + 1;
    double run = l / h;
    double x = k * b + row * l - up * (b / h - run) * free - down * run * free;
    double y = row * h + (up - down) * free - insetY;
    PanelShape p = stand.shape();
    if (turned) {
      double corner = x + l - insetX;
      double left = corner - Math.max(p.b(), p.l());
      return new Spot(left, corner - Math.min(0, p.l()), corner, y + h - insetY, true);
    }
    double corner = x + insetX;
    return new Spot(
        corner + Math.min(0, p.l()), corner + Math.max(p.b(), p.l()), corner, y + insetY, false);
  }

  /** The pattern from one of its panels on. */
  private record Window(SlidSection pattern, double from) implements SectionTable.Section {

    @Override
    public void place(List<Placement> out, int m, double length, double x, double y) {
      int left = m;
      for (Spot spot : pattern.spots) {
        if (left > 0 && spot.left() >= from - 1e-12 * pattern.b) {
          double px = x + spot.x() - from;
          out.add(pattern.stand.at(pattern.id, out.size() + 1, px, y + spot.y(), spot.turned()));
          left--;
        }
      }
    }
  }
}
