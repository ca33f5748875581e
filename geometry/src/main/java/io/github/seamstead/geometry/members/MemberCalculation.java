package io.github.seamstead.geometry.members;

import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.RegularPolygon;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.members.FrameMember.EndCut;
import io.github.seamstead.geometry.members.FrameMember.Role;
import io.github.seamstead.geometry.members.MemberSection.Shape;
import io.github.seamstead.geometry.members.MemberSpec.Stance;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/** Works out the members of one frame. */
final class MemberCalculation {

  private static final CompoundCut SQUARE = new CompoundCut(0, 0);

  private final RegularPyramid frame;
  private final MemberSpec spec;
  private final FrameMeasures measures;

  MemberCalculation(RegularPyramid frame, MemberSpec spec) {
    this.frame = frame;
    this.spec = spec;
    this.measures = frame.measures();
  }

  List<FrameMember> members() {
    List<FrameMember> members = new ArrayList<>();
    members.add(hips());
    members.add(ring(Role.BASE_RING, "base ring", 0, frame.base(), spec.stance()));
    int number = 0;
    for (double height : spec.purlinHeights()) {
      number++;
      Args.require(
          height < frame.frameHeight(),
          "height of a purlin ring",
          Numbers.plain(height) + " m",
          "must be less than the frame's height of "
              + Numbers.significant(frame.frameHeight(), 6)
              + " m");
      members.add(
          ring(Role.PURLIN, "purlin ring " + number, height, frame.planAt(height), Stance.IN_FACE));
    }
    frame
        .opening()
        .ifPresent(
            plan ->
                members.add(
                    ring(
                        Role.OPENING_RING,
                        "opening ring",
                        frame.frameHeight(),
                        plan,
                        spec.stance())));
    return members;
  }

  private FrameMember hips() {
    double slope = measures.hipSlope();
    double length =
        HipLength.cutLength(
            measures.hipLength(),
            slope,
            spec.hips(),
            spec.footSetBack(),
            spec.headSetBack(),
            Steps.none());
    List<EndCut> cuts = new ArrayList<>();
    boolean squareHead = spec.hips().endsSquareAt(spec.headSetBack());
    cuts.add(
        spec.hips().endsSquareAt(spec.footSetBack())
            ? new EndCut("foot, square", "side", SQUARE)
            : new EndCut(
                "foot, level on ground or ring", "side", new CompoundCut(Math.PI / 2 - slope, 0)));
    cuts.add(
        squareHead
            ? new EndCut("head, square", "side", SQUARE)
            : new EndCut("head, plumb against ring or post", "side", new CompoundCut(slope, 0)));
    if (!frame.isTruncated() && !squareHead) {
      int n = frame.sides();
      cuts.add(
          new EndCut(
              "head, two cheeks where the hips meet", "edge", CompoundCut.cheekOnEdge(n, slope)));
      cuts.add(
          new EndCut(
              "head, two cheeks where the hips meet", "side", CompoundCut.cheekOnSide(n, slope)));
    }
    if (spec.hips().shape() == Shape.TIMBER) {
      cuts.add(
          new EndCut(
              "backing bevel along the outer edge, both sides",
              "side",
              new CompoundCut(0, measures.hipBend() / 2)));
    }
    return new FrameMember(
        Role.HIP_POLE,
        "hip pole",
        frame.sides(),
        spec.hips(),
        0,
        measures.hipLength(),
        length,
        cuts);
  }

  private FrameMember ring(
      Role role, String name, double height, RegularPolygon plan, Stance stance) {
    // A round section has no wide face to lean: its mitre is the plan's, however it lies.
    boolean level = stance == Stance.LEVEL || spec.rings().shape() == Shape.PIPE;
    boolean square = spec.rings().endsSquareAt(spec.ringSetBack());
    CompoundCut cut =
        square ? SQUARE : CompoundCut.ringCorner(frame.sides(), level ? 0 : measures.faceSlope());
    double length =
        RingLength.cutLength(
            name, plan.side(), cut, spec.rings(), spec.ringSetBack(), Steps.none());
    String joint = role == Role.PURLIN ? "both ends, against the hip" : "both ends, at the corner";
    String where = square ? "both ends, square" : joint;
    return new FrameMember(
        role,
        name,
        frame.sides(),
        spec.rings(),
        height,
        plan.side(),
        length,
        List.of(new EndCut(where, "wide face", cut)));
  }
}
