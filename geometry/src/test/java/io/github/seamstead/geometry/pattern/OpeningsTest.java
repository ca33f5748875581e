package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Jts;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class OpeningsTest {

  private static final Outline FACE = Demo.triangle(3, 4);
  private static final Outline DOOR = Outline.rectangle(0.8, 1.5).placed(0, Demo.v(1.1, 0.4));

  @Test
  void openingMakesAHoleAPatchAndAFlap() {
    Opening door = Opening.of("door", DOOR, 0.03).withPatch(0.1, 0.015).withFlap(0.12, 0.02);
    Panel panel = Panel.of(FACE, PanelSpec.of("P4", Demo.PLAN).withOpenings(List.of(door)));
    PieceHole hole = panel.parts().get(0).holes().get(0);
    assertThat(hole.finished()).isEqualTo(DOOR);
    assertThat(hole.cut().area()).isCloseTo(0.74 * 1.44, within(1e-12));
    assertThat(hole.cut().vertex(2).distance(DOOR.vertex(2)))
        .isCloseTo(0.03 * Math.sqrt(2), within(1e-12));
    assertThat(panel.parts().get(0).finishedArea())
        .isCloseTo(FACE.area() - DOOR.area(), within(1e-12));
    assertThat(panel.extras())
        .extracting(PatternPiece::kind)
        .containsExactly(PieceKind.PATCH, PieceKind.FLAP);
    PatternPiece patch = panel.extras().get(0);
    assertThat(patch.id()).isEqualTo("P4-door-patch");
    assertThat(patch.stitch().area()).isCloseTo(1.0 * 1.7, within(1e-12));
    assertThat(patch.cut().area()).isCloseTo(1.03 * 1.73, within(1e-12));
    assertThat(patch.holes()).hasSize(1);
    assertThat(patch.marks())
        .isNotEmpty()
        .allSatisfy(
            m -> {
              assertThat(patch.stitch().contains(m.at())).as(m.text()).isTrue();
              assertThat(DOOR.contains(m.at())).as(m.text()).isFalse();
            });
    assertThat(panel.extras().get(1).stitch().area()).isCloseTo(1.04 * 1.74, within(1e-12));
  }

  @Test
  void patchOfParachutePractice() {
    double inch = 0.0254;
    // 2 1/2 in wider and longer than the trimmed hole: 1 1/4 in on each side.
    Outline hole = Outline.rectangle(4 * inch, 6 * inch).placed(0, Demo.v(1.4, 1));
    Opening opening = Opening.of("hole", hole, 0).withPatch(1.25 * inch, 0.5 * inch);
    Panel panel = Panel.of(FACE, PanelSpec.of("P1", Demo.PLAN).withOpenings(List.of(opening)));
    Source army =
        Source.found("US Army", "TM 10-1670-292-23&P", "", "patch over a hole, p. 199 of the file");
    OutsideCheck.of("geometry.pattern", "patch, finished width over the hole's, in", army)
        .expect(2.5)
        .within(1e-9)
        .got(panel.extras().get(0).stitch().bounds().width() / inch - 4);
    OutsideCheck.of("geometry.pattern", "patch, fold all round, in", army)
        .expect(0.5)
        .within(1e-9)
        .got(
            (panel.extras().get(0).cut().bounds().width()
                    - panel.extras().get(0).stitch().bounds().width())
                / inch
                / 2);
  }

  @Property(tries = 100, seed = "2026110028")
  void acceptedOpeningsStayOutOfAllowances(
      @ForAll @Scale(3) @DoubleRange(min = -0.2, max = 2.5) double x,
      @ForAll @Scale(3) @DoubleRange(min = -0.2, max = 3) double y,
      @ForAll @Scale(3) @DoubleRange(min = 0.2, max = 0.8) double size,
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.2) double patch) {
    Outline square = Outline.rectangle(size, size).placed(0, Demo.v(x, y));
    PanelSpec spec =
        PanelSpec.of("P1", Demo.PLAN)
            .withOpenings(List.of(Opening.of("vent", square, 0.02).withPatch(patch, 0.01)));
    Polygon zone = Jts.polygon(Openings.grown("vent", square, Math.max(patch, 0.02)));
    Polygon face = Jts.polygon(FACE);
    boolean clear = face.contains(zone);
    for (int i = 0; i < 3; i++) {
      double width = spec.edges().forFace(FACE).get(i).width();
      clear &= zone.distance(Jts.segment(FACE.vertex(i), FACE.vertex(i + 1))) >= width;
    }
    boolean accepted;
    try {
      accepted = Panel.of(FACE, spec).parts().get(0).holes().size() == 1;
    } catch (IllegalArgumentException e) {
      assertThat(e).hasMessageStartingWith("panel P1, opening vent: ");
      accepted = false;
    }
    assertThat(accepted).isEqualTo(clear);
  }

  @Test
  void badOpeningsAreRefused() {
    assertRefused(DOOR.placed(0, Demo.v(2, 0)), 0, "leaves the face; given a corner at ");
    assertRefused(
        DOOR.placed(0, Demo.v(0, -0.37)),
        0,
        "reaches into the hem of edge 1; given 0.0 mm from it with patch and flap, must be 50.0 mm"
            + " or more");
    assertRefused(DOOR, 0.5, "its patch or flap leaves the face");
    Opening one = Opening.of("door", DOOR, 0.03);
    Opening other =
        Opening.of("vent", Outline.rectangle(0.2, 0.2).placed(0, Demo.v(1.4, 1.7)), 0.03);
    PanelSpec both = PanelSpec.of("P1", Demo.PLAN).withOpenings(List.of(one, other));
    assertThatThrownBy(() -> Panel.of(FACE, both))
        .hasMessage("panel P1, opening vent: meets opening door, must lie apart");
    PanelSpec deep =
        PanelSpec.of("P1", Demo.PLAN)
            .withOpenings(
                List.of(
                    Opening.of(
                        "slit", Outline.rectangle(0.05, 1).placed(0, Demo.v(1.5, 1)), 0.04)));
    assertThatThrownBy(() -> Panel.of(FACE, deep)).hasMessageContaining("wider than the opening");
  }

  private static void assertRefused(Outline outline, double patch, String message) {
    Opening opening = Opening.of("door", outline, 0.03).withPatch(patch, 0);
    PanelSpec spec = PanelSpec.of("P1", Demo.PLAN).withOpenings(List.of(opening));
    assertThatThrownBy(() -> Panel.of(FACE, spec))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("panel P1, opening door: " + message);
  }
}
