package io.github.seamstead.geometry.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.pattern.Demo;
import io.github.seamstead.geometry.pattern.EdgeAllowance;
import io.github.seamstead.geometry.pattern.EdgePlan;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PanelSpec;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceKind;
import io.github.seamstead.shared.plane.Outline;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class StripsTest {

  private static final Outline FACE = Demo.trapezoid(2, 4, 0.9);

  @Test
  void pyramidCapClosesTheFaceAndOverlaps() {
    Outline cap = Strips.pyramidCap(FACE, 0.2);
    double hip = Math.hypot(1, 4);
    assertThat(cap.size()).isEqualTo(3);
    assertThat(cap.vertex(0).norm()).isLessThan(1e-12);
    assertThat(cap.vertex(1).getY()).isCloseTo(0, within(1e-12));
    assertThat(cap.edgeLength(1)).isCloseTo(0.1 * hip + 0.2, within(1e-12));
    assertThat(cap.edgeLength(2)).isCloseTo(0.1 * hip + 0.2, within(1e-12));
    // Similar to the whole face.
    assertThat(cap.edgeLength(0) / cap.edgeLength(1)).isCloseTo(2 / hip, within(1e-12));
  }

  @Property(tries = 100, seed = "2026110019")
  void capsOfNeighboursHaveEqualHips(
      @ForAll @Scale(4) @DoubleRange(min = -0.2, max = 0.2) double lean,
      @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 1) double overlap) {
    Outline face =
        Outline.of(
            FACE.vertex(0),
            FACE.vertex(1),
            FACE.vertex(2).add(Demo.v(lean / 5, lean)),
            FACE.vertex(3));
    Outline cap = Strips.pyramidCap(face, overlap);
    Outline tip = Strips.pyramidCap(face, 1e-6);
    assertThat(cap.edgeLength(1) - tip.edgeLength(1)).isCloseTo(overlap - 1e-6, within(1e-9));
    assertThat(cap.edgeLength(2) - tip.edgeLength(2)).isCloseTo(overlap - 1e-6, within(1e-9));
    assertThat(cap.vertex(1).getY()).isCloseTo(0, within(1e-9));
  }

  @Test
  void apronIsASliceOfTheFace() {
    Outline apron = Strips.apron(FACE, 0.1, 0.6);
    assertThat(apron.edgeLength(1)).isCloseTo(0.5, within(1e-12));
    assertThat(apron.edgeLength(3)).isCloseTo(0.5, within(1e-12));
    double hip = Math.hypot(1, 4);
    assertThat(apron.edgeLength(0)).isCloseTo(2 * (0.1 + 0.6 / hip), within(1e-12));
    assertThat(apron.edgeLength(2)).isCloseTo(2 * (0.1 + 0.1 / hip), within(1e-12));
    PatternPiece piece =
        Panel.of(
                apron,
                PanelSpec.of(
                        "apron",
                        EdgePlan.of(
                            EdgeAllowance.lapOver(0),
                            EdgeAllowance.finSeam(0.02),
                            EdgeAllowance.lapUnder(0.05)))
                    .as(PieceKind.APRON))
            .parts()
            .get(0);
    assertThat(piece.kind()).isEqualTo(PieceKind.APRON);
  }

  @Test
  void skirtsMeetOnTheMitre() {
    // Six sides: inner angle 120°, so the outer edge gains w / tan 60° at either end.
    Outline skirt = Strips.groundSkirt(3, 0.6, Math.toRadians(120), Math.toRadians(120));
    assertThat(skirt.edgeLength(0)).isCloseTo(3 + 2 * 0.6 / Math.tan(Math.PI / 3), within(1e-12));
    assertThat(skirt.edgeLength(2)).isCloseTo(3, within(1e-12));
    assertThat(skirt.edgeLength(1)).isCloseTo(skirt.edgeLength(3), within(1e-12));
    // The outer edge of the whole ring is that of the hexagon whose inradius is larger by w.
    double inradius = 3 / (2 * Math.tan(Math.PI / 6));
    assertThat(skirt.edgeLength(0))
        .isCloseTo(2 * (inradius + 0.6) * Math.tan(Math.PI / 6), within(1e-12));
    assertThat(Strips.groundSkirt(3, 0.6, Math.PI, Math.PI)).isEqualTo(Outline.rectangle(3, 0.6));
  }

  @Test
  void liningIsSeenFromInside() {
    Outline face = Outline.of(Demo.v(0, 0), Demo.v(2, 0), Demo.v(1.6, 3), Demo.v(0.2, 2.5));
    Outline inside = Strips.seenFromInside(face);
    assertThat(inside.vertex(0).norm()).isZero();
    assertThat(inside.edgeLength(0)).isEqualTo(face.edgeLength(0));
    assertThat(inside.edgeLength(1)).isCloseTo(face.edgeLength(3), within(1e-12));
    assertThat(inside.edgeLength(3)).isCloseTo(face.edgeLength(1), within(1e-12));
    assertThat(Strips.seenFromInside(inside).vertex(2).distance(face.vertex(2))).isLessThan(1e-12);
  }

  @Test
  void badStripsAreRefused() {
    assertThatThrownBy(() -> Strips.pyramidCap(Demo.triangle(1, 1), 0.1))
        .hasMessage("pyramid cap: given a face with 3 corners, must have 4: cut off at the top");
    assertThatThrownBy(() -> Strips.pyramidCap(Outline.rectangle(1, 1), 0.1))
        .hasMessageContaining("hips that do not meet");
    assertThatThrownBy(() -> Strips.pyramidCap(FACE, 9)).hasMessageContaining("cap overlap");
    assertThatThrownBy(() -> Strips.apron(FACE, 0.5, 0.4))
        .hasMessageContaining("apron's upper edge");
    assertThatThrownBy(() -> Strips.groundSkirt(1, 0, 1, 1)).hasMessageContaining("skirt width");
    assertThatThrownBy(() -> Strips.groundSkirt(1, 1, 4, 1))
        .hasMessageContaining("skirt's left corner");
  }
}
