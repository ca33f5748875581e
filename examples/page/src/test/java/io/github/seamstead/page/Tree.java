package io.github.seamstead.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Compares two JSON values: the same keys, the same texts, numbers to a billionth of themselves.
 */
final class Tree {

  private static final double CLOSE = 1e-9;
  private static final int MOST = 5;

  private final List<String> differences = new ArrayList<>();
  private int unequalBits;

  Tree(Object expected, Object found) {
    compare("$", expected, found);
  }

  List<String> differences() {
    return differences;
  }

  /** How many numbers are close, yet not the same bit for bit. */
  int unequalBits() {
    return unequalBits;
  }

  private void compare(String at, Object expected, Object found) {
    if (expected instanceof Map<?, ?> a && found instanceof Map<?, ?> b) {
      if (!List.copyOf(a.keySet()).equals(List.copyOf(b.keySet()))) {
        note(at, a.keySet(), b.keySet());
        return;
      }
      a.forEach((key, value) -> compare(at + "." + key, value, b.get(key)));
    } else if (expected instanceof List<?> a && found instanceof List<?> b) {
      if (a.size() != b.size()) {
        note(at, a.size() + " items", b.size() + " items");
        return;
      }
      for (int i = 0; i < a.size(); i++) {
        compare(at + "[" + i + "]", a.get(i), b.get(i));
      }
    } else if (expected instanceof Double a && found instanceof Double b) {
      if (Double.doubleToLongBits(a) != Double.doubleToLongBits(b)) {
        unequalBits++;
        if (!(Math.abs(a - b) <= CLOSE * Math.max(Math.abs(a), Math.abs(b)))) {
          note(at, a, b);
        }
      }
    } else if (!expected.equals(found)) {
      note(at, expected, found);
    }
  }

  private void note(String at, Object expected, Object found) {
    if (differences.size() < MOST) {
      differences.add(at + ": " + shown(expected) + " here, " + shown(found) + " in the page");
    }
  }

  private static String shown(Object value) {
    String text = String.valueOf(value);
    return text.length() > 300 ? text.substring(0, 300) + "…" : text;
  }
}
