package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.testing.DerivationChecks;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** The hand formulas against the bounds of the cut line. */
class CutSizeProperties {

  @Property(tries = 100, seed = "2026110021")
  void formulasAgreeWithTheCutLine(
      @ForAll @IntRange(min = 3, max = 24) int n,
      @ForAll @Scale(3) @DoubleRange(min = 0.2, max = 1.3) double slope,
      @ForAll boolean hemmed,
      @ForAll boolean whole,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.05) double seam,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.08) double top) {
    Outline triangle = Demo.face(n, 2, slope);
    Outline face = whole ? triangle : Demo.trapezoid(2, triangle.vertex(2).getY(), 0.8);
    EdgePlan plan =
        EdgePlan.of(
            hemmed ? EdgeAllowance.hem(0.06) : EdgeAllowance.reinforced(),
            EdgeAllowance.finSeam(seam),
            EdgeAllowance.turnIn(top));
    PanelSpec spec = PanelSpec.of("P1", plan);
    Bounds cut = Panel.of(face, spec).parts().get(0).cut().bounds();
    StepRecorder across = new StepRecorder();
    double width = CutSize.width(face, spec, across);
    DerivationChecks.assertFollowsTo(
        across.derivation("geometry.pattern.width", "width of the panel"), width);
    StepRecorder up = new StepRecorder();
    double height = CutSize.height(face, spec, up);
    DerivationChecks.assertFollowsTo(
        up.derivation("geometry.pattern.height", "height of the panel"), height);
    assertThat(width).isEqualTo(CutSize.width(face, spec));
    assertThat(height).isEqualTo(CutSize.height(face, spec));
    assertThat(cut.width()).isCloseTo(width, within(1e-9));
    assertThat(cut.height()).isCloseTo(height, within(1e-9));
  }

  @Example
  void unsymmetricalPanelsAreReferredToTheirBounds() {
    Outline leaning = Outline.of(Demo.v(0, 0), Demo.v(2, 0), Demo.v(2.5, 3));
    PanelSpec spec = PanelSpec.of("P1", Demo.PLAN);
    assertThatThrownBy(() -> CutSize.width(leaning, spec))
        .hasMessageContaining("must be 90° or less");
    assertThatThrownBy(() -> CutSize.height(leaning, spec))
        .hasMessageContaining("must be symmetrical");
    PanelSpec joined =
        PanelSpec.of(
            "P1",
            EdgePlan.of(
                EdgeAllowance.lapUnder(0.1), EdgeAllowance.finSeam(0.1), EdgeAllowance.raw()));
    assertThatThrownBy(() -> CutSize.width(Demo.triangle(1, 1), joined))
        .hasMessageContaining("given a joined base");
  }
}
