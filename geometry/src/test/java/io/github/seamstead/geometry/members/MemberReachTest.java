package io.github.seamstead.geometry.members;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.frame.Pyramids;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.members.MemberSpec.Stance;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class MemberReachTest {

  @Provide
  Arbitrary<RegularPyramid> pyramids() {
    return Pyramids.any();
  }

  /** The farthest of the section's four corners along the normals of the faces it bears. */
  private static double farthest(
      Vector3D across, Vector3D square, MemberSection section, List<Vector3D> normals) {
    double most = 0;
    for (int corner = 0; corner < 4; corner++) {
      Vector3D arris =
          across
              .multiply(section.width() / 2 * (corner % 2 == 0 ? 1 : -1))
              .add(square.multiply(section.depth() / 2 * (corner < 2 ? 1 : -1)));
      for (Vector3D normal : normals) {
        most = Math.max(most, arris.dot(normal));
      }
    }
    return most;
  }

  @Property(tries = 200, seed = "20261101")
  void noCornerOfATimberStandsFurtherOut(
      @ForAll("pyramids") RegularPyramid frame,
      @ForAll @DoubleRange(min = 0.02, max = 0.3) double width,
      @ForAll @DoubleRange(min = 0.02, max = 0.3) double depth) {
    MemberSection section = MemberSection.timber(width, depth);
    MemberSpec spec =
        MemberSpec.of(section, section).withPurlinsAt(List.of(frame.frameHeight() / 2));
    MemberReach reach = MemberReach.of(frame, spec);

    Vector3D along = frame.baseCorner(1).vectorTo(frame.topCorner(1)).normalize();
    Vector3D side = along.cross(Vector3D.Unit.PLUS_Z).normalize();
    List<Vector3D> both = List.of(frame.faceNormal(1), frame.faceNormal(2));
    assertThat(reach.hip())
        .isCloseTo(farthest(side, side.cross(along), section, both), within(1e-9));

    Vector3D ring = frame.baseCorner(0).vectorTo(frame.baseCorner(1)).normalize();
    Vector3D normal = frame.faceNormal(1);
    Vector3D level = Vector3D.Unit.PLUS_Z;
    assertThat(reach.ring())
        .isCloseTo(farthest(ring.cross(level), level, section, List.of(normal)), within(1e-9));
    double inFace = farthest(ring.cross(normal), normal, section, List.of(normal));
    assertThat(reach.purlin()).isCloseTo(inFace, within(1e-9));
    assertThat(MemberReach.of(frame, spec.withStance(Stance.IN_FACE)).ring())
        .isCloseTo(inFace, within(1e-9));
    assertThat(reach.outermost())
        .isGreaterThanOrEqualTo(reach.hip())
        .isGreaterThanOrEqualTo(reach.ring())
        .isGreaterThanOrEqualTo(depth / 2);
  }

  /** A half of the diagonal is the most that any corner can lie off the centre line. */
  @Property(tries = 100, seed = "20261102")
  void theReachLiesBetweenHalfTheThinSideAndHalfTheDiagonal(
      @ForAll("pyramids") RegularPyramid frame,
      @ForAll @DoubleRange(min = 0.02, max = 0.3) double width,
      @ForAll @DoubleRange(min = 0.02, max = 0.3) double depth) {
    MemberSection section = MemberSection.timber(width, depth);
    double reach = MemberReach.of(frame, MemberSpec.of(section, section)).outermost();
    assertThat(reach)
        .isBetween(Math.min(width, depth) / 2 - 1e-12, Math.hypot(width, depth) / 2 + 1e-12);
  }

  @Test
  void pipesReachTheirRadius() {
    RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(8, 2, 2);
    MemberSpec spec = MemberSpec.of(MemberSection.pipe(0.048), MemberSection.pipe(0.06));
    assertThat(MemberReach.of(frame, spec)).isEqualTo(new MemberReach(0.024, 0.03, 0));
    assertThat(MemberReach.of(frame, spec).outermost()).isEqualTo(0.03);
  }

  /** At 45° both halves of the section count alike: (95 + 45) / 2 / sqrt(2). */
  @Test
  void aLevelRingAtFortyFiveDegrees() {
    RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(6, 3, 3 * Math.cos(Math.PI / 6));
    MemberSection section = MemberSection.timber(0.095, 0.045);
    MemberReach reach = MemberReach.of(frame, MemberSpec.of(section, section));
    assertThat(reach.ring()).isCloseTo(0.07 / Math.sqrt(2), within(1e-12));
    assertThat(reach.outermost()).isEqualTo(reach.ring());
  }

  @Test
  void stepsCanBeFollowed() {
    RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(6, 2, 2.4);
    MemberSection timber = MemberSection.timber(0.045, 0.07);
    for (MemberSection section : List.of(timber, MemberSection.pipe(0.05))) {
      for (List<Double> purlins : List.of(List.<Double>of(), List.of(1.1))) {
        MemberSpec spec = MemberSpec.of(section, section).withPurlinsAt(purlins);
        StepRecorder recorder = new StepRecorder();
        MemberReach worked = MemberReach.of(frame, spec, recorder);
        assertThat(worked).isEqualTo(MemberReach.of(frame, spec));
        DerivationChecks.assertFollowsTo(
            recorder.derivation("geometry.members.memberreach", "Reach"), worked.outermost());
      }
    }
  }
}
