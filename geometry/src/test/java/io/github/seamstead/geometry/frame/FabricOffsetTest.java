package io.github.seamstead.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;

class FabricOffsetTest {

  @Provide
  Arbitrary<RegularPyramid> pyramids() {
    return Pyramids.any();
  }

  @Property(tries = 100, seed = "2026110009")
  void offsetThenInsetReturnsTheFrame(
      @ForAll("pyramids") RegularPyramid frame,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.2) double distance) {
    RegularPyramid out = FabricOffset.by(frame, distance).surface();
    RegularPyramid back = FabricOffset.by(out, -distance).surface();
    double close = 1e-12 * (1 + frame.apexHeight());
    assertThat(back.baseSide()).isCloseTo(frame.baseSide(), within(close));
    assertThat(back.apexHeight()).isCloseTo(frame.apexHeight(), within(close * 10));
    assertThat(back.openingSide()).isCloseTo(frame.openingSide(), within(close));
  }

  @Property(tries = 60, seed = "2026110010")
  void everyCornerLiesAtTheDistanceFromItsFaces(
      @ForAll("pyramids") RegularPyramid frame,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.1) double distance) {
    FabricOffset offset = FabricOffset.by(frame, distance);
    Precision.DoubleEquivalence fine = Precision.doubleEquivalenceOfEpsilon(1e-10);
    for (int face = 1; face <= frame.sides(); face++) {
      Plane plane = Planes.fromPointAndNormal(frame.baseCorner(face), frame.faceNormal(face), fine);
      offset.surface().faceCorners(face).stream()
          .forEach(corner -> assertThat(plane.offset(corner)).isCloseTo(distance, within(1e-9)));
    }
    // The hips stay parallel, at the stated distance.
    assertThat(
            Planes.fromPointAndNormal(
                    frame.baseCorner(1), frame.baseCorner(1).vectorTo(frame.apex()), fine)
                .project(offset.surface().apex())
                .distance(frame.baseCorner(1)))
        .isCloseTo(offset.hipDistance(), within(1e-9));
    assertThat(offset.surface().baseSide())
        .as("more than the distance added to the edges on both sides")
        .isGreaterThan(frame.baseSide() + 2 * distance * Math.tan(Math.PI / frame.sides()));
    assertThat(offset.surface().measures().faceSlope())
        .isCloseTo(frame.measures().faceSlope(), within(1e-11));
    // Sharp corner: two tangents from the offset hip to the faces' feet; rounded: the arc. On a
    // steep three-sided frame the difference passes the distance itself (1.37 times at a bend of
    // 120
    // degrees).
    double tangents =
        2 * Math.sqrt(offset.hipDistance() * offset.hipDistance() - distance * distance);
    double arc = distance * frame.measures().hipBend();
    assertThat(offset.roundingEase()).isPositive().isCloseTo(tangents - arc, within(1e-9));
  }

  @Test
  void coverAndLining() {
    RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(8, 2, 2).withOpeningSide(0.3);
    assertThat(FabricOffset.cover(frame, 0.024, 0.0006).distance())
        .isCloseTo(0.0246, within(1e-15));
    FabricOffset lining = FabricOffset.lining(frame, 0.024, 0.1);
    assertThat(lining.distance()).isCloseTo(-0.076, within(1e-15));
    assertThat(lining.surface().baseSide()).isLessThan(2);
    assertThat(lining.closesOpening()).isFalse();
    assertThat(lining.surface().frameHeight()).isCloseTo(frame.frameHeight(), within(1e-12));
  }

  @Test
  void aSmallOpeningClosesInward() {
    RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(8, 2, 2).withOpeningSide(0.05);
    FabricOffset lining = FabricOffset.by(frame, -0.2);
    assertThat(lining.closesOpening()).isTrue();
    assertThat(lining.surface().isTruncated()).isFalse();
    assertThat(lining.surface().apexHeight()).isLessThan(frame.frameHeight());
  }

  @Test
  void stepsCanBeFollowed() {
    for (double opening : new double[] {0, 0.05, 0.5}) {
      RegularPyramid frame = new RegularPyramid(9, 1.5, 2, opening);
      StepRecorder recorder = new StepRecorder();
      FabricOffset worked = FabricOffset.by(frame, -0.1, recorder);
      assertThat(worked).isEqualTo(FabricOffset.by(frame, -0.1));
      DerivationChecks.assertFollowsTo(
          recorder.derivation("geometry.frame.offset", "Parallel surface"),
          worked.surface().baseSide());
    }
  }

  @Test
  void badInputIsNamed() {
    RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(4, 2, 1);
    assertThatThrownBy(() -> FabricOffset.by(frame, -0.8))
        .hasMessage(
            "distance: given -0.8 m, must leave something of a pyramid whose base inradius is 1 m"
                + " (more than -0.707107 m)");
    assertThatThrownBy(() -> FabricOffset.by(frame, Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> FabricOffset.lining(frame, 0.03, 0.05))
        .hasMessageContaining("members take up square to a face, 0.06 m");
    assertThatThrownBy(() -> FabricOffset.cover(frame, -1, 0))
        .hasMessageContaining("reach of the members: given -1 m");
  }
}
