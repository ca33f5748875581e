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
import java.util.Optional;

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
    double length = hipLength(Steps.none());
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
    cheekCut(Steps.none())
        .ifPresent(
            onEdge -> {
              String where = "head, two cheeks where the hips meet";
              cuts.add(new EndCut(where, "edge", onEdge));
              cuts.add(new EndCut(where, "side", CompoundCut.cheekOnSide(frame.sides(), slope)));
            });
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
    boolean square = spec.rings().endsSquareAt(spec.ringSetBack());
    CompoundCut cut = ringCut(stance, Steps.none()).orElse(SQUARE);
    double length = ringLength(name, plan.side(), cut, Steps.none());
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

  /** The bar that a hip pole takes, in metres. */
  double hipLength(Steps steps) {
    return HipLength.cutLength(
        measures.hipLength(),
        measures.hipSlope(),
        spec.hips(),
        spec.footSetBack(),
        spec.headSetBack(),
        steps);
  }

  /** The cheek with the width on the table; empty for a frame with an opening or square heads. */
  Optional<CompoundCut> cheekCut(Steps steps) {
    boolean meet = !frame.isTruncated() && !spec.hips().endsSquareAt(spec.headSetBack());
    return meet
        ? Optional.of(CompoundCut.cheekOnEdge(frame.sides(), measures.hipSlope(), steps))
        : Optional.empty();
  }

  /** The cut at the corners of a ring; empty for square ends. */
  Optional<CompoundCut> ringCut(Stance stance, Steps steps) {
    if (spec.rings().endsSquareAt(spec.ringSetBack())) {
      return Optional.empty();
    }
    // A round section has no wide face to lean: its mitre is the plan's, however it lies.
    boolean level = stance == Stance.LEVEL || spec.rings().shape() == Shape.PIPE;
    return Optional.of(
        CompoundCut.ringCorner(frame.sides(), level ? 0 : measures.faceSlope(), steps));
  }

  /** The bar that a member of the base ring takes, in metres. */
  double baseRingLength(Steps steps) {
    CompoundCut cut = ringCut(spec.stance(), Steps.none()).orElse(SQUARE);
    return ringLength("base ring", frame.base().side(), cut, steps);
  }

  private double ringLength(String name, double side, CompoundCut cut, Steps steps) {
    return RingLength.cutLength(name, side, cut, spec.rings(), spec.ringSetBack(), steps);
  }
}
