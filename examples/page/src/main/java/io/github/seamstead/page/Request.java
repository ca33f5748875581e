package io.github.seamstead.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A message to the engine. */
record Request(Object id, String kind, Map<?, ?> values) {

  static Request of(Object read) {
    if (!(read instanceof Map<?, ?> values) || !(values.get("kind") instanceof String kind)) {
      throw new IllegalArgumentException("a request must be an object with a kind");
    }
    Object id = values.get("id");
    // A whole number comes back as it was sent, without a decimal point.
    if (id instanceof Double number && number == Math.rint(number)) {
      id = number.longValue();
    }
    return new Request(id == null ? "" : id, kind, values);
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

  /** The texts under a key; numbers are taken for their text. */
  Map<String, String> texts(String key) {
    Map<String, String> texts = new LinkedHashMap<>();
    if (values.get(key) instanceof Map<?, ?> given) {
      given.forEach((name, value) -> texts.put(String.valueOf(name), String.valueOf(value)));
    }
    return texts;
  }
}
