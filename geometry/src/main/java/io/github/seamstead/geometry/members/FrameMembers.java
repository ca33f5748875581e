package io.github.seamstead.geometry.members;

import io.github.seamstead.geometry.bars.BarPiece;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.derivation.Steps;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The members of a frame: cut list, saw settings at every joint and the bends of bolt plates.
 *
 * <pre>{@code
 * RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(6, 1.5, 2);
 * MemberSpec spec = MemberSpec.of(MemberSection.pipe(0.05), MemberSection.pipe(0.04));
 * FrameMembers members = FrameMembers.of(frame, spec);
 * members.members().size(); // 2 of a kind each: hips and ring
 * }</pre>
 *
 * @param frame the pyramid of the centre lines
 * @param spec what it is built of
 * @param members hip poles, base ring, purlin rings from below, opening ring
 * @param bends plates at the joints and how far each is bent from flat
 * @param cautions what the lists do not cover
 */
public record FrameMembers(
    RegularPyramid frame,
    MemberSpec spec,
    List<FrameMember> members,
    List<PlateBend> bends,
    List<Caution> cautions) {

  /**
   * A plate at a joint.
   *
   * @param name what it joins
   * @param angle bent from flat, in radians, 0 to π
   */
  public record PlateBend(String name, double angle) {}

  public FrameMembers {
    members = List.copyOf(members);
    bends = List.copyOf(bends);
    cautions = List.copyOf(cautions);
  }

  /**
   * Lists the members of a frame. Cost: constant for each ring.
   *
   * @param frame the pyramid of the centre lines
   * @param spec what it is built of; purlin rings below the frame's top
   * @return members, plate bends and cautions
   * @throws IllegalArgumentException if a purlin ring lies above the top or the set-backs leave
   *     nothing of a member
   */
  public static FrameMembers of(RegularPyramid frame, MemberSpec spec) {
    MemberCalculation calculation = new MemberCalculation(frame, spec);
    return new FrameMembers(
        frame, spec, calculation.members(), bends(frame), cautions(frame, spec));
  }

  private static List<PlateBend> bends(RegularPyramid frame) {
    FrameMeasures m = frame.measures();
    List<PlateBend> bends = new ArrayList<>();
    bends.add(new PlateBend("plate lying on two faces across a hip", m.hipBend()));
    bends.add(
        new PlateBend(
            "level plate between neighbouring ring members", 2 * Math.PI / frame.sides()));
    bends.add(new PlateBend("foot plate from the level ground to the hip", m.hipSlope()));
    bends.add(
        frame.isTruncated()
            ? new PlateBend("plate from the level opening ring down to the hip", m.hipSlope())
            : new PlateBend("arm of a level hub down to the hip", m.hipSlope()));
    bends.add(new PlateBend("plate from the base ring up into a face", m.faceSlope()));
    return bends;
  }

  private static List<Caution> cautions(RegularPyramid frame, MemberSpec spec) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        new Caution(
            Hazard.STRUCTURE,
            "This is a cutting list: no member, joint or ground fixing is checked for strength.",
            "Have sizes, joints and anchorage checked for the site's wind and snow.",
            Optional.empty()));
    if (spec.hips().shape() == MemberSection.Shape.TIMBER
        || spec.rings().shape() == MemberSection.Shape.TIMBER) {
      cautions.add(
          new Caution(
              Hazard.MACHINERY,
              "A blade set to mitre and tilt throws short and tapered offcuts.",
              "Clamp the piece, keep the guard on, and cut a sample joint of scrap first.",
              Optional.empty()));
    }
    if (frame.frameHeight() > 2) {
      cautions.add(
          new Caution(
              Hazard.HEIGHT,
              "The top joint stands above what is reached from the ground.",
              "Join the top on the ground and raise it, or work from a platform.",
              Optional.empty()));
    }
    return cautions;
  }

  /**
   * Gives the pieces to cut from bars, by section, in the order of {@link #members()}.
   *
   * @return for each section its pieces
   */
  public Map<MemberSection, List<BarPiece>> cutList() {
    Map<MemberSection, List<BarPiece>> list = new LinkedHashMap<>();
    for (FrameMember member : members) {
      list.computeIfAbsent(member.section(), s -> new ArrayList<>())
          .add(new BarPiece(member.name(), member.cutLength(), member.count()));
    }
    list.replaceAll((section, pieces) -> List.copyOf(pieces));
    return list;
  }

  /**
   * Works the cut length of a hip pole.
   *
   * @param steps where the steps are written; the last is the length
   * @return as in {@link #members()}, in metres
   */
  public double workHipLength(Steps steps) {
    return new MemberCalculation(frame, spec).hipLength(steps);
  }

  /**
   * Works the cut length of a member of the base ring.
   *
   * @param steps where the steps are written; the last is the length
   * @return as in {@link #members()}, in metres
   */
  public double workBaseRingLength(Steps steps) {
    return new MemberCalculation(frame, spec).baseRingLength(steps);
  }

  /**
   * Works the saw setting at the corners of the base ring.
   *
   * @param steps where the steps are written; the last is the tilt
   * @return as in {@link #members()}; empty where the ends are square
   */
  public Optional<CompoundCut> workRingCut(Steps steps) {
    return new MemberCalculation(frame, spec).ringCut(spec.stance(), steps);
  }

  /**
   * Works the cheek cut with which the hips meet at the apex.
   *
   * @param steps where the steps are written; the last is the tilt
   * @return as in {@link #members()}; empty where the frame has an opening or the heads are square
   */
  public Optional<CompoundCut> workCheekCut(Steps steps) {
    return new MemberCalculation(frame, spec).cheekCut(steps);
  }
}
