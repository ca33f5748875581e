package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class StaggeredRowsTest {

  private static PanelShape shape(double b, double t, double h, double l) {
    return new PanelShape(b, t, h, l, 0, Vector2D.ZERO);
  }

  private static PanelRow best(PanelShape p, int n, double spacing, boolean turns, double free) {
    RowContacts contacts = new RowContacts(p, spacing, turns);
    RowGrowth growth = new RowGrowth(contacts, contacts.usable(free));
    while (growth.panels() < n) {
      growth.grow();
    }
    PanelRow row = growth.row();
    assertThat(row.length()).isCloseTo(growth.length(), within(1e-9));
    return row;
  }

  private static double[][] order(PanelShape p, int n, boolean turns, boolean firstTurned) {
    double[][] out = new double[n][];
    for (int i = 0; i < n; i++) {
      out[i] = PushedRow.panel(p, turns && firstTurned == (i % 2 == 0));
    }
    return out;
  }

  /** The shortest row with heights on a grid, by trying all of them. */
  private static double shortestOnGrid(PanelShape p, int n, boolean turns, double free, int grid) {
    double least = Double.POSITIVE_INFINITY;
    for (boolean firstTurned : new boolean[] {false, true}) {
      double[][] panels = order(p, n, turns, firstTurned);
      double[] heights = new double[n];
      int all = (int) Math.round(Math.pow(grid + 1, n));
      for (int code = 0; code < all; code++) {
        int rest = code;
        for (int i = 0; i < n; i++) {
          heights[i] = free * (rest % (grid + 1)) / grid;
          rest /= grid + 1;
        }
        least = Math.min(least, PushedRow.length(panels, heights));
      }
    }
    return least;
  }

  @Property(tries = 40, seed = "1452518414364431998")
  void noHeightsOnAGridMakeAShorterRow(
      @ForAll @DoubleRange(min = 0.5, max = 2.5) double b,
      @ForAll @DoubleRange(min = 0, max = 0.6) double top,
      @ForAll @DoubleRange(min = 0, max = 1) double lean,
      @ForAll @DoubleRange(min = 0.05, max = 1) double part,
      @ForAll @IntRange(min = 2, max = 5) int n,
      @ForAll boolean turns) {
    double t = top < 0.1 ? 0 : top * b;
    // Half of the panels stand symmetric; the other half lean anyhow inwards.
    double l = (b - t) * (lean < 0.5 ? 0.5 : 2 * lean - 1);
    PanelShape p = shape(b, t, 1.5, l);
    double free = part * 1.5;
    // Beyond this the second panel begins before the first, and heights in between can count.
    double right = l + t < b ? (l + t) / (b - l - t) : 1;
    double left = l > 0 ? (b - l) / l : 1;
    double usable = Math.min(free, 1.5 * (turns ? Math.min(1, Math.min(right, left)) : 1));
    double found = best(p, n, 0, turns, usable).length();
    assertThat(found).isLessThan(shortestOnGrid(p, n, turns, usable, 4) + 1e-9);
  }

  @Property(tries = 300, seed = "-2901224924571484936")
  void noHeightsAtRandomMakeAShorterRow(
      @ForAll @DoubleRange(min = 0.5, max = 2.5) double b,
      @ForAll @DoubleRange(min = 0, max = 0.6) double top,
      @ForAll @DoubleRange(min = 0.05, max = 1) double part,
      @ForAll @Size(min = 2, max = 12) double[] at,
      @ForAll boolean turns,
      @ForAll boolean firstTurned) {
    double t = top < 0.1 ? 0 : top * b;
    PanelShape p = shape(b, t, 1.5, (b - t) / 2);
    double free = new RowContacts(p, 0, turns).usable(part * 1.5);
    double[] heights = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      heights[i] = free * Math.abs(Math.sin(at[i]));
    }
    double pushed = PushedRow.length(order(p, at.length, turns, firstTurned), heights);
    assertThat(best(p, at.length, 0, turns, free).length()).isLessThan(pushed + 1e-9);
  }

  @Property(tries = 200, seed = "2858009349840381928")
  void theRowStandsAsTheOraclePushesIt(
      @ForAll @DoubleRange(min = 0.5, max = 2.5) double b,
      @ForAll @DoubleRange(min = 0, max = 1) double top,
      @ForAll @DoubleRange(min = -1, max = 2) double lean,
      @ForAll @DoubleRange(min = 0, max = 1.5) double free,
      @ForAll @IntRange(min = 1, max = 20) int n,
      @ForAll boolean turns) {
    PanelShape p = shape(b, top * b, 1.5, (b - top * b) * lean);
    PanelRow row = best(p, n, 0, turns, free);
    double[][] panels = new double[n][];
    double[] heights = new double[n];
    for (int i = 0; i < n; i++) {
      panels[i] = PushedRow.panel(p, row.turned(i));
      heights[i] = row.height(i);
    }
    assertThat(PushedRow.length(panels, heights)).isCloseTo(row.length(), within(1e-9));
  }

  @Property(tries = 60, seed = "-805324002785823641")
  void theWorkedRowFollows(
      @ForAll @IntRange(min = 1, max = 30) int n,
      @ForAll @DoubleRange(min = 0, max = 0.2) double spacing,
      @ForAll @DoubleRange(min = 0, max = 1) double free,
      @ForAll boolean headToTail) {
    PanelRow row = best(shape(2, 1.3, 1.7, 0.3), n, spacing, headToTail, free);
    StepRecorder steps = new StepRecorder();
    double length = row.length(steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("geometry.layout.rowlength", "row of panels"), length);
    double[] corners = row.corners();
    assertThat(corners).hasSize(n);
    assertThat(row.length()).isEqualTo(length);
  }

  /** Derived by hand: pairs share a parallelogram of side b + t, ends add the slant. */
  @Property(tries = 60, seed = "-135724034993298660")
  void withoutFreeHeightTheRowIsPairsAndASlant(
      @ForAll @IntRange(min = 1, max = 40) int n,
      @ForAll @DoubleRange(min = 0, max = 0.9) double t,
      @ForAll @DoubleRange(min = -1, max = 2) double l) {
    PanelShape p = shape(1, t, 1.3, l);
    double right = 1 - l - t;
    double slant = Math.min(Math.abs(l), Math.abs(right));
    double odd = Math.max(1, l + t) - Math.min(0, l);
    double expected = n / 2 * (1 + t) + (n % 2 == 0 ? slant : odd);
    assertThat(best(p, n, 0, true, 0).length()).isCloseTo(expected, within(1e-9));
  }

  /** Derived by hand: of 199 contacts 1, 4, 7 and so on, 67, gain a third of the free 0.2 m. */
  @Test
  void everyThirdContactOfTrianglesGains() {
    PanelRow row = best(shape(2, 0, 3, 1), 200, 0, true, 0.2);
    assertThat(row.length()).isCloseTo(201 - 67 * 0.2 / 3, within(1e-9));
  }

  /** Derived by hand: with a top of 0.2 m each of 23 contacts gains the whole free height. */
  @Test
  void everyContactOfTrapezoidsGainsWhileTheTopIsWide() {
    PanelRow row = best(shape(1.6, 0.2, 2.2, 0.7), 24, 0, true, 0.3);
    assertThat(row.length()).isCloseTo(22.3 - 23 * 0.3 * 0.7 / 2.2, within(1e-9));
  }

  /** Derived by hand: panels all one way up go up and down in turn and gain at each contact. */
  @Test
  void panelsOneWayUpGainAtEveryContact() {
    PanelRow row = best(shape(1.6, 0, 2.5, 0.8), 20, 0, false, 0.5);
    assertThat(row.length()).isCloseTo(32 - 19 * 0.5 * 0.8 / 2.5, within(1e-9));
  }
}
