package io.github.seamstead.shared.sensitivity;

import io.github.seamstead.shared.check.Args;

/**
 * How a number may lie about what is stated of it.
 *
 * @param form the form of the distribution
 * @param below how far it reaches below, in the number's unit or as a part of it, as the form says;
 *     0 or more
 * @param above how far it reaches above, likewise; 0 or more
 */
public record Scatter(Form form, double below, double above) {

  /** The form of a distribution. Each holds the stated number in its middle. */
  public enum Form {
    /** Normal: the reach is one standard deviation, in the number's unit. */
    NORMAL,
    /** The logarithm is normal: the reach is one standard deviation of the natural logarithm. */
    LOG_NORMAL,
    /** As likely below as above, evenly on each side; the reach is in the number's unit. */
    EVEN,
    /** As {@link #EVEN}, the reach as a part of the number. */
    EVEN_PART
  }

  public Scatter {
    Args.notNegative("scatter below", below, "");
    Args.notNegative("scatter above", above, "");
  }

  /**
   * Makes a normal scatter.
   *
   * @param deviation standard deviation, in the number's unit, 0 or more
   * @return the scatter
   */
  public static Scatter normal(double deviation) {
    return new Scatter(Form.NORMAL, deviation, deviation);
  }

  /**
   * Makes the scatter of a number that is never negative.
   *
   * @param deviation standard deviation of the natural logarithm, about that of the number as a
   *     part of it; 0 or more
   * @return the scatter
   */
  public static Scatter logNormal(double deviation) {
    return new Scatter(Form.LOG_NORMAL, deviation, deviation);
  }

  /**
   * Makes an even scatter as a part of the number.
   *
   * @param part how far either way, 0 or more
   * @return the scatter
   */
  public static Scatter evenPart(double part) {
    return new Scatter(Form.EVEN_PART, part, part);
  }

  /**
   * Gives the number at a place in its distribution: {@code x + w s z}, {@code x exp(w s z)},
   * {@code x + w s (2 p - 1)} or {@code x (1 + w s (2 p - 1))}, with z the normal score of p.
   *
   * @param stated the number x as it is stated
   * @param place the part p of the distribution that lies below, 0 to 1; a half gives {@code
   *     stated}
   * @param width the part w of the scatter that is left, 0 or more; 1 for all of it
   * @return the number, in its unit
   * @throws IllegalArgumentException if the place or the width is out of range
   */
  public double at(double stated, double place, double width) {
    Args.within("place in the distribution", place, 0, 1, "");
    Args.notNegative("width of the scatter", width, "");
    double reach = width * (place < 0.5 ? below : above);
    return switch (form) {
      case NORMAL -> stated + reach * NormalScore.of(place);
      case LOG_NORMAL -> stated * StrictMath.exp(reach * NormalScore.of(place));
      case EVEN -> stated + reach * (2 * place - 1);
      case EVEN_PART -> stated * (1 + reach * (2 * place - 1));
    };
  }
}
