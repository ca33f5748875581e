package io.github.seamstead.geometry.markout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MarkOutTest {

  private static final Outline FACE =
      RegularPyramid.ofBaseSideAndHeight(10, 1.949518, 1.732051).withOpeningSide(0.3).faceOutline();

  /** The builder's square: 3, 4, 5. */
  @Test
  void threeFourFive() {
    Source source = Source.derived("right triangle 3, 4, 5");
    MarkOut tables =
        MarkOut.of(
            Outline.of(Vector2D.ZERO, Vector2D.of(4, 0), Vector2D.of(4, 3)),
            TapeDivision.MILLIMETRE,
            0.002);
    OutsideCheck.of(
            "geometry.markout", "square corner 3 m from the baseline: first tape, m", source)
        .expect(5)
        .within(1e-12)
        .got(tables.twoTapes().get(2).markedFirst());
    OutsideCheck.of(
            "geometry.markout", "square corner 3 m from the baseline: second tape, m", source)
        .expect(3)
        .within(1e-12)
        .got(tables.twoTapes().get(2).markedSecond());
    assertThat(Math.toDegrees(tables.twoTapes().get(2).crossing()))
        .isCloseTo(53.1301, within(5e-5));
    assertThat(tables.twoTapeFit().cornerError()).isCloseTo(0, within(1e-12));
    assertThat(tables.baselineFit().fits()).isTrue();
    assertThat(tables.checks()).hasSize(3).allMatch(CheckLength::side);
  }

  @Test
  void faceOnItsBase() {
    MarkOut tables = MarkOut.of(FACE, TapeDivision.FIVE_MILLIMETRES, 0.005);
    BaselineRow topLeft = tables.baseline().get(3);
    assertThat(topLeft.station()).isCloseTo((1.949518 - 0.3) / 2, within(1e-12));
    assertThat(topLeft.markedStation()).isCloseTo(0.825, within(1e-12));
    assertThat(tables.baseline().get(0).error()).isZero();
    assertThat(tables.checks()).hasSize(6);
    assertThat(tables.checks().stream().filter(c -> !c.side())).hasSize(2);
    assertThat(tables.baselineFit().cornerError())
        .isEqualTo(tables.baseline().stream().mapToDouble(BaselineRow::error).max().orElseThrow());
    assertThat(TapeDivision.FIVE_MILLIMETRES.write(topLeft.station())).isEqualTo("0.825 m");
    assertThat(TapeDivision.SIXTEENTH_INCH.write(1.0)).isEqualTo("3 ft 3 3/8 in");
  }

  @Test
  void aCoarseTapeDoesNotFitAFineTolerance() {
    MarkOut tables = MarkOut.of(FACE, TapeDivision.CENTIMETRE, 0.001);
    assertThat(tables.baselineFit().fits()).isFalse();
    assertThat(tables.twoTapeFit().fits()).isFalse();
    assertThat(tables.twoTapeFit().cornerError()).isGreaterThan(0.001);
    assertThat(tables.baselineFit().shortness()).isBetween(0.0, 0.01);
    assertThat(tables.baselineFit().fullness()).isBetween(0.0, 0.01);
  }

  @Test
  void flatCrossingsAreCalledPoor() {
    Outline tall = Outline.of(Vector2D.ZERO, Vector2D.of(0.5, 0), Vector2D.of(0.25, 3));
    MarkOut onTheShortSide = MarkOut.of(tall, TapeDivision.MILLIMETRE, 0.005);
    assertThat(onTheShortSide.twoTapes().get(2).isPoor()).isTrue();
    MarkOut onTheLongSide = MarkOut.of(tall, 1, TapeDivision.MILLIMETRE, 0.005);
    assertThat(onTheLongSide.twoTapes().get(0).isPoor()).isFalse();
  }

  @Test
  void cornersOnAndBelowTheBaseline() {
    Outline kite =
        Outline.of(
            Vector2D.ZERO,
            Vector2D.of(1, 0),
            Vector2D.of(1.5, -0.4),
            Vector2D.of(2.0033, 0),
            Vector2D.of(1, 1.2));
    MarkOut tables = MarkOut.of(kite, TapeDivision.MILLIMETRE, 0.002);
    assertThat(tables.twoTapes().get(2).left()).isFalse();
    assertThat(tables.twoTapes().get(2).drawn().getY()).isCloseTo(-0.4, within(0.002));
    assertThat(tables.baseline().get(2).markedOffset()).isCloseTo(-0.4, within(1e-12));
    assertThat(tables.twoTapes().get(3).error()).isLessThan(0.03);
  }

  @Test
  void manyCornersHaveOneDiagonalEach() {
    Outline ring =
        new Outline(
            java.util.stream.IntStream.range(0, 12)
                .mapToObj(i -> Vector2D.of(Math.cos(Math.PI * i / 6), Math.sin(Math.PI * i / 6)))
                .toList());
    MarkOut tables = MarkOut.of(ring, TapeDivision.MILLIMETRE, 0.002);
    assertThat(tables.checks()).hasSize(12 + 6);
  }

  @ParameterizedTest
  @EnumSource(TapeDivision.class)
  void stepsCanBeFollowed(TapeDivision division) {
    MarkOut tables = MarkOut.of(FACE, 1, division, 0.01);
    for (int corner = 0; corner < 4; corner++) {
      StepRecorder offsets = new StepRecorder();
      assertThat(tables.workBaseline(corner, offsets)).isEqualTo(tables.baseline().get(corner));
      DerivationChecks.assertFollowsTo(
          offsets.derivation("geometry.markout.baseline", "Corner"),
          tables.baseline().get(corner).error());
      StepRecorder tapes = new StepRecorder();
      assertThat(tables.workTwoTapes(corner, tapes)).isEqualTo(tables.twoTapes().get(corner));
      DerivationChecks.assertFollowsTo(
          tapes.derivation("geometry.markout.twotapes", "Corner"),
          tables.twoTapes().get(corner).error());
    }
  }

  @Test
  void badInputIsNamed() {
    assertThatThrownBy(() -> MarkOut.of(FACE, TapeDivision.MILLIMETRE, 0))
        .hasMessage("tolerance: given 0 m, must be greater than 0 m");
    assertThatThrownBy(() -> MarkOut.of(FACE, 4, TapeDivision.MILLIMETRE, 0.01))
        .hasMessage("baseline edge: given 4, must be from 0 to 3");
    assertThatThrownBy(
            () ->
                MarkOut.of(
                    Outline.of(Vector2D.ZERO, Vector2D.of(0.001, 0), Vector2D.of(0, 1)),
                    TapeDivision.CENTIMETRE,
                    0.01))
        .hasMessageContaining("must be at least one division");
    assertThatThrownBy(
            () ->
                MarkOut.of(FACE, TapeDivision.MILLIMETRE, 0.01).workBaseline(9, new StepRecorder()))
        .hasMessage("corner: given 9, must be from 0 to 3");
  }
}
