package io.github.seamstead.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A message to the engine. What it does not know in one it refuses: whoever states a thing that is
 * not heeded should be told.
 */
record Request(Object id, String kind, Map<?, ?> values) {

  /** The keys of each kind of request beside {@code id} and {@code kind}, each with its type. */
  private static final Map<String, Map<String, Class<?>>> KNOWN =
      Map.of(
          "check", keys("job", String.class, "diary", String.class),
          "plan", planKeys(),
          "sketch", keys("job", String.class),
          "lesson", keys("name", String.class, "values", Map.class, "seed", Double.class),
          "answer", answerKeys());

  private static final Map<Class<?>, String> TYPES =
      Map.of(
          String.class, "a text",
          Double.class, "a number",
          Boolean.class, "true or false",
          Map.class, "an object");

  private static Map<String, Class<?>> keys(Object... pairs) {
    Map<String, Class<?>> keys = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      keys.put((String) pairs[i], (Class<?>) pairs[i + 1]);
    }
    return keys;
  }

  private static Map<String, Class<?>> planKeys() {
    return keys(
        "job", String.class,
        "diary", String.class,
        "effort", Double.class,
        "seconds", Double.class,
        "worked", Boolean.class);
  }

  private static Map<String, Class<?>> answerKeys() {
    return keys(
        "lesson", String.class,
        "exercise", Double.class,
        "seed", Double.class,
        "given", String.class);
  }

  static Request of(Object read) {
    if (!(read instanceof Map<?, ?> values) || !(values.get("kind") instanceof String kind)) {
      throw new IllegalArgumentException("a request must be an object with a kind");
    }
    Map<String, Class<?>> known = KNOWN.get(kind);
    if (known == null) {
      throw new IllegalArgumentException("unknown kind of request: " + kind);
    }
    values.forEach((key, value) -> require(kind, known, String.valueOf(key), value));
    return new Request(id(values), kind, values);
  }

  /** The id as it is sent back; a whole number without a decimal point. */
  static Object id(Map<?, ?> values) {
    Object given = values.get("id");
    if (given instanceof Double number && number == Math.rint(number)) {
      return number.longValue();
    }
    return given == null ? "" : given;
  }

  private static void require(String kind, Map<String, Class<?>> known, String key, Object value) {
    if (List.of("id", "kind").contains(key)) {
      return;
    }
    Class<?> type = known.get(key);
    if (type == null) {
      throw new IllegalArgumentException(
          "a request to "
              + kind
              + " knows no "
              + key
              + ", only "
              + String.join(", ", known.keySet()));
    }
    if (!type.isInstance(value)) {
      throw new IllegalArgumentException(key + " must be " + TYPES.get(type));
    }
  }

  String text(String key) {
    return maybeText(key)
        .orElseThrow(() -> new IllegalArgumentException("a request to " + kind + " needs " + key));
  }

  Optional<String> maybeText(String key) {
    return values.get(key) instanceof String text ? Optional.of(text) : Optional.empty();
  }

  Optional<Double> number(String key) {
    return values.get(key) instanceof Double number ? Optional.of(number) : Optional.empty();
  }

  /** A number without a part behind the point. */
  Optional<Integer> whole(String key) {
    Optional<Double> number = number(key);
    if (number.isPresent()
        && (number.get() != Math.rint(number.get()) || Math.abs(number.get()) > 1e9)) {
      throw new IllegalArgumentException(key + " must be a whole number");
    }
    return number.map(Double::intValue);
  }

  boolean says(String key) {
    return Boolean.TRUE.equals(values.get(key));
  }

  /** The texts under a key; numbers are taken for their text. */
  Map<String, String> texts(String key) {
    Map<String, String> texts = new LinkedHashMap<>();
    if (values.get(key) instanceof Map<?, ?> given) {
      given.forEach((name, value) -> texts.put(String.valueOf(name), String.valueOf(value)));
    }
    return texts;
  }
}
