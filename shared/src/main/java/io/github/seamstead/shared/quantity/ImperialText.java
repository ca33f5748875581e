package io.github.seamstead.shared.quantity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Turns the metric quantities of a sentence into imperial ones, for a reader whose tape and scale
 * are imperial. Calculations write their reasons in SI; this is where a page for people leaves it.
 */
public final class ImperialText {

  private static final char NO_BREAK = '\u00a0';
  private static final String NUMBER = "-?\\d+(?:\\.\\d+)?";
  private static final String JOINED = "(?: (?:to|by|and|or|/|±|×) |–)";
  private static final String UNITS =
      "micrometres|millimetres|metres|kg/m[³3]|kN|kPa|Pa|m/s|mm|cm|m[²2]|m[³3]|m|kg|g|t|ml|l|N|°C|degC";
  private static final String IMPERIAL = "(?:ft|in|lb|oz|mph|lbf|psf|US gal|°F|lb/ft³)";
  private static final Pattern METRIC =
      Pattern.compile(
          "(?<![\\w.,/-])("
              + NUMBER
              + "(?:"
              + JOINED
              + NUMBER
              + ")*)[ \u00a0]("
              + UNITS
              + ")(?![\\w²³/°])(?: \\(("
              + NUMBER
              + "[ \u00a0]"
              + IMPERIAL
              + ")\\))?");
  private static final Pattern IN_BRACKETS =
      Pattern.compile("\\d[ \u00a0]" + IMPERIAL + "[ \u00a0]\\($");

  /** Below this a fraction of an inch says too little, in metres. */
  private static final double FINE = 0.003;

  private static final int OUNCES = 128;

  /** A tape's division of the inch by the last digit of the metric text: metre, dm, cm, mm. */
  private static final int[] DIVISIONS = {1, 1, 2, 16};

  private static final Map<String, Target> TARGETS =
      Map.ofEntries(
          Map.entry("kg", new Target(Dimension.MASS, "kg", "lb")),
          Map.entry("g", new Target(Dimension.MASS, "g", "oz")),
          Map.entry("t", new Target(Dimension.MASS, "t", "lb")),
          Map.entry("N", new Target(Dimension.FORCE, "N", "lbf")),
          Map.entry("kN", new Target(Dimension.FORCE, "kN", "lbf")),
          Map.entry("Pa", new Target(Dimension.PRESSURE, "Pa", "psf")),
          Map.entry("kPa", new Target(Dimension.PRESSURE, "kPa", "psf")),
          Map.entry("m/s", new Target(Dimension.SPEED, "m/s", "mph")),
          Map.entry("m²", new Target(Dimension.AREA, "m2", "ft2")),
          Map.entry("m2", new Target(Dimension.AREA, "m2", "ft2")),
          Map.entry("m³", new Target(Dimension.VOLUME, "m3", "ft3")),
          Map.entry("m3", new Target(Dimension.VOLUME, "m3", "ft3")),
          Map.entry("l", new Target(Dimension.VOLUME, "l", "US gal")),
          Map.entry("kg/m³", new Target(Dimension.DENSITY, "kg/m3", "lb/ft3")),
          Map.entry("kg/m3", new Target(Dimension.DENSITY, "kg/m3", "lb/ft3")),
          Map.entry("°C", new Target(Dimension.TEMPERATURE, "degC", "°F")),
          Map.entry("degC", new Target(Dimension.TEMPERATURE, "degC", "°F")));

  private record Target(Dimension dimension, String from, String to) {}

  private ImperialText() {}

  /**
   * Rewrites a text. A metric quantity that the text gives in imperial units beside it trades
   * places with that; one that stands in brackets behind an imperial one is left.
   *
   * @param text any text
   * @return the text with feet and inches, pounds, gallons, miles an hour and degrees Fahrenheit;
   *     as fine as the metric text was, two significant digits at least; a speed with as many
   *     decimals, rounded down
   */
  public static String of(String text) {
    Matcher found = METRIC.matcher(text);
    StringBuilder rewritten = new StringBuilder();
    int at = 0;
    while (found.find()) {
      rewritten.append(text, at, found.start());
      String metric = found.group(1) + NO_BREAK + found.group(2);
      if (found.group(3) != null) {
        rewritten.append(found.group(3)).append(" (").append(metric).append(')');
      } else if (IN_BRACKETS.matcher(text.substring(0, found.start())).find()) {
        rewritten.append(metric);
      } else {
        rewritten.append(all(found.group(1), found.group(2)));
      }
      at = found.end();
    }
    return rewritten.append(text, at, text.length()).toString();
  }

  /** Converts numbers that share a unit. */
  private static String all(String numbers, String unit) {
    Matcher number = Pattern.compile("(?<![\\d.])" + NUMBER).matcher(numbers);
    StringBuilder converted = new StringBuilder();
    int at = 0;
    while (number.find()) {
      converted.append(numbers, at, number.start()).append(one(number.group(), unit));
      at = number.end();
    }
    return converted.append(numbers, at, numbers.length()).toString();
  }

  private static String one(String number, String unit) {
    double value = Double.parseDouble(number);
    int point = number.indexOf('.');
    int decimals = point < 0 ? 0 : number.length() - point - 1;
    return switch (unit) {
      case "m", "metres" -> length(value, decimals);
      case "cm" -> length(value / 100, 2 + decimals);
      case "mm", "millimetres" -> length(value / 1000, 3 + decimals);
      case "micrometres" -> inches(value / 1e6);
      case "ml" -> ounces(value, number);
      default -> other(value, decimals, number, unit);
    };
  }

  private static String length(double metres, int decimals) {
    if (metres != 0 && Math.abs(metres) < FINE) {
      return inches(metres);
    }
    int division = DIVISIONS[Math.min(decimals, DIVISIONS.length - 1)];
    return QuantityText.feetAndInches(metres, division).replace(' ', NO_BREAK);
  }

  private static String inches(double metres) {
    double inches = QuantityText.toUnit(metres, Dimension.LENGTH, "in");
    return Numbers.significant(inches, 2) + NO_BREAK + "in";
  }

  /** Small liquids go by the fluid ounce, of which a gallon has {@value #OUNCES}. */
  private static String ounces(double millilitres, String number) {
    double si = QuantityText.toSi(millilitres, Dimension.VOLUME, "ml");
    double ounces = OUNCES * QuantityText.toUnit(si, Dimension.VOLUME, "US gal");
    return Numbers.significant(ounces, digits(number)) + NO_BREAK + "US fl oz";
  }

  private static String other(double value, int decimals, String number, String unit) {
    Target target = TARGETS.get(unit);
    if (target == null) {
      throw new IllegalStateException("no imperial unit for " + unit);
    }
    double si = QuantityText.toSi(value, target.dimension(), target.from());
    double converted = QuantityText.toUnit(si, target.dimension(), target.to());
    String text =
        switch (target.dimension()) {
          case TEMPERATURE -> Numbers.fixed(converted, decimals);
          // Most speeds in sentences are limits of the wind: 7.4 m/s must not become 17 mph.
          case SPEED -> Numbers.fixedAtMost(converted, decimals);
          default -> Numbers.significant(converted, digits(number));
        };
    return text + NO_BREAK + target.to().replace("ft2", "ft²").replace("ft3", "ft³");
  }

  /** The significant digits of a number, two at least. */
  private static int digits(String number) {
    String digits = number.replaceAll("[-.]", "").replaceAll("^0+", "");
    return Math.max(2, digits.length());
  }
}
