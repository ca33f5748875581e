package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Cut lines, marks and cones on triangles of whole sides, where a pencil gives every corner. */
class PatternByHandTest {

  private static final EdgeAllowance RAW = EdgeAllowance.raw();
  private static final EdgePlan BARE = EdgePlan.of(RAW, RAW, RAW);

  private static PatternPiece piece(Outline face, PanelSpec spec) {
    return Panel.of(face, spec).parts().get(0);
  }

  private static void assertCorners(Outline outline, double... xy) {
    assertThat(outline.size()).isEqualTo(xy.length / 2);
    for (int i = 0; i < xy.length / 2; i++) {
      assertAt(outline.vertex(i), xy[2 * i], xy[2 * i + 1]);
    }
  }

  private static void assertAt(Vector2D v, double x, double y) {
    assertThat(v.distance(Vector2D.of(x, y))).as("%s at %s, %s", v, x, y).isLessThan(1e-9);
  }

  private static List<EdgeAllowance> laps(double... widths) {
    return java.util.Arrays.stream(widths).mapToObj(EdgeAllowance::lapOver).toList();
  }

  /** Half of the face is a 3-4-5 triangle: a seam of 40 mm takes 40 / 0.8 = 50 mm of the base. */
  @Test
  void aHemmedTriangle() {
    EdgePlan plan =
        EdgePlan.of(EdgeAllowance.hem(0.08), EdgeAllowance.finSeam(0.04), EdgeAllowance.raw());
    PatternPiece piece = piece(Demo.triangle(6, 4), PanelSpec.of("P", plan));
    // The hem's ends mirror the hips: 80 mm down is 60 mm in. The tip is 40 / 0.6 above.
    assertCorners(piece.cut(), -0.05, 0, 0.01, -0.08, 5.99, -0.08, 6.05, 0, 3, 4 + 0.04 / 0.6);
    assertThat(piece.cutEdgeOwners()).containsExactly(CutLine.CORNER, 0, CutLine.CORNER, 1, 2);
    // Half the sum of both parallel sides times the depth, and the triangle above them.
    assertThat(piece.clothArea())
        .isCloseTo((5.98 + 6.1) / 2 * 0.08 + 6.1 * (4 + 0.04 / 0.6) / 2, within(1e-9));
  }

  /** Half of the face is a 7-24-25 triangle: the mitre of 50 mm would reach 179 mm. */
  @Test
  void aSharpTipIsCutOffSquareAtTwiceTheSeam() {
    EdgePlan plan =
        EdgePlan.of(EdgeAllowance.raw(), EdgeAllowance.finSeam(0.05), EdgeAllowance.raw());
    PatternPiece piece = piece(Demo.triangle(1.4, 2.4), PanelSpec.of("P", plan));
    double half = (0.05 / 0.28 - 0.1) * 7 / 24;
    double side = 0.05 / 0.96;
    assertCorners(piece.cut(), -side, 0, 1.4 + side, 0, 0.7 + half, 2.5, 0.7 - half, 2.5);
    assertThat(piece.cutEdgeOwners()).containsExactly(0, 1, CutLine.CORNER, 2);
  }

  /** Beside an inward corner, and where an edge goes on straight with another allowance. */
  @Test
  void inwardAndStraightCorners() {
    Outline angle =
        Outline.of(
            Demo.v(0, 0), Demo.v(2, 0), Demo.v(2, 1), Demo.v(1, 1), Demo.v(1, 2), Demo.v(0, 2));
    CutLine round = CutLine.around("angle", angle, laps(0.1, 0.1, 0.1, 0.1, 0.1, 0.1), 2);
    assertCorners(round.outline(), -0.1, -0.1, 2.1, -0.1, 2.1, 1.1, 1.1, 1.1, 1.1, 2.1, -0.1, 2.1);
    Outline straight =
        Outline.of(Demo.v(0, 0), Demo.v(1, 0), Demo.v(2, 0), Demo.v(2, 1), Demo.v(0, 1));
    CutLine stepped = CutLine.around("step", straight, laps(0.1, 0.2, 0, 0, 0), 2);
    assertCorners(stepped.outline(), 0, -0.1, 1, -0.1, 1, -0.2, 2, -0.2, 2, 1, 0, 1);
    assertThat(stepped.owners()).containsExactly(0, CutLine.CORNER, 1, 2, 3, 4);
    CutLine even = CutLine.around("even", straight, laps(0.1, 0.1, 0, 0, 0), 2);
    assertCorners(even.outline(), 0, -0.1, 1, -0.1, 2, -0.1, 2, 1, 0, 1);
  }

