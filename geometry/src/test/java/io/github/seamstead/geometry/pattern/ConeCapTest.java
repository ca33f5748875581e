package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.plane.Jts;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class ConeCapTest {

  private static final EdgeAllowance RIM = EdgeAllowance.hem(0.02);
  private static final EdgeAllowance HOLE = EdgeAllowance.raw();

  @Test
  void sectorAngles() {
    OutsideCheck.of(
            "geometry.pattern",
            "cone development, point angle 90°: sector angle, °",
            Source.found("Anvilfire", "Math for cone layout", "", "sin 45° times 360°"))
        .expect(254.6)
        .within(0.05)
        .got(Math.toDegrees(ConeCap.of(1, 1).sectorAngle()));
    Source derived = Source.derived("sector angle = 360° R / sqrt(R² + H²)");
    OutsideCheck.of("geometry.pattern", "cone development, R 3, H 4: sector angle, °", derived)
        .expect(216)
        .within(1e-9)
        .got(Math.toDegrees(ConeCap.of(3, 4).sectorAngle()));
    OutsideCheck.of("geometry.pattern", "cone development, R 5, H 12: sector angle, °", derived)
        .expect(138.462)
        .within(5e-4)
        .got(Math.toDegrees(ConeCap.of(5, 12).sectorAngle()));
  }

  @Test
  void sectorAngleFromDiameterAndSlant() {
    ConeCap cap = ConeCap.of(0.35, 0.42);
    OutsideCheck.of(
            "geometry.pattern",
            "cone development, D 0.7, slant 0.5467: 180 D / R, °",
            Source.found("LetsFab", "Cone development formula", "", "sector angle"))
        // The slant by Pythagoras from radius and height, not from the library.
        .expect(180 * 0.7 / Math.hypot(0.35, 0.42))
        .within(1e-9)
        .got(Math.toDegrees(cap.sectorAngle()));
  }

  @Test
  void capOverThePyramidRestsOnItsHips() {
    StepRecorder steps = new StepRecorder();
    ConeCap cap = ConeCap.over(0.3, Math.toRadians(40), 0.25, steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("geometry.pattern.cap", "cap over the opening"), cap.height());
    assertThat(cap.slant()).isCloseTo(0.3 / Math.cos(Math.toRadians(40)) + 0.25, within(1e-12));
    StepRecorder unrolled = new StepRecorder();
    double angle = cap.sectorAngle(unrolled);
    DerivationChecks.assertFollowsTo(
        unrolled.derivation("geometry.pattern.cone", "development of the cap"), angle);
  }

  @Property(tries = 60, seed = "2026110020")
  void sectorsMakeTheCone(
      @ForAll @Scale(3) @DoubleRange(min = 0.1, max = 1.5) double radius,
      @ForAll @Scale(3) @DoubleRange(min = 0.05, max = 2) double height,
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.6) double holePart,
      @ForAll @IntRange(min = 2, max = 8) int parts) {
    ConeCap cap = ConeCap.of(radius, height).withHole(radius * holePart);
    PatternPiece piece = cap.piece("cap", parts, 0.02, RIM, HOLE);
    assertThat(piece.count()).isEqualTo(parts);
    assertThat(piece.finishedArea() * parts).isCloseTo(cap.area(), within(cap.area() * 0.02));
    double rim =
        piece.edges().stream()
            .filter(e -> e.allowance().role() == EdgeRole.HEM)
            .mapToDouble(PieceEdge::finishedLength)
            .sum();
    assertThat(rim * parts).isCloseTo(2 * Math.PI * radius, within(2 * Math.PI * radius * 0.002));
    double over = joined(piece, EdgeRole.LAP_OVER);
    assertThat(over).isCloseTo(joined(piece, EdgeRole.LAP_UNDER), within(1e-12));
    assertThat(over).isCloseTo(cap.slant() * (1 - holePart), within(1e-9));
    assertThat(Jts.polygon(piece.cut()).buffer(1e-9).covers(Jts.polygon(piece.stitch()))).isTrue();
  }

  @Test
  void holeCarriesACaution() {
    assertThat(ConeCap.of(1, 1).cautions()).isEmpty();
    assertThat(ConeCap.of(1, 1).withHole(0.1).cautions())
        .singleElement()
        .satisfies(
            c -> assertThat(c.text()).contains("carbon monoxide").endsWith(Caution.DEFERENCE));
  }

  @Test
  void badCapsAreRefused() {
    assertThatThrownBy(() -> ConeCap.of(0, 1)).hasMessageContaining("cone cap radius");
    assertThatThrownBy(() -> ConeCap.of(1, 1).withHole(1)).hasMessageContaining("cone cap hole");
    assertThatThrownBy(() -> ConeCap.over(1, 2, 0.1)).hasMessageContaining("hip slope");
    assertThatThrownBy(() -> ConeCap.of(1, 1).piece("cap", 1, 0.02, RIM, HOLE))
        .hasMessage(
            "cone cap cap: given 1 part(s) of 254.6°, must be 180° or less each, so 2 or more"
                + " parts");
  }

  private static double joined(PatternPiece piece, EdgeRole role) {
    return piece.edges().stream()
        .filter(e -> e.allowance().role() == role)
        .mapToDouble(PieceEdge::finishedLength)
        .sum();
  }
}
