package io.github.seamstead.examples.instance;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Rotations;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Reads an instance as a stream; unknown members are passed over. */
public final class InstanceReader {

  private final Path file;
  private final JsonParser json;
  private String name = "";
  private double width = Double.NaN;
  private Optional<Double> published = Optional.empty();
  private final List<Piece> pieces = new ArrayList<>();
  private final List<List<Double>> rotations = new ArrayList<>();

  private InstanceReader(Path file, JsonParser json) {
    this.file = file;
    this.json = json;
    String plain = String.valueOf(file.getFileName());
    name = plain.endsWith(".json") ? plain.substring(0, plain.length() - 5) : plain;
  }

  /**
   * Reads an instance.
   *
   * @param file a JSON document with {@code stripWidth} and {@code pieces}
   * @return the instance
   * @throws IllegalArgumentException if the file is missing or not of that form; the message names
   *     the file and the place
   */
  public static LayoutInstance read(Path file) {
    if (!Files.exists(file)) {
      throw ArgumentFault.finding(file + ": there is no such file");
    }
    try (JsonParser json = new JsonFactory().createParser(file.toFile())) {
      return new InstanceReader(file, json).instance();
    } catch (JsonParseException e) {
      throw ArgumentFault.finding(file + ": " + e.getMessage()).causedBy(e);
    } catch (IOException e) {
      throw new UncheckedIOException(file + ": cannot be read: " + IoReason.of(e), e);
    }
  }

  private LayoutInstance instance() throws IOException {
    expect(json.nextToken() == JsonToken.START_OBJECT, "must be one object");
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String field = json.currentName();
      json.nextToken();
      switch (field) {
        case "name" -> name = json.getText();
        case "stripWidth" -> width = number(field);
        case "bestPublishedDensityPercent" -> published = Optional.of(number(field));
        case "pieces" -> {
          expect(json.currentToken() == JsonToken.START_ARRAY, "pieces: must be a list");
          while (json.nextToken() == JsonToken.START_OBJECT) {
            piece();
          }
        }
        default -> json.skipChildren();
      }
    }
    expect(width > 0, "stripWidth: must be a number greater than 0");
    expect(!pieces.isEmpty(), "pieces: must have at least one");
    return new LayoutInstance(name, width, pieces, rotations, published);
  }

  private void piece() throws IOException {
    String id = "piece" + pieces.size();
    int quantity = 1;
    List<Double> degrees = List.of(0.0);
    List<Vector2D> corners = List.of();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String field = json.currentName();
      json.nextToken();
      switch (field) {
        case "id" -> id = json.getText();
        case "quantity" -> quantity = (int) number(field);
        case "rotationsDeg" -> degrees = numbers(field);
        case "vertices" -> corners = corners();
        default -> json.skipChildren();
      }
    }
    try {
      double[] radians = degrees.stream().mapToDouble(Math::toRadians).toArray();
      Outline outline = new Outline(corners);
      pieces.add(Piece.of(id, outline).withCount(quantity).withRotations(Rotations.of(radians)));
      rotations.add(degrees);
    } catch (IllegalArgumentException e) {
      throw ArgumentFault.finding(file + ": " + id + ": " + e.getMessage()).causedBy(e);
    }
  }

  private List<Double> numbers(String field) throws IOException {
    expect(json.currentToken() == JsonToken.START_ARRAY, field + ": must be a list of numbers");
    List<Double> out = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      out.add(number(field));
    }
    return out;
  }

  private List<Vector2D> corners() throws IOException {
    expect(json.currentToken() == JsonToken.START_ARRAY, "vertices: must be a list of pairs");
    List<Vector2D> out = new ArrayList<>();
    while (json.nextToken() == JsonToken.START_ARRAY) {
      List<Double> pair = numbers("vertices");
      expect(pair.size() == 2, "vertices: each must be a pair of numbers");
      Vector2D corner = Vector2D.of(pair.get(0), pair.get(1));
      if (out.isEmpty() || !out.get(out.size() - 1).equals(corner)) {
        out.add(corner);
      }
    }
    // Some files close the polygon by repeating its first corner.
    if (out.size() > 1 && out.get(0).equals(out.get(out.size() - 1))) {
      out.remove(out.size() - 1);
    }
    return out;
  }

  private double number(String field) throws IOException {
    expect(json.currentToken().isNumeric(), field + ": must be a number");
    return json.getDoubleValue();
  }

  private void expect(boolean condition, String message) {
    if (!condition) {
      throw ArgumentFault.finding(
          file + ", line " + json.currentLocation().getLineNr() + ": " + message);
    }
  }
}
