package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.derivation.Formula.Binary;
import io.github.seamstead.shared.derivation.Formula.Call;
import io.github.seamstead.shared.derivation.Formula.Literal;
import io.github.seamstead.shared.derivation.Formula.Negation;
import io.github.seamstead.shared.derivation.Formula.Node;
import io.github.seamstead.shared.derivation.Formula.Symbol;
import java.util.ArrayList;
import java.util.List;

/** Recursive descent over the notation of {@link Formula}; linear in the text's length. */
final class FormulaParser {

  private final String text;
  private int at;

  FormulaParser(String text) {
    this.text = text;
  }

  Node parse() {
    Node node = sum();
    if (peek() != 0) {
      throw fault("unexpected '" + peek() + "'");
    }
    return node;
  }

  private Node sum() {
    Node node = product();
    for (char c = peek(); c == '+' || c == '-'; c = peek()) {
      at++;
      node = new Binary(c, node, product());
    }
    return node;
  }

  private Node product() {
    Node node = unary();
    for (char c = peek(); c == '*' || c == '/'; c = peek()) {
      at++;
      node = new Binary(c, node, unary());
    }
    return node;
  }

  private Node unary() {
    if (peek() == '-') {
      at++;
      return new Negation(unary());
    }
    Node base = atom();
    if (peek() == '^') {
      at++;
      return new Binary('^', base, unary());
    }
    return base;
  }

  private Node atom() {
    char c = peek();
    if (c == '(') {
      at++;
      Node node = sum();
      expect(')');
      return node;
    }
    if (isDigit(c)) {
      return number();
    }
    if (isLetter(c)) {
      String name = word();
      return peek() == '(' ? call(name) : new Symbol(name);
    }
    throw fault(c == 0 ? "unexpected end" : "unexpected '" + c + "'");
  }

  private Node call(String name) {
    Integer arity = Formula.FUNCTIONS.get(name);
    if (arity == null) {
      throw fault("unknown function " + name);
    }
    expect('(');
    List<Node> arguments = new ArrayList<>();
    arguments.add(sum());
    while (peek() == ',') {
      at++;
      arguments.add(sum());
    }
    expect(')');
    if (arguments.size() != arity) {
      throw fault(name + " takes " + arity + " argument(s), given " + arguments.size());
    }
    return new Call(name, arguments);
  }

  private Node number() {
    int start = at;
    digits();
    if (at < text.length() && text.charAt(at) == '.') {
      at++;
      digits();
    }
    if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      at++;
      if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
        at++;
      }
      digits();
    }
    String digits = text.substring(start, at);
    try {
      return new Literal(Double.parseDouble(digits), digits);
    } catch (NumberFormatException e) {
      throw fault("not a number: " + digits);
    }
  }

  private void digits() {
    while (at < text.length() && isDigit(text.charAt(at))) {
      at++;
    }
  }

  private String word() {
    int start = at;
    while (at < text.length()
        && (isLetter(text.charAt(at)) || isDigit(text.charAt(at)) || text.charAt(at) == '_')) {
      at++;
    }
    return text.substring(start, at);
  }

  /** Skips white space and gives the next character, or 0 at the end. */
  private char peek() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return at < text.length() ? text.charAt(at) : 0;
  }

  private void expect(char c) {
    if (peek() != c) {
      throw fault("expected '" + c + "'");
    }
    at++;
  }

  private IllegalArgumentException fault(String what) {
    return new IllegalArgumentException(
        "formula \"" + text + "\": " + what + " at character " + (at + 1));
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  }
}
