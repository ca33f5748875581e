package io.github.seamstead.examples.instance;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.StripResult;
import io.github.seamstead.shared.plane.Outline;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Writes a strip layout as one JSON line and as a drawing. */
public final class InstanceWriter {

  private InstanceWriter() {}

  /**
   * Writes one line.
   *
   * @param instance the instance
   * @param result its layout
   * @param seconds what the search was given, in seconds
   * @param seed of the search
   * @return the JSON text without a line end; density in percent, gap as a ratio
   */
  public static String json(
      LayoutInstance instance, StripResult result, double seconds, long seed) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("name", instance.name());
      json.writeNumberField("density", 100 * result.density());
      json.writeNumberField("usedLength", result.length());
      json.writeNumberField("lowerBound", result.lowerBound());
      json.writeNumberField("gap", result.gap());
      json.writeNumberField("seconds", seconds);
      json.writeNumberField("seed", seed);
      json.writeArrayFieldStart("placements");
      for (Placement p : result.placements()) {
        json.writeStartObject();
        json.writeStringField("piece", p.pieceId());
        json.writeNumberField("copy", p.copy());
        json.writeNumberField("rotationDeg", degrees(instance, p));
        json.writeNumberField("x", p.shift().getX());
        json.writeNumberField("y", p.shift().getY());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** The rotation as the instance wrote it, so that 180 is not 180.00000000000003. */
  private static double degrees(LayoutInstance instance, Placement p) {
    double turned = Math.toDegrees(p.rotation());
    double nearest = turned;
    double off = Double.POSITIVE_INFINITY;
    for (int k = 0; k < instance.pieces().size(); k++) {
      if (instance.pieces().get(k).id().equals(p.pieceId())) {
        for (double d : instance.rotationsDeg().get(k)) {
          double difference = Math.abs(Math.IEEEremainder(d - turned, 360));
          if (difference < off) {
            off = difference;
            nearest = d;
          }
        }
      }
    }
    return nearest;
  }

  /**
   * Draws the layout.
   *
   * @param instance the instance
   * @param result its layout
   * @return an SVG document with the strip's length across the page
   */
  public static String svg(LayoutInstance instance, StripResult result) {
    Map<String, Outline> outlines = new HashMap<>();
    for (Piece piece : instance.pieces()) {
      outlines.put(piece.id(), piece.outline());
    }
    double w = instance.stripWidth();
    double scale = 1000 / Math.max(result.length(), w);
    StringBuilder svg = new StringBuilder();
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.3f %.3f\">%n",
            result.length() * scale,
            w * scale));
    svg.append(
        String.format(
            Locale.ROOT,
            "<rect width=\"%.3f\" height=\"%.3f\" fill=\"#f4f1ea\" stroke=\"#333\"/>%n",
            result.length() * scale,
            w * scale));
    for (Placement p : result.placements()) {
      svg.append("<polygon fill=\"#b9cfd8\" stroke=\"#24424f\" stroke-width=\"0.8\" points=\"");
      for (Vector2D v : p.place(Objects.requireNonNull(outlines.get(p.pieceId()))).vertices()) {
        svg.append(
            String.format(Locale.ROOT, "%.3f,%.3f ", v.getX() * scale, (w - v.getY()) * scale));
      }
      svg.append("\"><title>")
          .append(p.pieceId().replace("&", "&amp;").replace("<", "&lt;"))
          .append(' ')
          .append(p.copy())
          .append("</title></polygon>\n");
    }
    return svg.append("</svg>\n").toString();
  }
}
