package io.github.seamstead.shared.derivation;

import java.util.List;

/** How one kind of typesetting writes the parts of a formula. */
interface FormulaDialect {

  String number(String digits);

  String symbol(SymbolName name);

  String infix(String left, char operator, String right);

  /** Writes a quotient; a dialect with a fraction bar needs no parentheses around its operands. */
  String quotient(String above, String below);

  boolean hasFractionBar();

  String power(String base, String exponent);

  /** Tells whether an exponent stands apart from the line and so needs no parentheses. */
  boolean raisesExponents();

  String negation(String operand);

  String parentheses(String inside);

  /** A parenthesis that stands apart from its counterpart. */
  default String opening() {
    return "(";
  }

  /** The counterpart of {@link #opening()}. */
  default String closing() {
    return ")";
  }

  String call(String function, List<String> arguments);

  /** Writes {@code left = right}. */
  String equation(String left, String right);

  /** Writes a number with its unit. */
  String quantity(String number, String unit);
}
