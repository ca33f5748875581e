package io.github.seamstead.examples.derivations;

import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.layout.LayoutMeasures;
import io.github.seamstead.geometry.markout.TapeOffset;
import io.github.seamstead.geometry.pattern.ConeCap;
import io.github.seamstead.geometry.pattern.CutSize;
import io.github.seamstead.geometry.pattern.EdgeAllowance;
import io.github.seamstead.geometry.pattern.EdgePlan;
import io.github.seamstead.geometry.pattern.Mitre;
import io.github.seamstead.geometry.pattern.Notches;
import io.github.seamstead.geometry.pattern.PanelSpec;
import io.github.seamstead.shared.plane.Outline;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Panels, caps and layout. */
final class PatternSamples {

  private PatternSamples() {}

  static void addTo(Samples to) {
    to.add("geometry.layout.density", steps -> LayoutMeasures.density(31, 35.2, steps));
    to.add(
        "geometry.layout.bound",
        steps -> LayoutMeasures.lowerBound(31, 3.2, 2.4, 9.1, 0.02, 0.005, steps));
    to.add("geometry.pattern.mitre", steps -> Mitre.reach(0.6, 0.04, 0.05, 2, steps));
    to.add("geometry.pattern.notches", steps -> Notches.count(2.69, 0.3, steps));
    to.add(
        "geometry.markout.offset",
        steps ->
            TapeOffset.of(
                    Vector2D.of(1.2, 2.1), Vector2D.of(0.1, 0.2), Vector2D.of(2.9, 0.5), steps)
                .across());
    to.add("geometry.pattern.cap", steps -> ConeCap.over(0.3, 0.7, 0.25, steps).height());
    to.add("geometry.pattern.cone", steps -> ConeCap.of(0.5, 0.4).sectorAngle(steps));
    to.add("geometry.pattern.width", steps -> CutSize.width(FACE, SPEC, steps));
    to.add("geometry.pattern.height", steps -> CutSize.height(FACE, SPEC, steps));
  }

  private static final Outline FACE =
      RegularPyramid.ofBaseSideAndHeight(9, 2.2, 2.4).withOpeningSide(0.25).faceOutline();
  private static final PanelSpec SPEC =
      PanelSpec.of(
          "P1",
          EdgePlan.of(
              EdgeAllowance.hem(0.05), EdgeAllowance.finSeam(0.04), EdgeAllowance.turnIn(0.06)));
}
