package io.github.seamstead.api.chapter.internal;

import static io.github.seamstead.shared.quantity.PhysicalConstants.INCH;

import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.ImperialText;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.quantity.QuantityText;
import io.github.seamstead.shared.quantity.UnitSystem;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.function.DoubleFunction;

/** Writes quantities as the crew reads them, in metric or imperial units. */
public final class Words {

  private static final int TAPE_DIVISION = 16;

  /** Keeps a number and its unit on one line. */
  private static final char NO_BREAK = '\u00a0';

  private final boolean imperial;

  public Words(UnitSystem units) {
    this.imperial = units == UnitSystem.IMPERIAL;
  }

  public boolean isImperial() {
    return imperial;
  }

  /** The unit in which a drawn scale counts, in metres. */
  public double scaleUnit() {
    return imperial ? QuantityText.toSi(1, Dimension.LENGTH, "ft") : 1;
  }

  /** Writes the length of a drawn scale: a round number of its unit or of a part of it. */
  public String scale(double metres) {
    String unit = imperial ? "ft" : "m";
    double count = QuantityText.toUnit(metres, Dimension.LENGTH, unit);
    return Numbers.significant(count, 3) + NO_BREAK + unit;
  }

  /** Writes a length to a millimetre or a sixteenth of an inch. */
  public String length(double metres) {
    return imperial
        ? QuantityText.feetAndInches(metres, TAPE_DIVISION).replace(' ', NO_BREAK)
        : fixed(metres, 3, "m");
  }

  /** Writes a length below which nothing can be, rounded down. */
  public String lengthAtMost(double metres) {
    return length(Numbers.downTo(metres, imperial ? 0.0254 / TAPE_DIVISION : 0.001));
  }

  /** Writes a short length in millimetres or inches. */
  public String small(double metres) {
    return imperial
        ? QuantityText.feetAndInches(metres, TAPE_DIVISION).replace(' ', NO_BREAK)
        : fixed(metres * 1000, 0, "mm");
  }

  /**
   * Writes the least that a short length may be: up to the next millimetre or sixteenth of an inch.
   */
  public String atLeast(double metres) {
    return small(Numbers.upTo(metres, imperial ? INCH / TAPE_DIVISION : 0.001));
  }

  /** Writes the mesh of a sieve, which is finer than a tape reads. */
  public String mesh(double metres) {
    return imperial
        ? Numbers.significant(metres / INCH, 2) + NO_BREAK + "in"
        : Numbers.significant(metres * 1000, 2) + NO_BREAK + "mm";
  }

  public String area(double squareMetres) {
    return imperial ? in(squareMetres, Dimension.AREA, "ft2", 1) : fixed(squareMetres, 2, "m²");
  }

  public String volume(double cubicMetres) {
    return imperial ? in(cubicMetres, Dimension.VOLUME, "ft3", 1) : fixed(cubicMetres, 2, "m³");
  }

  public String litres(double cubicMetres) {
    return imperial
        ? in(cubicMetres, Dimension.VOLUME, "US gal", 1)
        : fixed(cubicMetres * 1000, 1, "l");
  }

  public String mass(double kilograms) {
    return mass(kilograms, Numbers::fixed);
  }

  /** Writes the most that a mass may be: down to the next digit shown. */
  public String massAtMost(double kilograms) {
    return mass(kilograms, Numbers::fixedAtMost);
  }

  private String mass(double kilograms, Digits digits) {
    int decimals = kilograms < 20 ? 1 : 0;
    if (imperial) {
      return shown(kilograms, Dimension.MASS, "lb", decimals, digits);
    }
    return kilograms >= 1000
        ? shown(kilograms, Dimension.MASS, "t", 2, digits)
        : shown(kilograms, Dimension.MASS, "kg", decimals, digits);
  }

  /** The unit in which lists for the shop count masses. */
  public String massUnit() {
    return imperial ? "lb" : "kg";
  }

  /** A mass in {@link #massUnit}. */
  public double inMassUnit(double kilograms) {
    return imperial ? kilograms / 0.45359237 : kilograms;
  }

  /** The unit in which lists for the shop count liquids. */
  public String liquidUnit() {
    return imperial ? "US gal" : "l";
  }

  /** A volume in {@link #liquidUnit}. */
  public double inLiquidUnit(double cubicMetres) {
    return imperial ? cubicMetres / 0.003785411784 : cubicMetres * 1000;
  }

  public String density(double kilogramsPerCubicMetre) {
    return imperial
        ? in(kilogramsPerCubicMetre, Dimension.DENSITY, "lb/ft3", 0)
        : fixed(kilogramsPerCubicMetre, 0, "kg/m³");
  }

  public String speed(double metresPerSecond) {
    return speed(metresPerSecond, Numbers::fixed);
  }