  /** A turn of a 7-24-25 triangle: too blunt for a mitre of one allowance, each ends square. */
  @Test
  void aBluntCornerWithOneAllowanceEndsSquare() {
    Outline face =
        Outline.of(Demo.v(0, 0), Demo.v(2, 0), Demo.v(2.96, 0.28), Demo.v(2, 2), Demo.v(0, 2));
    CutLine cut = CutLine.around("blunt", face, laps(0, 0.1, 0, 0, 0), 2);
    // The corner turns by asin 0.28: a mitre of 0.1 / 0.28 is more than twice the allowance.
    assertAt(cut.outline().vertex(1), 2, 0);
    assertAt(cut.outline().vertex(2), 2 + 0.028, -0.096);
    assertThat(cut.owners().subList(0, 3)).containsExactly(0, CutLine.CORNER, 1);
    double angle = Math.PI - Math.asin(0.28);
    assertThat(CutLine.endsSquare(angle, 0, 0.1, 2)).isTrue();
    assertThat(CutLine.endsSquare(angle, 0, 0.1, 4)).as("a limit that lets it reach").isFalse();
    assertThat(CutLine.endsSquare(angle, 0.1, 0.1, 2)).as("two alike meet close by").isFalse();
    assertThat(CutLine.endsSquare(Math.toRadians(20), 0.1, 0.1, 2)).as("a sharp one").isFalse();
  }

  @Test
  void aFoldMustEndOnThePanel() {
    EdgePlan deep = EdgePlan.of(EdgeAllowance.hem(1), EdgeAllowance.finSeam(0), RAW);
    assertThatThrownBy(() -> piece(Outline.rectangle(3, 1), PanelSpec.of("P", deep)))
        .hasMessageContaining("must be less than 1.000 m");
    EdgePlan less = EdgePlan.of(EdgeAllowance.hem(0.99), EdgeAllowance.finSeam(0), RAW);
    assertThat(piece(Outline.rectangle(3, 1), PanelSpec.of("P", less)).clothArea())
        .isCloseTo(3 * 1.99, within(1e-9));
  }

  /** A slot of 0.2 m: allowances of 0.11 m from both sides leave less than nothing of its foot. */
  @Test
  void anEdgeThatIsEatenUpIsNamed() {
    Outline slot =
        Outline.of(
            Demo.v(0, 0),
            Demo.v(3, 0),
            Demo.v(3, 2),
            Demo.v(1.6, 2),
            Demo.v(1.6, 1),
            Demo.v(1.4, 1),
            Demo.v(1.4, 2),
            Demo.v(0, 2));
    assertThatThrownBy(() -> CutLine.around("slot", slot, laps(0, 0, 0, 0.11, 0, 0.11, 0, 0), 2))
        .hasMessageContaining("of edge 5 makes the cut line cross itself")
        .hasMessageContaining("cut edge would be -20.0 mm long")
        .hasMessageContaining("edge 4 0.11 m, edge 5 0 m");
    assertThat(CutLine.around("slot", slot, laps(0, 0, 0, 0.09, 0, 0.09, 0, 0), 2).outline().area())
        .isCloseTo(6 - 0.02, within(1e-9));
  }

