package io.github.seamstead.examples.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.seamstead.api.job.JobSchema;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The published schema of jobs: what stands where in a document, and what could stand there. */
final class JobKeys {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Pattern LIMITS =
      Pattern.compile("from (-?[0-9.]+)(?: (\\S+))? to (-?[0-9.]+)(?: (\\S+))?;");
  private static final Pattern BARE = Pattern.compile("a bare number is in (\\S+)$");

  private final JsonNode schema;

  JobKeys() {
    try {
      schema = new ObjectMapper().readTree(JobSchema.text());
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /**
   * A place in a document.
   *
   * @param holder the object or array that holds it
   * @param key its key; empty in an array
   * @param index its index in an array
   * @param form what the schema says of it
   */
  record Place(JsonNode holder, String key, int index, JsonNode form) {

    Optional<JsonNode> value() {
      return Optional.ofNullable(
          holder instanceof ArrayNode array ? array.get(index) : holder.get(key));
    }

    void put(JsonNode value) {
      if (holder instanceof ArrayNode array) {
        array.set(index, value);
      } else {
        ((ObjectNode) holder).set(key, value);
      }
    }

    void remove() {
      if (holder instanceof ArrayNode array) {
        array.remove(index);
      } else {
        ((ObjectNode) holder).remove(key);
      }
    }
  }

  /** Every place that is filled, and of every object that is there every key that could be. */
  List<Place> places(JsonNode document) {
    List<Place> found = new ArrayList<>();
    gather(document, schema, found);
    return found;
  }

  private void gather(JsonNode value, JsonNode form, List<Place> found) {
    JsonNode resolved = resolve(form);
    if (value instanceof ObjectNode object) {
      resolved
          .path("properties")
          .properties()
          .forEach(
              key -> {
                found.add(new Place(object, key.getKey(), -1, resolve(key.getValue())));
                if (object.has(key.getKey())) {
                  gather(object.get(key.getKey()), key.getValue(), found);
                }
              });
    } else if (value instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        found.add(new Place(array, "", i, resolve(resolved.path("items"))));
        gather(array.get(i), resolved.path("items"), found);
      }
    }
  }

  private JsonNode resolve(JsonNode form) {
    String reference = form.path("$ref").asText();
    return reference.isEmpty()
        ? form
        : schema.path("$defs").path(reference.substring(reference.lastIndexOf('/') + 1));
  }

  /** Makes a whole document. */
  JsonNode document(Draw draw) {
    return make(schema, "", draw);
  }

  /** Makes a value that follows the schema of its place. */
  JsonNode make(JsonNode unresolved, String key, Draw draw) {
    JsonNode form = resolve(unresolved);
    if (form.has("enum")) {
      return form.get("enum").get(draw.below(form.get("enum").size()));
    }
    String type = form.path("type").isArray() ? "quantity" : form.path("type").asText();
    return switch (type) {
      case "object" -> object(form, draw);
      case "array" -> array(form, key, draw);
      case "boolean" -> NODES.booleanNode(draw.chance(0.5));
      case "integer" -> NODES.numberNode(whole(form, draw));
      case "quantity" -> quantity(form, draw);
      default -> form.has("$comment") ? quantity(form, draw) : text(form, key, draw);
    };
  }

  private ObjectNode object(JsonNode form, Draw draw) {
    ObjectNode made = NODES.objectNode();
    List<String> must = new ArrayList<>();
    form.path("required").forEach(name -> must.add(name.asText()));
    double filled = draw.one(0.15, 0.4, 0.8);
    boolean measures = form.path("properties").has("apexAngle");
    int taken = 0;
    for (var key : form.path("properties").properties()) {
      boolean wanted = measures ? draw.chance(0.2) && taken < 2 : draw.chance(filled);
      if (must.contains(key.getKey()) || wanted) {
        made.set(key.getKey(), make(key.getValue(), key.getKey(), draw));
        taken++;
      }
    }
    if (measures && taken < 2) {
      made.put("baseSide", Draw.rounded(draw.between(0.2, 4)));
      made.put("height", Draw.rounded(draw.between(0.2, 6)));
    }
    return made;
  }

  private ArrayNode array(JsonNode form, String key, Draw draw) {
    ArrayNode made = NODES.arrayNode();
    int least = form.path("minItems").asInt(0);
    int count = Math.max(least, 1 + draw.below(draw.one(1, 3, 6)));
    for (int i = 0; i < count; i++) {
      made.add(make(form.path("items"), key, draw));
    }
    return made;
  }

  static long whole(JsonNode form, Draw draw) {
    double low = form.path("minimum").asDouble(0);
    double high = form.path("maximum").asDouble(1000);
    double near = draw.chance(0.7) ? Math.min(high, low + 8) : high;
    return Math.round(draw.within(low, near));
  }

  private static JsonNode quantity(JsonNode form, Draw draw) {
    String comment = form.path("$comment").asText();
    Matcher stated = LIMITS.matcher(comment);
    double low = form.path("minimum").asDouble();
    double high = form.path("maximum").asDouble();
    String unit = "";
    if (stated.find()) {
      low = Double.parseDouble(stated.group(1));
      high = Double.parseDouble(stated.group(3));
      unit = stated.group(4) == null ? "" : stated.group(4);
    }
    Matcher bare = BARE.matcher(comment);
    double value = plausible(low, high, draw);
    if (unit.isEmpty() && bare.find() && draw.chance(0.5)) {
      unit = bare.group(1).equals("parts") ? "" : bare.group(1);
    }
    if (unit.isEmpty()) {
      return NODES.numberNode(value);
    }
    return NODES.textNode(java.math.BigDecimal.valueOf(value).toPlainString() + " " + unit);
  }

  /** The limits lie far apart; what people write lies mostly in the middle of them. */
  private static double plausible(double low, double high, Draw draw) {
    if (low > 0 && high / low > 100 && draw.chance(0.6)) {
      double middle = Math.sqrt(low * high);
      double decades = Math.sqrt(high / low) / 5;
      return draw.within(Draw.rounded(middle / decades), Draw.rounded(middle * decades));
    }
    return draw.within(low, high);
  }

  private static JsonNode text(JsonNode form, String key, Draw draw) {
    String pattern = form.path("pattern").asText();
    if (pattern.startsWith("^([BT]")) {
      return NODES.textNode(
          draw.one("A", "C", "B" + (1 + draw.below(6)), "T" + (1 + draw.below(6))));
    }
    if (key.equals("start")) {
      return NODES.textNode(draw.one("2027-05-03 08:00", "2028-02-29", "2027-13-01", "noon"));
    }
    return NODES.textNode(draw.one("one", "two", "three-3", "n" + draw.below(9)));
  }
}