  /**
   * Writes the most that a speed may be: down to the next tenth. In miles an hour it is taken from
   * the tenth of a metre a second, as a sentence that states the limit is.
   */
  public String speedAtMost(double metresPerSecond) {
    return speed(Numbers.downTo(metresPerSecond, 0.1), Numbers::fixedAtMost);
  }

  private String speed(double metresPerSecond, Digits digits) {
    return shown(metresPerSecond, Dimension.SPEED, imperial ? "mph" : "m/s", 1, digits);
  }

  /** A pull: in newtons, from ten thousand on in kilonewtons, or in pounds-force. */
  public String force(double newtons) {
    return force(newtons, Numbers::fixed);
  }

  /** A pull that something must hold: up to the next digit shown. */
  public String forceAtLeast(double newtons) {
    return force(newtons, Numbers::fixedAtLeast);
  }

  /** A pull that something may take: down to the next digit shown. */
  public String forceAtMost(double newtons) {
    return force(newtons, Numbers::fixedAtMost);
  }

  private String force(double newtons, Digits digits) {
    if (imperial) {
      return shown(newtons, Dimension.FORCE, "lbf", 0, digits);
    }
    return newtons >= 10_000
        ? shown(newtons, Dimension.FORCE, "kN", 1, digits)
        : shown(newtons, Dimension.FORCE, "N", 0, digits);
  }

  /** A pull as a spring scale shows it: the mass that hangs so hard, in kilograms-force. */
  public String scaleForce(double newtons) {
    return scaleForce(newtons, Numbers::fixed);
  }

  /** As the other, for what something must hold: up to the next whole one. */
  public String scaleForceAtLeast(double newtons) {
    return scaleForce(newtons, Numbers::fixedAtLeast);
  }

  private String scaleForce(double newtons, Digits digits) {
    return shown(newtons, Dimension.FORCE, imperial ? "lbf" : "kgf", 0, digits);
  }

  public String pressure(double pascals) {
    return imperial ? in(pascals, Dimension.PRESSURE, "psf", 1) : fixed(pascals, 0, "Pa");
  }

  public String celsius(double degrees) {
    return imperial ? in(degrees, Dimension.TEMPERATURE, "°F", 0) : fixed(degrees, 0, "°C");
  }

  /** Writes an error finer than a tape reads: to a tenth of a millimetre, or as fine in inches. */
  public String error(double metres) {
    return imperial ? in(metres, Dimension.LENGTH, "in", 3) : fixed(metres * 1000, 1, "mm");
  }

  /** The unit of {@link #error}, for the head of a column. */
  public String errorUnit() {
    return imperial ? "in" : "mm";
  }

  /** A length in {@link #errorUnit}, without it. */
  public String inErrorUnit(double metres) {
    String text = error(metres);
    return text.substring(0, text.indexOf(NO_BREAK));
  }

  /** Gives what a calculation says, which it says in SI, in the units of the job. */
  public String said(String text) {
    return imperial ? ImperialText.of(text) : text;
  }

  /** The unit in which charts show densities. */
  public String densityUnit() {
    return imperial ? "lb/ft³" : "kg/m³";
  }

  /** A density in {@link #densityUnit}. */
  public double inDensityUnit(double kilogramsPerCubicMetre) {
    return imperial ? kilogramsPerCubicMetre / 16.018463374 : kilogramsPerCubicMetre;
  }

  public String angle(double radians) {
    return fixed(Math.toDegrees(radians), 1, "°");
  }

  public String percent(double ratio) {
    return fixed(ratio * 100, Math.abs(ratio) < 0.1 ? 1 : 0, "%");
  }

  /** Writes a duration in minutes below three hours, in hours and minutes above. */
  public String duration(double seconds) {
    long minutes = Math.round(seconds / 60);
    return minutes < 180
        ? minutes + (NO_BREAK + "min")
        : minutes / 60
            + (NO_BREAK + "h")
            + (minutes % 60 == 0 ? "" : " " + minutes % 60 + NO_BREAK + "min");
  }

  /** Writes the likely value and, unless they are the same text, the ends. */
  public String range(Range range, DoubleFunction<String> write) {
    String low = write.apply(range.low());
    String high = write.apply(range.high());
    String likely = write.apply(range.likely());
    return low.equals(high) ? likely : likely + " (" + low + " to " + high + ")";
  }

  private static String in(double si, Dimension dimension, String unit, int decimals) {
    String text = QuantityText.write(si, dimension, unit, decimals).replace(' ', NO_BREAK);
    return text.replace("ft2", "ft²").replace("ft3", "ft³");
  }

  /** How a value is written with a count of decimals: to the nearest digit, down or up. */
  private interface Digits {
    String of(double value, int decimals);
  }

  private static String shown(
      double si, Dimension dimension, String unit, int decimals, Digits digits) {
    return digits.of(QuantityText.toUnit(si, dimension, unit), decimals) + NO_BREAK + unit;
  }

  private static String fixed(double value, int decimals, String unit) {
    return Numbers.fixed(value, decimals) + NO_BREAK + unit;
  }
}
