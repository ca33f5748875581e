package io.github.seamstead.api.compare;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.quantity.QuantityText;
import io.github.seamstead.shared.quantity.UnitSystem;

/** Writes measures as people read them, in metric or imperial units. */
public final class MeasureText {

  private final Words words;

  /**
   * Writes in one system of units.
   *
   * @param imperial whether people read feet and pounds
   */
  public MeasureText(boolean imperial) {
    words = new Words(imperial ? UnitSystem.IMPERIAL : UnitSystem.METRIC);
  }

  /**
   * Writes a value or a difference of two.
   *
   * @param measure the measure
   * @param value its value, in the measure's unit
   * @return for example {@code 65.23 m²}
   */
  public String of(Measure measure, double value) {
    return switch (measure) {
      case CLOTH_AREA, CLOTH_SHORT, FLOOR_AREA -> words.area(value);
      case SEAM_LENGTH, HEADROOM -> value < 0 ? "-" + words.length(-value) : words.length(value);
      case SEAM_MISFIT -> value < 0 ? "-" + words.small(-value) : words.small(value);
      case HANDLED_MASS -> words.mass(value);
      case PEG_PULL ->
          words.isImperial()
              ? QuantityText.write(value, Dimension.FORCE, "lbf", 0)
              : Numbers.fixed(value, 0) + "\u00a0N";
      case CLAY -> Numbers.fixed(value * 100, 1) + "\u00a0%";
      case MONEY -> Numbers.fixed(value, 2);
      case WEEKS, HOURS -> Numbers.fixed(value, 1);
      case PERSON_DAYS, FIXINGS, BARROW_TRIPS -> Numbers.fixed(value, 0);
    };
  }

  /**
   * Writes a difference with its sign.
   *
   * @param measure the measure
   * @param change after less before, in the measure's unit
   * @return for example {@code +1.20 m²}
   */
  public String change(Measure measure, double change) {
    String text = of(measure, change);
    return change > 0 ? "+" + text : text.replace('-', '\u2212');
  }
}
