package io.github.seamstead.examples.reference;

import io.github.seamstead.shared.quantity.Numbers;
import java.math.BigDecimal;

/** What a comparison can show, from the strongest to the weakest. */
public enum CheckKind {
  /** The library computes what somebody else has printed. */
  PUBLISHED(
      "Published results",
      "Somebody else printed the value; the library computes it from the same givens and must come"
          + " within the tolerance."),
  /** A printed number is in the library as it was printed. */
  COPIED(
      "Copied values",
      "A printed number, a table entry or a constant stands in the library as printed, so the"
          + " tolerance is 0. This shows that it was copied rightly, not that anything was"
          + " computed."),
  /** The project's people computed the value by another way. */
  RECOMPUTED(
      "Recomputed another way",
      "Nobody published the value: it was worked by hand or with other software from the"
          + " definition. This shows that two ways agree, not that the definition is right."),
  /** The order of size alone is compared. */
  PLAUSIBILITY(
      "Plausibility",
      "The tolerance is a large part of the value, or the value is a rule of thumb. This shows the"
          + " order of size and nothing finer; do not read it as a check of the formula.");

  /** A tolerance beyond this part of the value compares the order of size alone. */
  private static final double BROAD = 0.1;

  /** Within this many half units of the last printed digit a tolerance is that of rounding. */
  private static final double OF_ROUNDING = 1.25;

  /** Below this part of the value a tolerance covers arithmetic alone. */
  private static final double ARITHMETIC = 1e-6;

  private final String title;
  private final String meaning;

  CheckKind(String title, String meaning) {
    this.title = title;
    this.meaning = meaning;
  }

  String title() {
    return title;
  }

  String meaning() {
    return meaning;
  }

  /**
   * Sorts a comparison by its status and tolerance.
   *
   * @param value the comparison
   * @return its kind
   */
  public static CheckKind of(CheckedValue value) {
    boolean broad = value.tolerance() > BROAD * Math.abs(value.expected()) && !isRounding(value);
    if (broad || value.status().equals("common practice")) {
      return PLAUSIBILITY;
    }
    if (value.status().equals("derived")) {
      return RECOMPUTED;
    }
    return value.tolerance() == 0 ? COPIED : PUBLISHED;
  }

  /**
   * Says what a tolerance covers, by its size.
   *
   * @param value the comparison
   * @return a few words
   */
  public static String reason(CheckedValue value) {
    double size = Math.abs(value.expected());
    if (value.tolerance() == 0) {
      return "none: must be equal";
    } else if (isRounding(value)) {
      return "rounding of the last printed digit";
    } else if (value.tolerance() <= ARITHMETIC * Math.max(size, 1)) {
      return "arithmetic alone";
    }
    double halves = value.tolerance() / halfUnit(value);
    if (halves < 1) {
      return "closer than the printed digits";
    }
    String wide =
        size == 0 ? "absolute" : Numbers.significant(100 * value.tolerance() / size, 2) + " %";
    return "wider than rounding: "
        + Numbers.significant(halves, 2)
        + " half units of the last digit, "
        + wide;
  }

  private static boolean isRounding(CheckedValue value) {
    double halves = value.tolerance() / halfUnit(value);
    return halves > 1 / OF_ROUNDING && halves <= OF_ROUNDING;
  }

  private static double halfUnit(CheckedValue value) {
    int decimals = new BigDecimal(Numbers.exact(value.expected())).stripTrailingZeros().scale();
    return 0.5 * StrictMath.pow(10, -Math.max(0, decimals));
  }
}
