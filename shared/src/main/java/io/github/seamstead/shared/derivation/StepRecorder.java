package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Keeps the steps of one calculation. Not thread-safe: one recorder for one call.
 *
 * <p>A step whose formula has a symbol without an input is refused at once, so that a page can
 * never show a formula that cannot be followed.
 *
 * <pre>{@code
 * StepRecorder steps = new StepRecorder();
 * double area =
 *     steps
 *         .step("A", "area of a rectangle")
 *         .formula("a * b")
 *         .with("a", 2, "m")
 *         .with("b", 1.5, "m")
 *         .from(Source.derived("plane geometry"))
 *         .gives(2 * 1.5, "m2");
 * Derivation worked = steps.derivation("area", "A rectangle");
 * worked.steps().size(); // 1
 * }</pre>
 */
public final class StepRecorder implements Steps {

  private final List<Step> steps = new ArrayList<>();
  private String section = "";

  /** Creates an empty recorder. */
  public StepRecorder() {}

  @Override
  public boolean isRecording() {
    return true;
  }

  @Override
  public void section(String heading) {
    section = heading;
  }

  @Override
  public Entry step(String symbol, String name) {
    return new Draft(Args.notBlank("symbol", symbol), Args.notBlank("name", name));
  }

  /**
   * Tells whether nothing was kept yet, as when a calculation refuses its input.
   *
   * @return true before the first step
   */
  public boolean isEmpty() {
    return steps.isEmpty();
  }

  /**
   * Closes the record.
   *
   * @param id the calculation's id, as in {@link Calculation}
   * @param title what was calculated
   * @return the derivation of all steps kept so far
   * @throws IllegalArgumentException if no step was kept
   */
  public Derivation derivation(String id, String title) {
    return new Derivation(id, title, steps);
  }

  private final class Draft implements Entry {

    private final String symbol;
    private final String name;
    private final List<Step.Input> inputs = new ArrayList<>();
    private Optional<Formula> formula = Optional.empty();
    private Optional<Source> source = Optional.empty();
    private String note = "";

    Draft(String symbol, String name) {
      this.symbol = symbol;
      this.name = name;
    }

    @Override
    public Entry formula(String text) {
      formula = Optional.of(Formula.parse(text));
      return this;
    }

    @Override
    public Entry with(String inputSymbol, double value, String unit) {
      inputs.add(new Step.Input(inputSymbol, value, unit));
      return this;
    }

    @Override
    public Entry from(Source from) {
      source = Optional.of(from);
      return this;
    }

    @Override
    public Entry note(String text) {
      note = text;
      return this;
    }

    @Override
    public double gives(double value, String unit) {
      TreeSet<String> missing = new TreeSet<>();
      formula.ifPresent(f -> missing.addAll(f.symbols()));
      inputs.forEach(input -> missing.remove(input.symbol()));
      Args.require(missing.isEmpty(), "step " + symbol + ": no number was given for " + missing);
      steps.add(new Step(section, symbol, name, formula, inputs, value, unit, source, note));
      return value;
    }
  }
}
