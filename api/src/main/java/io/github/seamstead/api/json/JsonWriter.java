package io.github.seamstead.api.json;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes JSON text from maps, lists, texts, numbers, booleans and optionals of these. Numbers are
 * written with the fewest digits that read back the same, under every locale. Costs time linear in
 * the text.
 */
public final class JsonWriter {

  private static final char[] HEX = "0123456789abcdef".toCharArray();

  private final StringBuilder out = new StringBuilder(4096);

  private JsonWriter() {}

  /**
   * Writes a value as JSON text, indented by two spaces, with a line break at the end. Lists of
   * numbers stay on one line.
   *
   * @param value a map with text keys, list, text, number, boolean, or an optional of these; an
   *     empty optional in a map leaves its key out
   * @return the text
   * @throws IllegalArgumentException if a value is of another type, or a number is not finite
   */
  public static String text(Object value) {
    JsonWriter writer = new JsonWriter();
    writer.value(value, 0);
    return writer.out.append('\n').toString();
  }

  private void value(Object value, int depth) {
    if (value instanceof String s) {
      quote(s);
    } else if (value instanceof Map<?, ?> map) {
      object(map, depth);
    } else if (value instanceof List<?> list) {
      array(list, depth);
    } else if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
      out.append(value);
    } else if (value instanceof Double d) {
      if (!Double.isFinite(d)) {
        throw new IllegalArgumentException("JSON number: given " + d + ", must be finite");
      }
      out.append(Numbers.exact(d));
    } else if (value instanceof Optional<?> o && o.isPresent()) {
      value(o.get(), depth);
    } else {
      throw new IllegalArgumentException(
          "JSON value: given " + value.getClass().getSimpleName() + ", must be plain data");
    }
  }

  private void object(Map<?, ?> map, int depth) {
    boolean first = true;
    out.append('{');
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      if (entry.getValue() instanceof Optional<?> o && o.isEmpty()) {
        continue;
      }
      out.append(first ? "\n" : ",\n");
      indent(depth + 1);
      quote(String.valueOf(entry.getKey()));
      out.append(": ");
      value(entry.getValue(), depth + 1);
      first = false;
    }
    if (!first) {
      out.append('\n');
      indent(depth);
    }
    out.append('}');
  }

  private void array(List<?> list, int depth) {
    boolean flat =
        list.stream()
            .noneMatch(item -> item instanceof Map || (item instanceof List<?> l && !small(l)));
    out.append('[');
    for (int i = 0; i < list.size(); i++) {
      if (flat) {
        out.append(i == 0 ? "" : ", ");
      } else {
        out.append(i == 0 ? "\n" : ",\n");
        indent(depth + 1);
      }
      value(list.get(i), depth + 1);
    }
    if (!flat) {
      out.append('\n');
      indent(depth);
    }
    out.append(']');
  }

  private static boolean small(List<?> list) {
    return list.size() <= 3 && list.stream().allMatch(item -> item instanceof Number);
  }

  private void indent(int depth) {
    out.append("  ".repeat(depth));
  }

  private void quote(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\t' -> out.append("\\t");
        case '\r' -> out.append("\\r");
        default -> {
          if (c < 0x20 || c == 0x2028 || c == 0x2029) {
            out.append("\\u").append(HEX[c >> 12]).append(HEX[(c >> 8) & 15]);
            out.append(HEX[(c >> 4) & 15]).append(HEX[c & 15]);
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }
}
