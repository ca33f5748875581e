package io.github.seamstead.api.job;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The kinds of value other than quantities. */
final class Kinds {

  private static final int LONGEST_TEXT = 400;
  private static final int LONGEST_ID = 40;

  private Kinds() {}

  /** A text for people, 1 to 400 characters. */
  static Kind<String> text() {
    return new Words(LONGEST_TEXT, "", "");
  }

  /** A name by which other sections refer to a thing: letters, digits, dot, dash, underscore. */
  static Kind<String> id() {
    return new Words(
        LONGEST_ID,
        "[A-Za-z0-9][A-Za-z0-9._-]*",
        "must be letters, digits, dots, dashes and underscores, a letter or digit first");
  }

  /** A node of the frame: B or T with a number, A for the apex, C for the ground centre. */
  static Kind<String> node() {
    return new Words(
        LONGEST_ID,
        "([BT][1-9][0-9]?|A|C)",
        "must be a node: B1, B2, … for base corners, T1, T2, … for corners of the opening, A for"
            + " the apex, C for the ground centre");
  }

  /** A whole number from least to greatest. */
  static Kind<Integer> count(int least, int greatest) {
    return new Whole(least, greatest);
  }

  /** A day, written year-month-day. */
  static Kind<LocalDate> day() {
    return new Day(text());
  }

  /** True or false. */
  static Kind<Boolean> flag() {
    return new YesNo();
  }

  /** Any value, kept as it is written. */
  static Kind<JobValue> any() {
    return new Any();
  }

