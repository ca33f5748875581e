package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class PanelRowsTest {

  /** A trapezoid, or a triangle where the top t is 0; the top begins at l. */
  private static Outline panel(double b, double t, double h, double l) {
    return t == 0
        ? CuttingLayoutTest.outline(0, 0, b, 0, l, h)
        : CuttingLayoutTest.outline(0, 0, b, 0, l + t, h, l, h);
  }

  static void verify(
      Piece piece, PanelRows.Arrangement a, double width, double spacing, double margin) {
    List<Polygon> placed = new ArrayList<>();
    for (Placement p : a.placements()) {
      assertThat(PieceTurnsOracle.allowed(piece, p.rotation())).isTrue();
      Polygon polygon = LayoutVerifier.polygon(p.place(piece.outline()));
      var box = polygon.getEnvelopeInternal();
      assertThat(box.getMinX()).isGreaterThan(margin - 1e-9);
      assertThat(box.getMaxX()).isLessThan(a.length() - margin + 1e-9);
      placed.add(polygon);
    }
    assertThat(LayoutVerifier.worstOverlap(placed, width)).isLessThan(1e-8);
    for (int i = 0; i < placed.size() && spacing > 0; i++) {
      for (int j = 0; j < i; j++) {
        assertThat(placed.get(i).distance(placed.get(j))).isGreaterThan(spacing - 1e-9);
      }
    }
  }

  @Property(tries = 60, seed = "2891347435401614164")
  void rowsAreValidForAnyTrapezoid(
      @ForAll @DoubleRange(min = 0.3, max = 3) double b,
      @ForAll @DoubleRange(min = 0, max = 1) double topPart,
      @ForAll @DoubleRange(min = 0.3, max = 3) double h,
      @ForAll @DoubleRange(min = -1, max = 1.5) double lean,
      @ForAll @IntRange(min = 1, max = 24) int count,
      @ForAll @DoubleRange(min = 1, max = 8) double width,
      @ForAll @DoubleRange(min = 0, max = 0.1) double spacing) {
    double t = topPart < 0.2 ? 0 : topPart * b;
    Outline o = panel(b, t, h, lean);
    for (Rotations turns : List.of(Rotations.halfTurn(), Rotations.none(), Rotations.anyAngle())) {
      Piece piece = Piece.of("p", o).withRotations(turns);
      double m = spacing / 2;
      PanelRows.onStrip(piece, count, width, Double.POSITIVE_INFINITY, spacing, m)
          .ifPresent(
              a -> {
                assertThat(a.placements()).hasSize(count);
                verify(piece, a, width, spacing, m);
                for (Placement p : a.placements()) {
                  var box = p.place(o).bounds();
                  assertThat(box.minY()).isGreaterThan(m - 1e-9);
                  assertThat(box.maxY()).isLessThan(width - m + 1e-9);
                }
              });
    }
  }

  @Property(tries = 60, seed = "-3228029675180905725")
  void hemRowsAreValidForAnyTrapezoid(
      @ForAll @DoubleRange(min = 0.3, max = 3) double b,
      @ForAll @DoubleRange(min = 0, max = 1) double topPart,
      @ForAll @DoubleRange(min = 0.3, max = 3) double h,
      @ForAll @DoubleRange(min = -1, max = 1.5) double lean,
      @ForAll @IntRange(min = 1, max = 12) int count,
      @ForAll @DoubleRange(min = 1, max = 2.5) double over,
      @ForAll @DoubleRange(min = 0, max = 0.1) double spacing) {
    double t = topPart < 0.2 ? 0 : topPart * b;
    Outline o = panel(b, t, h, lean);
    Piece piece = Piece.of("p", o).withHem(0, true);
    double width = h * over + spacing;
    for (int sides = 1; sides <= 3; sides++) {
      boolean low = (sides & 1) != 0;
      boolean high = (sides & 2) != 0;
      PanelRows.Arrangement a =
          HemRows.onStrip(piece, count, width, Double.POSITIVE_INFINITY, low, high, spacing, 0)
              .orElseThrow();
      assertThat(a.placements()).hasSize(count);
      verify(piece, a, width, spacing, 0);
    }
  }

  @Test
  void manyPanelsOnAWideRollTakeTheBestMix() {
    // 3.2 m of width: one row along (1.5 m high) and a band of rows across beside it.
    Piece piece =
        Piece.of("p", CuttingLayoutTest.outline(0, 0, 1, 0, 0.5, 1.5))
            .withRotations(Rotations.anyAngle());
    PanelRows.Arrangement a =
        PanelRows.onStrip(piece, 40, 3.2, Double.POSITIVE_INFINITY, 0, 0).orElseThrow();
    // Two rows of 20 along: 10 pairs of 1 m and the slant of half a metre.
    assertThat(a.length()).isLessThanOrEqualTo(10.5 + 1e-9);
  }

  @Test
  void limitsTheCountToTheRoom() {
    Piece piece = Piece.of("p", CuttingLayoutTest.outline(0, 0, 2, 0, 1, 3));
    PanelRows.Arrangement a = PanelRows.onStrip(piece, 50, 3, 9, 0, 0).orElseThrow();
    assertThat(a.placements()).hasSize(8);
    assertThat(PanelRows.onStrip(piece, 50, 2.9, 9, 0, 0)).isEmpty();
  }

  /** Level rows by their closed form: pairs share a parallelogram, a rows share the panels. */
  private static double levelRows(PanelShape p, int count, double width, double spacing) {
    double pair = p.b() + p.t() + p.legGap(true, spacing) + p.legGap(false, spacing);
    double odd = Math.max(p.b(), p.l() + p.t()) - Math.min(0, p.l());
    double least = Double.POSITIVE_INFINITY;
    for (int a = 1; a * (p.h() + spacing) - spacing <= width; a++) {
      int n = (count + a - 1) / a;
      double even = n / 2.0 * pair - p.legGap(false, spacing) + Math.abs(p.l());
      least = Math.min(least, n % 2 == 0 ? even : (n - 1) / 2.0 * pair + odd);
    }
    return least;
  }

  private static double length(Piece piece, int count, double width, double spacing) {
    return PanelRows.onStrip(piece, count, width, Double.POSITIVE_INFINITY, spacing, 0)
        .map(PanelRows.Arrangement::length)
        .orElse(Double.POSITIVE_INFINITY);
  }

  @Property(tries = 60, seed = "-8928055514832342751")
  void neverLongerThanLevelRowsNorForMoreWidthOrFewerPanels(
      @ForAll @DoubleRange(min = 0.5, max = 2.5) double b,
      @ForAll @DoubleRange(min = 0, max = 0.9) double topPart,
      @ForAll @DoubleRange(min = 0, max = 1) double lean,
      @ForAll @DoubleRange(min = 1, max = 3.5) double h,
      @ForAll @DoubleRange(min = 0.8, max = 3.5) double over,
      @ForAll @IntRange(min = 1, max = 80) int count,
      @ForAll @DoubleRange(min = 0, max = 0.05) double spacing) {
    double t = topPart < 0.3 ? 0 : topPart * b;
    double l = lean * (b - t);
    Outline o = panel(b, t, h, l);
    Outline equalLegs = panel(b, t, h, (b - t) / 2);
    double width = h * over;
    for (Rotations turns : List.of(Rotations.halfTurn(), Rotations.none(), Rotations.anyAngle())) {
      Piece piece = Piece.of("p", o).withRotations(turns);
      double length = length(piece, count, width, spacing);
      Piece even = Piece.of("p", equalLegs).withRotations(turns);
      assertThat(length(even, count, width * 1.03, 0))
          .isLessThanOrEqualTo(length(even, count, width, 0) * (1 + 1e-12));
      assertThat(length(piece, count + 1, width, spacing))
          .isGreaterThanOrEqualTo(length * (1 - 1e-12));
      if (!turns.equals(Rotations.none())) {
        PanelShape shape = PanelShape.on(o, 0).orElseThrow();
        assertThat(length)
            .isLessThanOrEqualTo(levelRows(shape, count, width, spacing) * (1 + 1e-12));
      }
    }
  }

  /** A strip 3 % wider once took 0.5 % more: rows that slide further than is of use reach out. */
  @Test
  void sixTrianglesOnAWiderStripTakeNoMore() {
    Piece six = Piece.of("p", panel(0.5, 0, 1.05, 0.25)).withRotations(Rotations.anyAngle());
    double last = Double.POSITIVE_INFINITY;
    for (double width : new double[] {1.0185, 1.03, 1.04, 1.0491, 1.06}) {
      double now = length(six, 6, width, 0);
      assertThat(now).isLessThanOrEqualTo(last * (1 + 1e-12));
      PanelRows.Arrangement a =
          PanelRows.onStrip(six, 6, width, Double.POSITIVE_INFINITY, 0, 0).orElseThrow();
      verify(six, a, width, 0, 0);
      last = now;
    }
    assertThat(last).isLessThan(2.0682);
  }

  /** Derived by hand: two rows of 12 slide three times by 0.2 m along legs of 0.8 m in 1.9 m. */
  @Test
  void rowsOfTrianglesSlideTogether() {
    Piece piece = Piece.of("p", CuttingLayoutTest.outline(0, 0, 1.6, 0, 0.8, 1.9));
    PanelRows.Arrangement a =
        PanelRows.onStrip(piece, 24, 4, Double.POSITIVE_INFINITY, 0, 0).orElseThrow();
    verify(piece, a, 4, 0, 0);
    assertThat(a.length()).isCloseTo(10.4 - 3 * 0.2 * 0.8 / 1.9, within(1e-9));
  }

  /**
   * Derived by hand. A panel stands on a leg at the lower edge; turned by half a turn about the
   * point of its other leg at half the width it hangs from the upper edge, leg against leg. Its
   * long base is then the line on which the next panel's long base stands.
   */
  @Test
  void trapezoidsOnALegLieSideBySide() {
    Piece piece =
        Piece.of("p", CuttingLayoutTest.outline(0, 0, 2, 0, 1.3, 1.7, 0.7, 1.7))
            .withRotations(Rotations.anyAngle());
    PanelRows.Arrangement a =
        PanelRows.onStrip(piece, 20, 2.4, Double.POSITIVE_INFINITY, 0, 0).orElseThrow();
    verify(piece, a, 2.4, 0, 0);
    double leg = Math.hypot(0.7, 1.7);
    double cos = 0.7 / leg;
    double sin = 1.7 / leg;
    double part = (1.2 - 0.6 * sin) / (2 * sin - 0.6 * sin);
    double middle = leg + 0.6 * cos + part * (2 * cos - leg - 0.6 * cos);
    double pair = 2 * middle - 2.4 * cos / sin;
    assertThat(pair).isGreaterThan(leg);
    assertThat(a.length()).isCloseTo(9 * pair + 2 * middle, within(1e-9));
  }

  /** Derived by hand, as {@link StaggeredRowsTest}; the level row has 201 m. */
  @Test
  void aRowUsesTheWidthLeftOver() {
    Piece piece = Piece.of("p", CuttingLayoutTest.outline(0, 0, 2, 0, 1, 3));
    assertThat(length(piece, 200, 3.2, 0)).isCloseTo(201 - 67 * 0.2 / 3, within(1e-9));
  }

  @Property(tries = 20, seed = "4139550697424362092")
  void theSearchTakesTheRowsAsItsStart(
      @ForAll @DoubleRange(min = 0.8, max = 2) double b,
      @ForAll @DoubleRange(min = 0, max = 1) double lean,
      @ForAll @DoubleRange(min = 1, max = 2.4) double over,
      @ForAll @DoubleRange(min = 0, max = 0.05) double spacing) {
    Piece piece = Piece.of("p", CuttingLayoutTest.outline(0, 0, b, 0, lean * b, 1.5)).withCount(14);
    double width = 1.5 * over;
    LayoutRequest request =
        new LayoutRequest(
            List.of(piece),
            List.of(Roll.of("roll", width, 100)),
            spacing,
            0,
            Objective.LEAST_LENGTH);
    LayoutResult planned = CuttingLayout.plan(request, Work.of(Budget.ofWork(1), 1));
    assertThat(planned.used().get(0).usedLength())
        .isLessThanOrEqualTo(length(piece, 14, width, spacing) + 1e-8);
  }

  @Test
  void theWorkedBoundAndDensityFollow() {
    StepRecorder steps = new StepRecorder();
    double bound = LayoutMeasures.lowerBound(12, 3, 1.5, 3.9, 0.1, steps);
    DerivationChecks.assertFollowsTo(steps.derivation("geometry.layout.bound", "bound"), bound);
    assertThat(bound).isCloseTo(12 / 2.8 + 0.2, within(1e-12));
    StepRecorder more = new StepRecorder();
    double density = LayoutMeasures.density(12, 15, more);
    DerivationChecks.assertFollowsTo(more.derivation("geometry.layout.density", "d"), density);
  }
}
