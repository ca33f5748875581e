package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Moved faces against planes that are moved and made to meet in space; laps by hand. */
class OffsetOutsideTest {

  private static final Source PLANES =
      Source.derived("commons-geometry, three planes moved and made to meet");
  private static final Source SINES =
      Source.derived("hand sum from first principles: sines of 30 and 45 degrees and of 3-4-5");
  private static final Precision.DoubleEquivalence EXACT =
      Precision.doubleEquivalenceOfEpsilon(1e-12);

  @ParameterizedTest
  @CsvSource({
    "4,3,2,0.03",
    "5,2.4,1.8,0.05",
    "6,1.9,1.857,0.04",
    "7,2,2.5,-0.1",
    "8,1.6,2.2,0.025",
    "9,1.5,1.4,-0.06",
    "12,1.1,1.5,0.02"
  })
  void planesMovedAlongTheirNormals(int sides, double side, double height, double distance) {
    RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(sides, side, height);
    Plane[] faces = new Plane[3];
    for (int i = 0; i < 3; i++) {
      double turn = 2 * Math.PI * i / sides;
      faces[i] =
          moved(corner(frame, turn), corner(frame, turn + 2 * Math.PI / sides), frame, distance);
    }
    Vector3D apex = Plane.intersection(faces[0], faces[1], faces[2]);
    Plane ground = Planes.fromPointAndNormal(Vector3D.ZERO, Vector3D.Unit.PLUS_Z, EXACT);
    Vector3D first = Plane.intersection(faces[0], faces[1], ground);
    Vector3D second = Plane.intersection(faces[1], faces[2], ground);
    RegularPyramid surface = FabricOffset.by(frame, distance).surface();
    String what =
        sides + " sides of " + side + " m, " + height + " m high, moved " + distance + " m: ";
    OutsideCheck.of("geometry.frame.offset", what + "base side, m", PLANES)
        .expect(first.distance(second))
        .within(1e-9)
        .got(surface.baseSide());
    OutsideCheck.of("geometry.frame.offset", what + "apex height, m", PLANES)
        .expect(apex.getZ())
        .within(1e-9)
        .got(surface.apexHeight());
  }

  private static Vector3D corner(RegularPyramid frame, double turn) {
    double radius = frame.baseSide() / (2 * Math.sin(Math.PI / frame.sides()));
    return Vector3D.of(radius * Math.cos(turn), radius * Math.sin(turn), 0);
  }

  private static Plane moved(Vector3D a, Vector3D b, RegularPyramid frame, double distance) {
    Vector3D apex = Vector3D.of(0, 0, frame.apexHeight());
    Vector3D normal = b.subtract(a).cross(apex.subtract(a)).normalize();
    return Planes.fromPointAndNormal(a.add(normal.multiply(distance)), normal, EXACT);
  }

  @ParameterizedTest
  @CsvSource({
    "30,0.1,0.2",
    "30,0.075,0.15",
    "45,0.1,0.141421356237",
    "36.8698976458,0.09,0.15",
    "53.1301023542,0.08,0.1",
    "5.7391704773,0.01,0.1"
  })
  void lapsByHand(double degrees, double rise, double lap) {
    OutsideCheck.of(
            "geometry.frame.lap", "hip at " + degrees + " deg, rise " + rise + " m, m", SINES)
        .expect(lap)
        .within(1e-9)
        .got(new Drainage(Math.toRadians(80), Math.toRadians(degrees)).lapForRise(rise));
  }
}
