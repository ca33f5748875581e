package io.github.seamstead.api.job;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The kinds of value that are moments: a day, or a time of day. */
final class Moments {

  private static final String DAY = "[0-9]{4}-[0-9]{2}-[0-9]{2}";

  /** By this the schema tells a day from other texts. */
  static final String DAY_SCHEMA = schema(DAY);

  private Moments() {}

  private static String schema(String pattern) {
    return "^" + pattern + "$";
  }

  /** A day, written year-month-day. */
  static Kind<LocalDate> day() {
    return new Moment<>(
        LocalDate::parse,
        DAY,
        "must be a day that exists, written year-month-day, such as 2031-05-17");
  }

  /** A time of day, written hours:minutes. */
  static Kind<LocalTime> clock() {
    return new Moment<>(
        LocalTime::parse,
        "[0-9]{2}:[0-9]{2}",
        "must be a time of day, written hours:minutes, such as 07:30");
  }

  private record Moment<T>(Function<String, T> parse, String pattern, String allowed)
      implements Kind<T> {

    @Override
    public @Nullable T read(Json value, String path, Walk walk) {
      if (value instanceof Json.Text t && t.text().matches(pattern)) {
        try {
          return parse.apply(t.text());
        } catch (DateTimeParseException e) {
          walk.fault(path, value, allowed);
          return null;
        }
      }
      walk.fault(path, value, allowed);
      return null;
    }

    @Override
    public Json write(Object value, String path, Set<String> assumed) {
      return new Json.Text(0, value.toString());
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", "string");
      schema.put("pattern", Moments.schema(pattern));
      return schema;
    }
  }
}
