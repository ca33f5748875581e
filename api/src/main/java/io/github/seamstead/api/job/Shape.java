package io.github.seamstead.api.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The shape of a JSON object: its keys with their kinds, and the record it is read as.
 *
 * @param <R> the record
 */
final class Shape<R> implements Kind<R> {

  private final Class<R> type;
  private final String about;
  private final List<Key<?>> keys = new ArrayList<>();
  private final List<String> names = new ArrayList<>();
  private final FormerNames former = new FormerNames();
  private final List<BiConsumer<Values, Faults>> rules = new ArrayList<>();
  private final Map<Key<?>, Key<?>> told = new HashMap<>();
  private final Map<Key<?>, Key<?>> owners = new HashMap<>();
  private @Nullable Function<Values, R> maker;

  private Shape(Class<R> type, String about) {
    this.type = type;
    this.about = about;
  }

  static <R> Shape<R> of(Class<R> type, String about) {
    return new Shape<>(type, about);
  }

  /** Adds a key that must be there. */
  <T> Key<T> required(String name, Kind<T> kind, String meaning) {
    return add(new Key<>(name, kind, meaning, true, null, "", ""));
  }

  /** Adds a key that may be left out. */
  <T> Key<T> optional(String name, Kind<T> kind, String meaning) {
    return add(new Key<>(name, kind, meaning, false, null, "", ""));
  }

  /** Adds a key whose value, when left out, is taken from elsewhere and listed as assumed. */
  <T> Key<T> assumed(
      String name, Kind<T> kind, String meaning, T value, String shown, String ground) {
    return add(new Key<>(name, kind, meaning, false, value, shown, ground));
  }

  /** Adds a key whose value, when left out, is none: an empty list, say. Nothing is assumed. */
  <T> Key<T> or(String name, Kind<T> kind, String meaning, T none) {
    return add(new Key<>(name, kind, meaning, false, none, "", ""));
  }

  /** States the name that a key had before {@link Forms#RENAMED}. */
  void formerly(Key<?> key, String name) {
    former.add(key, name);
  }

  /** The present name of a key, which may be given by its former one. */
  String present(String name) {
    return former.present(name);
  }

  /** States that a key is not assumed where another tells it, and that both are not stated. */
  void either(Key<?> assumed, Key<?> instead) {
    told.put(assumed, instead);
    rule(
        (v, faults) -> {
          if (v.has(assumed) && v.has(instead)) {
            faults.note(
                assumed.name(),
                assumed.name() + " and " + instead.name(),
                "must state one of them, not both");
          }
        });
  }

  /** States that a key is assumed only beside another that it belongs to. */
  void onlyWith(Key<?> assumed, Key<?> owner) {
    owners.put(assumed, owner);
  }

  private <T> Key<T> add(Key<T> key) {
    keys.add(key);
    names.add(key.name());
    return key;
  }

  /** Adds a rule over several keys, tried only when every key was read without a fault. */
  Shape<R> rule(BiConsumer<Values, Faults> rule) {
    rules.add(rule);
    return this;
  }

  /** A rule: exactly one of the keys is there. */
  static void one(List<? extends Key<?>> keys, Values values, Faults faults) {
    List<String> given = keys.stream().filter(values::has).map(Key::name).toList();
    if (given.size() != 1) {
      faults.note(
          "",
          given.isEmpty() ? "none of the keys that say what" : String.join(" and ", given),
          "must state exactly one of: " + String.join(", ", keys.stream().map(Key::name).toList()));
    }
  }

  /** States how the record is made, and so finishes the shape. */
  Shape<R> makes(Function<Values, R> make) {
    maker = make;
    return this;
  }

  Class<R> type() {
    return type;
  }

  String about() {
    return about;
  }

  List<String> names() {
    return names;
  }

  /** The keys in the order of the document, with their kinds. */
  List<Key<?>> entries() {
    return List.copyOf(keys);
  }

  @Override
  public List<Kind<?>> parts() {
    return keys.stream().<Kind<?>>map(key -> key.kind()).toList();
  }

  @Override
  public Optional<Kind<?>> under(String key) {
    return keys.stream().filter(k -> k.name().equals(key)).<Kind<?>>map(k -> k.kind()).findFirst();
  }

  @Override
  public List<String> keys() {
    return names;
  }

  @Override
  public boolean isRequired(String key) {
    return keys.stream().anyMatch(k -> k.name().equals(key) && k.must());
  }

  /** This shape and every shape that its values can hold, each type once. */
  List<Shape<?>> reachable() {
    Map<Class<?>, Shape<?>> found = new LinkedHashMap<>();
    reach(this, found);
    return List.copyOf(found.values());
  }

  private static void reach(Kind<?> kind, Map<Class<?>, Shape<?>> found) {
    if (kind instanceof Shape<?> shape && found.putIfAbsent(shape.type, shape) != null) {
      return;
    }
    kind.parts().forEach(part -> reach(part, found));
  }

  @Override
  public @Nullable R read(Json value, String path, Walk walk) {
    if (!(value instanceof Json.Obj object)) {
      walk.fault(path, value, "must be an object in { } with keys of: " + String.join(", ", names));
      return null;
    }
    int before = walk.faultCount();
    Map<String, Json> given = new GivenKeys(names, former).of(object, path, walk);
    Map<Key<?>, Object> read = new LinkedHashMap<>();
    for (Key<?> key : keys) {
      String name = former.written(key, walk);
      Json member = given.get(name);
      if (member != null) {
        Object got = key.kind().read(member, path + "." + name, walk);
        if (got != null) {
          read.put(key, got);
        }
      } else if (key.must()) {
        walk.fault(path + "." + name, value.line(), "nothing", "must be there: " + key.meaning());
      } else if (!key.ground().isEmpty() && !isImplied(key, given.keySet())) {
        walk.assume(path + "." + key.name(), key.shown(), key.ground());
      }
    }
    if (walk.faultCount() > before) {
      return null;
    }
    return make(value, path, walk, new Values(read));
  }

