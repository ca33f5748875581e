package io.github.seamstead.api.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * An object whose keys are an enum's words, each with a kind of its own.
 *
 * @param type the enum
 * @param word the word of a constant
 * @param kind the kind of its value
 * @param meaning what its value means
 */
record TableKind<E extends Enum<E>, T>(
    Class<E> type, Function<E, String> word, Function<E, Kind<T>> kind, Function<E, String> meaning)
    implements Kind<Map<E, T>> {

  @Override
  public Optional<Kind<?>> under(String key) {
    return shape().under(key);
  }

  @Override
  public List<String> keys() {
    return shape().keys();
  }

  @Override
  public @Nullable Map<E, T> read(Json value, String path, Walk walk) {
    Shape<Map<E, T>> shape = shape();
    return shape.read(value, path, walk);
  }

  @SuppressWarnings("unchecked") // the class of a generic map has no other form
  private Shape<Map<E, T>> shape() {
    Shape<Map<E, T>> shape = Shape.of((Class<Map<E, T>>) (Class<?>) Map.class, "");
    Map<E, Key<T>> keys = new EnumMap<>(type);
    for (E constant : type.getEnumConstants()) {
      keys.put(
          constant,
          shape.optional(word.apply(constant), kind.apply(constant), meaning.apply(constant)));
    }
    return shape.makes(
        v -> {
          Map<E, T> read = new EnumMap<>(type);
          keys.forEach((constant, key) -> v.find(key).ifPresent(x -> read.put(constant, x)));
          return Collections.unmodifiableMap(read);
        });
  }

  @Override
  public Json write(Object value, String path, Set<String> assumed) {
    List<Json.Member> members = new ArrayList<>();
    for (E constant : type.getEnumConstants()) {
      Object member = ((Map<?, ?>) value).get(constant);
      if (member != null) {
        String key = word.apply(constant);
        Json written = kind.apply(constant).write(member, path + "." + key, assumed);
        members.add(new Json.Member(key, 0, written));
      }
    }
    return new Json.Obj(0, members);
  }

  @Override
  public Map<String, Object> schema(Map<String, Object> definitions) {
    Map<String, Object> schema = new LinkedHashMap<>();
    shape().describe(schema, definitions);
    return schema;
  }
}