  /** Text of three twentieths of the mean width, 2 A / P, and 30 mm at most. */
  @Test
  void marksOfASmallRectangle() {
    PanelMarks marks =
        new PanelMarks("7", List.of("a", "b", "c", "d"), List.of("J1", "J2", "J3", "J4"));
    PatternPiece small =
        piece(Outline.rectangle(0.2, 0.1), PanelSpec.of("P", BARE).withMarks(marks));
    // 0.15 · 2 · 0.02 / 0.6 = 10 mm: letters 20 mm off the edges, joints 40 mm.
    assertMark(small, Mark.Kind.PIECE, "7", 0.1, 0.06, 0, 0.01);
    assertMark(small, Mark.Kind.SIDE, "GOOD SIDE", 0.1, 0.04, 0, 0.01);
    assertMark(small, Mark.Kind.EDGE, "a", 0.1, 0.02, 0, 0.01);
    assertMark(small, Mark.Kind.JOINT, "J1", 0.1, 0.04, 0, 0.01);
    assertMark(small, Mark.Kind.EDGE, "b", 0.18, 0.05, Math.PI / 2, 0.01);
    assertMark(small, Mark.Kind.EDGE, "c", 0.1, 0.08, 0, 0.01);
    assertMark(small, Mark.Kind.JOINT, "J3", 0.1, 0.06, 0, 0.01);
    assertMark(small, Mark.Kind.EDGE, "d", 0.02, 0.05, Math.PI / 2, 0.01);
    assertThat(small.marks()).hasSize(10).noneMatch(m -> m.kind() == Mark.Kind.ROLE);
    // On an edge of more than 24 letter heights the texts stand side by side, at its thirds.
    PatternPiece large =
        piece(Outline.rectangle(1.5, 0.5), PanelSpec.of("P", BARE).withMarks(marks));
    assertMark(large, Mark.Kind.EDGE, "a", 0.75, 0.06, 0, 0.03);
    assertMark(large, Mark.Kind.JOINT, "J1", 0.5, 0.06, 0, 0.03);
    assertMark(large, Mark.Kind.ROLE, RAW.role().label(), 1, 0.06, 0, 0.03);
    assertMark(large, Mark.Kind.JOINT, "J2", 1.5 - 0.12, 0.25, Math.PI / 2, 0.03);
    assertThat(large.marks()).hasSize(12);
    assertThat(piece(Outline.rectangle(1, 1), PanelSpec.of("P", BARE)).marks())
        .extracting(Mark::kind)
        .containsOnly(Mark.Kind.PIECE, Mark.Kind.SIDE, Mark.Kind.ROLE);
  }

  private static void assertMark(
      PatternPiece piece, Mark.Kind kind, String text, double x, double y, double turn, double h) {
    assertThat(piece.marks())
        .as("%s %s", kind, text)
        .anySatisfy(
            m -> {
              assertThat(m.kind()).isEqualTo(kind);
              assertThat(m.text()).isEqualTo(text);
              assertAt(m.at(), x, y);
              assertThat(m.rotation()).isCloseTo(turn, within(1e-9));
              assertThat(m.height()).isCloseTo(h, within(1e-9));
            });
  }

  /** On a strip a label as long as the strip is wide stands upright; on a broad piece it lies. */
  @Test
  void labelsOnStripsStandUpright() {
    PanelMarks marks = PanelMarks.of("0123456789");
    PanelSpec spec = PanelSpec.of("P", BARE).withMarks(marks);
    double h = 0.15 * 2 * 0.1 / 2.2;
    PatternPiece strip = piece(Outline.rectangle(0.1, 1), spec);
    assertMark(strip, Mark.Kind.PIECE, "0123456789", 0.05 - h, 0.5, Math.PI / 2, h);
    assertMark(strip, Mark.Kind.SIDE, "GOOD SIDE", 0.05 + h, 0.5, Math.PI / 2, h);
    PatternPiece lying = piece(Outline.rectangle(1, 0.1), spec);
    assertMark(lying, Mark.Kind.PIECE, "0123456789", 0.5, 0.05 + h, 0, h);
    // Ten letters of 21 mm and 180 mm beside them need 0.39 m.
    PatternPiece wide = piece(Outline.rectangle(0.4, 2), spec);
    assertMark(wide, Mark.Kind.PIECE, "0123456789", 0.2, 1.03, 0, 0.03);
    PatternPiece slim = piece(Outline.rectangle(0.38, 2), spec);
    assertMark(slim, Mark.Kind.PIECE, "0123456789", 0.16, 1, Math.PI / 2, 0.03);
  }

