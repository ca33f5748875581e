package io.github.seamstead.api.compare;

import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the plan of one variant comes to.
 *
 * @param number 0 for the job as it is written, then from 1 in the order of the variants document
 * @param name what is other than in the job as written
 * @param whyNot what of the variant cannot be met, each with its chapter; empty if all can
 * @param values each measure that the plan has, in its SI unit, weeks in weeks
 * @param weeks the weeks if every wait is as short as it may be, and if each is at its latest;
 *     empty if nothing was planned
 * @param openEnded whether a wait may last longer than was forecast
 * @param unpriced what has to be bought and has no price
 * @param frame the frame, for its picture
 */
public record VariantRow(
    int number,
    String name,
    List<String> whyNot,
    Map<Measure, Double> values,
    Optional<Range> weeks,
    boolean openEnded,
    List<String> unpriced,
    Optional<RegularPyramid> frame) {

  public VariantRow {
    whyNot = List.copyOf(whyNot);
    unpriced = List.copyOf(unpriced);
    Map<Measure, Double> copy = new EnumMap<>(Measure.class);
    copy.putAll(values);
    values = Collections.unmodifiableMap(copy);
  }

  /**
   * Tells whether all that the variant asks for can be met.
   *
   * @return true if nothing is unmet
   */
  public boolean isFeasible() {
    return whyNot.isEmpty();
  }

  /**
   * Gives a measure.
   *
   * @param measure the measure
   * @return its value in its SI unit; empty if the plan does not have it
   */
  public Optional<Double> value(Measure measure) {
    return Optional.ofNullable(values.get(measure));
  }
}
