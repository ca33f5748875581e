package io.github.seamstead.geometry.tape;

import io.github.seamstead.shared.check.Args;
import java.util.List;
import java.util.Optional;

/**
 * How a tape was held for a reading.
 *
 * @param temperature of the tape, in degrees Celsius; empty if unknown; -50 to 80
 * @param pull in newtons, greater than 0; empty if unknown
 * @param spans the lengths that hung free between supports, in metres; empty if it lay on the
 *     ground all along; greater than 0
 */
public record TapeUse(Optional<Double> temperature, Optional<Double> pull, List<Double> spans) {

  public TapeUse {
    temperature.ifPresent(t -> Args.within("tape temperature", t, -50, 80, "degC"));
    pull.ifPresent(p -> Args.positive("pull", p, "N"));
    spans = List.copyOf(spans);
    spans.forEach(span -> Args.positive("span", span, "m"));
  }

  /**
   * A tape that lay flat.
   *
   * @param temperature in degrees Celsius
   * @param pull in newtons, greater than 0
   * @return the conditions
   * @throws IllegalArgumentException if a value is out of range
   */
  public static TapeUse flat(double temperature, double pull) {
    return new TapeUse(Optional.of(temperature), Optional.of(pull), List.of());
  }

  /**
   * A tape that hung free between supports.
   *
   * @param temperature in degrees Celsius
   * @param pull in newtons, greater than 0
   * @param spans the free lengths, in metres, each greater than 0
   * @return the conditions
   * @throws IllegalArgumentException if a value is out of range
   */
  public static TapeUse hung(double temperature, double pull, List<Double> spans) {
    return new TapeUse(Optional.of(temperature), Optional.of(pull), spans);
  }
}
