package io.github.seamstead.shared.derivation;

import java.util.List;
import java.util.Map;

/** Presentation elements of MathML Core (W3C): each method gives one element. */
final class MathMlDialect implements FormulaDialect {

  private static final Map<String, String> FUNCTIONS =
      Map.of("asin", "arcsin", "acos", "arccos", "atan", "arctan");

  @Override
  public String number(String digits) {
    int exponent = digits.indexOf('E');
    if (exponent < 0) {
      return signed(digits);
    }
    return row(
        signed(digits.substring(0, exponent))
            + "<mo>×</mo><msup><mn>10</mn>"
            + row(signed(digits.substring(exponent + 1)))
            + "</msup>");
  }

  @Override
  public String symbol(SymbolName name) {
    String base = "<mi>" + escape(name.shownBase()) + "</mi>";
    return name.subscript().isEmpty()
        ? base
        : "<msub>" + base + "<mtext>" + escape(name.subscript()) + "</mtext></msub>";
  }

  @Override
  public String infix(String left, char operator, String right) {
    String sign =
        switch (operator) {
          case '*' -> "·";
          case '-' -> "−";
          default -> String.valueOf(operator);
        };
    return row(left + "<mo>" + sign + "</mo>" + right);
  }

  @Override
  public String quotient(String above, String below) {
    return "<mfrac>" + above + below + "</mfrac>";
  }

  @Override
  public boolean hasFractionBar() {
    return true;
  }

  @Override
  public String power(String base, String exponent) {
    return "<msup>" + base + exponent + "</msup>";
  }

  @Override
  public boolean raisesExponents() {
    return true;
  }

  @Override
  public String negation(String operand) {
    return row("<mo>−</mo>" + operand);
  }

  @Override
  public String parentheses(String inside) {
    return row("<mo>(</mo>" + inside + "<mo>)</mo>");
  }

  /** The other one stands in another element, so that it cannot grow with what lies between. */
  @Override
  public String opening() {
    return "<mo stretchy=\"false\">(</mo>";
  }

  @Override
  public String closing() {
    return "<mo stretchy=\"false\">)</mo>";
  }

  @Override
  public String call(String function, List<String> arguments) {
    String inside = String.join("<mo>,</mo>", arguments);
    return switch (function) {
      case "sqrt" -> "<msqrt>" + inside + "</msqrt>";
      case "cbrt" -> "<mroot>" + inside + "<mn>3</mn></mroot>";
      case "abs" -> row("<mo>|</mo>" + inside + "<mo>|</mo>");
      case "floor" -> row("<mo>⌊</mo>" + inside + "<mo>⌋</mo>");
      case "ceil" -> row("<mo>⌈</mo>" + inside + "<mo>⌉</mo>");
      case "log10" -> row("<msub><mi>log</mi><mn>10</mn></msub>" + parentheses(inside));
      default ->
          row("<mi>" + FUNCTIONS.getOrDefault(function, function) + "</mi>" + parentheses(inside));
    };
  }

  @Override
  public String equation(String left, String right) {
    return left + "<mo>=</mo>" + right;
  }

  @Override
  public String quantity(String number, String unit) {
    String digits = number(number);
    return unit.isEmpty()
        ? digits
        : row(digits + "<mtext>" + space(unit) + escape(superscripts(unit)) + "</mtext>");
  }

  /** Digits after a letter of a unit are exponents: kg/m3 shows as kg/m³. */
  /** The degree sign of a plane angle follows its number without a space. */
  private static String space(String unit) {
    return unit.equals("°") ? "" : "&#160;";
  }

  private static String superscripts(String unit) {
    StringBuilder shown = new StringBuilder();
    for (int i = 0; i < unit.length(); i++) {
      char c = unit.charAt(i);
      boolean exponent = i > 0 && Character.isLetter(unit.charAt(i - 1));
      shown.append(exponent && c == '2' ? '²' : exponent && c == '3' ? '³' : c);
    }
    return shown.toString();
  }

  private static String signed(String digits) {
    return digits.startsWith("-")
        ? row("<mo>−</mo><mn>" + digits.substring(1) + "</mn>")
        : "<mn>" + digits + "</mn>";
  }

  private static String row(String inside) {
    return "<mrow>" + inside + "</mrow>";
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
