package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.pattern.PieceDimensions.Check;
import io.github.seamstead.geometry.pattern.PieceDimensions.Offset;
import io.github.seamstead.geometry.pattern.PieceDimensions.PointKind;
import io.github.seamstead.geometry.plane.Outline;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class PieceDimensionsTest {

  private static PatternPiece piece(double base, double height, double part) {
    Outline door = Outline.rectangle(base / 8, height * part / 4);
    return Panel.of(
            Demo.trapezoid(base, height, part),
            PanelSpec.of("P1", Demo.PLAN)
                .withOpenings(
                    List.of(
                        Opening.of(
                            "door", door.placed(0, Demo.v(base / 2, height * part / 4)), 0.01))))
        .parts()
        .get(0);
  }

  /** All points marked afresh from the two distances lie as far from each other as on the piece. */
  @Property(tries = 60, seed = "2026110101")
  void pointsMarkedByTheTableMakeThePiece(
      @ForAll @DoubleRange(min = 1.5, max = 4) double base,
      @ForAll @DoubleRange(min = 2, max = 6) double height,
      @ForAll @DoubleRange(min = 0.4, max = 0.8) double part,
      @ForAll @IntRange(min = 0, max = 3) int edge) {
    PatternPiece piece = piece(base, height, part);
    PieceDimensions dimensions = PieceDimensions.of(piece, edge);
    List<Vector2D> points = new ArrayList<>(piece.cut().vertices());
    points.addAll(piece.stitch().vertices());
    piece.notches().forEach(n -> points.add(n.onCut()));
    points.addAll(piece.holes().get(0).cut().vertices());
    assertThat(dimensions.offsets()).hasSameSizeAs(points);
    Map<String, Vector2D> marked = new HashMap<>();
    for (Offset o : dimensions.offsets()) {
      assertThat(marked.put(o.name(), Demo.v(o.along(), o.across()))).as(o.name()).isNull();
      // All but a hem's flared corners lie on the left of the base line.
      if (o.kind() != PointKind.CUT_CORNER) {
        assertThat(o.across()).as(o.name()).isGreaterThan(-1e-12);
      }
    }
    for (int i = 0; i < points.size(); i++) {
      for (int j = 0; j < i; j++) {
        Offset a = dimensions.offsets().get(i);
        Offset b = dimensions.offsets().get(j);
        assertThat(Math.hypot(a.along() - b.along(), a.across() - b.across()))
            .isCloseTo(points.get(i).distance(points.get(j)), within(1e-9));
      }
    }
    assertThat(marked.get("corner " + (edge + 1)).norm()).isLessThan(1e-12);
    // The mitred hem gives the cut line eight corners: four checks, and two of the door.
    assertThat(piece.cut().size()).isEqualTo(8);
    assertThat(dimensions.checks()).hasSize(6);
    for (Check check : dimensions.checks()) {
      assertThat(marked.get(check.from()).distance(marked.get(check.to())))
          .isCloseTo(check.length(), within(1e-9));
    }
  }

  @Test
  void theLongestEdgeIsTheBaseLine() {
    PatternPiece piece = piece(2, 4, 0.75);
    PieceDimensions dimensions = PieceDimensions.of(piece);
    assertThat(dimensions.pieceId()).isEqualTo(piece.id());
    for (int i = 0; i < piece.cut().size(); i++) {
      assertThat(piece.cut().edgeLength(dimensions.baseEdge()))
          .isGreaterThanOrEqualTo(piece.cut().edgeLength(i) - 1e-9);
    }
    assertThat(dimensions.offsets())
        .extracting(Offset::kind)
        .contains(
            PointKind.CUT_CORNER, PointKind.STITCH_CORNER, PointKind.NOTCH, PointKind.HOLE_CORNER);
  }

  @Test
  void outlinesOfManyCornersAreCheckedAcross() {
    List<Vector2D> ring = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      ring.add(Demo.v(Math.cos(Math.PI * i / 6), Math.sin(Math.PI * i / 6)));
    }
    PatternPiece piece = piece(2, 4, 0.75);
    Outline round = new Outline(ring);
    PieceDimensions dimensions =
        PieceDimensions.of(
            new PatternPiece(
                "round",
                "round",
                piece.kind(),
                1,
                round,
                round,
                ring.stream().map(v -> 0).toList(),
                ring.stream().map(v -> piece.edges().get(0)).toList(),
                List.of(),
                List.of(),
                List.of(),
                0,
                true));
    assertThat(dimensions.checks()).hasSize(6);
    assertThat(dimensions.checks())
        .allSatisfy(c -> assertThat(c.length()).isCloseTo(2, within(1e-12)));
  }

  @Test
  void stepsCanBeFollowed() {
    StepRecorder recorder = new StepRecorder();
    Offset worked =
        PieceDimensions.offset(
            PointKind.NOTCH, "notch", Demo.v(1, 2), Demo.v(0.5, 0.25), Demo.v(3, 0.75), recorder);
    DerivationChecks.assertFollowsTo(
        recorder.derivation("geometry.pattern.offset", "Offset"), worked.across());
    assertThat(Math.hypot(worked.along(), worked.across()))
        .isCloseTo(Math.hypot(0.5, 1.75), within(1e-12));
  }

  @Test
  void badInputIsNamed() {
    PatternPiece piece = piece(2, 4, 0.75);
    assertThatThrownBy(() -> PieceDimensions.of(piece, 99))
        .hasMessageContaining("base edge: given 99");
  }
}
