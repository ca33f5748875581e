package io.github.seamstead.shared.check;

import io.github.seamstead.shared.internal.PlainNumber;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;

/**
 * Checks that return their argument, so that a constructor is a list of checked assignments.
 *
 * <p>Guards are written as the negation of what is allowed, so that NaN fails each of them. All
 * methods throw an {@link ArgumentFault} with the name, the value given, the allowed range and the
 * unit, for example {@code base side: given -2 m, must be greater than 0 m}. The unit is a plain
 * label such as {@code m}; an empty label stands for a pure number.
 *
 * <pre>{@code
 * double width = Args.positive("width", 1.2, "m"); // 1.2
 * try {
 *   Args.positive("width", -1.2, "m");
 * } catch (ArgumentFault fault) {
 *   fault.getMessage(); // width: given -1.2 m, must be greater than 0 m
 * }
 * }</pre>
 */
public final class Args {

  private Args() {}

  /**
   * Requires a finite value greater than zero.
   *
   * @param name the argument's name in the trade's words
   * @param value the value given, in {@code unit}
   * @param unit the unit's symbol, empty for a pure number
   * @return {@code value}
   * @throws ArgumentFault if the value is NaN, infinite, zero or negative
   */
  public static double positive(String name, double value, String unit) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw bad(name, value, unit, "must be greater than " + with(0, unit));
    }
    return value;
  }

  /**
   * Requires a finite value of zero or more.
   *
   * @param name the argument's name in the trade's words
   * @param value the value given, in {@code unit}
   * @param unit the unit's symbol, empty for a pure number
   * @return {@code value}
   * @throws ArgumentFault if the value is NaN, infinite or negative
   */
  public static double notNegative(String name, double value, String unit) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw bad(name, value, unit, "must be " + with(0, unit) + " or more");
    }
    return value;
  }

  /**
   * Requires a finite value.
   *
   * @param name the argument's name in the trade's words
   * @param value the value given, in {@code unit}
   * @param unit the unit's symbol, empty for a pure number
   * @return {@code value}
   * @throws ArgumentFault if the value is NaN or infinite
   */
  public static double finite(String name, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw bad(name, value, unit, "must be a finite number");
    }
    return value;
  }

  /**
   * Requires a value within a closed range.
   *
   * @param name the argument's name in the trade's words
   * @param value the value given, in {@code unit}
   * @param least the least value allowed, in {@code unit}
   * @param greatest the greatest value allowed, in {@code unit}
   * @param unit the unit's symbol, empty for a pure number
   * @return {@code value}
   * @throws ArgumentFault if the value is NaN or outside the range
   */
  public static double within(
      String name, double value, double least, double greatest, String unit) {
    if (!(value >= least && value <= greatest)) {
      throw bad(
          name, value, unit, "must be from " + with(least, unit) + " to " + with(greatest, unit));
    }
    return value;
  }

  /**
   * Requires a value strictly between two limits.
   *
   * @param name the argument's name in the trade's words
   * @param value the value given, in {@code unit}
   * @param above the limit that the value must exceed, in {@code unit}
   * @param below the limit that the value must stay under, in {@code unit}
   * @param unit the unit's symbol, empty for a pure number
   * @return {@code value}
   * @throws ArgumentFault if the value is NaN or not strictly between the limits
   */
  public static double between(String name, double value, double above, double below, String unit) {
    if (!(value > above && value < below)) {
      throw bad(
          name,
          value,
          unit,
          "must be more than " + with(above, unit) + " and less than " + with(below, unit));
    }
    return value;
  }

  /**
   * Requires a whole number within a closed range.
   *
   * @param name the argument's name in the trade's words
   * @param value the number given
   * @param least the least number allowed
   * @param greatest the greatest number allowed
   * @return {@code value}
   * @throws ArgumentFault if the number is outside the range
   */
  public static int within(String name, int value, int least, int greatest) {
    if (value < least || value > greatest) {
      throw ArgumentFault.of(
          name, Integer.toString(value), "must be from " + least + " to " + greatest, "", "");
    }
    return value;
  }

  /**
   * Requires a text with at least one visible character.
   *
   * @param name the argument's name in the trade's words
   * @param text the text given
   * @return {@code text}
   * @throws ArgumentFault if the text is empty or blank
   */
  public static String notBlank(String name, String text) {
    if (text.isBlank()) {
      throw ArgumentFault.of(name, "an empty text", "must not be empty", "", "");
    }
    return text;
  }

  /**
   * Requires at least one element and returns an unmodifiable copy.
   *
   * @param <T> the type of the elements
   * @param name the argument's name in the trade's words
   * @param elements the elements given, none of them null
   * @return an unmodifiable list of the same elements in the same order
   * @throws ArgumentFault if there is no element
   */
  public static <T> List<T> notEmpty(String name, Collection<? extends T> elements) {
    if (elements.isEmpty()) {
      throw ArgumentFault.of(name, "none", "must have at least one", "", "");
    }
    return List.copyOf(elements);
  }

  /**
   * Requires a condition that spans several arguments.
   *
   * @param condition what must hold
   * @param found what was found, in full, with the values given
   * @throws ArgumentFault with {@code found} if the condition does not hold
   */
  public static void require(boolean condition, String found) {
    if (!condition) {
      throw ArgumentFault.finding(found);
    }
  }

  /**
   * Requires a condition that is asked so often that putting it into words each time would cost.
   *
   * @param condition what must hold
   * @param found what was found, in full; asked for only if the condition does not hold
   * @throws ArgumentFault with {@code found} if the condition does not hold
   */
  public static void require(boolean condition, Supplier<String> found) {
    if (!condition) {
      throw ArgumentFault.finding(found.get());
    }
  }

  /**
   * Requires a condition of one argument that no other check states.
   *
   * @param condition what must hold
   * @param name the argument's name in the trade's words
   * @param given what was given, with its unit
   * @param allowed what is allowed, from {@code must} on, with its unit
   * @throws ArgumentFault if the condition does not hold
   */
  public static void require(boolean condition, String name, String given, String allowed) {
    require(condition, name, given, allowed, "");
  }

  /**
   * Requires a condition that is asked so often that putting it into words each time would cost.
   *
   * @param condition what must hold
   * @param name the argument's name in the trade's words
   * @param given what was given, with its unit; asked for only if the condition does not hold
   * @param allowed what is allowed, from {@code must} on, with its unit
   * @throws ArgumentFault if the condition does not hold
   */
  public static void require(
      boolean condition, String name, Supplier<String> given, String allowed) {
    if (!condition) {
      throw ArgumentFault.of(name, given.get(), allowed, "", "");
    }
  }

  /**
   * Requires a condition of one argument that no other check states.
   *
   * @param condition what must hold
   * @param name the argument's name in the trade's words
   * @param given what was given, with its unit
   * @param allowed what is allowed, from {@code must} on, with its unit
   * @param advice what to do about it
   * @throws ArgumentFault if the condition does not hold
   */
  public static void require(
      boolean condition, String name, String given, String allowed, String advice) {
    if (!condition) {
      throw ArgumentFault.of(name, given, allowed, "", advice);
    }
  }

  /**
   * Requires that several arguments agree.
   *
   * @param condition what must hold
   * @param found what was found, with the values that contradict
   * @param asked what is allowed, from {@code must} on, or what to do about it
   * @throws ArgumentFault if the condition does not hold
   */
  public static void agree(boolean condition, String found, String asked) {
    if (!condition) {
      throw ArgumentFault.finding(found, asked);
    }
  }

  /**
   * Requires that several arguments agree, where that is asked so often that putting it into words
   * each time would cost.
   *
   * @param condition what must hold
   * @param found what was found; asked for only if the condition does not hold
   * @param asked what is allowed, from {@code must} on, or what to do about it
   * @throws ArgumentFault if the condition does not hold
   */
  public static void agree(boolean condition, Supplier<String> found, String asked) {
    if (!condition) {
      throw ArgumentFault.finding(found.get(), asked);
    }
  }

  private static ArgumentFault bad(String name, double value, String unit, String allowed) {
    String given = with(value, unit);
    // A value beyond a limit by less than is shown must not read as the limit itself.
    String told = allowed.contains(given) ? (PlainNumber.exact(value) + " " + unit).strip() : given;
    return ArgumentFault.of(name, told, allowed, unit, "");
  }

  private static String with(double value, String unit) {
    String number = PlainNumber.shown(value);
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
