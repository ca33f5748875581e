package io.github.seamstead.shared.plane;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Outlines as geometries of the oracle library. */
public final class Jts {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Jts() {}

  public static Polygon polygon(Outline outline) {
    return polygon(outline.vertices());
  }

  static Polygon polygon(List<Vector2D> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = coordinate(corners.get(i % corners.size()));
    }
    return FACTORY.createPolygon(ring);
  }

  public static LineString segment(Vector2D from, Vector2D to) {
    return FACTORY.createLineString(new Coordinate[] {coordinate(from), coordinate(to)});
  }

  public static Point point(Vector2D v) {
    return FACTORY.createPoint(coordinate(v));
  }

  private static Coordinate coordinate(Vector2D v) {
    return new Coordinate(v.getX(), v.getY());
  }
}
