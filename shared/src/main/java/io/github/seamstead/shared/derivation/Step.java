package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.source.Source;
import java.util.List;
import java.util.Optional;

/**
 * One worked step.
 *
 * @param section the heading it stands under; empty before the first
 * @param symbol the result's symbol
 * @param name the result's name in the trade's words
 * @param formula the right-hand side; empty for a given value
 * @param inputs the numbers that go in, in the order stated
 * @param value the result at full precision, in {@code unit}
 * @param unit the result's unit, empty for a pure number
 * @param source the source of the formula or the given value
 * @param note a remark; empty if there is none
 */
public record Step(
    String section,
    String symbol,
    String name,
    Optional<Formula> formula,
    List<Input> inputs,
    double value,
    String unit,
    Optional<Source> source,
    String note) {

  public Step {
    inputs = List.copyOf(inputs);
  }

  /**
   * A number that goes into a formula.
   *
   * @param symbol the symbol as it stands in the formula
   * @param value the number, in {@code unit}
   * @param unit its unit, empty for a pure number
   */
  public record Input(String symbol, double value, String unit) {}
}
