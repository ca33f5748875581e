package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Panels on slopes of whole sides, and splices that must keep off corners and openings. */
class PanelByHandTest {

  private static final Offset<Double> CLOSE = within(1e-9);
  private static final EdgeAllowance RAW = EdgeAllowance.raw();
  private static final EdgePlan BARE = EdgePlan.of(RAW, RAW, RAW);
  private static final Outline TRIANGLE = Demo.triangle(6, 4);

  private static PanelSpec spec(EdgeAllowance base, EdgeAllowance seam) {
    return PanelSpec.of("P", EdgePlan.of(base, seam, EdgeAllowance.turnIn(0.05)));
  }

  private static void assertAt(Vector2D v, double x, double y) {
    assertThat(v.distance(Demo.v(x, y))).as("%s at %s, %s", v, x, y).isLessThan(1e-9);
  }

  @Test
  void facesThatTheFormulasHoldFor() {
    EdgeAllowance seam = EdgeAllowance.finSeam(0.04);
    PanelSpec hemmed = spec(EdgeAllowance.hem(0.05), seam);
    assertThat(CutSize.holdsFor(TRIANGLE, hemmed)).isTrue();
    assertThat(CutSize.holdsFor(Demo.trapezoid(6, 4, 0.5), hemmed)).isTrue();
    assertThat(CutSize.holdsFor(Outline.rectangle(2, 3), hemmed)).isTrue();
    assertThat(CutSize.holdsFor(TRIANGLE, spec(EdgeAllowance.lapUnder(0), seam))).isTrue();
    assertThat(CutSize.holdsFor(TRIANGLE, spec(EdgeAllowance.lapUnder(0.1), seam))).isFalse();
    PanelSpec uneven =
        PanelSpec.of(
            "P", new EdgePlan(EdgeAllowance.hem(0.05), seam, RAW, EdgeAllowance.finSeam(0.03)));
    assertThat(CutSize.holdsFor(TRIANGLE, uneven)).isFalse();
    Outline leaningOut = Outline.of(Demo.v(0, 0), Demo.v(2, 0), Demo.v(2.5, 2), Demo.v(-0.5, 2));
    assertThat(CutSize.holdsFor(leaningOut, hemmed)).isFalse();
    Outline crooked = Outline.of(Demo.v(0, 0), Demo.v(5, 0), Demo.v(5, 2), Demo.v(1.2, 1.6));
    assertThat(CutSize.holdsFor(crooked, hemmed)).as("hips of 2 m, tops at 2 and 1.6").isFalse();
    Outline unequal = Outline.of(Demo.v(0, 0), Demo.v(5, 0), Demo.v(5, 2), Demo.v(1, 2));
    assertThat(CutSize.holdsFor(unequal, hemmed)).isFalse();
    Outline five = Outline.of(Demo.v(0, 0), Demo.v(2, 0), Demo.v(2, 1), Demo.v(1, 2), Demo.v(0, 1));
    assertThat(CutSize.holdsFor(five, hemmed)).isFalse();
  }

  /** Base corners of a 7-24-25 triangle: 0.1 / 0.28 beside a fold, twice 0.1 without one. */
  @Test
  void sharpBaseCorners() {
    Outline flat = Demo.triangle(4.8, 0.7);
    EdgeAllowance seam = EdgeAllowance.finSeam(0.1);
    PanelSpec raw = PanelSpec.of("P", EdgePlan.of(RAW, seam, RAW));
    assertThat(CutSize.width(flat, raw)).isCloseTo(5.2, CLOSE);
    assertThat(Panel.of(flat, raw).parts().get(0).cut().bounds().width()).isCloseTo(5.2, CLOSE);
    assertThat(CutSize.width(flat, raw.withMitreLimit(3))).isCloseTo(5.4, CLOSE);
    assertThat(CutSize.width(flat, raw.withMitreLimit(4))).isCloseTo(4.8 + 0.2 / 0.28, CLOSE);
    PanelSpec hemmed = PanelSpec.of("P", EdgePlan.of(EdgeAllowance.hem(0.1), seam, RAW));
    assertThat(CutSize.width(flat, hemmed)).isCloseTo(4.8 + 0.2 / 0.28, CLOSE);
    assertThatThrownBy(() -> CutSize.tip(Demo.trapezoid(6, 4, 0.5), hemmed, Steps.none()))
        .hasMessageContaining("must have three for a tip");
  }

