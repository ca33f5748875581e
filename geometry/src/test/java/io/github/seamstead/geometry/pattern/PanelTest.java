package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import org.junit.jupiter.api.Test;

class PanelTest {

  private static final double INCH = 0.0254;
  private static final Source ARMY =
      Source.found("US Army", "FM 10-16 General Fabric Repair", "2000", "ch. 8");

  @Test
  void wholePanelCarriesItsEdgesAndMarks() {
    Outline face = Demo.trapezoid(2, 4, 0.75);
    PanelMarks marks =
        new PanelMarks("7", List.of("a", "b", "c", "d"), List.of("", "J7", "", "J6"));
    Panel panel = Panel.of(face, PanelSpec.of("P7", Demo.PLAN).withMarks(marks).times(3));
    PatternPiece piece = panel.parts().get(0);
    assertThat(panel.pieces()).containsExactly(piece);
    assertThat(piece.kind()).isEqualTo(PieceKind.PANEL);
    assertThat(piece.count()).isEqualTo(3);
    assertThat(piece.stitch()).isEqualTo(face);
    assertThat(piece.edges()).extracting(PieceEdge::letter).containsExactly("a", "b", "c", "d");
    assertThat(piece.edges()).extracting(PieceEdge::joint).containsExactly("", "J7", "", "J6");
    assertThat(piece.edges())
        .extracting(e -> e.allowance().role())
        .containsExactly(EdgeRole.HEM, EdgeRole.FIN_SEAM, EdgeRole.TURN_IN, EdgeRole.FIN_SEAM);
    assertThat(piece.edges().get(1).finishedLength()).isEqualTo(face.edgeLength(1));
    assertThat(piece.marks()).extracting(Mark::text).contains("7", "GOOD SIDE", "J6", "c");
    assertThat(piece.reinforcedCutEdge()).isEmpty();
    assertThat(panel.clothArea()).isGreaterThan(face.area());
    assertThat(piece.finishedArea()).isCloseTo(face.area(), within(1e-12));
  }

  @Test
  void reinforcedEdgeIsNamedOnTheCutLine() {
    Outline face = Demo.triangle(2, 3);
    EdgePlan plan =
        EdgePlan.of(
            EdgeAllowance.reinforced(), EdgeAllowance.finSeam(0.04), EdgeAllowance.turnIn(0));
    PatternPiece piece = Panel.of(face, PanelSpec.of("P1", plan)).parts().get(0);
    int edge = piece.reinforcedCutEdge().orElseThrow();
    assertThat(piece.cut().vertex(edge).getY()).isCloseTo(0, within(1e-12));
    assertThat(piece.cut().vertex(edge + 1).getY()).isCloseTo(0, within(1e-12));
  }

  @Test
  void plainSeamAndHemOfCanvasPractice() {
    EdgePlan plan =
        EdgePlan.of(
            EdgeAllowance.hem(1.5 * INCH), EdgeAllowance.finSeam(0.25 * INCH), EdgeAllowance.raw());
    PatternPiece piece =
        Panel.of(Outline.rectangle(1, 2), PanelSpec.of("canvas", plan)).parts().get(0);
    OutsideCheck.of("geometry.pattern", "plain seam, stitch line to cut edge, in", ARMY)
        .expect(0.25)
        .within(1e-9)
        .got((piece.cut().bounds().maxX() - 1) / INCH);
    OutsideCheck.of(
            "geometry.pattern", "single-edge hem, 1/2 in turn-under and 1 in hem, cloth, in", ARMY)
        .expect(1.5)
        .within(1e-9)
        .got(-piece.cut().bounds().minY() / INCH);
  }

  @Test
  void firstNotchAboveTheBaseIsDoubled() {
    PatternPiece piece =
        Panel.of(Demo.triangle(2, 3), PanelSpec.of("P1", Demo.PLAN)).parts().get(0);
    assertThat(piece.notchesOn(1))
        .extracting(Notch::fromBase)
        .containsExactly(0.5, 1.0, 1.5, 2.0, 2.5, 3.0);
    assertThat(piece.notchesOn(1)).extracting(Notch::doubled).startsWith(true, false);
    assertThat(piece.notchesOn(0)).isEmpty();
  }

  @Test
  void allowancesThatEatUpAnEdgeAreRefused() {
    Outline slotted = slotted(0.05, 0.05);
    assertThatThrownBy(() -> Panel.of(slotted, PanelSpec.of("P1", Demo.PLAN)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(
            "panel P1: the turn-in of edge 5 makes the cut line cross itself, its cut edge would be"
                + " -20.0 mm long; given edge 1 0.05 m, edge 2 0.04 m")
        .hasMessageEndingWith("must be narrower");
  }

  @Test
  void allowancesThatCrossAreRefused() {
    assertThatThrownBy(() -> Panel.of(slotted(0.3, 0.05), PanelSpec.of("P1", Demo.PLAN)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("panel P1: the allowances make the cut line cross itself; given")
        .hasMessageContaining("must be narrower");
  }

  /** A slot in the top, so wide at its bottom and so wide at its mouth on either side. */
  private static Outline slotted(double bottom, double mouth) {
    return Outline.of(
        Demo.v(0, 0),
        Demo.v(3, 0),
        Demo.v(3, 2),
        Demo.v(1.5 + mouth, 2),
        Demo.v(1.5 + bottom, 1),
        Demo.v(1.5 - bottom, 1),
        Demo.v(1.5 - mouth, 2),
        Demo.v(0, 2));
  }

  @Test
  void foldDeeperThanThePanelIsRefused() {
    EdgePlan plan =
        EdgePlan.of(EdgeAllowance.hem(1.2), EdgeAllowance.finSeam(0.02), EdgeAllowance.raw());
    assertThatThrownBy(() -> Panel.of(Outline.rectangle(2, 1), PanelSpec.of("P1", plan)))
        .hasMessageContaining("folds beyond the panel");
  }

  @Test
  void marksMustFitTheFace() {
    PanelMarks marks = new PanelMarks("1", List.of("a", "b"), List.of());
    assertThatThrownBy(
            () -> Panel.of(Demo.triangle(1, 2), PanelSpec.of("P1", Demo.PLAN).withMarks(marks)))
        .hasMessage("panel 1: given 2 edge letters, must be none or one for each of the 3 edges");
  }

  @Test
  void badSpecificationsAreNamed() {
    assertThatThrownBy(() -> PanelSpec.of(" ", Demo.PLAN)).hasMessageContaining("panel id");
    assertThatThrownBy(() -> PanelSpec.of("P", Demo.PLAN).times(0))
        .hasMessageContaining("panel count");
    assertThatThrownBy(() -> PanelSpec.of("P", Demo.PLAN).withNotchSpacing(0))
        .hasMessageContaining("notch spacing");
    assertThatThrownBy(() -> PanelSpec.of("P", Demo.PLAN).withMitreLimit(0.9))
        .hasMessageContaining("mitre limit");
    assertThatThrownBy(() -> EdgeAllowance.hem(-0.01)).hasMessageContaining("hem allowance");
    assertThatThrownBy(() -> new EdgeAllowance(EdgeRole.RAW, 0.01))
        .hasMessageContaining("must be 0 m");
  }
}
