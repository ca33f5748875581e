package io.github.seamstead.geometry.markout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class TapeOffsetTest {

  /** All points marked afresh from their two distances lie as far apart as on the piece. */
  @Property(tries = 60, seed = "2026110101")
  void pointsMarkedByTheirOffsetsMakeThePiece(
      @ForAll @DoubleRange(min = 1.5, max = 4) double base,
      @ForAll @DoubleRange(min = 2, max = 6) double height,
      @ForAll @DoubleRange(min = -0.4, max = 0.4) double lean,
      @ForAll @IntRange(min = 0, max = 3) int edge) {
    Outline piece =
        Outline.of(
            Vector2D.of(0.3, -0.7),
            Vector2D.of(0.3 + base, -0.7 + lean),
            Vector2D.of(0.3 + base * 0.8, -0.7 + height),
            Vector2D.of(0.3 + base * 0.1, -0.7 + height - lean));
    List<TapeOffset> offsets =
        piece.vertices().stream()
            .map(v -> TapeOffset.of(v, piece.vertex(edge), piece.vertex(edge + 1)))
            .toList();
    for (int i = 0; i < piece.size(); i++) {
      assertThat(offsets.get(i).across()).isGreaterThan(-1e-12);
      for (int j = 0; j < i; j++) {
        assertThat(offsets.get(i).point().distance(offsets.get(j).point()))
            .isCloseTo(piece.vertex(i).distance(piece.vertex(j)), within(1e-9));
      }
    }
    assertThat(offsets.get(edge).point().norm()).isLessThan(1e-12);
  }

  @Test
  void stepsCanBeFollowed() {
    StepRecorder recorder = new StepRecorder();
    TapeOffset worked =
        TapeOffset.of(Vector2D.of(1, 2), Vector2D.of(0.5, 0.25), Vector2D.of(3, 0.75), recorder);
    DerivationChecks.assertFollowsTo(
        recorder.derivation("geometry.markout.offset", "Offset"), worked.across());
    assertThat(worked.point().norm()).isCloseTo(Math.hypot(0.5, 1.75), within(1e-12));
  }

  @Test
  void aBaseLineWithoutLengthIsRefused() {
    Vector2D zero = Vector2D.of(1, 1);
    assertThatThrownBy(() -> TapeOffset.of(Vector2D.of(2, 2), zero, zero))
        .hasMessageContaining("length of the base line");
  }
}