  /** The label keeps three letter heights off a hole and off the edges, or goes elsewhere. */
  @Test
  void labelsKeepOffHoles() {
    Outline vent = Outline.rectangle(0.4, 0.4).placed(0, Demo.v(0.8, 0.8));
    PatternPiece holed =
        piece(
            Outline.rectangle(2, 2),
            PanelSpec.of("P", BARE).withOpenings(List.of(Opening.of("vent", vent, 0))));
    // Three tenths of the way from the middle to the first corner.
    assertMark(holed, Mark.Kind.PIECE, "P", 0.7, 0.73, 0, 0.03);
    // A ring 0.1 m wide: 0.15 · 2 · 0.44 / 8.8 = 15 mm, so 45 mm off the middle of the first edge.
    Outline door = Outline.rectangle(1.2, 0.8).placed(0, Demo.v(0.4, 0.6));
    Panel panel =
        Panel.of(
            Outline.rectangle(2, 2),
            PanelSpec.of("P", BARE)
                .withOpenings(List.of(Opening.of("door", door, 0).withPatch(0.1, 0))));
    PatternPiece ring = panel.extras().get(0);
    assertThat(ring.finishedArea()).isCloseTo(1.4 - 0.96, within(1e-9));
    assertMark(ring, Mark.Kind.PIECE, "P door patch", 1, 0.5 + 0.045 + 0.015, 0, 0.015);
    assertMark(ring, Mark.Kind.SIDE, "GOOD SIDE", 1, 0.5 + 0.045 - 0.015, 0, 0.015);
  }

  /** Three to four: the slant of 0.3 and 0.4 m is 0.5 m, the sector three fifths of a circle. */
  @Test
  void aConeInTwoSectors() {
    ConeCap cap = ConeCap.of(0.3, 0.4);
    assertThat(cap.slant()).isCloseTo(0.5, within(1e-12));
    assertThat(cap.area()).isCloseTo(Math.PI * 0.15, within(1e-12));
    assertThat(cap.withHole(0.15).area()).isCloseTo(0.75 * Math.PI * 0.15, within(1e-12));
    EdgeAllowance hem = EdgeAllowance.hem(0.02);
    PatternPiece half = cap.piece("cap", 2, 0.03, hem, RAW);
    double turn = 0.3 * Math.PI;
    int rim = half.edges().size() - 2;
    // The fewest chords within 0.2 mm of the arc.
    assertThat(0.5 * (1 - Math.cos(turn / rim))).isLessThanOrEqualTo(0.2e-3);
    assertThat(0.5 * (1 - Math.cos(turn / (rim - 1)))).isGreaterThan(0.2e-3);
    assertAt(half.stitch().vertex(0), -0.5 * Math.sin(turn), 0.5 - 0.5 * Math.cos(turn));
    assertAt(half.stitch().vertex(rim), 0.5 * Math.sin(turn), 0.5 - 0.5 * Math.cos(turn));
    assertAt(half.stitch().vertex(rim + 1), 0, 0.5);
    assertThat(half.edges().subList(0, rim))
        .allSatisfy(e -> assertThat(e.allowance()).isEqualTo(hem));
    assertThat(half.edges().get(rim).allowance()).isEqualTo(EdgeAllowance.lapOver(0));
    assertThat(half.edges().get(rim + 1).allowance()).isEqualTo(EdgeAllowance.lapUnder(0.03));
    PatternPiece holed = cap.withHole(0.15).piece("cap", 2, 0.03, hem, EdgeAllowance.turnIn(0.01));
    assertThat(Stream.of(EdgeRole.HEM, EdgeRole.LAP_OVER, EdgeRole.TURN_IN, EdgeRole.LAP_UNDER))
        .allMatch(r -> holed.edges().stream().anyMatch(e -> e.allowance().role() == r));
    assertAt(holed.stitch().vertex(rim + 1), 0.25 * Math.sin(turn), 0.5 - 0.25 * Math.cos(turn));
  }

