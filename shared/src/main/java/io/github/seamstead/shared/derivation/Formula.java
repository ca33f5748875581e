package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.check.Args;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A formula's right-hand side in the one notation of derivations.
 *
 * <p>The notation, in rising order of binding:
 *
 * <pre>
 *   sum      a + b, a - b            left to right
 *   product  a * b, a / b            left to right; always written, 2 * r and never 2r
 *   minus    -a
 *   power    a ^ b                   right to left
 *   atom     12.5, 1e-6, a symbol, pi, ( ... ), f(a), f(a, b)
 * </pre>
 *
 * <p>A symbol is a letter followed by letters, digits and underscores: {@code r}, {@code rho_d},
 * {@code x1}. An underscore starts a subscript and a Greek letter is spelled out when it is shown.
 * The functions are those of {@link #FUNCTIONS}: angles are in radians, {@code ln} is the natural
 * and {@code log10} the decimal logarithm.
 *
 * <pre>{@code
 * Formula slant = Formula.parse("sqrt(r^2 + H^2)");
 * slant.evaluate(Map.of("r", 3.0, "H", 4.0)); // 5
 * slant.symbols(); // H and r
 * }</pre>
 *
 * <p>Immutable; two formulas are equal if they are written alike.
 */
public final class Formula {

  /** The functions and how many arguments each takes. */
  public static final Map<String, Integer> FUNCTIONS =
      Map.ofEntries(
          Map.entry("sqrt", 1),
          Map.entry("cbrt", 1),
          Map.entry("sin", 1),
          Map.entry("cos", 1),
          Map.entry("tan", 1),
          Map.entry("asin", 1),
          Map.entry("acos", 1),
          Map.entry("atan", 1),
          Map.entry("exp", 1),
          Map.entry("ln", 1),
          Map.entry("log10", 1),
          Map.entry("abs", 1),
          Map.entry("floor", 1),
          Map.entry("ceil", 1),
          Map.entry("min", 2),
          Map.entry("max", 2),
          Map.entry("atan2", 2));

  /** The symbol of the circle constant. */
  public static final String PI = "pi";

  private final String text;
  private final Node root;

  private Formula(String text, Node root) {
    this.text = text;
    this.root = root;
  }

  /**
   * Reads a formula.
   *
   * @param text the right-hand side in the notation above
   * @return the formula
   * @throws IllegalArgumentException if the text does not follow the notation, with the place
   */
  public static Formula parse(String text) {
    return new Formula(text, new FormulaParser(Args.notBlank("formula", text)).parse());
  }

  /**
   * Gives the formula as it was written.
   *
   * @return its text
   */
  public String text() {
    return text;
  }

  Node root() {
    return root;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Formula formula && formula.text.equals(text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }

  /**
   * Lists the symbols that need a number.
   *
   * @return the symbols in alphabetical order, without {@code pi}
   */
  public Set<String> symbols() {
    Set<String> symbols = new TreeSet<>();
    collect(root, symbols);
    symbols.remove(PI);
    return symbols;
  }

  /**
   * Evaluates the formula, angles in radians.
   *
   * @param numbers a number for each symbol; more do no harm
   * @return the value, by the rules of {@link Math}
   * @throws IllegalArgumentException if a symbol has no number
   */
  public double evaluate(Map<String, Double> numbers) {
    return Evaluation.of(this, numbers);
  }

  private static void collect(Node node, Set<String> symbols) {
    if (node instanceof Symbol s) {
      symbols.add(s.name());
    } else if (node instanceof Negation n) {
      collect(n.operand(), symbols);
    } else if (node instanceof Binary b) {
      collect(b.left(), symbols);
      collect(b.right(), symbols);
    } else if (node instanceof Call c) {
      c.arguments().forEach(argument -> collect(argument, symbols));
    }
  }

  /** A node of the formula's tree. */
  sealed interface Node permits Literal, Symbol, Negation, Binary, Call {}

  /**
   * A number.
   *
   * @param value its value
   * @param text its digits as written
   */
  record Literal(double value, String text) implements Node {}

  /**
   * A symbol.
   *
   * @param name its name
   */
  record Symbol(String name) implements Node {}

  /**
   * A minus sign before an operand.
   *
   * @param operand what it negates
   */
  record Negation(Node operand) implements Node {}

  /**
   * An operation on two operands.
   *
   * @param operator one of {@code + - * / ^}
   * @param left the left operand
   * @param right the right operand
   */
  record Binary(char operator, Node left, Node right) implements Node {}

  /**
   * A function call.
   *
   * @param function one of {@link Formula#FUNCTIONS}
   * @param arguments as many as the function takes
   */
  record Call(String function, List<Node> arguments) implements Node {

    public Call {
      arguments = List.copyOf(arguments);
    }
  }
}
