package io.github.seamstead.geometry.members;

import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Cut lengths and reaches against bars that are made and cut in coordinates. */
class LengthsOutsideTest {

  private static final Source JTS =
      Source.derived("JTS Topology Suite, a bar cut by level and plumb lines");
  private static final Source SPACE =
      Source.derived("commons-geometry, corners of the bar in space");
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double FAR = 50;

  /** The bar lies along the slope; ground and post are half planes. */
  @ParameterizedTest
  @CsvSource({
    "35,3.2,0.09,0,0",
    "42,2.85,0.07,0.02,0.05",
    "50,4.1,0.095,0.03,0.01",
    "28,3.6,0.045,0,0.04",
    "60,2.2,0.12,0.05,0.05",
    "45,3,0.1,0,0"
  })
  void hipsCutLevelAndPlumb(
      double degrees, double line, double depth, double footBack, double headBack) {
    double slope = Math.toRadians(degrees);
    double cos = Math.cos(slope);
    double sin = Math.sin(slope);
    Coordinate[] bar = new Coordinate[5];
    double[][] corners = {
      {-FAR, -depth / 2}, {FAR, -depth / 2}, {FAR, depth / 2}, {-FAR, depth / 2}
    };
    for (int i = 0; i < 5; i++) {
      double[] c = corners[i % 4];
      bar[i] = new Coordinate(c[0] * cos - c[1] * sin, c[0] * sin + c[1] * cos);
    }
    double ground = footBack * sin;
    double post = (line - headBack) * cos;
    Geometry between =
        FACTORY.createPolygon(
            new Coordinate[] {
              new Coordinate(-2 * FAR, ground),
              new Coordinate(post, ground),
              new Coordinate(post, 2 * FAR),
              new Coordinate(-2 * FAR, 2 * FAR),
              new Coordinate(-2 * FAR, ground)
            });
    double least = Double.MAX_VALUE;
    double greatest = -Double.MAX_VALUE;
    for (Coordinate c : FACTORY.createPolygon(bar).intersection(between).getCoordinates()) {
      least = Math.min(least, c.x * cos + c.y * sin);
      greatest = Math.max(greatest, c.x * cos + c.y * sin);
    }
    OutsideCheck.of(
            "geometry.members.hiplength",
            "slope " + degrees + " deg, " + line + " m node to node, " + depth + " m deep, m",
            JTS)
        .expect(greatest - least)
        .within(1e-9)
        .got(
            HipLength.cutLength(
                line, slope, MemberSection.timber(0.045, depth), footBack, headBack, Steps.none()));
  }

  /** The four arrises of a rail, each cut by the upright planes through the corners. */
  @ParameterizedTest
  @CsvSource({
    "5,2.4,0,0.045,0.095,0", "6,1.9,0,0.07,0.07,0.02", "8,1.6,50,0.045,0.095,0",
    "12,1.1,40,0.05,0.08,0.03", "4,3,55,0.045,0.045,0.01", "7,2,30,0.06,0.09,0"
  })
  void railsCutToTheMitre(
      int sides, double side, double slopeDegrees, double width, double depth, double back) {
    double slope = Math.toRadians(slopeDegrees);
    double half = Math.PI / sides;
    // Along the rail x, inward y, up z; the width leans with the face, the depth is square to it.
    Vector3D across = Vector3D.of(0, Math.cos(slope), Math.sin(slope));
    Vector3D deep = Vector3D.of(0, -Math.sin(slope), Math.cos(slope));
    double greatest = 0;
    for (int w = -1; w <= 1; w += 2) {
      for (int d = -1; d <= 1; d += 2) {
        Vector3D arris = across.multiply(w * width / 2).add(deep.multiply(d * depth / 2));
        // The plane through the corner and the axis turns in by half the angle at the centre.
        double end = side / 2 - back - arris.getY() * Math.tan(half);
        greatest = Math.max(greatest, end);
      }
    }
    OutsideCheck.of(
            "geometry.members.ringlength",
            sides + " sides of " + side + " m, lying at " + slopeDegrees + " deg, m",
            SPACE)
        .expect(2 * greatest)
        .within(1e-9)
        .got(
            RingLength.cutLength(
                "rail",
                side,
                CompoundCut.ringCorner(sides, slope),
                MemberSection.timber(width, depth),
                back,
                Steps.none()));
  }

  /** The farthest arris from a face's plane, from the frame's own corners in space. */
  @ParameterizedTest
  @CsvSource({
    "5,2.4,1.8,0.045,0.095",
    "6,1.9,1.857,0.07,0.07",
    "8,1.6,2.2,0.038,0.089",
    "12,1.1,1.5,0.05,0.05"
  })
  void arrisesFromTheFaces(int sides, double side, double height, double width, double depth) {
    RegularPyramid frame = RegularPyramid.ofBaseSideAndHeight(sides, side, height);
    MemberReach reach =
        MemberReach.of(
            frame,
            MemberSpec.of(MemberSection.timber(width, depth), MemberSection.timber(width, depth)));
    Vector3D a = frame.baseCorner(1);
    Vector3D b = frame.baseCorner(2);
    Vector3D normal = outward(a, b, frame.apex());
    Vector3D hip = frame.apex().subtract(a).normalize();
    Vector3D level = hip.cross(Vector3D.Unit.PLUS_Z).normalize();
    OutsideCheck.of("geometry.members.memberreach", name("hip", sides, side, height), SPACE)
        .expect(farthest(normal, level, hip.cross(level).normalize(), width, depth))
        .within(1e-9)
        .got(reach.hip());
    Vector3D rail = b.subtract(a).normalize();
    Vector3D inward = rail.cross(Vector3D.Unit.PLUS_Z).normalize();
    OutsideCheck.of("geometry.members.memberreach", name("ring", sides, side, height), SPACE)
        .expect(farthest(normal, inward, Vector3D.Unit.PLUS_Z, width, depth))
        .within(1e-9)
        .got(reach.ring());
  }

  private static String name(String member, int sides, double side, double height) {
    return member + " of " + sides + " sides of " + side + " m, " + height + " m high, m";
  }

  private static Vector3D outward(Vector3D a, Vector3D b, Vector3D apex) {
    Vector3D normal = b.subtract(a).cross(apex.subtract(a)).normalize();
    return normal.dot(a) < 0 ? normal.negate() : normal;
  }

  private static double farthest(
      Vector3D normal, Vector3D across, Vector3D deep, double width, double depth) {
    return Math.abs(normal.dot(across)) * width / 2 + Math.abs(normal.dot(deep)) * depth / 2;
  }
}
