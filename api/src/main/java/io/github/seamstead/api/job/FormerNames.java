package io.github.seamstead.api.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The names that keys of a shape had before {@link Forms#RENAMED}. */
final class FormerNames {

  private final Map<String, Key<?>> keys = new LinkedHashMap<>();

  void add(Key<?> key, String name) {
    keys.put(name, key);
  }

  boolean has(String name) {
    return keys.containsKey(name);
  }

  /** The present name of what had a former one. */
  String present(String name) {
    Key<?> key = keys.get(name);
    return key == null ? name : key.name();
  }

  /** The name of a key in the version of the form that is read. */
  String written(Key<?> key, Walk walk) {
    if (walk.form() >= Forms.RENAMED) {
      return key.name();
    }
    return keys.entrySet().stream()
        .filter(entry -> entry.getValue() == key)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(key.name());
  }

  /** A key that this version of the form does not know and another one does. */
  Optional<JobFault> misnamed(Json.Member member, String at, Walk walk) {
    String name = member.key();
    boolean old = walk.form() < Forms.RENAMED;
    Key<?> renamed = keys.get(name);
    if (!old && renamed != null) {
      return Optional.of(
          new JobFault(
              at,
              member.line(),
              "the key \"" + name + "\" of an earlier version",
              "must be called \""
                  + renamed.name()
                  + "\" since version "
                  + Forms.RENAMED
                  + " of the form"));
    }
    return keys.entrySet().stream()
        .filter(entry -> old && entry.getValue().name().equals(name))
        .findFirst()
        .map(
            entry ->
                new JobFault(
                    at,
                    member.line(),
                    "the key \"" + name + "\" in version " + walk.form() + " of the form",
                    "needs version "
                        + Forms.RENAMED
                        + ": write \"seamstead\": "
                        + Forms.RENAMED
                        + ", or call it \""
                        + entry.getKey()
                        + "\""));
  }

  /** Describes the former names beside the present ones. */
  void describe(
      Map<String, Object> definition,
      Map<String, Object> properties,
      List<String> must,
      Map<String, Object> definitions) {
    keys.forEach(
        (name, key) -> {
          Map<String, Object> property = key.kind().schema(definitions);
          property.put("description", "the name of " + key.name() + " in version 1 of the form");
          property.put("deprecated", true);
          properties.put(name, property);
          must.remove(key.name());
          definition.put("oneOf", List.of(requires(key.name()), requires(name)));
        });
  }

  private static Map<String, Object> requires(String name) {
    return Map.of("required", List.of(name));
  }
}