  /** A tiny or a hardly curved rim still has two chords to a sector. */
  @Test
  void aSmallArcHasTwoChords() {
    for (double size : new double[] {1e-4, 1e-5}) {
      PatternPiece tiny = ConeCap.of(3 * size, 4 * size).piece("cap", 2, 0, RAW, RAW);
      assertThat(tiny.edges()).hasSize(4);
    }
  }

  @Test
  void aCapRestsOnItsHips() {
    // Hips that rise 3 on 4: cos 0.8, tan 0.75.
    ConeCap cap = ConeCap.over(0.4, Math.atan(0.75), 0.25);
    assertThat(cap.radius()).isCloseTo(0.6, within(1e-12));
    assertThat(cap.height()).isCloseTo(0.45, within(1e-12));
    assertThat(ConeCap.over(0.4, Math.atan(0.75), 0).radius()).isCloseTo(0.4, within(1e-12));
    assertThatThrownBy(() -> ConeCap.over(0, 1, 0.1)).hasMessageContaining("circumradius");
    assertThatThrownBy(() -> ConeCap.over(1, 1, -0.1)).hasMessageContaining("cap overlap");
    assertThatThrownBy(() -> ConeCap.of(1, 1).withHole(-0.1)).hasMessageContaining("cone cap hole");
    assertThatThrownBy(() -> ConeCap.of(1, 0)).hasMessageContaining("cone cap height");
    assertThatThrownBy(() -> ConeCap.of(1, 1).piece("cap", 0, 0, RAW, RAW))
        .hasMessageContaining("cone cap parts");
    assertThatThrownBy(() -> ConeCap.of(1, 1).piece(" ", 2, 0, RAW, RAW))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** A door of 0.8 by 1.5 m that is cut 30 mm short and folded back. */
  @Test
  void anOpeningKeepsItsDistances() {
    Outline face = Outline.rectangle(3, 4);
    EdgePlan plan =
        EdgePlan.of(EdgeAllowance.hem(0.05), EdgeAllowance.finSeam(0.04), EdgeAllowance.turnIn(0));
    // Patch and flap reach 0.1 and 0.2 m, so the door may stand 0.25 m above the base.
    for (double y : new double[] {0.251, 0.249}) {
      Outline door = Outline.rectangle(0.8, 1.5).placed(0, Demo.v(1, y));
      Opening opening = Opening.of("door", door, 0.03).withPatch(0.1, 0.01).withFlap(0.2, 0.02);
      assertThat(opening.margin()).isEqualTo(0.2);
      PanelSpec spec = PanelSpec.of("P", plan).withOpenings(Collections.nCopies(1, opening));
      if (y > 0.25) {
        Panel panel = Panel.of(face, spec.times(3));
        assertThat(panel.parts().get(0).holes().get(0).cut().area())
            .isCloseTo(0.74 * 1.44, within(1e-9));
        assertThat(panel.extras()).extracting(PatternPiece::count).containsExactly(3, 3);
        assertThat(panel.extras().get(1).cut().area()).isCloseTo(1.24 * 1.94, within(1e-9));
        assertThat(panel.clothArea())
            .isCloseTo(3.08 * 4.05 + 1.02 * 1.72 + 1.24 * 1.94, within(1e-9));
      } else {
        assertThatThrownBy(() -> Panel.of(face, spec))
            .hasMessageContaining("given 49.0 mm")
            .hasMessageContaining("must be 50.0 mm or more");
      }
    }
    assertThat(Opening.of("vent", face, 0.04).margin()).isEqualTo(0.04);
    assertThat(Opening.of("vent", face, 0.04).withPatch(0.1, 0).margin()).isEqualTo(0.1);
  }
}
