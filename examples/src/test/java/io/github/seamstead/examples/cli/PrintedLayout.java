package io.github.seamstead.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * Holds a printed layout to the instance as given, from the text of both alone: it shares no code
 * with the engine, the reader of instances or the writer of layouts.
 */
final class PrintedLayout {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private PrintedLayout() {}

  /** Checks every rule of the plain form and gives the density that the layout has, in percent. */
  static double verifiedDensity(Path instanceFile, String line) throws IOException {
    JsonNode instance = JSON.readTree(instanceFile.toFile());
    JsonNode layout = JSON.readTree(line);
    double width = instance.get("stripWidth").asDouble();
    double length = layout.get("usedLength").asDouble();
    Map<String, JsonNode> pieces = new HashMap<>();
    instance.get("pieces").forEach(p -> pieces.put(p.get("id").asText(), p));
    List<Polygon> placed = new ArrayList<>();
    Set<String> copies = new HashSet<>();
    double area = 0;
    for (JsonNode p : layout.get("placements")) {
      String id = p.get("piece").asText();
      JsonNode piece = pieces.get(id);
      assertThat(copies.add(id + "/" + p.get("copy").asInt())).isTrue();
      assertThat(p.get("copy").asInt()).isBetween(1, piece.path("quantity").asInt(1));
      assertTurnIsAllowed(piece, p.get("rotationDeg").asDouble());
      Polygon polygon = placed(piece, p);
      var box = polygon.getEnvelopeInternal();
      double tolerance = 1e-6 * width;
      assertThat(box.getMinX()).isGreaterThanOrEqualTo(-tolerance);
      assertThat(box.getMaxX()).isLessThanOrEqualTo(length + tolerance);
      assertThat(box.getMinY()).isGreaterThanOrEqualTo(-tolerance);
      assertThat(box.getMaxY()).isLessThanOrEqualTo(width + tolerance);
      placed.add(polygon);
      area += polygon.getArea();
    }
    int wanted = 0;
    for (JsonNode piece : instance.get("pieces")) {
      wanted += piece.path("quantity").asInt(1);
    }
    assertThat(placed).hasSize(wanted);
    assertApart(placed, width);
    double density = 100 * area / (width * length);
    assertThat(layout.get("density").asDouble()).isCloseTo(density, within(1e-4));
    assertThat(layout.get("lowerBound").asDouble()).isLessThanOrEqualTo(length * (1 + 1e-9));
    double gap = (length - layout.get("lowerBound").asDouble()) / length;
    assertThat(layout.get("gap").asDouble()).isCloseTo(gap, within(1e-6));
    return density;
  }

  private static void assertTurnIsAllowed(JsonNode piece, double degrees) {
    boolean allowed = !piece.has("rotationsDeg") && Math.abs(degrees) < 1e-6;
    for (JsonNode a : piece.path("rotationsDeg")) {
      allowed |= Math.abs(Math.IEEEremainder(a.asDouble() - degrees, 360)) < 1e-6;
    }
    assertThat(allowed).as("rotation %s of %s", degrees, piece.get("id")).isTrue();
  }

  private static Polygon placed(JsonNode piece, JsonNode p) {
    double angle = Math.toRadians(p.get("rotationDeg").asDouble());
    JsonNode vertices = piece.get("vertices");
    Coordinate[] ring = new Coordinate[vertices.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      JsonNode v = vertices.get(i % vertices.size());
      double x = v.get(0).asDouble();
      double y = v.get(1).asDouble();
      ring[i] =
          new Coordinate(
              Math.cos(angle) * x - Math.sin(angle) * y + p.get("x").asDouble(),
              Math.sin(angle) * x + Math.cos(angle) * y + p.get("y").asDouble());
    }
    return FACTORY.createPolygon(ring);
  }

  private static void assertApart(List<Polygon> placed, double width) {
    PrecisionModel grid = new PrecisionModel(1e10 / width);
    for (int i = 0; i < placed.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (placed.get(i).getEnvelopeInternal().intersects(placed.get(j).getEnvelopeInternal())) {
          double common =
              OverlayNG.overlay(placed.get(i), placed.get(j), OverlayNG.INTERSECTION, grid)
                  .getArea();
          assertThat(common).as("overlap of %d and %d", i, j).isLessThan(1e-6 * width * width);
        }
      }
    }
  }
}
