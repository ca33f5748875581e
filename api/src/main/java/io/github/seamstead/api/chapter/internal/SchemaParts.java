package io.github.seamstead.api.chapter.internal;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Moves what a schema says more than once into shared definitions. */
public final class SchemaParts {

  private static final String REFERENCE = "#/$defs/";

  private final Set<Map<String, Object>> once = new HashSet<>();
  private final Map<Map<String, Object>, String> names = new LinkedHashMap<>();
  private final Map<String, Object> definitions = new LinkedHashMap<>();

  private SchemaParts() {}

  /**
   * Shares the parts of a schema.
   *
   * @param schema a schema of objects without references
   * @return the same schema with every object that occurs more than once under {@code $defs}
   */
  public static Map<String, Object> shared(Map<String, Object> schema) {
    SchemaParts parts = new SchemaParts();
    parts.count(schema, "results");
    Map<String, Object> shared = parts.properties(schema);
    shared.put("$defs", parts.definitions);
    return shared;
  }

  private static Map<String, Object> bare(Map<String, Object> object) {
    Map<String, Object> bare = new LinkedHashMap<>(object);
    bare.remove("description");
    return bare;
  }

  private void count(Object schema, String key) {
    if (!(schema instanceof Map<?, ?>)) {
      return;
    }
    Map<String, Object> object = map(schema);
    if (object.get("properties") instanceof Map<?, ?> properties) {
      Map<String, Object> bare = bare(object);
      if (!once.add(bare)) {
        names.computeIfAbsent(bare, part -> free(name(part, key)));
        return;
      }
      properties.forEach((name, property) -> count(property, String.valueOf(name)));
    }
    Object items = object.get("items");
    if (items != null) {
      count(items, key);
    }
  }

  private static String name(Map<String, Object> part, String key) {
    return String.valueOf(part.getOrDefault("title", key.replaceAll("_.*", "")));
  }

  private String free(String wanted) {
    String name = wanted;
    for (int i = 2; names.containsValue(name); i++) {
      name = wanted + i;
    }
    return name;
  }

  private Map<String, Object> rewritten(Map<String, Object> schema) {
    if (schema.get("properties") instanceof Map<?, ?>) {
      Map<String, Object> bare = bare(schema);
      String name = names.get(bare);
      if (name == null) {
        return properties(schema);
      }
      if (!definitions.containsKey(name)) {
        definitions.put(name, Map.of());
        definitions.put(name, properties(bare));
      }
      Map<String, Object> reference = new LinkedHashMap<>();
      if (schema.containsKey("description")) {
        reference.put("description", schema.getOrDefault("description", ""));
      }
      reference.put("$ref", REFERENCE + name);
      return reference;
    }
    Map<String, Object> copy = new LinkedHashMap<>(schema);
    copy.computeIfPresent("items", (key, items) -> rewritten(map(items)));
    return copy;
  }

  private Map<String, Object> properties(Map<String, Object> schema) {
    Map<String, Object> copy = new LinkedHashMap<>(schema);
    Map<String, Object> properties = new LinkedHashMap<>();
    map(schema.getOrDefault("properties", Map.of()))
        .forEach((key, property) -> properties.put(key, rewritten(map(property))));
    copy.put("properties", properties);
    return copy;
  }

  @SuppressWarnings("unchecked") // a schema's objects have texts for keys
  public static Map<String, Object> map(Object value) {
    return (Map<String, Object>) value;
  }

  /** Gives the list under a key of a schema. */
  public static List<?> list(Map<String, Object> schema, String key) {
    return schema.get(key) instanceof List<?> list ? list : List.of();
  }
}
