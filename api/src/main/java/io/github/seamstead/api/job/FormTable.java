package io.github.seamstead.api.job;

import io.github.seamstead.api.json.JsonWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The table of keys for who draws a form: made from the shapes that read a document and make its
 * schema, so that a key that is added to them stands in the form as well.
 */
public final class FormTable {

  private FormTable() {}

  /**
   * Writes the table of the job and of the diary.
   *
   * @return JSON text: the version of the document, the names of the shapes of {@code root} and
   *     {@code diary}, and in {@code shapes} for each its keys in the order of the document with
   *     label, help, kind, limits and what is assumed when it is left out
   */
  public static String text() {
    Map<String, Object> shapes = new LinkedHashMap<>();
    all()
        .filter(shape -> shape.type() != Map.class)
        .forEach(shape -> shapes.put(name(shape), described(shape)));
    Map<String, Object> table = new LinkedHashMap<>();
    table.put("version", Forms.NEWEST);
    table.put("root", name(Shapes.DOCUMENT));
    table.put("diary", name(DiaryShapes.diaryDocument()));
    table.put("shapes", shapes);
    return JsonWriter.text(table);
  }

  /**
   * Lists the records that documents and diaries are read as.
   *
   * @return their types
   */
  public static List<Class<?>> records() {
    return all().<Class<?>>map(Shape::type).filter(Class::isRecord).distinct().toList();
  }

  /** Writes the entry of one shape. */
  static String text(Shape<?> shape) {
    return JsonWriter.text(described(shape));
  }

  private static Stream<Shape<?>> all() {
    return Stream.concat(
        Shapes.DOCUMENT.reachable().stream(), DiaryShapes.diaryDocument().reachable().stream());
  }

  private static String name(Shape<?> shape) {
    return shape.type().getSimpleName();
  }

  private static Map<String, Object> described(Shape<?> shape) {
    Map<String, Object> description = new LinkedHashMap<>();
    description.put("about", shape.about());
    List<Object> keys = new ArrayList<>();
    for (Key<?> key : shape.entries()) {
      keys.add(key(key));
    }
    description.put("keys", keys);
    return description;
  }

  private static Map<String, Object> key(Key<?> key) {
    Map<String, Object> field = named(key.name(), key.meaning());
    if (key.must()) {
      field.put("required", true);
    }
    if (!key.ground().isEmpty()) {
      field.put("assumed", Map.of("text", key.shown(), "ground", key.ground()));
    }
    field.putAll(kind(key.kind()));
    return field;
  }

  private static Map<String, Object> named(String name, String help) {
    Map<String, Object> field = new LinkedHashMap<>();
    field.put("key", name);
    // Nobody says "id" of what is written on a sheet.
    field.put("label", name.equals("id") ? "short name" : words(name));
    field.put("help", help);
    return field;
  }

  private static Map<String, Object> kind(Kind<?> kind) {
    Map<String, Object> schema = kind.schema(new LinkedHashMap<>());
    Map<String, Object> field = new LinkedHashMap<>();
    Optional<Map<String, Object>> quantity = kind.quantity();
    if (quantity.isPresent()) {
      field.put("kind", "quantity");
      field.putAll(quantity.get());
    } else if (kind instanceof Shape<?> shape) {
      field.put("kind", "record");
      field.put("shape", name(shape));
    } else if (kind.item().isPresent()) {
      field.put("kind", "list");
      field.put("item", kind(kind.item().get()));
      copy(schema, "minItems", field, "least");
      copy(schema, "maxItems", field, "most");
    } else if (!kind.keys().isEmpty()) {
      field.put("kind", "record");
      field.put("keys", inPlace(kind, schema));
    } else {
      simple(schema, field);
    }
    return field;
  }

  private static List<Object> inPlace(Kind<?> kind, Map<String, Object> schema) {
    List<Object> keys = new ArrayList<>();
    Map<?, ?> properties = (Map<?, ?>) schema.getOrDefault("properties", Map.of());
    for (String name : kind.keys()) {
      String help =
          properties.get(name) instanceof Map<?, ?> of && of.get("description") instanceof String d
              ? d
              : "";
      Map<String, Object> field = named(name, help);
      kind.under(name).ifPresent(under -> field.putAll(kind(under)));
      keys.add(field);
    }
    return keys;
  }

  private static void simple(Map<String, Object> schema, Map<String, Object> field) {
    if (schema.get("enum") instanceof List<?> choices) {
      field.put("kind", "choice");
      field.put(
          "choices",
          choices.stream()
              .map(word -> Map.of("word", word, "label", words(String.valueOf(word))))
              .toList());
    } else if ("boolean".equals(schema.get("type"))) {
      field.put("kind", "yesno");
    } else if ("integer".equals(schema.get("type")) || "number".equals(schema.get("type"))) {
      field.put("kind", "integer".equals(schema.get("type")) ? "whole" : "number");
      copy(schema, "minimum", field, "least");
      copy(schema, "maximum", field, "most");
    } else {
      text(schema, field);
    }
  }

  private static void text(Map<String, Object> schema, Map<String, Object> field) {
    field.put("kind", "text");
    copy(schema, "maxLength", field, "longest");
    Object pattern = schema.getOrDefault("pattern", "");
    if (pattern.equals(Moments.DAY_SCHEMA)) {
      field.put("day", true);
    } else if (!pattern.equals("") && !pattern.equals("\\S")) {
      field.put("pattern", pattern);
    }
  }

  private static void copy(
      Map<String, Object> from, String key, Map<String, Object> to, String name) {
    Object value = from.get(key);
    if (value != null) {
      to.put(name, value);
    }
  }

  /** The words of a key or a choice: {@code shortestOpenTime} is shortest open time. */
  private static String words(String key) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < key.length(); i++) {
      char c = key.charAt(i);
      boolean begins =
          Character.isUpperCase(c) && i > 0 && !Character.isUpperCase(key.charAt(i - 1));
      words.append(begins ? " " : "").append(begins ? Character.toLowerCase(c) : c);
    }
    return words.toString();
  }
}
