package io.github.seamstead.shared.quantity;

import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantity text into SI numbers, and writes SI numbers as quantity text.
 *
 * <p>The form is a number and a unit, with a space or none between: {@code 5.2 m}, {@code 680
 * g/m2}, {@code 30°}, {@code 21 degC}, {@code 12 %}. A number is decimal with a point ({@code
 * 0.75}, {@code 1.2e-3}), a fraction ({@code 3/8}), or a whole number with a fraction ({@code 3
 * 1/2}, {@code 3-1/2}, {@code 3½}). Compound text has falling units of one family: feet and inches
 * ({@code 17 ft 3 1/2 in}, {@code 17' 3 1/2"}), hours and minutes ({@code 1 h 20 min}), degrees
 * alone. A leading minus covers the whole text. {@code m²} and {@code m^2} read as {@code m2}. A
 * comma is never read: it means thousands to one reader and decimals to another.
 *
 * <p>Thread-safe; each call costs time linear in the text's length, which may be at most 100
 * characters.
 *
 * <pre>{@code
 * double length = QuantityText.parse("17 ft 3 1/2 in", Dimension.LENGTH); // 5.2705
 * QuantityText.write(length, Dimension.LENGTH, "mm", 0); // 5271 mm
 * }</pre>
 */
public final class QuantityText {

  private static final int LONGEST = 100;
  private static final String DECIMAL = "\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?|\\.\\d+";
  private static final String UNIT = "['\"]|(?:US |imp )?[^\\d\\s'\"+.\\-±]+[23]?";
  private static final Pattern PART =
      Pattern.compile(
          "\\s*(?:(?:(\\d+)(?:\\s+|-))?(\\d+)/(\\d+)|(" + DECIMAL + "))\\s*(" + UNIT + ")?\\s*");
  private static final Map<String, String> VULGAR_FRACTIONS =
      Map.ofEntries(
          Map.entry("½", "1/2"),
          Map.entry("¼", "1/4"),
          Map.entry("¾", "3/4"),
          Map.entry("⅓", "1/3"),
          Map.entry("⅔", "2/3"),
          Map.entry("⅛", "1/8"),
          Map.entry("⅜", "3/8"),
          Map.entry("⅝", "5/8"),
          Map.entry("⅞", "7/8"));

  /** Pairs of units that may follow each other in one text. */
  private static final Map<String, String> SMALLER =
      Map.of("ft", "in", "'", "\"", "h", "min", "yd", "ft", "d", "h", "min", "s", "lb", "oz");

  private static final Pattern PLUS_MINUS = Pattern.compile("±|\\+/-|\\+-");

  private QuantityText() {}

  /**
   * Reads a text as a quantity of a dimension.
   *
   * @param text the text, at most 100 characters, for example {@code 17 ft 3 1/2 in}
   * @param dimension the kind of quantity expected
   * @return the value in the dimension's SI unit ({@link Dimension#siSymbol()})
   * @throws QuantityFormatException if the text has no number, no unit, an unknown unit, a comma,
   *     or units that do not belong together; the message names the units that are read
   */
  public static double parse(String text, Dimension dimension) {
    String clean = clean(text, dimension);
    boolean negative = clean.startsWith("-") || clean.startsWith("−");
    String rest = negative ? clean.substring(1) : clean;
    List<Part> parts = parts(text, rest, dimension);
    double sum = 0;
    for (Part part : parts) {
      // The sign goes inside: an offset unit (-5 degC in K) is not an odd function.
      sum += convert(text, part, dimension, negative);
    }
    if (!Double.isFinite(sum)) {
      throw fault(text, dimension, "the number is too large");
    }
    return sum;
  }

  /**
   * Reads a text with its standard uncertainty, such as {@code 5.204 m ± 2 mm}.
   *
   * @param text the text; {@code ±}, {@code +/-} or {@code +-} divides value and uncertainty. With
   *     no such mark the uncertainty is zero
   * @param dimension the kind of quantity expected
   * @return value and standard uncertainty in the dimension's SI unit
   * @throws QuantityFormatException if either side cannot be read or the uncertainty is negative
   */
  public static Uncertain parseUncertain(String text, Dimension dimension) {
    String[] sides = PLUS_MINUS.split(text, 3);
    if (sides.length > 2) {
      throw fault(text, dimension, "more than one plus-minus mark");
    }
    double value = parse(sides[0], dimension);
    if (sides.length == 1) {
      return Uncertain.exact(value);
    }
    if (sides[1].strip().startsWith("-")) {
      throw fault(text, dimension, "an uncertainty cannot be negative");
    }
    // A difference of two values, so that an offset unit (degC in K) keeps only its scale.
    double spread = parse(sides[1], dimension) - parse("0 " + lastUnit(sides[1]), dimension);
    return new Uncertain(value, spread);
  }

  /**
   * Lists the unit symbols that are read for a dimension.
   *
   * @param dimension the kind of quantity
   * @return the symbols, the SI unit first
   */
  public static Set<String> symbols(Dimension dimension) {
    return UnitTable.of(dimension).keySet();
  }

  /**
   * Converts an SI value to another unit of its dimension.
   *
   * @param si the value in {@link Dimension#siSymbol()}
   * @param dimension the kind of quantity
   * @param symbol one of {@link #symbols(Dimension)}
   * @return the value in the unit named
   * @throws QuantityFormatException if the symbol is not one of the dimension's
   */
  public static double toUnit(double si, Dimension dimension, String symbol) {
    return factor(dimension, symbol).fromSi(si);
  }

  /**
   * Converts a number in a unit to the dimension's SI unit.
   *
   * @param number the number in the unit named
   * @param dimension the kind of quantity
   * @param symbol one of {@link #symbols(Dimension)}
   * @return the value in {@link Dimension#siSymbol()}; infinite if it is too large for a number
   * @throws QuantityFormatException if the symbol is not one of the dimension's
   */
  public static double toSi(double number, Dimension dimension, String symbol) {
    return factor(dimension, symbol).toSi(number);
  }

  private static UnitTable.Factor factor(Dimension dimension, String symbol) {
    UnitTable.Factor factor = UnitTable.of(dimension).get(symbol);
    if (factor == null) {
      throw fault(symbol, dimension, "the unit is not known");
    }
    return factor;
  }

  /**
   * Writes an SI value in a unit, such as {@code 5.2 m} or {@code 680 g/m2}. The text reads back.
   *
   * @param si the value in {@link Dimension#siSymbol()}
   * @param dimension the kind of quantity
   * @param symbol one of {@link #symbols(Dimension)}
   * @param decimals digits after the decimal point, 0 or more
   * @return the number, a space and the symbol; a ratio in {@code 1} has no symbol
   * @throws QuantityFormatException if the symbol is not one of the dimension's
   */
  public static String write(double si, Dimension dimension, String symbol, int decimals) {
    String number = Numbers.fixed(toUnit(si, dimension, symbol), decimals);
    return symbol.equals("1") ? number : number + " " + symbol;
  }

  /**
   * Writes a length in feet, inches and a binary fraction, rounded to the nearest fraction, such as
   * {@code 17 ft 3 1/2 in}. The text reads back.
   *
   * @param metres the length, in metres
   * @param denominator the tape's division of the inch: 1, 2, 4, 8, 16, 32 or 64
   * @return the text; no feet below one foot, no inches where they are zero
   * @throws IllegalArgumentException if the length is not finite or the division is another
   */
  public static String feetAndInches(double metres, int denominator) {
    return FeetAndInches.write(metres, denominator);
  }

  private static String clean(String text, Dimension dimension) {
    if (text.length() > LONGEST) {
      throw fault(text.substring(0, 20) + "…", dimension, "the text is too long");
    }
    if (text.indexOf(',') >= 0) {
      throw fault(text, dimension, "write a decimal point and no thousands mark, as in 5.2");
    }
    String clean = text.strip().replace("²", "2").replace("³", "3").replace("^", "");
    clean = clean.replace("′", "'").replace("″", "\"").replace("''", "\"");
    for (Map.Entry<String, String> fraction : VULGAR_FRACTIONS.entrySet()) {
      clean = clean.replace(fraction.getKey(), " " + fraction.getValue());
    }
    return clean.strip();
  }

  private static List<Part> parts(String text, String rest, Dimension dimension) {
    List<Part> parts = new ArrayList<>();
    Matcher matcher = PART.matcher(rest);
    int at = 0;
    while (at < rest.length()) {
      matcher.region(at, rest.length());
      if (!matcher.lookingAt() || matcher.end() == at) {
        throw fault(text, dimension, "not a number with a unit");
      }
      Part part = part(text, matcher, dimension);
      if (!parts.isEmpty() && !part.unit.equals(SMALLER.get(parts.get(parts.size() - 1).unit))) {
        throw fault(text, dimension, "these units do not follow each other");
      }
      parts.add(part);
      at = matcher.end();
    }
    if (parts.isEmpty()) {
      throw fault(text, dimension, "not a number with a unit");
    }
    return parts;
  }

  private static Part part(String text, Matcher matcher, Dimension dimension) {
    double number;
    if (matcher.group(4) != null) {
      number = Double.parseDouble(matcher.group(4));
    } else {
      double denominator = Double.parseDouble(matcher.group(3));
      if (denominator == 0) {
        throw fault(text, dimension, "a fraction over zero");
      }
      String whole = matcher.group(1);
      number =
          (whole == null ? 0 : Double.parseDouble(whole))
              + Double.parseDouble(matcher.group(2)) / denominator;
    }
    String unit = matcher.group(5);
    if (unit == null) {
      if (dimension != Dimension.RATIO && dimension != Dimension.MONEY) {
        throw fault(text, dimension, "the unit is missing");
      }
      unit = "1";
    }
    return new Part(number, unit.strip());
  }

  private static double convert(String text, Part part, Dimension dimension, boolean negative) {
    UnitTable.Factor factor = UnitTable.of(dimension).get(part.unit);
    if (factor == null) {
      for (Dimension other : Dimension.values()) {
        if (UnitTable.of(other).containsKey(part.unit)) {
          throw fault(text, dimension, part.unit + " is a unit of " + other.label());
        }
      }
      throw fault(text, dimension, "the unit " + part.unit + " is not known");
    }
    return factor.toSi(negative ? -part.number : part.number);
  }

  private static String lastUnit(String text) {
    Matcher matcher = PART.matcher(text.strip());
    String unit = "";
    while (matcher.find()) {
      String found = matcher.group(5);
      unit = found == null ? unit : found;
    }
    return unit;
  }

  private static QuantityFormatException fault(String text, Dimension dimension, String why) {
    return new QuantityFormatException(
        "given \"" + text + "\" for a " + dimension.label(),
        why + "; write a number and one of: " + String.join(", ", symbols(dimension)));
  }

  private record Part(double number, String unit) {}
}
