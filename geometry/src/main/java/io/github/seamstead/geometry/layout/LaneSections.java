package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.List;

/** Every section of lanes that a strip's width allows, offered to the table one by one. */
final class LaneSections {

  private static final int MOST_ROWS = 200;

  /** Where more rows than this fit, what is left over is small beside them: they only share it. */
  static final int MOST_MIXED = 12;

  private final String id;
  private final double width;
  private final double spacing;
  private final SectionTable table;
  private final List<PanelStand> along = new ArrayList<>();
  private final List<PanelStand> across = new ArrayList<>();

  LaneSections(Piece piece, double width, double spacing, SectionTable table) {
    this.id = piece.id();
    this.width = width;
    this.spacing = spacing;
    this.table = table;
    for (PanelStand stand : PanelStand.all(piece)) {
      (stand.across() ? across : along).add(stand);
    }
  }

  void offerAll() {
    for (int i = 0; i < along.size(); i++) {
      PanelStand row = along.get(i);
      SlidSection.offerAll(id, row, width, spacing, table);
      int most = fitting(row, width);
      for (int a = 1; a <= most && !table.isEnded(); a++) {
        double left = width - a * (row.shape().h() + spacing);
        rows(row, a, left + spacing);
        for (int j = i + 1; j < along.size() && most <= MOST_MIXED; j++) {
          PanelStand other = along.get(j);
          int more = Math.min(MOST_MIXED, fitting(other, left));
          for (int b = 1; b <= more; b++) {
            mixed(row, a, other, b, left - b * (other.shape().h() + spacing) + spacing);
          }
        }
        for (PanelStand band : across) {
          withBand(row, a, band, left);
        }
      }
    }
    for (PanelStand band : across) {
      if (!table.isEnded()) {
        columns(band);
      }
    }
  }

  private int fitting(PanelStand stand, double room) {
    double rows = (room * (1 + 1e-12) + spacing) / (stand.shape().h() + spacing);
    return (int) Math.max(0, Math.min(MOST_ROWS, Math.floor(rows)));
  }

  private void offer(Lane... lanes) {
    new LaneSection(id, List.of(lanes), spacing).offerTo(table);
  }

  private static Lane plain(PanelStand stand, int copies) {
    return new Lane(stand, 0, copies, false);
  }

  /** Equal rows that use a free height left for all of them: each its part, or all in phase. */
  private List<Lane> staggered(PanelStand stand, int copies, double height) {
    RowContacts contacts = stand.contacts(spacing);
    List<Lane> out = new ArrayList<>();
    out.add(new Lane(stand, contacts.usable(height / copies), copies, false));
    double shared = contacts.usable(Math.min(height, contacts.sharable(spacing)));
    if (shared > 0 && copies > 1) {
      out.add(new Lane(stand, shared, copies, true));
    }
    return out;
  }

  private void rows(PanelStand row, int a, double height) {
    offer(plain(row, a));
    if (height <= 1e-12 * width) {
      return;
    }
    for (int r = a; r > 0 && (r == a || a <= MOST_MIXED); r--) {
      for (Lane lane : staggered(row, r, height)) {
        if (r == a) {
          offer(lane);
        } else {
          offer(lane, plain(row, a - r));
        }
      }
    }
  }

  private void mixed(PanelStand row, int a, PanelStand other, int b, double height) {
    offer(plain(row, a), plain(other, b));
    if (height > 1e-12 * width) {
      staggered(row, a, height).forEach(lane -> offer(lane, plain(other, b)));
      staggered(other, b, height).forEach(lane -> offer(plain(row, a), lane));
    }
  }

  /** Rows along and a band beside them; panels taken out of the band leave the rows more height. */
  private void withBand(PanelStand row, int a, PanelStand band, double room) {
    RowGrowth across = new RowGrowth(band.contacts(spacing), 0);
    List<Double> lengths = new ArrayList<>();
    while (across.length() <= room * (1 + 1e-12)) {
      lengths.add(across.length());
      across.grow();
    }
    for (int k = lengths.size(); k > 0; k--) {
      double height = Math.max(0, room - lengths.get(k - 1));
      int most = k;
      staggered(row, a, height).forEach(lane -> offer(lane, plain(band, most)));
      if (a > MOST_MIXED || height > a * row.shape().h()) {
        return;
      }
    }
  }

  /** Rows across the whole width, and such as hold more panels for being staggered. */
  private void columns(PanelStand band) {
    RowContacts contacts = band.contacts(spacing);
    int k = new Lane(band, 0, 1, false).most(width, spacing);
    if (k > 0) {
      offer(plain(band, k));
    }
    double most = contacts.usable(band.shape().h());
    int limit = new Lane(band, most, 1, false).most(width, spacing);
    while (++k <= Math.min(limit, table.count()) && k <= MOST_MIXED) {
      offer(new Lane(band, leastFree(band, k, most), k, false));
    }
  }

  /** The least free height at which a row of k panels fits across the width. */
  private double leastFree(PanelStand band, int k, double enough) {
    double low = 0;
    double high = enough;
    while (high - low > 1e-13 * enough) {
      double mid = (low + high) / 2;
      if (mid == low || mid == high) {
        return high;
      }
      if (new Lane(band, mid, 1, false).row(k, spacing).length() <= width * (1 + 1e-12)) {
        high = mid;
      } else {
        low = mid;
      }
    }
    return high;
  }
}
