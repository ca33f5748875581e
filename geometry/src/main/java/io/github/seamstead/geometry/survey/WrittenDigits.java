package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.quantity.QuantityText;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A reading as it stands in the field book, and what its digits may have been meant to say. */
final class WrittenDigits {

  private static final double MOST_CORRECTION = 0.01;

  private static final int INCHES_IN_A_FOOT = 12;

  private static final String FEET = "(ft|feet|foot|')";
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("(\\d+)(\\s*" + FEET + "\\s*)(\\d+)(\\D.*)");
  private static final Pattern DECIMAL_FEET =
      Pattern.compile("(\\d+)[.,](\\d{1,2})\\s*" + FEET + "\\s*");

  /** A number that nobody writes, such as 01.496. */
  private static final Pattern LEADING_ZERO = Pattern.compile("(^|[^0-9.,])0[0-9]");

  private WrittenDigits() {}

  /** Another way the words may have been meant. */
  record Variant(String text, double value) {}

  /** The words of the field book, or the value in metres to the millimetre. */
  static String textOf(Reading reading) {
    if (!reading.asWritten().isBlank()) {
      return reading.asWritten();
    }
    String millimetres = Numbers.fixed(reading.value(), 3);
    return (millimetres.endsWith("0")
            ? millimetres.substring(0, millimetres.length() - 1)
            : millimetres)
        + " m";
  }

  /** Swaps each two neighbouring digits, also across a decimal point. */
  static List<Variant> swaps(String text) {
    List<Variant> variants = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      if (!Character.isDigit(text.charAt(i))) {
        continue;
      }
      int next = i + 1;
      if (next < text.length() && text.charAt(next) == '.') {
        next++;
      }
      if (next < text.length()
          && Character.isDigit(text.charAt(next))
          && text.charAt(next) != text.charAt(i)) {
        StringBuilder swapped = new StringBuilder(text);
        swapped.setCharAt(i, text.charAt(next));
        swapped.setCharAt(next, text.charAt(i));
        if (!LEADING_ZERO.matcher(swapped).find()) {
          add(variants, swapped.toString());
        }
      }
    }
    return variants;
  }

  /** Exchanges feet and inches, where the feet could be inches. */
  static List<Variant> exchanged(String text) {
    List<Variant> variants = new ArrayList<>();
    Matcher m = FEET_AND_INCHES.matcher(text);
    if (m.matches() && Integer.parseInt(m.group(1)) < INCHES_IN_A_FOOT) {
      add(variants, m.group(4) + m.group(2) + m.group(1) + m.group(5));
    }
    return variants;
  }

  /** Takes inches for a decimal of the foot, and a decimal of the foot for inches. */
  static List<Variant> decimalFeet(String text) {
    List<Variant> variants = new ArrayList<>();
    Matcher whole = FEET_AND_INCHES.matcher(text);
    if (whole.matches() && whole.group(5).chars().noneMatch(Character::isDigit)) {
      add(variants, whole.group(1) + "." + whole.group(4) + " ft");
    }
    Matcher decimal = DECIMAL_FEET.matcher(text);
    if (decimal.matches() && Integer.parseInt(decimal.group(2)) < INCHES_IN_A_FOOT) {
      add(variants, decimal.group(1) + " ft " + Integer.parseInt(decimal.group(2)) + " in");
    }
    return variants;
  }

  /**
   * What was added to the words by tape corrections, in metres; 0 if the words are something else.
   */
  static double correction(Reading reading) {
    if (reading.asWritten().isBlank()) {
      return 0;
    }
    List<Variant> itself = new ArrayList<>();
    add(itself, reading.asWritten());
    double added = itself.isEmpty() ? 0 : reading.value() - itself.get(0).value();
    // Corrections are small; a larger difference means that the words are not this value.
    return Math.abs(added) < MOST_CORRECTION * Math.abs(reading.value()) ? added : 0;
  }

  private static void add(List<Variant> variants, String text) {
    try {
      variants.add(new Variant(text, QuantityText.parse(text, Dimension.LENGTH)));
    } catch (IllegalArgumentException e) {
      // Words that are no length, such as a remark of the book keeper, have no swaps.
      return;
    }
  }
}