  @Test
  void notchesAndMarksOnSlopes() {
    PanelMarks marks = new PanelMarks("P", List.of("a", "b", "c"), List.of());
    PatternPiece piece =
        Panel.of(TRIANGLE, spec(RAW, EdgeAllowance.finSeam(0.04)).withMarks(marks)).parts().get(0);
    Notch right = piece.notchesOn(1).get(0);
    assertAt(right.onStitch(), 5.7, 0.4);
    assertAt(right.onCut(), 5.732, 0.424);
    Notch left = piece.notchesOn(2).get(0);
    assertAt(left.onStitch(), 0.3, 0.4);
    assertAt(left.onCut(), 0.268, 0.424);
    // Letters 60 mm square off the middles of the hips, upright.
    double slope = Math.atan2(4, 3);
    Mark b = piece.marks().stream().filter(m -> m.text().equals("b")).findFirst().orElseThrow();
    assertAt(b.at(), 4.5 - 0.048, 2 - 0.036);
    assertThat(b.rotation()).isCloseTo(-slope, CLOSE);
    Mark c = piece.marks().stream().filter(m -> m.text().equals("c")).findFirst().orElseThrow();
    assertAt(c.at(), 1.5 + 0.048, 2 - 0.036);
    assertThat(c.rotation()).isCloseTo(slope, CLOSE);
    // Sides that are hemmed are not joined, so nothing on them must match.
    assertThat(Panel.of(TRIANGLE, spec(RAW, EdgeAllowance.hem(0.04))).parts().get(0).notches())
        .isEmpty();
    assertThat(piece.edgeOnFace(2)).contains(2);
    assertThat(piece.edgeOnFace(0)).contains(0);
    assertThat(piece.edgeOnFace(3)).isEmpty();
  }

  /** A door that stands aslant: the text of its ring runs along the ring's first edge. */
  @Test
  void aRingAslant() {
    double turn = Math.atan2(3, 4);
    Outline door = Outline.rectangle(1.2, 0.8).placed(turn, Demo.v(2, 1));
    Panel panel =
        Panel.of(
            Outline.rectangle(4, 4),
            PanelSpec.of("P", BARE)
                .withOpenings(List.of(Opening.of("door", door, 0).withPatch(0.1, 0))));
    Mark label = panel.extras().get(0).marks().get(0);
    assertThat(label.rotation()).isCloseTo(turn, CLOSE);
    // The middle of the door's lower edge, 100 mm out, 45 mm in and half a line up of 15 mm.
    double in = -0.1 + 0.045 + 0.015;
    assertAt(label.at(), 2 + 0.48 - 0.6 * in, 1 + 0.36 + 0.8 * in);
  }

  /** The circle within a triangle of 3, 4 and 5 m is 1 m wide: moved in by half of it, halved. */
  @Test
  void anInset() {
    Outline triangle = Outline.of(Demo.v(0, 0), Demo.v(4, 0), Demo.v(0, 3));
    Outline in = Inset.of("x", triangle, 0.5);
    assertAt(in.vertex(0), 0.5, 0.5);
    assertAt(in.vertex(1), 2.5, 0.5);
    assertAt(in.vertex(2), 0.5, 2);
    assertThatThrownBy(() -> Inset.of("x", triangle, 1.1))
        .hasMessageContaining("is wider than the opening allows");
  }

  @Test
  void whatAPanelSays() {
    Panel panel = Panel.of(TRIANGLE, spec(RAW, EdgeAllowance.finSeam(0)).as(PieceKind.APRON));
    PatternPiece piece = panel.parts().get(0);
    assertThat(piece.kind()).isEqualTo(PieceKind.APRON);
    Panel more = panel.withExtras(List.of(piece));
    assertThat(more.pieces()).containsExactly(piece, piece);
    assertThat(more.clothArea()).isCloseTo(24, CLOSE);
    assertThat(more.parts()).isEqualTo(panel.parts());
    for (PieceKind kind : PieceKind.values()) {
      assertThat(kind.label()).isNotBlank();
    }
    PanelMarks joints = new PanelMarks("P", List.of(), List.of("x", "y"));
    assertThatThrownBy(() -> Panel.of(TRIANGLE, PanelSpec.of("P", BARE).withMarks(joints)))
        .hasMessageContaining("2 joint names");
    // Hips of 3 on 4 stand, so that the top is what lies above; hips of 4 on 3 lie.
    assertThat(piece.upperEdgeLength()).isCloseTo(6, CLOSE);
    PatternPiece cut = Panel.of(Demo.trapezoid(6, 4, 0.5), PanelSpec.of("P", BARE)).parts().get(0);
    assertThat(cut.upperEdgeLength()).isCloseTo(3, CLOSE);
    PatternPiece flat = Panel.of(Demo.triangle(8, 3), PanelSpec.of("P", BARE)).parts().get(0);
    assertThat(flat.upperEdgeLength()).isCloseTo(10, CLOSE);
  }