  /** A value that stands only because another tells it, or because what it belongs to is absent. */
  private boolean isImplied(Key<?> key, Set<String> given) {
    Key<?> instead = told.get(key);
    Key<?> owner = owners.get(key);
    return (instead != null && given.contains(instead.name()))
        || (owner != null && !given.contains(owner.name()));
  }

  private @Nullable R make(Json value, String path, Walk walk, Values values) {
    int before = walk.faultCount();
    Faults faults =
        (key, given, allowed) -> {
          String at = key.isEmpty() ? path : path + "." + key;
          walk.fault(at, walk.lines().getOrDefault(at, value.line()), given, allowed);
        };
    rules.forEach(rule -> rule.accept(values, faults));
    if (walk.faultCount() > before) {
      return null;
    }
    Function<Values, R> make = maker;
    if (make == null) {
      throw new IllegalStateException("the shape of " + type.getSimpleName() + " is unfinished");
    }
    return make.apply(values);
  }

  @Override
  public Json.Obj write(Object value, String path, Set<String> assumed) {
    if (value instanceof Draft<?> draft) {
      return draft.tree(path, Set.of());
    }
    return write(stated(type.cast(value), path, assumed), path, assumed);
  }

  /** Writes what is stated, by key. */
  Json.Obj write(Map<String, Object> stated, String path, Set<String> assumed) {
    List<Json.Member> members = new ArrayList<>();
    for (Key<?> key : keys) {
      Object member = stated.get(key.name());
      if (member != null) {
        Json written = key.kind().write(member, path + "." + key.name(), assumed);
        members.add(new Json.Member(key.name(), 0, written));
      }
    }
    return new Json.Obj(0, members);
  }

  /** What a record states: all that it holds but what was assumed and what says nothing. */
  Map<String, Object> stated(R value, String path, Set<String> assumed) {
    Map<String, Object> stated = new LinkedHashMap<>();
    for (Key<?> key : keys) {
      Object component = Components.of(value, key.name());
      Object inner = component instanceof Optional<?> o ? o.orElse(null) : component;
      if (inner == null) {
        continue;
      }
      boolean says =
          !(key.ground().isEmpty() && inner.equals(key.fallback()))
              && !(inner instanceof Collection<?> list && list.isEmpty() && !key.must());
      // A value that code has put in the place of an assumed one is stated.
      boolean open = assumed.contains(path + "." + key.name()) && inner.equals(key.fallback());
      if (says && !open) {
        stated.put(key.name(), inner);
      }
    }
    keys.stream()
        .filter(key -> isImplied(key, stated.keySet()))
        .filter(key -> Objects.equals(stated.get(key.name()), key.fallback()))
        .forEach(key -> stated.remove(key.name()));
    return stated;
  }

  @Override
  public Map<String, Object> schema(Map<String, Object> definitions) {
    String name = type.getSimpleName();
    if (!definitions.containsKey(name)) {
      Map<String, Object> definition = new LinkedHashMap<>();
      definitions.put(name, definition);
      describe(definition, definitions);
    }
    return new LinkedHashMap<>(Map.of("$ref", "#/$defs/" + name));
  }

  void describe(Map<String, Object> definition, Map<String, Object> definitions) {
    definition.put("type", "object");
    definition.put("description", about);
    Map<String, Object> properties = new LinkedHashMap<>();
    List<String> must = new ArrayList<>();
    for (Key<?> key : keys) {
      Map<String, Object> property = key.kind().schema(definitions);
      property.put("description", key.meaning());
      if (!key.ground().isEmpty()) {
        property.put("x-assumed", key.shown() + " (" + key.ground() + ")");
      }
      properties.put(key.name(), property);
      if (key.must()) {
        must.add(key.name());
      }
    }
    former.describe(definition, properties, must, definitions);
    definition.put("properties", properties);
    if (!must.isEmpty()) {
      definition.put("required", must);
    }
    definition.put("additionalProperties", false);
  }

  /** Where a rule notes what it finds: the key (dotted; empty for the object), given, allowed. */
  @FunctionalInterface
  interface Faults {
    void note(String key, String given, String allowed);
  }

  /** The values read, by key. */
  static final class Values {

    private final Map<Key<?>, Object> read;

    private Values(Map<Key<?>, Object> read) {
      this.read = read;
    }

    /** Gives a required value, or an assumed one where the document has none. */
    @SuppressWarnings("unchecked") // put there by the key's own kind
    <T> T get(Key<T> key) {
      Object value = read.containsKey(key) ? read.get(key) : key.fallback();
      if (value == null) {
        throw new IllegalStateException("no value for " + key.name());
      }
      return (T) value;
    }

    /** Gives an optional value. */
    @SuppressWarnings("unchecked") // put there by the key's own kind
    <T> Optional<T> find(Key<T> key) {
      return Optional.ofNullable((T) read.get(key));
    }

    /** Tells whether the document states a value. */
    boolean has(Key<?> key) {
      return read.containsKey(key);
    }
  }
}
