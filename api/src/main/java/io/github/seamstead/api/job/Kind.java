package io.github.seamstead.api.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A kind of value that a key may hold: how it is read and written, and how the schema describes it.
 * One object does all three, so that reader, writer and schema cannot drift.
 *
 * @param <T> what it is read as
 */
interface Kind<T> {

  /** Reads the value, or notes at least one fault and gives null. */
  @Nullable T read(Json value, String path, Walk walk);

  /**
   * Writes a value so that it reads back equal.
   *
   * @param value what {@link #read} gives, or a draft of it
   * @param path where it will stand
   * @param assumed the paths that are left out, because reading assumes their values again
   */
  Json write(Object value, String path, Set<String> assumed);

  /** The kind of the items or of the keys' values, for one that holds others. */
  default List<Kind<?>> parts() {
    return List.of();
  }

  /**
   * Gives the kind of what stands under a key.
   *
   * @param key a key of the object
   * @return its kind; empty if the values hold no such key
   */
  default Optional<Kind<?>> under(String key) {
    return Optional.empty();
  }

  /** The keys that the values hold, if they are objects. */
  default List<String> keys() {
    return List.of();
  }

  /** Whether a key must be there. */
  default boolean isRequired(String key) {
    return false;
  }

  /** The kind of the items, if the values are lists. */
  default Optional<Kind<?>> item() {
    return Optional.empty();
  }

  /**
   * Describes the quantity that a value is: its dimension, its units, the unit of a bare number and
   * its limits.
   *
   * @return the description; empty if the values are no quantities
   */
  default Optional<Map<String, Object>> quantity() {
    return Optional.empty();
  }

  /**
   * Gives the limits of a plain number.
   *
   * @return the least and the greatest value, in the SI unit; empty if the values are no plain
   *     numbers
   */
  default Optional<Limits> limits() {
    return Optional.empty();
  }

  /** The least and the greatest value of a plain number, in its SI unit. */
  record Limits(double least, double greatest) {}

  /**
   * Reads how far two values lie apart, such as a standard uncertainty.
   *
   * @param text a quantity of the same dimension
   * @return in the SI unit
   * @throws io.github.seamstead.shared.quantity.QuantityFormatException if it cannot be read
   */
  default double apart(String text) {
    throw new IllegalStateException("only plain numbers lie apart");
  }

  /**
   * Says how a quantity was understood.
   *
   * @param value the value as it is written
   * @return the number with the unit of the key; empty if it is no quantity or cannot be read
   */
  default Optional<String> echo(Json value) {
    return Optional.empty();
  }

  /**
   * Describes the kind in JSON Schema.
   *
   * @param definitions receives the shapes of objects by name
   */
  Map<String, Object> schema(Map<String, Object> definitions);
}