  /** One of an enum's constants, written by its word. */
  static <E extends Enum<E>> Kind<E> choice(Class<E> type, Function<E, String> word) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E constant : type.getEnumConstants()) {
      words.put(word.apply(constant), constant);
    }
    return new Choice<>(words);
  }

  /** One of an enum's constants, written as its name in the form {@code likeThis}. */
  static <E extends Enum<E>> Kind<E> constant(Class<E> type) {
    return choice(type, Kinds::camel);
  }

  static String camel(Enum<?> constant) {
    String[] words = constant.name().toLowerCase(Locale.ROOT).split("_", -1);
    StringBuilder word = new StringBuilder(words[0]);
    for (int i = 1; i < words.length; i++) {
      word.append(Character.toUpperCase(words[i].charAt(0))).append(words[i].substring(1));
    }
    return word.toString();
  }

  /** A list of values of one kind. */
  static <T> Kind<List<T>> list(Kind<T> item, int least, int most) {
    return new Many<>(item, least, most);
  }

  /** An object whose keys are an enum's words, each with a kind of its own. */
  static <E extends Enum<E>, T> Kind<Map<E, T>> table(
      Class<E> type,
      Function<E, String> word,
      Function<E, Kind<T>> kind,
      Function<E, String> meaning) {
    return new TableKind<>(type, word, kind, meaning);
  }

  private record Any() implements Kind<JobValue> {

    @Override
    public JobValue read(Json value, String path, Walk walk) {
      walk.seen(path, value);
      return new JobValue(value);
    }

    @Override
    public Json write(Object value, String path, Set<String> assumed) {
      return ((JobValue) value).json();
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      return new LinkedHashMap<>();
    }
  }

  private record Words(int longest, String pattern, String allowed) implements Kind<String> {

    @Override
    public @Nullable String read(Json value, String path, Walk walk) {
      if (!(value instanceof Json.Text t)) {
        walk.fault(path, value, "must be a text in quotes");
        return null;
      }
      String text = t.text();
      if (text.isBlank() || text.length() > longest) {
        walk.fault(path, value, "must have 1 to " + longest + " characters");
        return null;
      }
      if (!pattern.isEmpty() && !text.matches(pattern)) {
        walk.fault(path, value, allowed);
        return null;
      }
      return text;
    }

    @Override
    public Json write(Object value, String path, Set<String> assumed) {
      return new Json.Text(0, (String) value);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", "string");
      schema.put("minLength", 1);
      schema.put("maxLength", longest);
      schema.put("pattern", pattern.isEmpty() ? "\\S" : "^" + pattern + "$");
      return schema;
    }
  }

  private record Whole(int least, int greatest) implements Kind<Integer> {

    @Override
    public @Nullable Integer read(Json value, String path, Walk walk) {
      if (value instanceof Json.Num n
          && n.value() == Math.rint(n.value())
          && n.value() >= least
          && n.value() <= greatest) {
        return (int) n.value();
      }
      walk.fault(
          path,
          value,
          least == greatest
              ? "must be " + least
              : "must be a whole number from " + least + " to " + greatest);
      return null;
    }

    @Override
    public Json write(Object value, String path, Set<String> assumed) {
      return new Json.Num(0, (Integer) value);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", "integer");
      schema.put("minimum", least);
      schema.put("maximum", greatest);
      return schema;
    }
  }

  private record Day(Kind<String> text) implements Kind<LocalDate> {

    @Override
    public @Nullable LocalDate read(Json value, String path, Walk walk) {
      String read = text.read(value, path, walk);
      if (read == null) {
        return null;
      }
      Optional<LocalDate> day = parse(read);
      if (day.isEmpty()) {
        walk.fault(path, value.line(), read, "must be a day, written year-month-day");
      }
      return day.orElse(null);
    }

    private static Optional<LocalDate> parse(String text) {
      try {
        return Optional.of(LocalDate.parse(text));
      } catch (DateTimeParseException e) {
        return Optional.empty();
      }
    }

    @Override
    public Json write(Object value, String path, Set<String> assumed) {
      return text.write(value.toString(), path, assumed);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      return text.schema(definitions);
    }
  }

  private record YesNo() implements Kind<Boolean> {

    @Override
    public @Nullable Boolean read(Json value, String path, Walk walk) {
      if (value instanceof Json.Flag f) {
        return f.value();
      }
      walk.fault(path, value, "must be true or false, without quotes");
      return null;
    }

    @Override
    public Json write(Object value, String path, Set<String> assumed) {
      return new Json.Flag(0, (Boolean) value);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      return new LinkedHashMap<>(Map.of("type", "boolean"));
    }
  }

  private record Choice<E extends Enum<E>>(Map<String, E> words) implements Kind<E> {

    @Override
    public @Nullable E read(Json value, String path, Walk walk) {
      if (value instanceof Json.Text t) {
        E constant = words.get(t.text());
        if (constant != null) {
          return constant;
        }
        String hint =
            Nearest.to(t.text(), words.keySet())
                .map(near -> "did you mean \"" + near + "\"? ")
                .orElse("");
        walk.fault(path, value, hint + "must be one of: " + String.join(", ", words.keySet()));
        return null;
      }
      walk.fault(path, value, "must be one of: " + String.join(", ", words.keySet()));
      return null;
    }

    @Override
    public Json write(Object value, String path, Set<String> assumed) {
      for (Map.Entry<String, E> word : words.entrySet()) {
        if (word.getValue() == value) {
          return new Json.Text(0, word.getKey());
        }
      }
      throw new IllegalArgumentException("given " + value + ", must be one of " + words.values());
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      return new LinkedHashMap<>(Map.of("enum", List.copyOf(words.keySet())));
    }
  }

  private record Many<T>(Kind<T> each, int least, int most) implements Kind<List<T>> {

    @Override
    public List<Kind<?>> parts() {
      return List.of(each);
    }

    @Override
    public Optional<Kind<?>> item() {
      return Optional.of(each);
    }

    @Override
    public @Nullable List<T> read(Json value, String path, Walk walk) {
      String allowed = "must be a list of " + least + " to " + most + " items in [ ]";
      if (!(value instanceof Json.Arr array)) {
        walk.fault(path, value, allowed);
        return null;
      }
      int size = array.items().size();
      if (size < least || size > most) {
        walk.fault(path, value, allowed);
        return null;
      }
      List<T> items = new ArrayList<>(size);
      for (int i = 0; i < size; i++) {
        String at = path + "[" + i + "]";
        walk.seen(at, array.items().get(i));
        T read = each.read(array.items().get(i), at, walk);
        if (read != null) {
          items.add(read);
        }
      }
      return items.size() == size ? List.copyOf(items) : null;
    }

    @Override
    public Json write(Object value, String path, Set<String> assumed) {
      List<Json> written = new ArrayList<>();
      for (Object one : (List<?>) value) {
        written.add(each.write(one, path + "[" + written.size() + "]", assumed));
      }
      return new Json.Arr(0, written);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", "array");
      schema.put("items", each.schema(definitions));
      schema.put("minItems", least);
      schema.put("maxItems", most);
      return schema;
    }
  }
}
