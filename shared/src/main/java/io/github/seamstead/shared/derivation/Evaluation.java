package io.github.seamstead.shared.derivation;

import java.util.List;
import java.util.Map;

/** Evaluates a formula with numbers for its symbols. */
final class Evaluation {

  private final Map<String, Double> values;

  private Evaluation(Map<String, Double> values) {
    this.values = values;
  }

  /** Gives the formula's value; every symbol of it needs a number. */
  static double of(Formula formula, Map<String, Double> values) {
    return new Evaluation(values).of(formula.root());
  }

  private double of(Formula.Node node) {
    if (node instanceof Formula.Literal literal) {
      return literal.value();
    } else if (node instanceof Formula.Symbol symbol) {
      return symbol(symbol.name());
    } else if (node instanceof Formula.Negation negation) {
      return -of(negation.operand());
    } else if (node instanceof Formula.Binary binary) {
      return binary(binary.operator(), of(binary.left()), of(binary.right()));
    } else if (node instanceof Formula.Call call) {
      return call(call.function(), call.arguments());
    }
    throw new IllegalStateException("unknown node " + node);
  }

  private double symbol(String name) {
    if (name.equals(Formula.PI)) {
      return Math.PI;
    }
    Double value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("formula: no number was given for " + name);
    }
    return value;
  }

  private static double binary(char operator, double left, double right) {
    return switch (operator) {
      case '+' -> left + right;
      case '-' -> left - right;
      case '*' -> left * right;
      case '/' -> left / right;
      case '^' -> StrictMath.pow(left, right);
      default -> throw new IllegalStateException("unknown operator " + operator);
    };
  }

  private double call(String function, List<Formula.Node> arguments) {
    double x = of(arguments.get(0));
    return switch (function) {
      case "sqrt" -> Math.sqrt(x);
      case "cbrt" -> StrictMath.cbrt(x);
      case "sin" -> StrictMath.sin(x);
      case "cos" -> StrictMath.cos(x);
      case "tan" -> StrictMath.tan(x);
      case "asin" -> StrictMath.asin(x);
      case "acos" -> StrictMath.acos(x);
      case "atan" -> StrictMath.atan(x);
      case "atan2" -> StrictMath.atan2(x, of(arguments.get(1)));
      case "exp" -> StrictMath.exp(x);
      case "ln" -> StrictMath.log(x);
      case "log10" -> StrictMath.log10(x);
      case "abs" -> Math.abs(x);
      case "floor" -> Math.floor(x);
      case "ceil" -> Math.ceil(x);
      case "min" -> Math.min(x, of(arguments.get(1)));
      case "max" -> Math.max(x, of(arguments.get(1)));
      default -> throw new IllegalStateException("unknown function " + function);
    };
  }
}
