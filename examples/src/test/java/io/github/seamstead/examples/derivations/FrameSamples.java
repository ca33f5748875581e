package io.github.seamstead.examples.derivations;

import io.github.seamstead.geometry.bars.BarCutting;
import io.github.seamstead.geometry.bars.BarPiece;
import io.github.seamstead.geometry.bars.BarStock;
import io.github.seamstead.geometry.frame.Drainage;
import io.github.seamstead.geometry.frame.FabricOffset;
import io.github.seamstead.geometry.frame.FrameSolver;
import io.github.seamstead.geometry.frame.PyramidMeasure;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.markout.BaselineRow;
import io.github.seamstead.geometry.markout.TapeDivision;
import io.github.seamstead.geometry.markout.TwoTapeRow;
import io.github.seamstead.geometry.members.CompoundCut;
import io.github.seamstead.geometry.members.HipLength;
import io.github.seamstead.geometry.members.MemberReach;
import io.github.seamstead.geometry.members.MemberSection;
import io.github.seamstead.geometry.members.MemberSpec;
import io.github.seamstead.geometry.members.RingLength;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Frame, members and marking out. */
final class FrameSamples {

  private FrameSamples() {}

  static void addTo(Samples to) {
    to.add("geometry.frame.measures", steps -> FRAME.measures(steps).coverArea());
    to.add(
        "geometry.frame.solve",
        steps ->
            FrameSolver.solve(
                    9,
                    Map.of(PyramidMeasure.BASE_SIDE, 2.2, PyramidMeasure.HEIGHT, 2.0),
                    FrameSolver.DEFAULT_AGREEMENT,
                    steps)
                .single()
                .baseSide());
    to.add(
        "geometry.members.ringlength",
        steps ->
            RingLength.cutLength(
                "ring",
                1.4,
                CompoundCut.ringCorner(9, 0.4),
                MemberSection.timber(0.09, 0.045),
                0.02,
                steps));
    to.add(
        "geometry.members.hiplength",
        steps -> HipLength.cutLength(3.4, 0.6, MemberSection.pipe(0.048), 0.03, 0.05, steps));
    to.add(
        "geometry.members.memberreach",
        steps ->
            MemberReach.of(
                    FRAME,
                    MemberSpec.of(MemberSection.timber(0.095, 0.045), MemberSection.pipe(0.06)),
                    steps)
                .outermost());
    to.add("geometry.members.ringcut", steps -> CompoundCut.ringCorner(9, 0.7, steps).tilt());
    to.add("geometry.members.cheekcut", steps -> CompoundCut.cheekOnEdge(9, 0.6, steps).tilt());
    to.add("geometry.frame.lap", steps -> Drainage.of(FRAME.measures()).lapForRise(0.1, steps));
    to.add(
        "geometry.frame.offset", steps -> FabricOffset.by(FRAME, 0.03, steps).surface().baseSide());
    to.add(
        "geometry.bars.plan",
        steps ->
            BarCutting.plan(
                    List.of(new BarPiece("pole", 2.7, 9)),
                    List.of(BarStock.unlimited("bar", 6)),
                    0.003,
                    Work.of(Budget.ofWork(5_000), 1),
                    steps)
                .wasteRatio());
    to.add(
        "geometry.markout.baseline",
        steps ->
            BaselineRow.of(2, Vector2D.of(1.2345, 2.3456), TapeDivision.MILLIMETRE, steps).error());
    to.add(
        "geometry.markout.twotapes",
        steps ->
            TwoTapeRow.of(2, Vector2D.of(1.2345, 2.3456), 2.2, TapeDivision.MILLIMETRE, steps)
                .error());
  }

  private static final RegularPyramid FRAME =
      RegularPyramid.ofBaseSideAndHeight(9, 2.2, 2.4).withOpeningSide(0.25);
}
