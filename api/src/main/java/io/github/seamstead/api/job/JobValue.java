package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** A value as a job document writes it: a text, a number, a list, an object, or none. Immutable. */
public final class JobValue {

  private static final int LONGEST = 60;

  private final Json json;

  JobValue(Json json) {
    this.json = json;
  }

  /**
   * Makes a text, such as a quantity with its unit.
   *
   * @param text the text without quotes
   * @return the value
   */
  public static JobValue text(String text) {
    return new JobValue(new Json.Text(0, text));
  }

  /**
   * Gives the word by which documents state one of an enum's constants.
   *
   * @param constant a constant that a document can state, or a key of its tables
   * @return such as {@code rammedEarth}
   */
  public static String word(Enum<?> constant) {
    return Kinds.camel(constant);
  }

  /**
   * Makes a number.
   *
   * @param number finite
   * @return the value
   * @throws IllegalArgumentException if the number is not finite
   */
  public static JobValue number(double number) {
    return new JobValue(new Json.Num(0, Args.finite("number", number, "")));
  }

  /**
   * Makes a list.
   *
   * @param items its items in order
   * @return the value
   */
  public static JobValue list(List<JobValue> items) {
    return new JobValue(new Json.Arr(0, items.stream().map(JobValue::json).toList()));
  }

  /**
   * Makes an object.
   *
   * @param members its values by key, in the order of the map
   * @return the value
   */
  public static JobValue object(Map<String, JobValue> members) {
    return new JobValue(
        new Json.Obj(
            0,
            members.entrySet().stream()
                .map(m -> new Json.Member(m.getKey(), 0, m.getValue().json()))
                .toList()));
  }

  /**
   * Makes the lack of a value: its key is left out of the document.
   *
   * @return the lack
   */
  public static JobValue none() {
    return new JobValue(new Json.Nil(0));
  }

  /**
   * Writes the value in a few characters for a table.
   *
   * @return for example {@code 1.6 m}, {@code none}, {@code drop 300 mm, overlap 150 mm}
   */
  public String shown() {
    String text = shown(json);
    return text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
  }

  Json json() {
    return json;
  }

  boolean isNone() {
    return json instanceof Json.Nil;
  }

  private static String shown(Json json) {
    if (json instanceof Json.Text text) {
      return text.text();
    }
    if (json instanceof Json.Num number) {
      return Numbers.plain(number.value());
    }
    if (json instanceof Json.Flag flag) {
      return flag.value() ? "yes" : "no";
    }
    if (json instanceof Json.Arr list) {
      return joined(list.items().stream().map(JobValue::shown).toList());
    }
    if (json instanceof Json.Obj object) {
      return joined(object.members().stream().map(m -> m.key() + " " + shown(m.value())).toList());
    }
    return "none";
  }

  private static String joined(List<String> parts) {
    return parts.stream().limit(LONGEST).collect(Collectors.joining(", "));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof JobValue value && json.equals(value.json);
  }

  @Override
  public int hashCode() {
    return Objects.hashCode(json);
  }

  @Override
  public String toString() {
    return shown();
  }
}
