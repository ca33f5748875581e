package io.github.seamstead.api.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * A section of a job while code puts it together: what is stated so far, by key. What is not stated
 * is assumed when the job is built, as it is when a document is read. Belongs to one thread.
 *
 * @param <R> the record that the section becomes
 */
abstract class Draft<R> {

  private final Shape<R> shape;
  private final Map<String, Object> stated = new LinkedHashMap<>();

  Draft(Class<R> type) {
    shape = Shapes.of(type);
  }

  /** States a value. A list is copied. */
  final void state(String key, Object value) {
    Objects.requireNonNull(value, key);
    stated.put(key, value instanceof List<?> list ? List.copyOf(list) : value);
  }

  /** States all that a record holds, but for what was assumed. */
  final void stateAll(R record, Set<String> assumed) {
    stated.putAll(shape.stated(record, "$", assumed));
  }

  /** Writes what is stated as a document would. */
  final Json.Obj tree(String path, Set<String> assumed) {
    return shape.write(stated, path, assumed);
  }
}
