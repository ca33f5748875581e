package io.github.seamstead.shared.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;

/**
 * Re-evaluates every step of a derivation with exp4j, an expression library that shares no code
 * with the recorder, and holds it to the recorded result at a relative 1e-12.
 */
public final class DerivationChecks {

  private static final double RELATIVE = 1e-12;

  private static final Function LN =
      new Function("ln", 1) {
        @Override
        public double apply(double... args) {
          return Math.log(args[0]);
        }
      };
  private static final Function MIN =
      new Function("min", 2) {
        @Override
        public double apply(double... args) {
          return Math.min(args[0], args[1]);
        }
      };
  private static final Function MAX =
      new Function("max", 2) {
        @Override
        public double apply(double... args) {
          return Math.max(args[0], args[1]);
        }
      };
  private static final Function ATAN2 =
      new Function("atan2", 2) {
        @Override
        public double apply(double... args) {
          return Math.atan2(args[0], args[1]);
        }
      };

  private DerivationChecks() {}

  /**
   * Asserts that each step follows from its inputs, and that each input which carries the symbol of
   * an earlier step carries a value which one of the earlier steps of that symbol gave.
   *
   * @param derivation the derivation to walk
   */
  public static void assertFollows(Derivation derivation) {
    Map<String, Set<Double>> earlier = new HashMap<>();
    for (Step step : derivation.steps()) {
      for (Step.Input input : step.inputs()) {
        Set<Double> values = earlier.get(input.symbol());
        if (values != null) {
          assertThat(values)
              .as("%s: input %s of step %s", derivation.id(), input.symbol(), step.symbol())
              .contains(input.value());
        }
      }
      step.formula().ifPresent(formula -> assertStep(derivation, step, formula.text()));
      earlier.computeIfAbsent(step.symbol(), s -> new HashSet<>()).add(step.value());
    }
  }

  /**
   * Asserts that the derivation follows and ends in the value that the API returns.
   *
   * @param derivation the derivation to walk
   * @param value the value that the plain call returned, in the unit of the last step
   */
  public static void assertFollowsTo(Derivation derivation, double value) {
    assertFollows(derivation);
    assertThat(derivation.result().value()).as("%s: result", derivation.id()).isEqualTo(value);
  }

  private static void assertStep(Derivation derivation, Step step, String formula) {
    Map<String, Double> numbers = new HashMap<>();
    step.inputs().forEach(input -> numbers.put(input.symbol(), input.value()));
    numbers.remove("pi");
    double again =
        new ExpressionBuilder(formula)
            .functions(LN, MIN, MAX, ATAN2)
            .variables(numbers.keySet())
            .implicitMultiplication(false)
            .build()
            .setVariables(numbers)
            .evaluate();
    // Cancellation may lose digits of a result that is small beside its inputs.
    double size =
        step.inputs().stream().mapToDouble(i -> Math.abs(i.value())).max().orElse(0) * 1e-3;
    assertThat(step.value())
        .as("%s: step %s = %s", derivation.id(), step.symbol(), formula)
        .isCloseTo(again, within(RELATIVE * Math.max(Math.abs(again), Math.min(size, 1))));
  }
}
