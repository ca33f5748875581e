package io.github.seamstead.shared.derivation;

import java.util.List;
import java.util.Map;

/** LaTeX for math mode, with no package beyond the base. */
final class LatexDialect implements FormulaDialect {

  private static final Map<String, String> FUNCTIONS =
      Map.ofEntries(
          Map.entry("sin", "\\sin"),
          Map.entry("cos", "\\cos"),
          Map.entry("tan", "\\tan"),
          Map.entry("asin", "\\arcsin"),
          Map.entry("acos", "\\arccos"),
          Map.entry("atan", "\\arctan"),
          Map.entry("exp", "\\exp"),
          Map.entry("ln", "\\ln"),
          Map.entry("log10", "\\log_{10}"),
          Map.entry("min", "\\min"),
          Map.entry("max", "\\max"),
          Map.entry("atan2", "\\mathrm{atan2}"));

  @Override
  public String number(String digits) {
    int exponent = digits.indexOf('E');
    return exponent < 0
        ? digits
        : digits.substring(0, exponent) + " \\cdot 10^{" + digits.substring(exponent + 1) + "}";
  }

  @Override
  public String symbol(SymbolName name) {
    String base =
        name.isGreek()
            ? "\\" + name.base()
            : name.base().length() == 1 ? name.base() : "\\mathit{" + name.base() + "}";
    return name.subscript().isEmpty() ? base : base + "_{\\mathrm{" + name.subscript() + "}}";
  }

  @Override
  public String infix(String left, char operator, String right) {
    return left + (operator == '*' ? " \\cdot " : " " + operator + " ") + right;
  }

  @Override
  public String quotient(String above, String below) {
    return "\\frac{" + above + "}{" + below + "}";
  }

  @Override
  public boolean hasFractionBar() {
    return true;
  }

  @Override
  public String power(String base, String exponent) {
    return "{" + base + "}^{" + exponent + "}";
  }

  @Override
  public boolean raisesExponents() {
    return true;
  }

  @Override
  public String negation(String operand) {
    return "-" + operand;
  }

  @Override
  public String parentheses(String inside) {
    return "\\left(" + inside + "\\right)";
  }

  @Override
  public String call(String function, List<String> arguments) {
    String inside = String.join(", ", arguments);
    return switch (function) {
      case "sqrt" -> "\\sqrt{" + inside + "}";
      case "cbrt" -> "\\sqrt[3]{" + inside + "}";
      case "abs" -> "\\left|" + inside + "\\right|";
      case "floor" -> "\\left\\lfloor " + inside + "\\right\\rfloor";
      case "ceil" -> "\\left\\lceil " + inside + "\\right\\rceil";
      default -> FUNCTIONS.getOrDefault(function, function) + parentheses(inside);
    };
  }

  @Override
  public String equation(String left, String right) {
    return left + " = " + right;
  }

  @Override
  public String quantity(String number, String unit) {
    String digits = number(number);
    return unit.isEmpty() ? digits : digits + "\\,\\mathrm{" + unit(unit) + "}";
  }

  private static String unit(String unit) {
    return unit.replace("%", "\\%")
        .replace("°", "^{\\circ}")
        .replaceAll("([a-zA-Z])(-?\\d)", "$1^{$2}")
        .replace(" ", "\\,");
  }
}
