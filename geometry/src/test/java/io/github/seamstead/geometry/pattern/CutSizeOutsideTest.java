package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Mitres, notches and cut sizes against a geometry library and against hand sums. */
class CutSizeOutsideTest {

  private static final Source JTS =
      Source.derived("JTS Topology Suite, parallel lines made to meet in coordinates");
  private static final Source JTS_BUFFER =
      Source.derived("JTS Topology Suite, buffer with mitred joins");
  private static final Source TRIANGLE_3_4_5 =
      Source.derived("hand sum from first principles: triangles with sides as 3, 4 and 5");
  private static final Source COUNTED =
      Source.derived(
          "counted by hand: whole multiples less than nine tenths of a gap from the end");
  private static final double FAR = 100;

  /** The corner of two lines moved out square to the sides of an angle. */
  @ParameterizedTest
  @CsvSource({
    "100,0.04,0.03", "110,0.02,0.05", "120,0.03,0.03", "135,0.025,0.04", "150,0.06,0.05",
    "90,0.03,0.04", "85,0.04,0.04", "70,0.03,0.025", "60,0.05,0.05", "75,0.02,0.03"
  })
  void mitresOfParallelLines(double degrees, double first, double second) {
    double angle = Math.toRadians(degrees);
    Coordinate along = new Coordinate(FAR, 0);
    Coordinate other = new Coordinate(FAR * Math.cos(angle), FAR * Math.sin(angle));
    LineSegment one = new LineSegment(along, new Coordinate(0, 0));
    LineSegment two = new LineSegment(new Coordinate(0, 0), other);
    Coordinate corner = moved(one, first).lineIntersection(moved(two, second));
    OutsideCheck.of(
            "geometry.pattern.mitre",
            "corner of " + degrees + " deg, allowances " + first + " and " + second + " m, m",
            JTS)
        .expect(corner.distance(new Coordinate(0, 0)))
        .within(1e-9)
        .got(Mitre.reach(angle, first, second, 3));
  }

  private static LineSegment moved(LineSegment line, double out) {
    return new LineSegment(line.pointAlongOffset(0, out), line.pointAlongOffset(1, out));
  }

