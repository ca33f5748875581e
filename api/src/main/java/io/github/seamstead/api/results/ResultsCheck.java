package io.github.seamstead.api.results;

import io.github.seamstead.api.chapter.internal.SchemaParts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Holds plain data against the table that the writer writes by. */
final class ResultsCheck {

  /** Beyond this many faults a reader of the list gains nothing. */
  private static final int MOST_FAULTS = 100;

  private final List<String> faults = new ArrayList<>();

  private ResultsCheck() {}

  /** Lists what the data lacks or has of another type. Keys that are not known are left aside. */
  static List<String> faults(Object data, Map<String, Object> schema) {
    ResultsCheck check = new ResultsCheck();
    check.value(data, schema, "$");
    return check.faults;
  }

  private void value(Object value, Map<String, Object> schema, String path) {
    if (faults.size() >= MOST_FAULTS) {
      return;
    }
    String type = String.valueOf(schema.get("type"));
    switch (type) {
      case "object" -> {
        if (value instanceof Map<?, ?>) {
          object(SchemaParts.map(value), schema, path);
        } else {
          wrong(path, type);
        }
      }
      case "array" -> {
        if (value instanceof List<?> list) {
          items(list, schema, path);
        } else {
          wrong(path, type);
        }
      }
      case "string" -> {
        List<?> codes = SchemaParts.list(schema, "enum");
        if (!(value instanceof String)) {
          wrong(path, type);
        } else if (!codes.isEmpty() && !codes.contains(value)) {
          faults.add(path + ": given \"" + value + "\"; must be one of: " + codes);
        }
      }
      case "boolean" -> require(value instanceof Boolean, path, type);
      case "integer" -> require(value instanceof Double d && d == Math.rint(d), path, type);
      default -> require(value instanceof Double, path, type);
    }
  }

  private void object(Map<String, Object> object, Map<String, Object> schema, String path) {
    for (Object key : SchemaParts.list(schema, "required")) {
      if (!object.containsKey(String.valueOf(key))) {
        faults.add(path + "." + key + ": given nothing; must be there");
      }
    }
    Map<String, Object> properties = SchemaParts.map(schema.getOrDefault("properties", Map.of()));
    object.forEach(
        (key, value) -> {
          if (properties.containsKey(key)) {
            value(value, SchemaParts.map(properties.get(key)), path + "." + key);
          }
        });
  }

  private void items(List<?> items, Map<String, Object> schema, String path) {
    int exactly = schema.get("minItems") instanceof Integer n ? n : items.size();
    require(items.size() == exactly, path, "list of " + exactly);
    Map<String, Object> each = SchemaParts.map(schema.getOrDefault("items", Map.of()));
    for (int i = 0; i < items.size(); i++) {
      value(items.get(i), each, path + "[" + i + "]");
    }
  }

  private void require(boolean good, String path, String type) {
    if (!good) {
      wrong(path, type);
    }
  }

  private void wrong(String path, String type) {
    faults.add(path + ": given a value of another type; must be of type " + type);
  }
}
