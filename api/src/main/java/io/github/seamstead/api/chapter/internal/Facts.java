package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * The keys of one JSON object of the results: what each means, its type, and how it is taken from a
 * part of the plan.
 *
 * @param <T> the part of the plan
 */
public final class Facts<T> {

  private final String name;

  /** Starts an object that the schema names after the first key that holds it. */
  public Facts() {
    this("");
  }

  /** Starts an object with a name of its own in the schema. */
  public Facts(String name) {
    this.name = name;
  }

  private record Fact<T>(
      String key,
      String about,
      boolean always,
      Map<String, Object> type,
      Function<T, Optional<?>> value) {}

  private final List<Fact<T>> facts = new ArrayList<>();

  /** A number; its key ends in its unit unless it is a pure number. */
  public Facts<T> number(String key, String about, ToDoubleFunction<T> value) {
    return add(key, about, true, type("number"), t -> Optional.of(value.applyAsDouble(t)));
  }

  /** A number that may not exist. */
  public Facts<T> maybeNumber(String key, String about, Function<T, Optional<Double>> value) {
    return add(key, about, false, type("number"), value::apply);
  }

  /** A whole number. */
  public Facts<T> whole(String key, String about, ToIntFunction<T> value) {
    return add(key, about, true, type("integer"), t -> Optional.of(value.applyAsInt(t)));
  }

  /** A text. */
  public Facts<T> text(String key, String about, Function<T, String> value) {
    return add(key, about, true, type("string"), t -> Optional.of(value.apply(t)));
  }

  /** A text that may not exist. */
  public Facts<T> maybeText(String key, String about, Function<T, Optional<String>> value) {
    return add(key, about, false, type("string"), value::apply);
  }

  /** One of an enum's constants, written as its name in the form {@code likeThis}. */
  public <E extends Enum<E>> Facts<T> code(
      String key, String about, Class<E> codes, Function<T, E> value) {
    return add(key, about, true, codes(codes), t -> Optional.of(word(value.apply(t))));
  }

  /** One of an enum's constants that may not exist. */
  public <E extends Enum<E>> Facts<T> maybeCode(
      String key, String about, Class<E> codes, Function<T, Optional<E>> value) {
    return add(key, about, false, codes(codes), t -> value.apply(t).map(Facts::word));
  }

  private static Map<String, Object> codes(Class<? extends Enum<?>> codes) {
    Map<String, Object> type = type("string");
    type.put("enum", Arrays.stream(codes.getEnumConstants()).map(Facts::word).toList());
    return type;
  }

  private static String word(Enum<?> code) {
    StringBuilder word = new StringBuilder();
    for (String part : code.name().toLowerCase(Locale.ROOT).split("_", -1)) {
      word.append(
          word.isEmpty() ? part : Character.toUpperCase(part.charAt(0)) + part.substring(1));
    }
    return word.toString();
  }

  /** True or false. */
  public Facts<T> flag(String key, String about, Predicate<T> value) {
    return add(key, about, true, type("boolean"), t -> Optional.of(value.test(t)));
  }

  /** A low, likely and high number. */
  public Facts<T> range(String key, String about, Function<T, Range> value) {
    return add(key, about, true, RANGE.schema(), t -> Optional.of(RANGE.write(value.apply(t))));
  }

  /** A low, likely and high number that may not be known. */
  public Facts<T> maybeRange(String key, String about, Function<T, Optional<Range>> value) {
    return maybe(key, about, RANGE, value);
  }

  /** A number with its standard uncertainty. */
  public Facts<T> uncertain(String key, String about, Function<T, Uncertain> value) {
    return add(key, about, true, DOUBT.schema(), t -> Optional.of(DOUBT.write(value.apply(t))));
  }

  /** A list of texts. */
  public Facts<T> texts(String key, String about, Function<T, ? extends List<String>> value) {
    return add(key, about, true, list(type("string")), t -> Optional.of(value.apply(t)));
  }

  /** A list of numbers. */
  public Facts<T> numbers(String key, String about, Function<T, ? extends List<Double>> value) {
    return add(key, about, true, list(type("number")), t -> Optional.of(value.apply(t)));
  }

  /** A list of points, each a pair of numbers. */
  public Facts<T> points(String key, String about, Function<T, List<List<Double>>> value) {
    Map<String, Object> pair = list(type("number"));
    pair.put("minItems", 2);
    pair.put("maxItems", 2);
    return add(key, about, true, list(pair), t -> Optional.of(value.apply(t)));
  }

  /** An object of its own. */
  public <U> Facts<T> one(String key, String about, Facts<U> part, Function<T, U> value) {
    return add(key, about, true, part.schema(), t -> Optional.of(part.write(value.apply(t))));
  }

  /** An object that may not exist. */
  public <U> Facts<T> maybe(
      String key, String about, Facts<U> part, Function<T, Optional<U>> value) {
    return add(key, about, false, part.schema(), t -> value.apply(t).map(part::write));
  }

  /** A list of objects. */
  public <U> Facts<T> many(
      String key, String about, Facts<U> part, Function<T, ? extends List<? extends U>> value) {
    return add(
        key,
        about,
        true,
        list(part.schema()),
        t -> Optional.of(value.apply(t).stream().map(part::write).toList()));
  }

  /** The keys of another object, side by side with those here. */
  public <U> Facts<T> flatten(Facts<U> other, Function<T, U> part) {
    for (Fact<U> fact : other.facts) {
      add(fact.key, fact.about, fact.always, fact.type, t -> fact.value.apply(part.apply(t)));
    }
    return this;
  }

  private Facts<T> add(
      String key,
      String about,
      boolean always,
      Map<String, Object> type,
      Function<T, Optional<?>> value) {
    facts.add(new Fact<>(key, about, always, type, value));
    return this;
  }

  /** Writes a part of the plan as plain data. */
  public Map<String, Object> write(T part) {
    Map<String, Object> written = new LinkedHashMap<>();
    for (Fact<T> fact : facts) {
      fact.value.apply(part).ifPresent(value -> written.put(fact.key, value));
    }
    return written;
  }

  /** Describes the object in JSON Schema. */
  public Map<String, Object> schema() {
    Map<String, Object> properties = new LinkedHashMap<>();
    List<String> always = new ArrayList<>();
    for (Fact<T> fact : facts) {
      Map<String, Object> property = new LinkedHashMap<>();
      property.put("description", fact.about);
      property.putAll(fact.type);
      properties.put(fact.key, property);
      if (fact.always) {
        always.add(fact.key);
      }
    }
    Map<String, Object> schema = type("object");
    if (!name.isEmpty()) {
      schema.put("title", name);
    }
    schema.put("properties", properties);
    if (!always.isEmpty()) {
      schema.put("required", always);
    }
    return schema;
  }

  private static Map<String, Object> type(String name) {
    Map<String, Object> type = new LinkedHashMap<>();
    type.put("type", name);
    return type;
  }

  private static Map<String, Object> list(Map<String, Object> items) {
    Map<String, Object> type = type("array");
    type.put("items", items);
    return type;
  }

  private static final Facts<Range> RANGE =
      new Facts<Range>("Range")
          .number("low", "the low end", Range::low)
          .number("likely", "the best single value", Range::likely)
          .number("high", "the high end", Range::high);

  private static final Facts<Uncertain> DOUBT =
      new Facts<Uncertain>("Uncertain")
          .number("value", "the best estimate", Uncertain::value)
          .number("standardUncertainty", "one standard deviation", Uncertain::standardUncertainty);
}
