package io.github.seamstead.geometry.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A section of lanes: rows along the strip of one or two kinds, with a band of rows across above
 * them or not. The lanes do not depend on one another.
 *
 * @param id the piece
 * @param lanes from y = 0 up
 * @param spacing between panels, in metres
 */
record LaneSection(String id, List<Lane> lanes, double spacing) implements SectionTable.Section {

  /**
   * Offers the section for every number of panels.
   *
   * <p>A section holds {@code sum of copies x steps(L)} panels at length L, and the steps of a lane
   * change only at its own lengths, so visiting those in order finds the least length for each
   * number. O(n) steps for n panels.
   */
  void offerTo(SectionTable table) {
    List<Lane.Growth> growths = new ArrayList<>();
    for (Lane lane : lanes) {
      growths.add(lane.grow(spacing));
    }
    int held = 0;
    while (held < table.count() && !table.isEnded()) {
      int first = 0;
      for (int i = 1; i < lanes.size(); i++) {
        if (growths.get(i).length() < growths.get(first).length()) {
          first = i;
        }
      }
      double length = growths.get(first).length();
      if (length > table.longest()) {
        return;
      }
      int more = held + lanes.get(first).copies();
      table.offer(this, length, held + 1, more);
      held = more;
      growths.get(first).next();
    }
  }

  @Override
  public void place(List<Placement> out, int m, double length, double x, double y0) {
    int left = m;
    double y = y0;
    for (Lane lane : lanes) {
      double pitch = lane.pitch(spacing);
      if (lane.stand().across()) {
        for (double at = x; left > 0; at += pitch) {
          int n = Math.min(left, lane.copies());
          lane.stand().place(out, id, lane.row(n, spacing), n, lane.height(), at, y);
          left -= n;
        }
        return;
      }
      // Rows of one kind alone share the panels evenly: none is longer than it must be.
      boolean alone = lanes.size() == 1;
      int most = alone ? (left + lane.copies() - 1) / lane.copies() : lane.most(length, spacing);
      for (int i = 0; i < lane.copies() && left > 0; i++) {
        int n = alone ? (left + lane.copies() - i - 1) / (lane.copies() - i) : Math.min(left, most);
        if (n > 0) {
          // Rows in phase follow one pattern, of which a shorter row takes the first panels.
          PanelRow row = lane.row(lane.shared() ? most : n, spacing);
          lane.stand().place(out, id, row, n, lane.height(), x, y);
        }
        left -= n;
        y += pitch;
      }
      y += lane.shared() ? lane.free() : 0;
    }
  }

  @Override
  public Optional<PanelRow> firstRow(int m, double length) {
    Lane lane = lanes.get(0);
    int n;
    if (lane.stand().across()) {
      n = Math.min(m, lane.copies());
    } else if (lanes.size() == 1) {
      n = (m + lane.copies() - 1) / lane.copies();
    } else {
      n = Math.min(m, lane.most(length, spacing));
    }
    return n == 0 ? Optional.empty() : Optional.of(lane.row(n, spacing));
  }
}