  @Test
  void holesAndFoldsTurnedOver() {
    Outline fan =
        Outline.of(
            Demo.v(0, 0), Demo.v(1, 0), Demo.v(2, 0), Demo.v(2, 2), Demo.v(1, 2), Demo.v(0, 2));
    Outline vent = Outline.rectangle(0.4, 0.3).placed(0, Demo.v(1.3, 0.5));
    PanelSpec two =
        PanelSpec.of("P", BARE).over(2).withOpenings(List.of(Opening.of("vent", vent, 0.05)));
    PatternPiece turned = Panel.of(fan, two).parts().get(0).turnedOver();
    assertThat(turned.folds())
        .singleElement()
        .satisfies(
            f -> {
              assertAt(f.lower(), -1, 0);
              assertAt(f.upper(), -1, 2);
              assertThat(f.ordinal()).isEqualTo(1);
            });
    PieceHole hole = turned.holes().get(0);
    assertThat(hole.name()).isEqualTo("vent");
    assertThat(hole.finished().bounds().minX()).isCloseTo(-1.7, CLOSE);
    assertThat(hole.cut().bounds().minX()).isCloseTo(-1.65, CLOSE);
    assertThat(hole.cut().area()).isCloseTo(0.3 * 0.2, CLOSE);
  }

  /** Straight on the left, and on the right corners at so many metres from each other. */
  private static Outline bulge(double apart) {
    List<Vector2D> corners = new ArrayList<>(List.of(Demo.v(0, 0), Demo.v(1, 0)));
    for (double y = apart; y < 3.2 - 0.01; y += apart) {
      corners.add(Demo.v(2 - (y - 1.6) * (y - 1.6) * 0.3, y));
    }
    corners.add(Demo.v(1, 3.2));
    corners.add(Demo.v(0, 3.2));
    return new Outline(corners);
  }

  private static Panel spliced(Outline face, SpliceRule rule) {
    return Panel.of(face, PanelSpec.of("P", BARE).withSplices(rule));
  }

  private static List<Double> lines(Panel panel) {
    return panel.parts().stream()
        .map(p -> p.stitch().bounds().minY())
        .filter(y -> y > 0.01)
        .sorted()
        .toList();
  }

  private static double nearest(Panel panel, double lap) {
    double nearest = 10;
    for (double y : lines(panel)) {
      for (Vector2D corner : panel.face().vertices()) {
        nearest = Math.min(nearest, Math.max(y - corner.getY(), corner.getY() - y - lap));
      }
    }
    return nearest;
  }

  /** Twice the widest allowance, here the lap of 0.1 m; half of that where corners are many. */
  @Test
  void levelSplicesKeepOffCorners() {
    Outline house =
        Outline.of(Demo.v(0, 0), Demo.v(2, 0), Demo.v(2, 1.5), Demo.v(1, 3), Demo.v(0, 1.5));
    Panel panel = spliced(house, SpliceRule.of(5, 1.6, 0.1));
    // Two parts would do, but for a line at 1.45 m.
    assertThat(panel.parts()).hasSize(3);
    assertThat(nearest(panel, 0.1)).isGreaterThan(0.2 - 1e-9);
    Panel half = spliced(bulge(0.32), SpliceRule.of(5, 1.2, 0.1));
    assertThat(half.parts()).hasSizeGreaterThan(2);
    assertThat(nearest(half, 0.1)).isGreaterThan(0.1 - 1e-9);
    Panel none = spliced(bulge(0.25), SpliceRule.of(5, 1.2, 0.1));
    assertThat(none.parts()).hasSizeGreaterThan(2);
    assertThat(nearest(none, 0.1)).isLessThan(0.1);
  }

  /** Hemmed sides that lean out dip as far below the base as below a splice: halves stay halves. */
  @Test
  void hemsThatLeanOutDipBelowASplice() {
    Outline face = Outline.of(Demo.v(0.5, 0), Demo.v(1.5, 0), Demo.v(2, 2.4), Demo.v(0, 2.4));
    EdgeAllowance hem = EdgeAllowance.hem(0.06);
    PanelSpec spec = PanelSpec.of("P", new EdgePlan(RAW, hem, RAW, hem));
    Panel panel = Panel.of(face, spec.withSplices(SpliceRule.of(5, 1.3, 0.1)));
    assertThat(panel.parts()).hasSize(2);
    // (2.4 + 0.1) / 2 less the lap: what both take for the dip of 2 w cos counts for neither.
    assertThat(lines(panel).get(0)).isCloseTo(1.15, within(1e-6));
    double dip = 2 * 0.06 * 0.5 / Math.hypot(0.5, 2.4);
    for (PatternPiece part : panel.parts()) {
      assertThat(part.stitch().bounds().minY() - part.cut().bounds().minY())
          .isCloseTo(dip, within(1e-9));
    }
  }