  /** The farthest corner of a mitred buffer round a triangle, beside its tip. */
  @ParameterizedTest
  @CsvSource({"2,1.8", "2,1.2", "1,1.5", "3,2.8", "1.5,1.6"})
  void tipsOfABufferedTriangle(double base, double height) {
    double allowance = 0.03;
    GeometryFactory factory = new GeometryFactory();
    Coordinate tip = new Coordinate(base / 2, height);
    Geometry triangle =
        factory.createPolygon(
            new Coordinate[] {
              new Coordinate(0, 0), new Coordinate(base, 0), tip, new Coordinate(0, 0)
            });
    BufferParameters mitred =
        new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 20);
    double top =
        BufferOp.bufferOp(triangle, allowance, mitred).getEnvelopeInternal().getMaxY() - height;
    OutsideCheck.of(
            "geometry.pattern.mitre",
            "tip of a triangle " + base + " m by " + height + " m, 30 mm all round, m",
            JTS_BUFFER)
        .expect(top)
        .within(1e-9)
        .got(Mitre.reach(2 * Math.atan(base / 2 / height), allowance, allowance, 20));
  }

  /** At a right angle the mitre is the hypotenuse; at 60 degrees it is twice the allowance. */
  @ParameterizedTest
  @CsvSource({"90,30,40,50", "90,50,120,130", "60,25,25,50", "120,0,30,34.641016151"})
  void mitresByHand(double degrees, double first, double second, double reach) {
    OutsideCheck.of(
            "geometry.pattern.mitre",
            "corner of " + degrees + " deg, allowances " + first + " and " + second + " mm, mm",
            TRIANGLE_3_4_5)
        .expect(reach)
        .within(5e-9)
        .got(1000 * Mitre.reach(Math.toRadians(degrees), first / 1000, second / 1000, 4));
  }

  private static PanelSpec spec(double hem, double seam) {
    return PanelSpec.of(
            "P",
            EdgePlan.of(
                EdgeAllowance.hem(hem), EdgeAllowance.finSeam(seam), EdgeAllowance.turnIn(0.05)))
        .withMitreLimit(5);
  }

  /** Halves of the face are 3-4-5 triangles, so that sin is 0.8 or 0.6 at the base. */
  @ParameterizedTest
  @CsvSource({
    "6,4,0.04,6.1",
    "6,4,0.02,6.05",
    "8,3,0.03,8.1",
    "8,3,0.06,8.2",
    "3,2,0.04,3.1",
    "4,1.5,0.03,4.1"
  })
  void widthsByHand(double base, double height, double seam, double width) {
    OutsideCheck.of(
            "geometry.pattern.width",
            "face " + base + " m by " + height + " m, seams " + seam + " m, m",
            TRIANGLE_3_4_5)
        .expect(width)
        .within(1e-9)
        .got(CutSize.width(Demo.triangle(base, height), spec(0.05, seam)));
  }

  /** The tip of a face of half base 3 and height 4 has sin(half) = 0.6: seam / 0.6 above it. */
  @ParameterizedTest
  @CsvSource({
    "6,4,0.05,0.03,4.1",
    "6,4,0.08,0.06,4.18",
    "8,3,0.05,0.04,3.1",
    "8,3,0.1,0.02,3.125",
    "3,2,0.04,0.03,2.09",
    "4,1.5,0.02,0.04,1.57"
  })
  void heightsByHand(double base, double height, double hem, double seam, double cut) {
    OutsideCheck.of(
            "geometry.pattern.height",
            "face " + base + " m by " + height + " m, hem " + hem + ", seams " + seam + " m, m",
            TRIANGLE_3_4_5)
        .expect(cut)
        .within(1e-9)
        .got(CutSize.height(Demo.triangle(base, height), spec(hem, seam)));
  }

  /** The base line cut by the hips' parallels. */
  @ParameterizedTest
  @CsvSource({"2.4,3.1,0.025", "1.9,2.85,0.04", "2.2,0.9,0.03", "0.26,0.36,0.008"})
  void widthsByParallels(double base, double height, double seam) {
    Coordinate tip = new Coordinate(base / 2, height);
    LineSegment ground = new LineSegment(-FAR, 0, FAR, 0);
    LineSegment left = new LineSegment(tip, new Coordinate(0, 0));
    LineSegment right = new LineSegment(tip, new Coordinate(base, 0));
    double from = moved(left, -seam).lineIntersection(ground).getX();
    double to = moved(right, seam).lineIntersection(ground).getX();
    OutsideCheck.of(
            "geometry.pattern.width",
            "face " + base + " m by " + height + " m, seams " + seam + " m, m",
            JTS)
        .expect(to - from)
        .within(1e-9)
        .got(CutSize.width(Demo.triangle(base, height), spec(0.05, seam)));
  }

  @ParameterizedTest
  @CsvSource({
    "3.2,0.5,6",
    "3,0.5,5",
    "3.04,0.5,5",
    "3.06,0.5,6",
    "0.54,0.5,0",
    "0.56,0.5,1",
    "2.85,0.3,9",
    "1.9,0.25,7",
    "10,0.5,19",
    "4.4,0.4,10"
  })
  void notchesCounted(double seam, double spacing, int notches) {
    OutsideCheck.of(
            "geometry.pattern.notches",
            "seam of " + seam + " m, one each " + spacing + " m",
            COUNTED)
        .expect(notches)
        .within(1e-9)
        .got(Notches.count(seam, spacing, Steps.none()));
  }

  /** A square top: the turn-in alone stands above. */
  @ParameterizedTest
  @CsvSource({"2,4,0.5,0.05,2.1", "3,3,0.8,0.04,2.49"})
  void heightsBelowAnOpening(double base, double apex, double part, double hem, double cut) {
    Outline face = Demo.trapezoid(base, apex, part);
    OutsideCheck.of(
            "geometry.pattern.height",
            "face cut off at " + part + " of " + apex + " m, hem " + hem + " m, turn-in 50 mm, m",
            Source.derived("hand sum from first principles: hem, face and turn-in"))
        .expect(cut)
        .within(1e-9)
        .got(CutSize.height(face, spec(hem, 0.02)));
  }
}
