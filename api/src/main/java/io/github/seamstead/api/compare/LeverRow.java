package io.github.seamstead.api.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What pulling a lever does: the plan with it beside the plan as written.
 *
 * @param lever the lever
 * @param before the job as written
 * @param after the job with the lever pulled
 */
public record LeverRow(Lever lever, VariantRow before, VariantRow after) {

  /**
   * What lacks the least cloth first, then what saves most money, then most hours; what cannot be
   * met last.
   */
  static final Comparator<LeverRow> MOST_SAVED_FIRST =
      Comparator.comparing((LeverRow row) -> !row.after().isFeasible())
          .thenComparing(row -> -row.saved(Measure.CLOTH_SHORT).orElse(0.0))
          .thenComparing(row -> -row.saved(Measure.MONEY).orElse(0.0))
          .thenComparing(row -> -row.saved(Measure.HOURS).orElse(0.0))
          .thenComparing(row -> -row.saved(Measure.CLOTH_AREA).orElse(0.0))
          .thenComparing(row -> row.after().number());

  /**
   * Gives what of a measure is saved; hours of own work in place of bought material count.
   *
   * @param measure the measure
   * @return before less after, in the measure's unit; empty if one of the plans does not have it
   */
  public Optional<Double> saved(Measure measure) {
    double own = measure == Measure.HOURS ? lever.hours() : 0;
    return before.value(measure).flatMap(b -> after(measure).map(a -> b - a - own));
  }

  /** A plan that can be met lacks no cloth, also where it does not state so. */
  private Optional<Double> after(Measure measure) {
    Optional<Double> stated = after.value(measure);
    return measure == Measure.CLOTH_SHORT && stated.isEmpty() && !after.values().isEmpty()
        ? Optional.of(0.0)
        : stated;
  }

  /**
   * Gives the measures that move, other than money and hours.
   *
   * @return in the order of the measures; a change of less than a thousandth is none
   */
  public List<Measure> elsewhere() {
    return before.values().keySet().stream()
        .filter(m -> m != Measure.MONEY && m != Measure.HOURS)
        .filter(m -> moves(before.value(m).orElse(0.0), saved(m).orElse(0.0)))
        .toList();
  }

  private static boolean moves(double before, double saved) {
    return Math.abs(saved) > Math.abs(before) / 1000;
  }
}
