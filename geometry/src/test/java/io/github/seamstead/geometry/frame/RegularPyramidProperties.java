package io.github.seamstead.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.numbers.core.Precision;

class RegularPyramidProperties {

  private static final Precision.DoubleEquivalence FINE =
      Precision.doubleEquivalenceOfEpsilon(1e-10);

  @Provide
  Arbitrary<RegularPyramid> pyramids() {
    return Pyramids.any();
  }

  @Property(tries = 150, seed = "2026110001")
  void anglesObeyTheirIdentities(@ForAll("pyramids") RegularPyramid pyramid) {
    FrameMeasures m = pyramid.measures();
    double r = m.inradius();
    double h = m.apexHeight();
    assertThat(m.hipSlope()).isLessThan(m.faceSlope());
    assertThat(m.drainageSlope()).isEqualTo(m.hipSlope());
    assertThat(m.developedAngle()).isLessThan(2 * Math.PI).isLessThan(m.coneAngle());
    assertThat(Math.cos(m.hipDihedral()))
        .isCloseTo(
            -(h * h * Math.cos(2 * Math.PI / pyramid.sides()) + r * r) / (h * h + r * r),
            within(1e-12));
    assertThat(pyramid.faceNormal(1).angle(pyramid.faceNormal(2)))
        .isCloseTo(m.hipBend(), within(1e-9));
    assertThat(m.baseDihedral() + m.openingDihedral()).isCloseTo(Math.PI, within(1e-15));
    assertThat(2 * m.baseAngle() + m.apexAngle()).isCloseTo(Math.PI, within(1e-12));
    assertThat(pyramid.whole().measures().coverArea() * Math.cos(m.faceSlope()))
        .isCloseTo(m.baseArea(), within(1e-12 * m.baseArea()));
  }

  @Property(tries = 150, seed = "2026110002")
  void facesInSpaceCoincideWithTheirOutline(@ForAll("pyramids") RegularPyramid pyramid) {
    Outline outline = pyramid.faceOutline();
    double close = 1e-9 * pyramid.baseSide();
    for (int face = 1; face <= pyramid.sides(); face++) {
      List<Vector3D> corners = pyramid.faceCorners(face);
      Vector3D origin = corners.get(0);
      Vector3D right = corners.get(1).subtract(origin).normalize();
      Vector3D up = pyramid.faceNormal(face).cross(right);
      assertThat(corners).hasSize(outline.size());
      for (int i = 0; i < corners.size(); i++) {
        Vector2D flat = outline.vertex(i);
        Vector3D placed = origin.add(right.multiply(flat.getX())).add(up.multiply(flat.getY()));
        assertThat(placed.distance(corners.get(i))).isLessThan(close);
      }
      // The right edge of a face is the left edge of the next, and the hip bears the face's number.
      List<Vector3D> next = pyramid.faceCorners(face + 1);
      assertThat(corners.get(1)).isEqualTo(next.get(0)).isEqualTo(pyramid.baseCorner(face));
      assertThat(corners.get(2)).isEqualTo(next.get(next.size() - 1));
    }
    assertThat(outline.area() * pyramid.sides())
        .isCloseTo(pyramid.measures().coverArea(), within(1e-11 * pyramid.measures().coverArea()));
  }

  @Property(tries = 40, seed = "2026110003")
  void volumeAndCentroidAreThoseOfTheSolid(@ForAll("pyramids") RegularPyramid pyramid) {
    List<Plane> planes = new ArrayList<>();
    planes.add(Planes.fromPointAndNormal(Vector3D.ZERO, Vector3D.of(0, 0, -1), FINE));
    if (pyramid.isTruncated()) {
      planes.add(Planes.fromPointAndNormal(pyramid.topCorner(1), Vector3D.of(0, 0, 1), FINE));
    }
    for (int face = 1; face <= pyramid.sides(); face++) {
      planes.add(
          Planes.fromPointAndNormal(pyramid.baseCorner(face), pyramid.faceNormal(face), FINE));
    }
    ConvexVolume solid = ConvexVolume.fromBounds(planes);
    FrameMeasures m = pyramid.measures();
    assertThat(solid.getSize()).isCloseTo(m.volume(), within(1e-8 * m.volume()));
    assertThat(solid.getCentroid().getZ())
        .isCloseTo(m.centroidHeight(), within(1e-8 * m.frameHeight()));
    double top = m.openingArea();
    assertThat(solid.getBoundarySize() - m.baseArea() - top)
        .isCloseTo(m.coverArea(), within(1e-8 * m.coverArea()));
  }

  @Property(tries = 100, seed = "2026110004")
  void centroidOfTheCoverIsThatOfAFace(@ForAll("pyramids") RegularPyramid pyramid) {
    FrameMeasures m = pyramid.measures();
    assertThat(pyramid.faceOutline().centroid().getY() * Math.sin(m.faceSlope()))
        .isCloseTo(m.coverCentroidHeight(), within(1e-11 * m.frameHeight()));
  }

  @Property(tries = 100, seed = "2026110005")
  void scalingScales(
      @ForAll("pyramids") RegularPyramid pyramid,
      @ForAll @DoubleRange(min = 0.01, max = 100) double factor) {
    FrameMeasures one = pyramid.measures();
    FrameMeasures other =
        new RegularPyramid(
                pyramid.sides(),
                factor * pyramid.baseSide(),
                factor * pyramid.apexHeight(),
                factor * pyramid.openingSide())
            .measures();
    assertThat(other.hipLength() / one.hipLength()).isCloseTo(factor, within(1e-11 * factor));
    assertThat(other.hipDihedral()).isCloseTo(one.hipDihedral(), within(1e-11));
    assertThat(other.coverArea() / one.coverArea())
        .isCloseTo(factor * factor, within(1e-11 * factor * factor));
    assertThat(other.volume() / one.volume())
        .isCloseTo(Math.pow(factor, 3), within(1e-11 * Math.pow(factor, 3)));
  }
}
