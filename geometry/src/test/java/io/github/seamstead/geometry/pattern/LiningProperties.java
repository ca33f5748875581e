package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.frame.FabricOffset;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.internal.Strips;
import io.github.seamstead.shared.plane.Outline;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;

/** Panels of cover and lining on the offset faces of a frame. */
class LiningProperties {

  private static final EdgePlan LINED =
      EdgePlan.of(EdgeAllowance.hem(0.02), EdgeAllowance.finSeam(0.01), EdgeAllowance.turnIn(0.02));

  @Property(tries = 60, seed = "2026110025")
  void liningPanelsAreThoseOfTheInwardOffset(
      @ForAll @IntRange(min = 3, max = 16) int n,
      @ForAll @Scale(3) @DoubleRange(min = 1.5, max = 3) double side,
      @ForAll @Scale(3) @DoubleRange(min = 0.8, max = 3) double height,
      @ForAll @Scale(3) @DoubleRange(min = 0.04, max = 0.1) double gap) {
    RegularPyramid frame =
        RegularPyramid.ofBaseSideAndHeight(n, side, height).withOpeningSide(side / 4);
    RegularPyramid inside = FabricOffset.lining(frame, 0.02, gap).surface();
    Outline face = Strips.seenFromInside(inside.faceOutline());
    Panel lining = Panel.of(face, PanelSpec.of("L1", LINED).times(n));
    PatternPiece piece = lining.parts().get(0);
    assertThat(piece.finishedArea() * n)
        .isCloseTo(inside.measures().coverArea(), within(1e-9 * side * side));
    assertThat(SeamMatch.between(lining, lining).ease()).isCloseTo(0, within(1e-9 * side));
    // The gap, measured in space between the planes of the two faces.
    RegularPyramid outside = FabricOffset.cover(frame, 0.02, 0).surface();
    double apart = Math.abs(plane(outside).offset(inside.faceCorners(1).get(0)));
    assertThat(apart).isCloseTo(gap, within(1e-9));
  }

  @Property(tries = 60, seed = "2026110026")
  void coverPanelsFoldOntoTheFrameOfTheFabric(
      @ForAll @IntRange(min = 3, max = 16) int n,
      @ForAll @Scale(3) @DoubleRange(min = 1.5, max = 3) double side,
      @ForAll @Scale(3) @DoubleRange(min = 0.8, max = 3) double height) {
    RegularPyramid fabric =
        FabricOffset.cover(
                RegularPyramid.ofBaseSideAndHeight(n, side, height).withOpeningSide(side / 4),
                0.02,
                0.0005)
            .surface();
    Outline stitch =
        Panel.of(fabric.faceOutline(), PanelSpec.of("P1", Demo.PLAN)).parts().get(0).stitch();
    for (int face = 1; face <= n; face++) {
      var corners = fabric.faceCorners(face);
      Vector3D across = corners.get(1).subtract(corners.get(0)).normalize();
      Vector3D up = fabric.faceNormal(face).cross(across);
      for (int i = 0; i < 4; i++) {
        Vector3D folded =
            corners
                .get(0)
                .add(across.multiply(stitch.vertex(i).getX()))
                .add(up.multiply(stitch.vertex(i).getY()));
        assertThat(folded.distance(corners.get(i))).isLessThan(1e-9 * side);
      }
    }
  }

  private static Plane plane(RegularPyramid frame) {
    var corners = frame.faceCorners(1);
    return Planes.fromPoints(
        corners.get(0),
        corners.get(1),
        corners.get(2),
        Precision.doubleEquivalenceOfEpsilon(1e-12));
  }
}
