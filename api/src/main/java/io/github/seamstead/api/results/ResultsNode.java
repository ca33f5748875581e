package io.github.seamstead.api.results;

import io.github.seamstead.api.chapter.internal.SchemaParts;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One object of the results, read by key. Each method asks for a value of one type; a key that the
 * results do not have, or that is of another type, is refused with the keys that there are.
 *
 * <p>Quantities are in the unit in which the key's name ends ({@code hipEdge_m}, {@code
 * faceSlope_rad}, {@code area_m2}); a pure number has none. Immutable.
 */
public final class ResultsNode {

  private final Map<String, Object> values;
  private final Map<String, Object> schema;
  private final String path;

  ResultsNode(Map<String, Object> values, Map<String, Object> schema, String path) {
    this.values = values;
    this.schema = schema;
    this.path = path;
  }

  /**
   * Gives a number.
   *
   * @param key a key of a number
   * @return the number in the unit of the key
   * @throws IllegalArgumentException if there is none
   */
  public double number(String key) {
    return must(key, findNumber(key));
  }

  /**
   * Gives a number that may not be there.
   *
   * @param key a key of a number
   * @return the number in the unit of the key
   * @throws IllegalArgumentException if the key is of no number
   */
  public Optional<Double> findNumber(String key) {
    return find(key, "number", "integer").map(Double.class::cast);
  }

  /**
   * Gives a whole number.
   *
   * @param key a key of a whole number
   * @return the number
   * @throws IllegalArgumentException if there is none
   */
  public int whole(String key) {
    return must(key, find(key, "integer").map(Double.class::cast)).intValue();
  }

  /**
   * Gives a text or a code.
   *
   * @param key a key of a text
   * @return the text
   * @throws IllegalArgumentException if there is none
   */
  public String text(String key) {
    return must(key, findText(key));
  }

  /**
   * Gives a text or a code that may not be there.
   *
   * @param key a key of a text
   * @return the text
   * @throws IllegalArgumentException if the key is of no text
   */
  public Optional<String> findText(String key) {
    return find(key, "string").map(String.class::cast);
  }

  /**
   * Gives a yes or no.
   *
   * @param key a key of a yes or no
   * @return true or false
   * @throws IllegalArgumentException if there is none
   */
  public boolean flag(String key) {
    return must(key, find(key, "boolean").map(Boolean.class::cast));
  }

  /**
   * Gives a low, likely and high number.
   *
   * @param key a key of a range
   * @return the range in the unit of the key
   * @throws IllegalArgumentException if there is none
   */
  public Range range(String key) {
    ResultsNode range = one(key);
    return new Range(range.number("low"), range.number("likely"), range.number("high"));
  }

  /**
   * Gives a number with its standard uncertainty.
   *
   * @param key a key of such a number
   * @return the number in the unit of the key
   * @throws IllegalArgumentException if there is none
   */
  public Uncertain uncertain(String key) {
    ResultsNode uncertain = one(key);
    return new Uncertain(uncertain.number("value"), uncertain.number("standardUncertainty"));
  }

  /**
   * Gives an object.
   *
   * @param key a key of an object
   * @return the object
   * @throws IllegalArgumentException if there is none
   */
  public ResultsNode one(String key) {
    return must(key, findOne(key));
  }

  /**
   * Gives an object that may not be there.
   *
   * @param key a key of an object
   * @return the object
   * @throws IllegalArgumentException if the key is of no object
   */
  public Optional<ResultsNode> findOne(String key) {
    return find(key, "object")
        .map(value -> new ResultsNode(SchemaParts.map(value), property(key), path + "." + key));
  }

  /**
   * Gives the objects of a list.
   *
   * @param key a key of a list of objects
   * @return the objects in order; empty for none
   * @throws IllegalArgumentException if the key is of no such list
   */
  public List<ResultsNode> many(String key) {
    return items(key, "object").stream()
        .map(item -> new ResultsNode(SchemaParts.map(item), each(key), path + "." + key))
        .toList();
  }

  /**
   * Gives the texts of a list.
   *
   * @param key a key of a list of texts
   * @return the texts in order; empty for none
   * @throws IllegalArgumentException if the key is of no such list
   */
  public List<String> texts(String key) {
    return items(key, "string").stream().map(String.class::cast).toList();
  }

  /**
   * Gives the numbers of a list.
   *
   * @param key a key of a list of numbers
   * @return the numbers in order, in the unit of the key; empty for none
   * @throws IllegalArgumentException if the key is of no such list
   */
  public List<Double> numbers(String key) {
    return items(key, "number").stream().map(Double.class::cast).toList();
  }

  /**
   * Gives the points of a list.
   *
   * @param key a key of a list of points
   * @return pairs of x and y in order, in the unit of the key; empty for none
   * @throws IllegalArgumentException if the key is of no such list
   */
  public List<List<Double>> points(String key) {
    return items(key, "array").stream()
        .map(point -> ((List<?>) point).stream().map(Double.class::cast).toList())
        .toList();
  }

  /**
   * Lists the keys that have a value here.
   *
   * @return the keys in the order of the text, those of a later release among them
   */
  public Set<String> keys() {
    return values.keySet();
  }

  private Map<String, Object> properties() {
    return SchemaParts.map(schema.getOrDefault("properties", Map.of()));
  }

  private Map<String, Object> property(String key) {
    Object property = properties().get(key);
    if (property == null) {
      throw new IllegalArgumentException(
          path + ": given the key \"" + key + "\"; must be one of: " + properties().keySet());
    }
    return SchemaParts.map(property);
  }

  private Map<String, Object> each(String key) {
    return SchemaParts.map(property(key).getOrDefault("items", Map.of()));
  }

  private Optional<Object> find(String key, String... types) {
    requireType(key, property(key), List.of(types));
    return Optional.ofNullable(values.get(key));
  }

  private List<?> items(String key, String type) {
    requireType(key, property(key), List.of("array"));
    requireType(key, each(key), List.of(type));
    return values.get(key) instanceof List<?> list ? list : List.of();
  }

  private void requireType(String key, Map<String, Object> of, List<String> types) {
    String type = String.valueOf(of.get("type"));
    if (!types.contains(type)) {
      throw new IllegalArgumentException(
          path + "." + key + ": asked for as " + types.get(0) + "; must be asked for as " + type);
    }
  }

  private <V> V must(String key, Optional<V> value) {
    return value.orElseThrow(
        () ->
            new IllegalArgumentException(
                path + "." + key + ": given nothing; ask for it as what may not be there"));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ResultsNode that && values.equals(that.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return "ResultsNode[" + path + ", " + values.size() + " keys]";
  }
}
