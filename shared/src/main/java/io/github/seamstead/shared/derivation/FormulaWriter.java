package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.derivation.Formula.Binary;
import io.github.seamstead.shared.derivation.Formula.Call;
import io.github.seamstead.shared.derivation.Formula.Literal;
import io.github.seamstead.shared.derivation.Formula.Negation;
import io.github.seamstead.shared.derivation.Formula.Node;
import io.github.seamstead.shared.derivation.Formula.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Writes a formula's tree in a dialect, with the fewest parentheses that keep its meaning; linear
 * in the tree's size.
 */
final class FormulaWriter {

  private static final int SUM = 1;
  private static final int PRODUCT = 2;
  private static final int MINUS = 3;
  private static final int POWER = 4;
  private static final int ATOM = 5;

  private final FormulaDialect dialect;
  private final Map<String, String> numbers;

  /**
   * Creates a writer.
   *
   * @param dialect the kind of typesetting
   * @param numbers the digits to put in for symbols; symbols without any stay as they are
   */
  FormulaWriter(FormulaDialect dialect, Map<String, String> numbers) {
    this.dialect = dialect;
    this.numbers = numbers;
  }

  String write(Formula formula) {
    return write(formula.root(), SUM);
  }

  /** Writes a node, in parentheses if it binds more loosely than its place needs. */
  /**
   * Writes a formula in pieces between which a line may end: before a plus or a minus of a sum,
   * also of one that stands in parentheses behind a factor.
   */
  List<String> pieces(Formula formula) {
    List<String> pieces = new ArrayList<>();
    addPieces(formula.root(), pieces);
    return pieces;
  }

  private void addPieces(Node node, List<String> to) {
    if (node instanceof Binary b && binding(b) == SUM) {
      addPieces(b.left(), to);
      to.add(dialect.infix("", b.operator(), write(b.right(), PRODUCT)));
    } else if (node instanceof Binary b
        && b.operator() == '*'
        && b.right() instanceof Binary sum
        && binding(sum) == SUM) {
      List<String> inside = new ArrayList<>();
      addPieces(sum, inside);
      int last = inside.size() - 1;
      inside.set(
          0, dialect.infix(write(b.left(), PRODUCT), '*', dialect.opening()) + inside.get(0));
      inside.set(last, inside.get(last) + dialect.closing());
      to.addAll(inside);
    } else {
      to.add(write(node, SUM));
    }
  }

  private String write(Node node, int needed) {
    String text = bare(node);
    return binding(node) < needed ? dialect.parentheses(text) : text;
  }

  private String bare(Node node) {
    if (node instanceof Literal literal) {
      return dialect.number(literal.text());
    } else if (node instanceof Symbol symbol) {
      String digits = numbers.get(symbol.name());
      return digits == null ? dialect.symbol(SymbolName.of(symbol.name())) : dialect.number(digits);
    } else if (node instanceof Negation negation) {
      return dialect.negation(write(negation.operand(), POWER));
    } else if (node instanceof Binary binary) {
      return binary(binary);
    } else if (node instanceof Call call) {
      return dialect.call(
          call.function(), call.arguments().stream().map(a -> write(a, SUM)).toList());
    }
    throw new IllegalStateException("unknown node " + node);
  }

  private String binary(Binary b) {
    return switch (b.operator()) {
      case '+' -> dialect.infix(write(b.left(), SUM), '+', write(b.right(), PRODUCT));
      case '-' -> dialect.infix(write(b.left(), SUM), '-', write(b.right(), PRODUCT));
      case '*' -> dialect.infix(write(b.left(), PRODUCT), '*', write(b.right(), POWER));
      case '/' ->
          dialect.hasFractionBar()
              ? dialect.quotient(write(b.left(), SUM), write(b.right(), SUM))
              : dialect.quotient(write(b.left(), PRODUCT), write(b.right(), POWER));
      case '^' ->
          dialect.power(
              write(b.left(), ATOM), write(b.right(), dialect.raisesExponents() ? SUM : ATOM));
      default -> throw new IllegalStateException("unknown operator " + b.operator());
    };
  }

  private int binding(Node node) {
    if (node instanceof Negation) {
      return SUM; // A leading minus inside a product or power reads best in parentheses.
    } else if (node instanceof Binary b) {
      return switch (b.operator()) {
        case '+', '-' -> SUM;
        case '*' -> PRODUCT;
        case '/' -> dialect.hasFractionBar() ? MINUS : PRODUCT;
        default -> POWER;
      };
    } else if (node instanceof Symbol symbol) {
      String digits = numbers.get(symbol.name());
      boolean simple = digits == null || (!digits.startsWith("-") && digits.indexOf('E') < 0);
      return simple ? ATOM : SUM;
    }
    return ATOM;
  }
}
