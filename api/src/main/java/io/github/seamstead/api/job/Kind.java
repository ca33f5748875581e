package io.github.seamstead.api.job;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A kind of value that a key may hold: how it is read, and how the schema describes it. One object
 * does both, so that reader and schema cannot drift.
 *
 * @param <T> what it is read as
 */
interface Kind<T> {

  /** Reads the value, or notes at least one fault and gives null. */
  @Nullable T read(Json value, String path, Walk walk);

  /** The kind of the items or of the keys' values, for one that holds others. */
  default List<Kind<?>> parts() {
    return List.of();
  }

  /** Writes a value so that {@link #read} gives it again. */
  default Object write(T value) {
    return value;
  }

  /**
   * Describes the kind in JSON Schema.
   *
   * @param definitions receives the shapes of objects by name
   */
  Map<String, Object> schema(Map<String, Object> definitions);
}
