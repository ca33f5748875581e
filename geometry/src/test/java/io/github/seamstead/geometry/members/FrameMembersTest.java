package io.github.seamstead.geometry.members;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.bars.BarPiece;
import io.github.seamstead.geometry.frame.Pyramids;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.members.FrameMember.Role;
import io.github.seamstead.geometry.members.MemberSpec.Stance;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class FrameMembersTest {

  private static final RegularPyramid FRAME =
      RegularPyramid.ofBaseSideAndHeight(8, 2, 2.4).withOpeningSide(0.3);
  private static final MemberSection PIPE = MemberSection.pipe(0.048);
  private static final MemberSection RAIL = MemberSection.timber(0.045, 0.07);

  @Provide
  Arbitrary<RegularPyramid> pyramids() {
    return Pyramids.any();
  }

  @Test
  void pipesEndAtTheirSetBacks() {
    FrameMembers members =
        FrameMembers.of(FRAME, MemberSpec.of(PIPE, PIPE).withSetBacks(0.05, 0.08, 0.03));
    FrameMember hip = members.members().get(0);
    assertThat(hip.role()).isEqualTo(Role.HIP_POLE);
    assertThat(hip.count()).isEqualTo(8);
    assertThat(hip.cutLength())
        .isCloseTo(FRAME.baseCorner(1).distance(FRAME.topCorner(1)) - 0.13, within(1e-12));
    FrameMember base = members.members().get(1);
    assertThat(base.cutLength()).isCloseTo(2 - 0.06, within(1e-12));
    FrameMember opening = members.members().get(2);
    assertThat(opening.role()).isEqualTo(Role.OPENING_RING);
    assertThat(opening.cutLength()).isCloseTo(0.3 - 0.06, within(1e-12));
    assertThat(opening.height()).isCloseTo(FRAME.frameHeight(), within(1e-12));
    Map<MemberSection, List<BarPiece>> list = members.cutList();
    assertThat(list).containsOnlyKeys(PIPE);
    assertThat(list.get(PIPE)).hasSize(3);
  }

  /** The longest arris between the mitre planes, found corner by corner of the section in space. */
  @Property(tries = 100, seed = "20261103")
  void mitredTimbersReachFromLongPointToLongPoint(
      @ForAll("pyramids") RegularPyramid frame,
      @ForAll @DoubleRange(min = 0, max = 0.45) double setBackPart) {
    double setBack = setBackPart * Math.min(frame.baseSide(), least(frame));
    for (Stance stance : Stance.values()) {
      FrameMembers members =
          FrameMembers.of(
              frame, MemberSpec.of(RAIL, RAIL).withStance(stance).withSetBacks(0, 0, setBack));
      FrameMember base = members.members().get(1);
      Vector3D along = frame.baseCorner(0).vectorTo(frame.baseCorner(1)).normalize();
      Vector3D wideNormal = stance == Stance.LEVEL ? Vector3D.Unit.PLUS_Z : frame.faceNormal(1);
      Vector3D across = wideNormal.cross(along);
      Vector3D plane = frame.baseCorner(1).cross(Vector3D.Unit.PLUS_Z).normalize();
      double reach = 0;
      for (int i = 0; i < 4; i++) {
        Vector3D arris =
            across
                .multiply(RAIL.width() / 2 * (i % 2 == 0 ? 1 : -1))
                .add(wideNormal.multiply(RAIL.depth() / 2 * (i < 2 ? 1 : -1)));
        reach = Math.max(reach, -plane.dot(arris) / plane.dot(along));
      }
      assertThat(base.cutLength())
          .isCloseTo(frame.baseSide() - 2 * setBack + 2 * reach, within(1e-10));
      // The saw setting makes the same plane: across the wide face M, through it T.
      CompoundCut cut = base.cuts().get(0).setting();
      Vector3D sawn =
          along
              .multiply(Math.cos(cut.mitre()) * Math.cos(cut.tilt()))
              .add(across.multiply(Math.sin(cut.mitre()) * Math.cos(cut.tilt())))
              .add(wideNormal.multiply(Math.sin(cut.tilt())));
      Vector3D mirrored =
          along
              .multiply(Math.abs(plane.dot(along)))
              .add(across.multiply(Math.abs(plane.dot(across))))
              .add(wideNormal.multiply(Math.abs(plane.dot(wideNormal))));
      assertThat(sawn.distance(mirrored)).isLessThan(1e-10);
    }
  }

  private static double least(RegularPyramid frame) {
    return frame.isTruncated() ? frame.openingSide() : frame.baseSide();
  }

  /** Sawing the listed length to the listed settings leaves the centre line less the set-backs. */
  @Property(tries = 100, seed = "20261104")
  void lengthAndSettingBelongTogether(
      @ForAll("pyramids") RegularPyramid frame,
      @ForAll @DoubleRange(min = 0, max = 0.2) double setBackPart,
      @ForAll boolean set) {
    double b = set ? setBackPart * least(frame) : 0;
    for (MemberSection section : List.of(RAIL, PIPE)) {
      for (Stance stance : Stance.values()) {
        MemberSpec spec = MemberSpec.of(section, section).withStance(stance).withSetBacks(b, b, b);
        for (FrameMember member : FrameMembers.of(frame, spec).members()) {
          assertThat(centreLineLeft(member))
              .as(member.name())
              .isCloseTo(member.centreLine() - 2 * b, within(1e-9));
        }
      }
    }
  }

  /** Of a bar whose ends are sawn with the long points at its two ends. */
  private static double centreLineLeft(FrameMember member) {
    MemberSection s = member.section();
    if (member.role() == Role.HIP_POLE) {
      // The first two cuts are the foot and the head; the hip lies on its side, depth across.
      double lost = 0;
      for (FrameMember.EndCut cut : member.cuts().subList(0, 2)) {
        lost += s.depth() / 2 * Math.tan(cut.setting().mitre());
      }
      return member.cutLength() - lost;
    }
    CompoundCut cut = member.cuts().get(0).setting();
    return member.cutLength()
        - s.width() * Math.tan(cut.mitre())
        - s.depth() * Math.tan(cut.tilt()) / Math.cos(cut.mitre());
  }

  @Test
  void aPipeSetBackIsCutSquareAndOneToTheNodeIsMitred() {
    FrameMembers square =
        FrameMembers.of(FRAME, MemberSpec.of(PIPE, PIPE).withSetBacks(0.05, 0.08, 0.03));
    assertThat(square.members())
        .allSatisfy(
            m ->
                assertThat(m.cuts())
                    .extracting(FrameMember.EndCut::setting)
                    .containsOnly(new CompoundCut(0, 0)));
    FrameMember mitred = FrameMembers.of(FRAME, MemberSpec.of(PIPE, PIPE)).members().get(1);
    assertThat(mitred.cutLength()).isCloseTo(2 + 0.048 * Math.tan(Math.PI / 8), within(1e-12));
    assertThat(mitred.cuts().get(0).setting().mitre()).isCloseTo(Math.PI / 8, within(1e-12));
  }

  @Property(tries = 100, seed = "2026110008")
  void hipTimbersReachFromSeatToPlumbCut(@ForAll("pyramids") RegularPyramid frame) {
    FrameMember hip = FrameMembers.of(frame, MemberSpec.of(RAIL, RAIL)).members().get(0);
    Vector3D along = frame.baseCorner(1).vectorTo(frame.topCorner(1)).normalize();
    Vector3D side = along.cross(Vector3D.Unit.PLUS_Z).normalize();
    Vector3D up = side.cross(along).multiply(RAIL.depth() / 2);
    Vector3D out = Vector3D.of(frame.baseCorner(1).getX(), frame.baseCorner(1).getY(), 0);
    double foot = Math.abs(up.getZ() / along.getZ());
    double head = Math.abs(up.dot(out) / along.dot(out));
    assertThat(hip.cutLength()).isCloseTo(hip.centreLine() + foot + head, within(1e-9));
  }

  @Test
  void purlinsLieInTheFacesAtTheirHeight() {
    FrameMembers members =
        FrameMembers.of(FRAME, MemberSpec.of(PIPE, RAIL).withPurlinsAt(List.of(1.5, 0.7)));
    List<FrameMember> purlins =
        members.members().stream().filter(m -> m.role() == Role.PURLIN).toList();
    assertThat(purlins).extracting(FrameMember::height).containsExactly(0.7, 1.5);
    Vector3D foot = FRAME.baseCorner(1);
    Vector3D other = FRAME.baseCorner(2);
    assertThat(purlins.get(0).centreLine())
        .isCloseTo(
            foot.lerp(FRAME.apex(), 0.7 / 2.4).distance(other.lerp(FRAME.apex(), 0.7 / 2.4)),
            within(1e-12));
    assertThat(purlins.get(0).cuts().get(0).setting())
        .isEqualTo(CompoundCut.ringCorner(8, FRAME.measures().faceSlope()));
    assertThat(members.cutList()).containsOnlyKeys(PIPE, RAIL);
  }

  @Test
  void platesAreBentAsTheFacesAndPolesMeet() {
    FrameMembers members = FrameMembers.of(FRAME, MemberSpec.of(PIPE, PIPE));
    assertThat(members.bends().get(0).angle())
        .isCloseTo(FRAME.faceNormal(1).angle(FRAME.faceNormal(2)), within(1e-9));
    assertThat(members.bends().get(1).angle()).isCloseTo(Math.PI / 4, within(1e-12));
    assertThat(members.bends().get(2).angle()).isEqualTo(FRAME.measures().hipSlope());
    assertThat(members.cautions())
        .extracting(Caution::hazard)
        .containsExactly(Hazard.STRUCTURE, Hazard.HEIGHT);
    assertThat(FrameMembers.of(FRAME.whole(), MemberSpec.of(RAIL, RAIL)).cautions())
        .extracting(Caution::hazard)
        .containsExactly(Hazard.STRUCTURE, Hazard.MACHINERY, Hazard.HEIGHT);
  }

  @Test
  void wholePyramidsMeetInCheeks() {
    FrameMember hip = FrameMembers.of(FRAME.whole(), MemberSpec.of(RAIL, RAIL)).members().get(0);
    assertThat(hip.cuts()).hasSize(5);
    assertThat(hip.cuts().get(4).setting().tilt())
        .isCloseTo(FRAME.measures().hipBend() / 2, within(1e-12));
  }

  @Test
  void stepsCanBeFollowed() {
    for (MemberSection section : List.of(PIPE, RAIL)) {
      for (double setBack : new double[] {0, 0.04}) {
        StepRecorder hip = new StepRecorder();
        double length = HipLength.cutLength(3, 0.8, section, setBack, 0.05, hip);
        assertThat(length)
            .isEqualTo(HipLength.cutLength(3, 0.8, section, setBack, 0.05, Steps.none()));
        DerivationChecks.assertFollowsTo(
            hip.derivation("geometry.members.hiplength", "Hip"), length);
        StepRecorder ring = new StepRecorder();
        CompoundCut cut = CompoundCut.ringCorner(8, 0.9);
        double side = RingLength.cutLength("base ring", 2, cut, section, setBack, ring);
        DerivationChecks.assertFollowsTo(
            ring.derivation("geometry.members.ringlength", "Ring"), side);
      }
    }
  }

  @Test
  void badInputIsNamed() {
    MemberSpec spec = MemberSpec.of(PIPE, PIPE);
    assertThatThrownBy(() -> FrameMembers.of(FRAME, spec.withSetBacks(2, 2, 0)))
        .hasMessageContaining("set-backs of the hip: given 2 m and 2 m, must leave something");
    assertThatThrownBy(() -> FrameMembers.of(FRAME, spec.withSetBacks(0, 0, 0.2)))
        .hasMessageContaining("set-back of opening ring: given 0.2 m at each end");
    assertThatThrownBy(() -> FrameMembers.of(FRAME, spec.withPurlinsAt(List.of(3.0))))
        .hasMessageContaining("height of a purlin ring: given 3 m, must be less than");
    assertThatThrownBy(() -> spec.withPurlinsAt(List.of(-1.0))).hasMessageContaining("given -1 m");
    assertThatThrownBy(() -> spec.withSetBacks(-0.1, 0, 0)).hasMessageContaining("foot");
    assertThatThrownBy(() -> MemberSection.pipe(0)).hasMessageContaining("section width");
    assertThatThrownBy(() -> new MemberSection(MemberSection.Shape.PIPE, 1, 2))
        .hasMessageContaining("equal");
    assertThatThrownBy(() -> new BarPiece("x", 1, 0)).hasMessageContaining("count of x: given 0");
  }
}
