package io.github.seamstead.geometry.markout;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** Distances along and square to a base line against a geometry library and by hand. */
class OffsetsOutsideTest {

  private static final Source JTS =
      Source.derived("JTS Topology Suite, projection factor and distance to a line");
  private static final Source HAND =
      Source.derived("hand sum from first principles: axes turned by a 3-4-5 triangle");

  @ParameterizedTest
  @CsvSource({
    "0,0,5,0,1.2,0.7",
    "0,0,4,3,2,2.5",
    "1,1,6,2,3,4",
    "-2,0.5,3,3.5,0.4,2.9",
    "0,0,2,5,-1,1"
  })
  void projections(double zx, double zy, double ex, double ey, double px, double py) {
    LineSegment line = new LineSegment(zx, zy, ex, ey);
    Coordinate point = new Coordinate(px, py);
    TapeOffset offset =
        TapeOffset.of(Vector2D.of(px, py), Vector2D.of(zx, zy), Vector2D.of(ex, ey));
    String what =
        "(" + px + ", " + py + ") from (" + zx + ", " + zy + ") to (" + ex + ", " + ey + "): ";
    OutsideCheck.of("geometry.markout.offset", what + "along, m", JTS)
        .expect(line.projectionFactor(point) * line.getLength())
        .within(1e-9)
        .got(offset.along());
    OutsideCheck.of("geometry.markout.offset", what + "across, m", JTS)
        .expect(line.distancePerpendicular(point))
        .within(1e-9)
        .got(offset.across());
  }

  /** Axes along (4, 3) and (-3, 4): a point of a 3-4-5 grid has whole distances. */
  @ParameterizedTest
  @CsvSource({"1,7,5,5", "5,10,10,5", "4,3,5,0", "-3,4,0,5"})
  void byHand(double px, double py, double along, double across) {
    TapeOffset offset = TapeOffset.of(Vector2D.of(px, py), Vector2D.ZERO, Vector2D.of(8, 6));
    String what = "(" + px + ", " + py + ") from a line to (8, 6): ";
    OutsideCheck.of("geometry.markout.offset", what + "along, m", HAND)
        .expect(along)
        .within(1e-9)
        .got(offset.along());
    OutsideCheck.of("geometry.markout.offset", what + "across, m", HAND)
        .expect(across)
        .within(1e-9)
        .got(offset.across());
  }
}
