package io.github.seamstead.geometry.internal;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.geometry.pattern.EdgeAllowance;
import io.github.seamstead.geometry.pattern.EdgePlan;
import io.github.seamstead.geometry.pattern.Opening;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PanelSpec;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class SameCutTest {

  private static final EdgePlan EDGES =
      EdgePlan.of(EdgeAllowance.hem(0.1), EdgeAllowance.finSeam(0.05), EdgeAllowance.turnIn(0.03));

  private static Outline face(double base) {
    return new Outline(
        List.of(Vector2D.of(0, 0), Vector2D.of(base, 0), Vector2D.of(base / 2, 2.5)));
  }

  private static PatternPiece piece(int number, double base, Opening... openings) {
    PanelSpec spec = PanelSpec.of("panel-" + number, EDGES).withOpenings(List.of(openings));
    return Panel.of(face(base), spec).parts().get(0);
  }

  @Test
  void equalFacesShareATemplateAndOthersDoNot() {
    List<PatternPiece> pieces =
        List.of(piece(1, 1.6), piece(2, 1.61), piece(3, 1.6), piece(4, 1.6 + 1e-9));
    List<List<PatternPiece>> groups = SameCut.groups(pieces);
    assertThat(groups.stream().map(List::size)).containsExactly(3, 1);
    assertThat(groups.stream().flatMap(List::stream)).containsExactlyInAnyOrderElementsOf(pieces);
  }

  @Test
  void aHoleElsewhereIsAnotherTemplate() {
    Opening low =
        Opening.of("vent", Outline.rectangle(0.2, 0.2).placed(0, Vector2D.of(0.7, 0.4)), 0);
    Opening high =
        Opening.of("vent", Outline.rectangle(0.2, 0.2).placed(0, Vector2D.of(0.7, 0.8)), 0);
    assertThat(SameCut.test(piece(1, 1.6, low), piece(2, 1.6, low))).isTrue();
    assertThat(SameCut.test(piece(1, 1.6, low), piece(2, 1.6, high))).isFalse();
    assertThat(IntStream.range(0, 2).mapToObj(i -> piece(i, 1.6)).distinct()).hasSize(2);
  }
}
