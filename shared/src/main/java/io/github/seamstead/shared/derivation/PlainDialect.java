package io.github.seamstead.shared.derivation;

import java.util.List;

/** One line of text for a terminal: {@code s = √(r^2 + H^2)}. */
final class PlainDialect implements FormulaDialect {

  @Override
  public String number(String digits) {
    return digits;
  }

  @Override
  public String symbol(SymbolName name) {
    return name.subscript().isEmpty()
        ? name.shownBase()
        : name.shownBase() + "_" + name.subscript();
  }

  @Override
  public String infix(String left, char operator, String right) {
    return left
        + switch (operator) {
          case '*' -> " × ";
          case '-' -> " − ";
          default -> " " + operator + " ";
        }
        + right;
  }

  @Override
  public String quotient(String above, String below) {
    return above + " / " + below;
  }

  @Override
  public boolean hasFractionBar() {
    return false;
  }

  @Override
  public String power(String base, String exponent) {
    return base + "^" + exponent;
  }

  @Override
  public boolean raisesExponents() {
    return false;
  }

  @Override
  public String negation(String operand) {
    return "−" + operand;
  }

  @Override
  public String parentheses(String inside) {
    return "(" + inside + ")";
  }

  @Override
  public String call(String function, List<String> arguments) {
    String inside = String.join(", ", arguments);
    return switch (function) {
      case "sqrt" -> "√(" + inside + ")";
      case "cbrt" -> "∛(" + inside + ")";
      case "abs" -> "|" + inside + "|";
      default -> function + "(" + inside + ")";
    };
  }

  @Override
  public String equation(String left, String right) {
    return left + " = " + right;
  }

  @Override
  public String quantity(String number, String unit) {
    // The degree sign of a plane angle follows its number without a space.
    return unit.isEmpty() || unit.equals("°") ? number + unit : number + " " + unit;
  }
}
