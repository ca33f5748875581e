package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Splice lines, parts, notches and pieces turned over, divided with a pencil. */
class SpliceByHandTest {

  private static final Offset<Double> CLOSE = within(1e-9);
  private static final EdgeAllowance RAW = EdgeAllowance.raw();
  private static final EdgePlan BARE = EdgePlan.of(RAW, RAW, RAW);

  private static Panel spliced(Outline face, SpliceRule rule) {
    return Panel.of(face, PanelSpec.of("P", BARE).withSplices(rule));
  }

  private static void assertLines(List<Double> lines, double... expected) {
    assertThat(lines).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      assertThat(lines.get(i)).isCloseTo(expected[i], CLOSE);
    }
  }

  private static Stations stations(double end, double size, List<double[]> zones) {
    return new Stations(0, end, 0.1, 0.2, size, 0.1, 0, 0, 0.2, zones);
  }

  /** 10 m from cloth of 3 m: four pieces, and each takes (10 + 0.1 + 0.2 + 3 laps) / 4. */
  @Test
  void piecesTakeEquallyMuchCloth() {
    assertLines(stations(10, 3, List.of()).lines("w", 0, 0), 2.45, 5.0, 7.55);
    // The first is kept short by the shift, the others follow at the same distance.
    assertLines(stations(10, 3, List.of()).lines("w", 0.3, 0.3), 2.15, 4.7, 7.25);
    // What is kept short by half a metre leaves more than the cloth for the last.
    assertLines(stations(10, 3, List.of()).lines("w", 0.5, 0.5), 1.95, 4.5, 7.05, 9.3);
    assertThat(stations(2.69, 3, List.of()).lines("w", 0, 0)).isEmpty();
    assertLines(stations(2.71, 3, List.of()).lines("w", 0, 0), (2.71 + 0.4) / 2 - 0.2);
    // Starting elsewhere moves all lines along.
    assertLines(
        new Stations(5, 15, 0.1, 0.2, 3, 0.1, 0, 0, 0.2, List.of()).lines("w", 0, 0),
        7.45,
        10.0,
        12.55);
  }

  /** Folds that reach 50 mm past the lap and 20 mm back: (10.3 + 3 · 0.17) / 4 each. */
  @Test
  void foldsBesideASpliceTakeClothToo() {
    assertLines(
        new Stations(0, 10, 0.1, 0.2, 3, 0.1, 0.05, 0.02, 0.2, List.of()).lines("w", 0, 0),
        2.4525,
        4.985,
        7.5175);
  }

  @Test
  void linesKeepOffZones() {
    // 5.0 is too near: lines that just clear the zone take 2.675 m of cloth.
    assertLines(
        stations(10, 3, List.of(new double[] {4.95, 5.05})).lines("w", 0, 0), 2.475, 5.05, 7.625);
    // A zone just beyond the lap does not matter.
    assertLines(
        stations(10, 3, List.of(new double[] {5.11, 5.2}, new double[] {4.8, 4.99}))
            .lines("w", 0, 0),
        2.45,
        5.0,
        7.55);
    // Pushed back by one zone into another that comes before it in the list.
    List<double[]> both = List.of(new double[] {4, 4.95}, new double[] {5, 6});
    assertLines(new Stations(0, 8, 0, 0, 5.6, 0.1, 0, 0, 0.2, both).lines("w", 0, 0), 3.9);
    assertThatThrownBy(() -> stations(10, 3, List.of(new double[] {0, 2.9})).lines("panel X", 0, 0))
        .hasMessageContaining("panel X: no room for a splice beyond 0.000 m")
        .hasMessageContaining("given cloth of 3 m");
  }

  @Test
  void theFirstPieceHoldsLapAndShift() {
    // Halves of 1.65 m hold no shift of 1.2 m: three laps and it, or a lap and half as much again.
    Stations plain = new Stations(0, 3.2, 0, 0, 3, 0.1, 0, 0, 0.2, List.of());
    assertLines(plain.lines("w", 0, 0), 1.55);
    assertLines(plain.lines("w", 0, 1.2), 1.8);
    assertLines(plain.lines("w", 1.2, 1.2), 0.6);
    Stations hemmed = new Stations(0, 3.2, 0.5, 0, 3, 0.1, 0, 0, 0.2, List.of());
    assertLines(hemmed.lines("w", 0, 1.2), 1.4);
    // The last piece keeps its least length.
    assertLines(new Stations(0, 3.2, 0, 0, 3.1, 0.1, 0, 0, 2, List.of()).lines("w", 0, 0), 1.2);
    assertThat(plain.isTight(2.69)).isFalse();
    assertThat(plain.isTight(2.71)).isTrue();
    assertThat(hemmed.isTight(2.19)).isFalse();
    assertThat(hemmed.isTight(2.21)).isTrue();
    Stations folded = new Stations(0, 3.2, 0, 0, 3, 0.1, 0.4, 0, 0.2, List.of());
    assertThat(folded.isTight(2.29)).isFalse();
    assertThat(folded.isTight(2.31)).isTrue();
  }

  /** 2 by 3 m from cloth of 1.6 m: two parts of (3 + 0.1) / 2. */
  @Test
  void twoBands() {
    Panel panel = spliced(Outline.rectangle(2, 3), SpliceRule.of(5, 1.6, 0.1));
    assertThat(panel.splices())
        .singleElement()
        .satisfies(
            s -> {
              assertThat(s.joint()).isEqualTo("P/H1");
              assertThat(s.under()).isEqualTo("P-1");
              assertThat(s.over()).isEqualTo("P-2");
              assertThat(s.length()).isCloseTo(2, CLOSE);
              assertThat(s.lap()).isEqualTo(0.1);
              assertThat(s.upright()).isFalse();
            });
    assertThat(panel.parts().get(0).clothArea()).isCloseTo(2 * 1.55, within(1e-6));
    assertThat(panel.parts().get(1).clothArea()).isCloseTo(2 * 1.55, within(1e-6));
    assertThat(panel.parts().get(0).finishedArea()).isCloseTo(2 * 1.45, within(1e-6));
    Panel beside = spliced(Outline.rectangle(3, 2), SpliceRule.of(1.6, 5, 0.1));
    assertThat(beside.splices())
        .singleElement()
        .satisfies(
            s -> {
              assertThat(s.joint()).isEqualTo("P/V1.1");
              assertThat(s.under()).isEqualTo("P-1");
              assertThat(s.length()).isCloseTo(2, CLOSE);
              assertThat(s.upright()).isTrue();
            });
    assertThat(beside.parts().get(0).clothArea()).isCloseTo(2 * 1.55, within(1e-6));
  }

  /** Bands of 1 m, as a lap may rise 0.1 m beside upright splices; these 0.3 m apart by bands. */
  @Test
  void bandsAndColumns() {
    Panel panel = spliced(Outline.rectangle(3, 3), SpliceRule.of(1.6, 1.6, 0.1));
    assertThat(panel.parts()).hasSize(7);
    assertLines(
        panel.parts().stream().map(p -> p.stitch().bounds().minY()).distinct().toList(), 0, 1, 2);
    double[] left = {0, 1.45, 0, 1.15, 2.5, 0, 1.45};
    for (int i = 0; i < 7; i++) {
      assertThat(panel.parts().get(i).stitch().bounds().minX()).isCloseTo(left[i], within(1e-6));
    }
    double[] level = {1.15, 0.3, 1.05, 0.5, 1.15, 0.3, 1.05, 0.5};
    List<Splice> bands = panel.splices().stream().filter(s -> !s.upright()).toList();
    assertThat(bands).hasSize(8);
    List<Double> lengths = new ArrayList<>();
    bands.forEach(s -> lengths.add((double) Math.round(s.length() * 1e5) / 1e5));
    assertThat(lengths)
        .containsExactlyInAnyOrder(Arrays.stream(level).boxed().toArray(Double[]::new));
    assertThat(panel.splices().stream().filter(Splice::upright))
        .hasSize(4)
        .allSatisfy(s -> assertThat(s.length()).isCloseTo(1, within(1e-6)));
    assertThat(panel.parts().stream().mapToDouble(PatternPiece::finishedArea).sum())
        .isCloseTo(9, CLOSE);
  }

  @Test
  void whatFitsIsNotSplicedAndWhatIsTooMuchIsRefused() {
    Outline face = Outline.rectangle(2, 1);
    assertThat(spliced(face, SpliceRule.of(2, 1, 0.1)).parts()).hasSize(1);
    assertThat(spliced(face, SpliceRule.of(1.999, 5, 0.1)).parts()).hasSize(2);
    assertThat(spliced(face, SpliceRule.of(5, 0.999, 0.1)).parts()).hasSize(2);
    // 1001 m2 of cloth of 1 m2.
    assertThatThrownBy(() -> spliced(Outline.rectangle(100.1, 10), SpliceRule.of(1, 1, 0.01)))
        .hasMessageContaining("which takes at least 1001 parts");
    assertThatThrownBy(
            () ->
                spliced(
                    Outline.of(
                        Demo.v(0, 0), Demo.v(3, 0), Demo.v(3, 3), Demo.v(1, 1), Demo.v(0, 3)),
                    SpliceRule.of(2, 2, 0.1)))
        .hasMessageContaining("an inward corner");
    assertThatThrownBy(
            () ->
                Panel.of(
                    Outline.rectangle(2, 3),
                    PanelSpec.of("P", BARE).over(2).withSplices(SpliceRule.of(5, 1.6, 0.1))))
        .hasMessageContaining("must be cut whole");
  }

  @Test
  void staggersOfNeighbours() {
    SpliceRule rule = SpliceRule.of(2, 1.6, 0.1);
    assertThat(rule.staggered(1, 5, 0.2).shift()).isZero();
    assertThat(rule.staggered(2, 5, 0.2).shift()).isEqualTo(0.2);
    assertThat(rule.staggered(3, 5, 0.2).shift()).isZero();
    assertThat(rule.staggered(5, 5, 0.2).shift()).as("odd, beside the first").isEqualTo(0.4);
    assertThat(rule.staggered(4, 4, 0.2).shift()).isEqualTo(0.2);
    assertThat(rule.staggered(1, 4, 0.2).greatestShift()).isEqualTo(0.4);
    // A sixth of 1.5 m.
    assertThatThrownBy(() -> rule.staggered(1, 5, 0.2501)).hasMessageContaining("0.250 m");
    assertThat(rule.staggered(1, 5, 0.2499).stagger()).isEqualTo(0.2499);
    assertThatThrownBy(() -> rule.staggered(1, 5, -0.1)).hasMessageContaining("splice stagger");
    assertThatThrownBy(() -> rule.staggered(1, 2, 0.1)).hasMessageContaining("faces: given 2");
    assertThatThrownBy(() -> SpliceRule.of(1, 0, 0.1)).hasMessageContaining("cloth height");
    assertThatThrownBy(() -> SpliceRule.of(1, 3, 0.51)).hasMessageContaining("splice lap");
    assertThat(SpliceRule.of(1, 3, 0.49).lap()).isEqualTo(0.49);
  }

  private static Part square() {
    List<Part.Side> sides = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      sides.add(new Part.Side(i, "", "", RAW));
    }
    return new Part(Outline.rectangle(2, 2).vertices(), sides);
  }

  @Test
  void aPartIsCutAlongALine() {
    Part.Side fresh = new Part.Side(-1, "", "J", RAW);
    Part left = square().leftOf(Demo.v(1, 0), Demo.v(0, 1), fresh);
    assertThat(left.corners())
        .containsExactly(Demo.v(0, 0), Demo.v(1, 0), Demo.v(1, 2), Demo.v(0, 2));
    assertThat(left.sides()).extracting(Part.Side::faceEdge).containsExactly(0, -1, 2, 3);
    Part right = square().leftOf(Demo.v(1, 0), Demo.v(0, -1), fresh);
    assertThat(right.corners())
        .containsExactly(Demo.v(1, 0), Demo.v(2, 0), Demo.v(2, 2), Demo.v(1, 2));
    assertThat(right.sides()).extracting(Part.Side::faceEdge).containsExactly(0, 1, 2, -1);
    // From corner to corner.
    Part half = square().leftOf(Demo.v(0, 0), Demo.v(1, 1), fresh);
    assertThat(half.corners()).containsExactly(Demo.v(0, 0), Demo.v(2, 2), Demo.v(0, 2));
    assertThat(half.sides()).extracting(Part.Side::faceEdge).containsExactly(-1, 2, 3);
    Part quarter = square().leftOf(Demo.v(0.5, 0), Demo.v(0, 1), fresh);
    assertThat(quarter.outline().area()).isCloseTo(1, CLOSE);
  }

  /** Two rectangles side by side: the fold goes up between them, notches stand on both hips. */
  @Test
  void twoFacesInOnePiece() {
    Outline fan =
        Outline.of(
            Demo.v(0, 0), Demo.v(1, 0), Demo.v(2, 0), Demo.v(2, 2), Demo.v(1, 2), Demo.v(0, 2));
    EdgePlan seams = EdgePlan.of(RAW, EdgeAllowance.finSeam(0.04), RAW);
    PanelMarks named = new PanelMarks("P", List.of(), List.of(), List.of("hip 3"));
    Panel panel = Panel.of(fan, PanelSpec.of("P", seams).over(2).withMarks(named));
    PatternPiece piece = panel.parts().get(0);
    assertThat(piece.folds()).containsExactly(new Fold(1, "hip 3", Demo.v(1, 0), Demo.v(1, 2)));
    assertThat(piece.folds().get(0).length()).isEqualTo(2);
    assertThat(panel.rightHip()).isEqualTo(2);
    assertThat(panel.leftHip()).isEqualTo(5);
    assertThat(panel.baseLength()).isCloseTo(2, CLOSE);
    assertThat(panel.topLength()).isCloseTo(2, CLOSE);
    assertThat(piece.notchesOn(2)).hasSize(3);
    Notch right = piece.notchesOn(2).get(1);
    assertThat(right).isEqualTo(new Notch(2, 2, 1, Demo.v(2, 1), Demo.v(2.04, 1), false));
    Notch left = piece.notchesOn(5).get(0);
    assertThat(left).isEqualTo(new Notch(5, 1, 0.5, Demo.v(0, 0.5), Demo.v(-0.04, 0.5), true));
    assertThat(piece.notches()).hasSize(6);
    assertThat(piece.edges()).extracting(PieceEdge::fromBase).containsOnly(0.0);
    // Two triangles share their tip.
    Fan two = Fan.of(Collections.nCopies(2, Demo.triangle(1, 2))).orElseThrow();
    PatternPiece pointed = Panel.of(two.outline(), PanelSpec.of("Q", seams).over(2)).parts().get(0);
    assertThat(pointed.folds())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.name()).isEqualTo("fold 1");
              assertThat(f.length()).isCloseTo(Math.sqrt(4.25), CLOSE);
            });
  }

  /** Each notch, mark and edge of a piece that is turned over lies where it lay, mirrored. */
  @Test
  void aPieceTurnedOver() {
    PanelMarks marks =
        new PanelMarks("7", List.of("a", "b", "c", "d"), List.of("", "J7", "", "J6"));
    PatternPiece piece =
        Panel.of(
                Demo.trapezoid(2, 4, 0.75),
                PanelSpec.of("P", Demo.PLAN).withMarks(marks).withGrain(1).times(2))
            .parts()
            .get(0);
    PatternPiece turned = piece.turnedOver();
    assertThat(turned.goodSide()).isFalse();
    assertThat(turned.count()).isEqualTo(2);
    assertThat(turned.grain()).isCloseTo(Math.PI - 1, CLOSE);
    assertThat(turned.edges()).extracting(PieceEdge::letter).containsExactly("c", "b", "a", "d");
    for (int i = 0; i < 4; i++) {
      assertThat(turned.stitch().edgeLength(i))
          .isCloseTo(turned.edges().get(i).finishedLength(), CLOSE);
    }
    for (int i = 0; i < turned.cut().size(); i++) {
      int owner = turned.cutEdgeOwners().get(i);
      if (owner != CutLine.CORNER) {
        Vector2D from = turned.stitch().vertex(owner);
        Vector2D to = turned.stitch().vertex(owner + 1);
        Vector2D along = to.subtract(from).normalize();
        // Outside is to the right, so the cut line lies at minus the allowance.
        assertThat(along.signedArea(turned.cut().vertex(i).subtract(from)))
            .isCloseTo(-turned.edges().get(owner).allowance().width(), CLOSE);
      }
    }
    assertThat(turned.notches()).hasSameSizeAs(piece.notches()).isNotEmpty();
    for (Notch notch : turned.notches()) {
      Vector2D foot = turned.stitch().vertex(notch.edge());
      Vector2D top = turned.stitch().vertex(notch.edge() + 1);
      assertThat(foot.distance(notch.onStitch()) + notch.onStitch().distance(top))
          .isCloseTo(foot.distance(top), CLOSE);
      assertThat(notch.onCut().distance(notch.onStitch())).isCloseTo(0.04, CLOSE);
    }
    assertThat(turned.marks()).extracting(Mark::text).contains("PLAIN SIDE", "J7");
    for (int i = 0; i < piece.marks().size(); i++) {
      assertThat(turned.marks().get(i).at().getX()).isEqualTo(-piece.marks().get(i).at().getX());
      assertThat(turned.marks().get(i).rotation()).isEqualTo(-piece.marks().get(i).rotation());
    }
    assertThat(turned.turnedOver().stitch()).isEqualTo(piece.stitch());
    assertThat(turned.turnedOver().notches()).isEqualTo(piece.notches());
    assertThat(turned.turnedOver().edges()).isEqualTo(piece.edges());
    assertThat(turned.turnedOver().cutEdgeOwners()).isEqualTo(piece.cutEdgeOwners());
  }

  @Test
  void seamsOfUnequalHips() {
    Outline leaning = Outline.of(Demo.v(0, 0), Demo.v(2, 0), Demo.v(2, 2.4), Demo.v(0, 2));
    Panel panel = Panel.of(leaning, PanelSpec.of("P", Demo.PLAN));
    SeamMatch match = SeamMatch.between(panel, panel);
    assertThat(match.first()).isCloseTo(2.4, CLOSE);
    assertThat(match.second()).isCloseTo(2, CLOSE);
    assertThat(match.ease()).isCloseTo(0.4, CLOSE);
    assertThat(match.firstNotches()).containsExactly(0.5, 1.0, 1.5, 2.0);
    assertThat(match.secondNotches()).containsExactly(0.5, 1.0, 1.5);
    assertThat(match.notchesMatch(10)).isFalse();
    assertThat(new SeamMatch(1, 1, List.of(0.5), List.of(0.51)).notchesMatch(0.011)).isTrue();
    assertThat(new SeamMatch(1, 1, List.of(0.5), List.of(0.51)).notchesMatch(0.009)).isFalse();
    assertThatThrownBy(() -> SeamMatch.between(panel, 4, panel, 1))
        .hasMessageContaining("face edge");
  }
}
