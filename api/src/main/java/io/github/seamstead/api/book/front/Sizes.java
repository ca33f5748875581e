package io.github.seamstead.api.book.front;

import static io.github.seamstead.shared.quantity.PhysicalConstants.INCH;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.quantity.QuantityText;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Optional;

/** Writes the sizes of a job: as its words do, but a model's in millimetres and grams. */
final class Sizes {

  private static final char NO_BREAK = '\u00a0';
  private static final double SMALL_MASS = 2;

  private final Words words;
  private final boolean model;

  Sizes(Words words, boolean model) {
    this.words = words;
    this.model = model;
  }

  boolean isModel() {
    return model;
  }

  Words words() {
    return words;
  }

  String length(double metres) {
    return model && !words.isImperial() ? words.small(metres) : words.length(metres);
  }

  /** The unit of a column of lengths; empty where each carries its own, as feet and inches do. */
  String tapeUnit() {
    return words.isImperial() ? "" : model ? "mm" : "m";
  }

  /** A length in a column that is headed by {@link #tapeUnit}. */
  String tape(double metres) {
    String text = length(metres);
    return words.isImperial() ? text : text.substring(0, text.indexOf(NO_BREAK));
  }

  /** A length that nobody tapes: no finer than a centimetre or an inch. */
  String rough(double metres) {
    if (model) {
      return length(metres);
    }
    return words.isImperial()
        ? QuantityText.feetAndInches(metres, 1).replace(' ', NO_BREAK)
        : Numbers.fixed(metres, metres < 10 ? 2 : 1) + NO_BREAK + "m";
  }

  /** The least that such a length may be. */
  String atLeast(double metres) {
    if (model) {
      return words.atLeast(metres);
    }
    double step = words.isImperial() ? INCH : metres < 10 ? 0.01 : 0.1;
    return rough(Numbers.upTo(metres, step));
  }

  String mass(double kilograms) {
    return model && kilograms < SMALL_MASS && !words.isImperial()
        ? Numbers.fixed(kilograms * 1000, 0) + NO_BREAK + "g"
        : words.mass(kilograms);
  }

  String area(double squareMetres) {
    return model && !words.isImperial()
        ? Numbers.fixed(squareMetres * 1e4, 0) + NO_BREAK + "cm²"
        : words.area(squareMetres);
  }

  String speed(double metresPerSecond) {
    return words.speed(metresPerSecond);
  }

  /** The most that a speed may be. */
  String speedAtMost(double metresPerSecond) {
    return words.speedAtMost(metresPerSecond);
  }

  String force(double newtons) {
    return words.force(newtons);
  }

  /** A force as a crew reads it: in newtons, and as a spring scale shows it. */
  String pull(double newtons) {
    return pull(words.force(newtons), words.scaleForce(newtons));
  }

  /** Such a pull that something must hold. */
  String pullAtLeast(double newtons) {
    return pull(words.forceAtLeast(newtons), words.scaleForceAtLeast(newtons));
  }

  private String pull(String force, String onScale) {
    return words.isImperial() ? force : force + " (" + onScale + ")";
  }

  /** The length that a scale bar of a plan shows: a metre or a yard. */
  double unit() {
    return words.isImperial() ? 3 * words.scaleUnit() : words.scaleUnit();
  }

  String celsius(double degrees) {
    return words.celsius(degrees);
  }

  /** Days as a crew counts them: whole, from two on. */
  static String days(double days) {
    return Numbers.fixed(days, days < 2 ? 1 : 0) + NO_BREAK + "days";
  }

  static String days(Optional<Double> days, double horizon) {
    return days.isPresent()
        ? days(days.get())
        : "over" + NO_BREAK + Numbers.fixed(horizon, 0) + NO_BREAK + "days";
  }

  static String number(double value) {
    return Numbers.plain(Math.round(value * 100) / 100.0);
  }

  static String ends(Range range, int figures) {
    String low = Numbers.significant(range.low(), figures);
    String high = Numbers.significant(range.high(), figures);
    return low.equals(high) ? low : low + "–" + high;
  }
}