  /** A fold of 0.3 m ends beside the seam of 0.1 m at (0.3 · 0.96 + 0.1) / 0.28 of the corner. */
  @Test
  void uprightSplicesKeepOffTheEndsOfFolds() {
    Outline face = Outline.of(Demo.v(0, 0), Demo.v(10, 0), Demo.v(7.6, 0.7), Demo.v(2.4, 0.7));
    EdgePlan plan = EdgePlan.of(RAW, EdgeAllowance.finSeam(0.1), EdgeAllowance.turnIn(0.3));
    Panel panel = Panel.of(face, PanelSpec.of("P", plan).withSplices(SpliceRule.of(4.2, 5, 0.05)));
    double off = (0.3 * 0.96 + 0.1) / 0.28;
    assertThat(panel.parts()).hasSizeGreaterThan(2);
    for (PatternPiece part : panel.parts()) {
      double x = part.stitch().bounds().minX();
      if (x > 0.01) {
        for (double corner : new double[] {2.4, 7.6}) {
          assertThat(Math.max(x - corner, corner - x - 0.05)).isGreaterThan(off - 1e-9);
        }
      }
    }
  }

  /** An opening pushes the upright splice of its own band only. */
  @Test
  void uprightSplicesKeepOffOpenings() {
    Outline vent = Outline.rectangle(0.2, 0.3).placed(0, Demo.v(1.4, 0.3));
    PanelSpec spec =
        PanelSpec.of("P", BARE)
            .withOpenings(List.of(Opening.of("vent", vent, 0)))
            .withSplices(SpliceRule.of(1.6, 1.6, 0.1));
    Panel panel = Panel.of(Outline.rectangle(3, 3), spec);
    // At 1.45 m it would cut the vent, so three parts take (3 + 0.1 + 0.1) / 3 each.
    double[] left = {0, 3.2 / 3 - 0.1, 6.4 / 3 - 0.2};
    for (int i = 0; i < 3; i++) {
      assertThat(panel.parts().get(i).stitch().bounds().minX()).isCloseTo(left[i], within(1e-6));
    }
    List<PatternPiece> top =
        panel.parts().stream().filter(p -> p.stitch().bounds().minY() > 1.9).toList();
    assertThat(top).hasSize(2);
    assertThat(top.get(1).stitch().bounds().minX()).isCloseTo(1.45, within(1e-6));
    assertThat(panel.parts().stream().mapToInt(p -> p.holes().size()).sum()).isEqualTo(1);
  }

  @Test
  void splicesAreNamedInOrder() {
    Panel panel = spliced(Outline.rectangle(3, 3), SpliceRule.of(1.6, 1.6, 0.1));
    assertThat(panel.splices().stream().map(s -> s.under() + " " + s.over() + " " + s.joint()))
        .containsExactly(
            "P-1 P-2 P/V1.1",
            "P-1 P-3 P/H1",
            "P-1 P-4 P/H1",
            "P-2 P-4 P/H1",
            "P-2 P-5 P/H1",
            "P-3 P-4 P/V2.1",
            "P-3 P-6 P/H2",
            "P-4 P-5 P/V2.2",
            "P-4 P-6 P/H2",
            "P-4 P-7 P/H2",
            "P-5 P-7 P/H2",
            "P-6 P-7 P/V3.1");
    assertThat(panel.parts()).extracting(PatternPiece::kind).containsOnly(PieceKind.PANEL_PART);
    PanelSpec skirt =
        PanelSpec.of("S", BARE).as(PieceKind.SKIRT).withSplices(SpliceRule.of(5, 1.6, 0.1));
    assertThat(Panel.of(Outline.rectangle(2, 3), skirt).parts())
        .extracting(PatternPiece::kind)
        .containsOnly(PieceKind.SKIRT);
    // Laps of 0.2 m: three of them are more than a quarter of the cloth, 0.4 m.
    Panel wide = spliced(Outline.rectangle(3, 3), SpliceRule.of(1.6, 1.6, 0.2));
    List<Double> apart = new ArrayList<>();
    for (PatternPiece part : wide.parts()) {
      double x = part.stitch().bounds().minX();
      if (x > 0.01 && x < 1.5) {
        apart.add(x);
      }
    }
    assertThat(apart.get(0) - apart.get(1)).isCloseTo(0.4, within(1e-6));
    // Two parts of much cloth are few, however large.
    assertThat(spliced(Outline.rectangle(40, 10), SpliceRule.of(45, 5.5, 0.1)).parts()).hasSize(2);
  }

  @Test
  void cuttingIntoPartsCanBeCancelled() {
    Cancellation cancellation = new Cancellation();
    cancellation.cancel();
    PanelSpec spec = PanelSpec.of("P", BARE).withSplices(SpliceRule.of(5, 1.6, 0.1));
    assertThatThrownBy(() -> Panel.of(Outline.rectangle(2, 3), spec, cancellation))
        .isInstanceOf(CancellationException.class);
    assertThat(Panel.of(Outline.rectangle(2, 1.5), spec, cancellation).parts()).hasSize(1);
  }
}
