package io.github.seamstead.geometry.layout;

/**
 * Equal rows along the strip, one above the other, or a band of equal rows across it, one after the
 * other.
 *
 * @param stand how the panels stand
 * @param free height by which panels of a row may be moved up across it, in metres
 * @param copies rows along, or panels in each row across
 * @param shared true if the rows lie in phase and share the free height, each row being the one
 *     below moved up
 */
record Lane(PanelStand stand, double free, int copies, boolean shared) {

  /** Height of one row, free height included. */
  double height() {
    return stand.shape().h() + free;
  }

  /** From one row to the next. */
  double pitch(double spacing) {
    return stand.shape().h() + (shared ? 0 : free) + spacing;
  }

  /** Gives in turn the lengths at which the lane holds {@code copies} panels more. */
  Growth grow(double spacing) {
    return new Growth(this, spacing);
  }

  /** Steps through the lengths of a lane. */
  static final class Growth {
    private final Lane lane;
    private final double spacing;
    private final RowGrowth row;
    private int steps = 1;

    Growth(Lane lane, double spacing) {
      this.lane = lane;
      this.spacing = spacing;
      row = new RowGrowth(lane.stand.contacts(spacing), lane.free);
    }

    double length() {
      return lane.stand.across() ? steps * lane.pitch(spacing) - spacing : row.length();
    }

    void next() {
      steps++;
      if (!lane.stand.across()) {
        row.grow();
      }
    }
  }

  /** The shortest row of n panels. */
  PanelRow row(int n, double spacing) {
    RowGrowth row = new RowGrowth(stand.contacts(spacing), free);
    while (row.panels() < n) {
      row.grow();
    }
    return row.row();
  }

  /** How many panels a row along holds in a length. */
  int most(double length, double spacing) {
    RowGrowth row = new RowGrowth(stand.contacts(spacing), free);
    int n = 0;
    while (row.length() <= length * (1 + 1e-12)) {
      n = row.panels();
      row.grow();
    }
    return n;
  }
}
