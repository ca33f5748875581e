package io.github.seamstead.examples.javadoc;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Holds the value of a line of an example to the comment behind it. */
public final class ShownValue {

  private static final Pattern NUMBER = Pattern.compile("(-?\\d+(?:\\.(\\d+))?)(?![\\w.]).*");

  private static final List<String> CHECKED = new ArrayList<>();

  private ShownValue() {}

  /**
   * Compares a value with what the comment says: numbers to the digits that are written, text and
   * names whole; what the comment says of other values is for readers alone.
   */
  public static void check(Object value, String comment) {
    Matcher number = NUMBER.matcher(comment);
    if (value instanceof Number given && number.matches()) {
      int decimals = number.group(2) == null ? 0 : number.group(2).length();
      BigDecimal rounded =
          new BigDecimal(given.toString()).setScale(decimals, RoundingMode.HALF_UP);
      require(
          rounded.compareTo(new BigDecimal(number.group(1))) == 0, given + " is not " + comment);
    } else if (value instanceof CharSequence || value instanceof Boolean || value instanceof Enum) {
      require(comment.startsWith(value.toString()), value + " is not " + comment);
    }
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new AssertionError(what);
    }
    CHECKED.add(what);
  }

  /** How many values were held to their comments so far. */
  static int checked() {
    return CHECKED.size();
  }
}
