package io.github.seamstead.examples.lessons;

import io.github.seamstead.shared.derivation.Formula;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes one task: numbers are drawn and printed, steps rest on printed numbers and earlier steps
 * alone. Not thread-safe.
 */
final class Sheet {

  /** A wrong number nearer to the right one than this tells nothing about the mistake. */
  private static final double TELLING = 0.01;

  private record Draft(String mistake, String formula) {}

  private final Draws draws;
  private final StepRecorder recorder = new StepRecorder();
  private final List<Given> givens = new ArrayList<>();
  private final Map<String, Double> values = new HashMap<>();
  private final Map<String, String> units = new HashMap<>();
  private final List<Draft> slips = new ArrayList<>();
  private String question = "";
  private String estimate = "";
  private double low = Double.NEGATIVE_INFINITY;
  private double high = Double.POSITIVE_INFINITY;

  Sheet(Draws draws) {
    this.draws = draws;
  }

  /** Draws a whole number. */
  int count(String symbol, String name, int shelter, int low, int high) {
    return (int) given(symbol, name, "", 0, shelter, low, high);
  }

  /** Draws a number in steps of its last printed digit. */
  double given(
      String symbol,
      String name,
      String unit,
      int decimals,
      double shelter,
      double low,
      double high) {
    double grid = StrictMath.pow(10, -decimals);
    double drawn = draws.named(symbol, shelter, low, high, grid);
    return printed(symbol, name, unit, decimals, drawn);
  }

  /** Prints a number that follows from others or is always the same. */
  double printed(String symbol, String name, String unit, int decimals, double value) {
    double tens = StrictMath.pow(10, decimals);
    Given given = new Given(symbol, name, Math.round(value * tens) / tens, decimals, unit);
    givens.add(given);
    keep(symbol, given.value(), given.sumUnit());
    return given.value();
  }

  /** Draws a number that is not printed, such as a hidden error. */
  double hidden(double shelter, double low, double high, double step) {
    return draws.of(shelter, low, high, step);
  }

  /** Sets the question; {@code {a}} stands for the printed number of a. */
  void ask(String text) {
    question = text;
  }

  /** Adds a step that the library's formulas evaluate. */
  double step(String symbol, String name, String formula, String unit) {
    return step(symbol, name, formula, Formula.parse(formula).evaluate(values), unit);
  }

  /** Adds a step whose value a calculation of the library gave. */
  double step(String symbol, String name, String formula, double value, String unit) {
    Steps.Entry entry = recorder.step(symbol, name).formula(formula);
    for (String input : Formula.parse(formula).symbols()) {
      entry.with(input, values.getOrDefault(input, Double.NaN), units.getOrDefault(input, ""));
    }
    keep(symbol, entry.gives(value, unit), unit);
    return value;
  }

  /** Says how the size of the answer can be seen beforehand. */
  void estimate(String reason, double from, double to) {
    estimate = reason;
    low = from;
    high = to;
  }

  /** Names a usual mistake by the formula that it uses. */
  void slip(String mistake, String formula) {
    slips.add(new Draft(mistake, formula));
  }

  /** Closes the task: the last step is the answer. */
  Task task(int digits) {
    Task bare =
        new Task(
            question,
            givens,
            recorder.derivation("lesson", "The sum"),
            digits,
            estimate,
            low,
            high,
            List.of());
    List<Slip> telling = new ArrayList<>();
    for (Draft draft : slips) {
      double wrong = Formula.parse(draft.formula()).evaluate(values);
      if (Double.isFinite(wrong)
          && Math.abs(wrong - bare.answer()) > TELLING * Math.abs(bare.answer())) {
        telling.add(new Slip(draft.mistake(), draft.formula(), wrong));
      }
    }
    return new Task(
        bare.fill(question),
        givens,
        bare.solution(),
        digits,
        bare.fill(estimate),
        low,
        high,
        telling);
  }

  private void keep(String symbol, double value, String unit) {
    values.put(symbol, value);
    units.put(symbol, unit);
  }
}
