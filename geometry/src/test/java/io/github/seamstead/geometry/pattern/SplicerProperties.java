package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Jts;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.locationtech.jts.geom.Geometry;

class SplicerProperties {

  @Property(tries = 100, seed = "-295892272653910573")
  void partsFitTheClothAndMakeTheFace(
      @ForAll @Scale(3) @DoubleRange(min = 1.5, max = 5) double base,
      @ForAll @Scale(3) @DoubleRange(min = 1, max = 7) double height,
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 0.85) double part,
      @ForAll @Scale(3) @DoubleRange(min = 1.2, max = 6) double clothWidth,
      @ForAll @Scale(3) @DoubleRange(min = 1.2, max = 6) double clothHeight,
      @ForAll @Scale(3) @DoubleRange(min = 0.03, max = 0.1) double lap,
      @ForAll @Scale(3) @DoubleRange(min = -0.08, max = 0.08) double lean) {
    Outline face = leaning(base, height, part, lean);
    PanelSpec whole = PanelSpec.of("P1", Demo.PLAN);
    Panel panel = Panel.of(face, whole.withSplices(SpliceRule.of(clothWidth, clothHeight, lap)));
    Geometry union = Jts.polygon(panel.parts().get(0).stitch());
    double area = 0;
    for (PatternPiece piece : panel.parts()) {
      assertThat(piece.cut().bounds().width()).isLessThanOrEqualTo(clothWidth + 1e-9);
      assertThat(piece.cut().bounds().height()).isLessThanOrEqualTo(clothHeight + 1e-9);
      area += piece.finishedArea();
      union = union.union(Jts.polygon(piece.stitch()));
    }
    assertThat(area).isCloseTo(face.area(), within(1e-9));
    assertThat(union.symDifference(Jts.polygon(face)).getArea()).isCloseTo(0, within(1e-7));
    Panel inOne = Panel.of(face, whole);
    SeamMatch seam = SeamMatch.between(panel, inOne);
    assertThat(seam.first()).isCloseTo(face.edgeLength(1), within(1e-9));
    assertThat(seam.second()).isCloseTo(face.edgeLength(3), within(1e-9));
    for (int hip : new int[] {1, 3}) {
      SeamMatch same = SeamMatch.between(panel, hip, inOne, hip);
      assertThat(same.ease()).isCloseTo(0, within(1e-9));
      assertThat(same.notchesMatch(1e-9)).isTrue();
    }
    assertLapsShedWater(panel);
  }

  /** As built: one top corner stands higher or lower than the other. */
  private static Outline leaning(double base, double height, double part, double lean) {
    Outline regular = Demo.trapezoid(base, height, part);
    return Outline.of(
        regular.vertex(0),
        regular.vertex(1),
        regular.vertex(2).add(Demo.v(lean / 3, lean)),
        regular.vertex(3));
  }

  /** Faces that need all of the cloth, where the allowance beside a splice outreaches its lap. */
  @Example
  void allowancesBesideASpliceFitTheClothToo() {
    // The turn-in of a crooked top ends aslant beside an upright splice, ahead of the lap …
    assertPartsFit(leaning(2.266, 1, 0.5, 0.001), 1.209, 1.2, 0.031);
    // … or back over it.
    assertPartsFit(leaning(2.557, 1, 0.5, -0.004), 1.359, 1.2, 0.03);
    // Beside a splice that meets a steep hip, the seam's allowance ends square and not mitred.
    assertPartsFit(leaning(4.478, 4.258, 0.538, 0), 1.2, 2.521, 0.03);
  }

  @Example
  void hemmedSidesLeanBesideALevelSplice() {
    EdgeAllowance hem = EdgeAllowance.hem(0.06);
    PanelSpec flap = PanelSpec.of("P1", new EdgePlan(hem, hem, EdgeAllowance.turnIn(0.06), hem));
    Panel panel =
        Panel.of(Demo.trapezoid(2, 4, 0.8), flap.withSplices(SpliceRule.of(3, 1.145, 0.05)));
    // Three parts of (3.2 + 0.06 + 0.06 + 2 · 0.05) / 3 = 1.140 m would do but for the lean.
    assertThat(panel.parts()).hasSize(4);
    // The mirrored hem reaches 2 w cos β above the splice line, for sides of slope β.
    double above = 2 * 0.06 / Math.hypot(1, 4);
    PatternPiece lowest = panel.parts().get(0);
    assertThat(lowest.cut().bounds().maxY() - lowest.stitch().bounds().maxY())
        .isCloseTo(0.05 + above, within(1e-9));
    assertThat(panel.parts())
        .allSatisfy(p -> assertThat(p.cut().bounds().height()).isLessThanOrEqualTo(1.145 + 1e-9));
  }

  private static void assertPartsFit(Outline face, double width, double height, double lap) {
    SpliceRule rule = SpliceRule.of(width, height, lap);
    Panel panel = Panel.of(face, PanelSpec.of("P1", Demo.PLAN).withSplices(rule));
    assertThat(panel.parts()).hasSizeGreaterThan(1);
    assertThat(panel.parts())
        .allSatisfy(
            p -> {
              assertThat(p.cut().bounds().width()).isLessThanOrEqualTo(width + 1e-9);
              assertThat(p.cut().bounds().height()).isLessThanOrEqualTo(height + 1e-9);
            });
  }

  /** The lower part goes on beneath the upper by the lap; the upper ends on the line. */
  private static void assertLapsShedWater(Panel panel) {
    for (Splice splice : panel.splices()) {
      PatternPiece under = byId(panel, splice.under());
      PatternPiece over = byId(panel, splice.over());
      Geometry both = Jts.polygon(under.cut()).intersection(Jts.polygon(over.stitch()));
      assertThat(both.getArea()).isGreaterThan(0);
      if (splice.upright()) {
        assertThat(under.stitch().centroid().getX()).isLessThan(over.stitch().centroid().getX());
      } else {
        assertThat(under.stitch().centroid().getY()).isLessThan(over.stitch().centroid().getY());
        assertThat(over.cut().bounds().minY())
            .isCloseTo(over.stitch().bounds().minY(), within(1e-12));
        assertThat(under.cut().bounds().maxY())
            .isCloseTo(over.stitch().bounds().minY() + splice.lap(), within(1e-9));
      }
    }
  }

  @Property(tries = 100, seed = "-3578438102851430225")
  void splicesOfNeighboursAreStaggered(
      @ForAll @IntRange(min = 3, max = 13) int faces,
      @ForAll @Scale(3) @DoubleRange(min = 2.5, max = 7) double height,
      @ForAll @Scale(3) @DoubleRange(min = 0.05, max = 0.23) double stagger) {
    Outline face = Demo.trapezoid(1.5, height, 0.8);
    SpliceRule rule = SpliceRule.of(3, 1.5, 0.08);
    for (int i = 1; i <= faces; i++) {
      List<Double> mine = levels(face, rule.staggered(i, faces, stagger));
      List<Double> next = levels(face, rule.staggered(i % faces + 1, faces, stagger));
      for (double a : mine) {
        for (double b : next) {
          assertThat(Math.abs(a - b)).isGreaterThanOrEqualTo(stagger - 1e-9);
        }
      }
    }
  }

  @Example
  void fewestPartsOfNearlyEqualHeight() {
    Outline face = Demo.trapezoid(1.2, 5, 0.8);
    Panel panel =
        Panel.of(face, PanelSpec.of("P1", Demo.PLAN).withSplices(SpliceRule.of(2, 1.6, 0.1)));
    assertThat(panel.parts()).hasSize(3);
    assertThat(panel.parts())
        .extracting(p -> p.cut().bounds().height())
        .allSatisfy(h -> assertThat(h).isCloseTo((4 + 0.05 + 0.06 + 2 * 0.1) / 3, within(1e-6)));
    assertThat(panel.parts()).extracting(PatternPiece::id).containsExactly("P1-1", "P1-2", "P1-3");
    assertThat(panel.splices()).extracting(Splice::joint).containsExactly("P1/H1", "P1/H2");
    assertThat(panel.splices()).extracting(Splice::under).containsExactly("P1-1", "P1-2");
    assertThat(panel.splices()).extracting(Splice::over).containsExactly("P1-2", "P1-3");
    assertThat(panel.parts().get(1).edges())
        .extracting(e -> e.allowance().role())
        .containsExactlyInAnyOrder(
            EdgeRole.LAP_OVER, EdgeRole.FIN_SEAM, EdgeRole.LAP_UNDER, EdgeRole.FIN_SEAM);
  }

  @Example
  void panelThatFitsStaysWhole() {
    Outline face = Demo.trapezoid(1.2, 2, 0.8);
    Panel panel =
        Panel.of(
            face, PanelSpec.of("P1", Demo.PLAN).withSplices(new SpliceRule(2, 2, 0.1, 0.3, 1)));
    assertThat(panel.parts()).hasSize(1);
    assertThat(panel.parts().get(0).id()).isEqualTo("P1");
    assertThat(panel.splices()).isEmpty();
  }

  @Example
  void splicesKeepClearOfOpenings() {
    Outline face = Demo.trapezoid(3, 6, 0.8);
    Outline door = Outline.rectangle(0.8, 1.6).placed(0, Demo.v(1.1, 0.5));
    PanelSpec spec =
        PanelSpec.of("P1", Demo.PLAN)
            .withOpenings(List.of(Opening.of("door", door, 0.03).withPatch(0.1, 0.013)))
            .withSplices(SpliceRule.of(4, 2.05, 0.1));
    Panel panel = Panel.of(face, spec);
    Outline zone = Openings.grown("door", door, 0.1);
    int holes = 0;
    for (PatternPiece piece : panel.parts()) {
      holes += piece.holes().size();
      if (!piece.holes().isEmpty()) {
        assertThat(piece.stitch().contains(zone)).isTrue();
      } else {
        assertThat(Jts.polygon(piece.cut()).intersection(Jts.polygon(zone)).getArea())
            .isCloseTo(0, within(1e-9));
      }
    }
    assertThat(holes).isEqualTo(1);
    assertThat(panel.parts().size()).isGreaterThan(2);
  }

  @Example
  void openingLargerThanTheClothIsRefused() {
    Outline face = Demo.trapezoid(3, 6, 0.8);
    Outline door = Outline.rectangle(0.8, 1.6).placed(0, Demo.v(1.1, 0.5));
    PanelSpec spec =
        PanelSpec.of("P1", Demo.PLAN)
            .withOpenings(List.of(Opening.of("door", door, 0.03)))
            .withSplices(SpliceRule.of(4, 1.5, 0.1));
    assertThatThrownBy(() -> Panel.of(face, spec))
        .hasMessageContaining("panel P1: no room for a splice")
        .hasMessageContaining("any opening with its patch");
  }

  @Example
  void badRulesAreNamed() {
    assertThatThrownBy(() -> SpliceRule.of(0, 1, 0.1)).hasMessageContaining("cloth width");
    assertThatThrownBy(() -> SpliceRule.of(1, 1, 0.6)).hasMessageContaining("splice lap");
    assertThatThrownBy(() -> new SpliceRule(1, 1, 0.1, 0.1, 3))
        .hasMessageContaining("splice steps");
    assertThatThrownBy(() -> SpliceRule.of(1, 1, 0.1).staggered(1, 9, 0.3))
        .hasMessageContaining("splice stagger");
    assertThatThrownBy(() -> SpliceRule.of(1, 1, 0.1).staggered(10, 9, 0.1))
        .hasMessageContaining("face: given 10");
  }

  private static PatternPiece byId(Panel panel, String id) {
    return panel.parts().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<Double> levels(Outline face, SpliceRule rule) {
    List<Double> levels = new ArrayList<>();
    Panel panel = Panel.of(face, PanelSpec.of("P", Demo.PLAN).withSplices(rule));
    for (Splice splice : panel.splices()) {
      levels.add(byId(panel, splice.over()).stitch().bounds().minY());
    }
    return levels;
  }
}
