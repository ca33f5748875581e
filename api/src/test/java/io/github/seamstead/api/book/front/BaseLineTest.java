package io.github.seamstead.api.book.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Every piece of the demos can be marked from its base line, and is then as it is cut. */
class BaseLineTest {

  private static List<PatternPiece> pieces() {
    return List.of("seed-loft", "class-model", "hill-hide").stream()
        .flatMap(job -> DemoJobs.plan(job).cover().stream())
        .flatMap(cover -> cover.cuts().stream())
        .map(cut -> cut.pattern())
        .toList();
  }

  @Test
  void thePieceLiesAboveTheLineAsItIsCut() {
    assertThat(pieces()).isNotEmpty();
    for (PatternPiece piece : pieces()) {
      BaseLine line = BaseLine.of(piece);
      assertThat(line.local(line.corner(0)).norm()).isCloseTo(0, within(1e-12));
      double length = line.corner(0).distance(line.corner(1));
      assertThat(line.local(line.corner(1)).getX()).isCloseTo(length, within(1e-12));
      assertThat(line.local(line.corner(1)).getY()).isCloseTo(0, within(1e-12));
      double twice = 0;
      for (int i = 0; i < line.size(); i++) {
        Vector2D a = line.local(line.corner(i));
        Vector2D b = line.local(line.corner(i + 1));
        assertThat(a.distance(b))
            .isCloseTo(line.corner(i).distance(line.corner(i + 1)), within(1e-9));
        twice += a.signedArea(b);
      }
      // Turned and moved, never turned over.
      assertThat(twice / 2).isCloseTo(piece.cut().area(), within(1e-9));
    }
  }

  @Test
  void noCornerOfAStraightPieceIsMuchBelowItsBaseLine() {
    for (PatternPiece piece : pieces()) {
      BaseLine line = BaseLine.of(piece);
      if (!line.isCurved()) {
        double lowest = 0;
        for (int i = 0; i < line.size(); i++) {
          lowest = Math.min(lowest, line.local(line.corner(i)).getY());
        }
        assertThat(lowest).as(piece.id()).isGreaterThan(-0.35 * piece.cut().bounds().height());
      }
    }
  }

  @Test
  void everyCornerIsMarkedEitherByALetterOrWithinTheCurve() {
    for (PatternPiece piece : pieces()) {
      BaseLine line = BaseLine.of(piece);
      Set<Integer> places = new HashSet<>();
      line.corners().forEach(letter -> places.add(line.index(letter)));
      assertThat(places).hasSize(line.corners().size());
      if (line.isCurved()) {
        int[] arc = line.arc();
        for (int letter = arc[0] + 1; letter < arc[2]; letter++) {
          places.add(line.index(letter));
        }
      }
      assertThat(places).as(piece.id()).hasSize(line.size());
    }
  }

  @Test
  void theCircleThroughThreePointsHasItsCentre() {
    // Points of a circle of radius 5 about (1, 2): the triple 3, 4, 5.
    Vector2D centre = BaseLine.centre(Vector2D.of(6, 2), Vector2D.of(4, 6), Vector2D.of(-3, 5));
    assertThat(centre.getX()).isCloseTo(1, within(1e-12));
    assertThat(centre.getY()).isCloseTo(2, within(1e-12));
    assertThat(BaseLine.letter(0)).isEqualTo("a");
    assertThat(BaseLine.letter(3)).isEqualTo("d");
  }
}
