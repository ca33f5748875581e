package io.github.seamstead.api.doubt;

import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;

/** Says for people how far a number is usually off. */
final class SpreadText {

  private static final String ONE = ", one standard deviation";

  private SpreadText() {}

  static String millimetres(UsualDoubt usual) {
    return Numbers.significant(reach(usual) * 1000, 2) + " mm" + ONE;
  }

  static String points(UsualDoubt usual) {
    return Numbers.significant(reach(usual) * 100, 2) + " points" + ONE;
  }

  static String kelvins(UsualDoubt usual) {
    return Numbers.significant(reach(usual), 2) + " K" + ONE;
  }

  static String percent(UsualDoubt usual) {
    return Numbers.significant(reach(usual) * 100, 2) + " %" + ONE;
  }

  static String factor(UsualDoubt usual) {
    return "a factor of " + Numbers.significant(StrictMath.exp(reach(usual)), 3) + ONE;
  }

  static String evenPercent(UsualDoubt usual) {
    return Numbers.significant(reach(usual) * 100, 2) + " % up or down, evenly spread";
  }

  private static double reach(UsualDoubt usual) {
    return usual.scatter().above();
  }
}
