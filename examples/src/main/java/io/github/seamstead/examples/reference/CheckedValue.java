package io.github.seamstead.examples.reference;

import io.github.seamstead.shared.check.ArgumentFault;
import java.util.List;

/**
 * One comparison with a value from outside, as a test left it.
 *
 * @param calculation module and package of what was checked
 * @param what the case and the quantity with its unit
 * @param citation where the expected value stands
 * @param status how it was seen: found, from memory, common practice or derived
 * @param expected the printed value
 * @param got what the library computed
 * @param tolerance the absolute tolerance of the test
 * @param test name of the test class that made it, empty if unknown
 */
public record CheckedValue(
    String calculation,
    String what,
    String citation,
    String status,
    double expected,
    double got,
    double tolerance,
    String test) {

  private static final int FIELDS = 8;

  /**
   * Reads a line of a check file.
   *
   * @param line eight fields divided by tabs
   * @return the comparison
   * @throws IllegalArgumentException if the line has another form
   */
  public static CheckedValue parse(String line) {
    List<String> fields = List.of(line.split("\t", -1));
    if (fields.size() != FIELDS) {
      throw ArgumentFault.of(
          "check line", fields.size() + " fields", "must be " + FIELDS + ": " + line, "", "");
    }
    return new CheckedValue(
        fields.get(0),
        fields.get(1),
        fields.get(2),
        fields.get(3),
        Double.parseDouble(fields.get(4)),
        Double.parseDouble(fields.get(5)),
        Double.parseDouble(fields.get(6)),
        fields.get(7));
  }

  /**
   * Gives how far the library is from the printed value.
   *
   * @return {@code got - expected}
   */
  public double difference() {
    return got - expected;
  }

  /**
   * Tells whether the difference is within the tolerance, but for what the subtraction itself
   * rounds.
   *
   * @return true if the check holds
   */
  public boolean holds() {
    return Math.abs(difference()) <= tolerance + Math.ulp(expected);
  }
}
