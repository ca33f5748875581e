package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;

/** How long lifting goes on, with the frequency multipliers of the revised equation. */
public enum LiftDuration {
  /** Up to one hour, then rest of 1.2 times as long. */
  UP_TO_ONE_HOUR("up to 1 h", 12),
  /** More than one and up to two hours, then rest of 0.3 times as long. */
  UP_TO_TWO_HOURS("up to 2 h", 10),
  /** More than two and up to eight hours. */
  UP_TO_EIGHT_HOURS("up to 8 h", 8);

  /** The least frequency of the table, in lifts a minute; slower lifting counts as this. */
  public static final double LEAST_FREQUENCY = 0.2;

  private static final double[] FREQUENCIES = {
    0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15
  };

  private static final double[] ONE_HOUR = {
    1.00, .97, .94, .91, .88, .84, .80, .75, .70, .60, .52, .45, .41, .37, .34, .31, .28
  };
  private static final double[] TWO_HOURS = {
    .95, .92, .88, .84, .79, .72, .60, .50, .42, .35, .30, .26, .23, .21, 0, 0, 0
  };
  private static final double[] EIGHT_HOURS = {
    .85, .81, .75, .65, .55, .45, .35, .27, .22, .18, .15, .13, 0, 0, 0, 0, 0
  };

  private final String label;
  private final double mostWithLowHands;

  LiftDuration(String label, double mostWithLowHands) {
    this.label = label;
    this.mostWithLowHands = mostWithLowHands;
  }

  private double[] column() {
    return switch (this) {
      case UP_TO_ONE_HOUR -> ONE_HOUR;
      case UP_TO_TWO_HOURS -> TWO_HOURS;
      case UP_TO_EIGHT_HOURS -> EIGHT_HOURS;
    };
  }

  /**
   * Names the duration.
   *
   * @return for example {@code up to 1 h}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the frequency multiplier, between the rows of the table in a straight line. Above the
   * last row with a number it is 0.
   *
   * @param liftsPerMinute lifts a minute, averaged over 15 minutes, 0 to 60
   * @param handsAtOrAbove75Centimetres true if the hands start at 75 cm (30 in) or higher
   * @return 0 to 1
   * @throws IllegalArgumentException if the frequency is out of range
   */
  public double multiplier(double liftsPerMinute, boolean handsAtOrAbove75Centimetres) {
    double f =
        Math.max(LEAST_FREQUENCY, Args.within("lifts a minute", liftsPerMinute, 0, 60, "1/min"));
    if (!handsAtOrAbove75Centimetres && f > mostWithLowHands) {
      return 0;
    }
    double[] multipliers = column();
    int row = 0;
    while (row < FREQUENCIES.length && FREQUENCIES[row] < f) {
      row++;
    }
    if (row == FREQUENCIES.length || multipliers[row] == 0) {
      return 0;
    }
    if (FREQUENCIES[row] == f) {
      return multipliers[row];
    }
    double part = (f - FREQUENCIES[row - 1]) / (FREQUENCIES[row] - FREQUENCIES[row - 1]);
    return multipliers[row - 1] + part * (multipliers[row] - multipliers[row - 1]);
  }
}
