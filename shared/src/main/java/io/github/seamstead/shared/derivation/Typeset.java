package io.github.seamstead.shared.derivation;

import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.text.Escapes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Writes steps for people: each step is a chain of equals, the symbol, the formula, the formula
 * with its numbers in, and the result with its unit.
 *
 * <p>Values are kept at full precision in the step; only here are they rounded, to {@link
 * #SHOWN_DIGITS} significant digits. An angle in radians is followed by its degrees. All methods
 * are pure and cost time linear in the derivation's size.
 */
public final class Typeset {

  /** Significant digits that are shown. */
  public static final int SHOWN_DIGITS = 6;

  /** Beyond these digits more do not help: the result itself is rounding. */
  private static final int MOST_DIGITS = 15;

  private static final FormulaDialect PLAIN = new PlainDialect();
  private static final FormulaDialect LATEX = new LatexDialect();
  private static final FormulaDialect MATH_ML = new MathMlDialect();
  private static final Pattern TAG = Pattern.compile("<[^>]*>");

  /** Browsers do not break a sum over lines: one of more characters is written in pieces. */
  private static final int LONG_LINK = 60;

  private Typeset() {}

  /**
   * Writes a step as one line of text.
   *
   * @param step the step
   * @return for example {@code s = √(r^2 + H^2) = √(3^2 + 4^2) = 5 m}
   */
  public static String plain(Step step) {
    return chain(step, PLAIN, Shown.IN_FULL);
  }

  /**
   * As {@link #plain(Step)}, to a chosen number of digits.
   *
   * @param step the step
   * @param shown digits and the unit of angles
   * @return for example {@code s = √(r^2 + H^2) = √(3^2 + 4^2) = 5 m}
   */
  public static String plain(Step step, Shown shown) {
    return chain(step, PLAIN, shown);
  }

  /**
   * Writes a step as LaTeX for math mode, without dollar signs.
   *
   * @param step the step
   * @return for example {@code s = \sqrt{{r}^{2} + {H}^{2}} = … = 5\,\mathrm{m}}
   */
  public static String latex(Step step) {
    return chain(step, LATEX, Shown.IN_FULL);
  }

  /**
   * Writes a step as one MathML {@code math} element in block display. It needs no script and no
   * style sheet.
   *
   * @param step the step
   * @return well-formed markup for HTML or XML
   */
  public static String mathMl(Step step) {
    return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\" display=\"block\"><mrow>"
        + chain(step, MATH_ML, Shown.IN_FULL)
        + "</mrow></math>";
  }

  /**
   * Writes the links of a step's chain as MathML elements, each its own inline {@code math}, so
   * that a narrow page can break between them.
   *
   * @param step the step
   * @return two to four links: the symbol first, then each right-hand side with its equals sign; a
   *     sum of more than 60 characters is more than one element, each from a plus or minus on, and
   *     one that is still longer has the class {@code long}
   */
  public static List<String> mathMlLinks(Step step) {
    return mathMlLinks(step, Shown.IN_FULL);
  }

  /**
   * As {@link #mathMlLinks(Step)}, to a chosen number of digits.
   *
   * @param step the step
   * @param shown digits and the unit of angles
   * @return two to four links
   */
  public static List<String> mathMlLinks(Step step, Shown shown) {
    List<String> links = new ArrayList<>();
    for (List<String> pieces : pieces(step, shown)) {
      StringBuilder link = new StringBuilder();
      String line = "";
      for (int i = 0; i < pieces.size(); i++) {
        boolean equals = i == 0 && !links.isEmpty();
        String piece = equals ? MATH_ML.equation("", pieces.get(i)) : pieces.get(i);
        if (!line.isEmpty() && length(line + piece) > LONG_LINK) {
          link.append(inline(line));
          line = "";
        }
        line += piece;
      }
      links.add(link.append(inline(line)).toString());
    }
    return links;
  }

  private static int length(String markup) {
    return TAG.matcher(markup).replaceAll("").length();
  }

  private static String inline(String inside) {
    return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\""
        + (length(inside) > LONG_LINK ? " class=\"long\"" : "")
        + "><mrow>"
        + inside
        + "</mrow></math>";
  }

  /** The parts of a step, each in the pieces between which a line may end. */
  private static List<List<String>> pieces(Step step, Shown shown) {
    List<List<String>> pieces = new ArrayList<>();
    for (String part : parts(step, MATH_ML, shown)) {
      pieces.add(List.of(part));
    }
    if (step.formula().isPresent()) {
      Formula formula = step.formula().get();
      pieces.set(1, new FormulaWriter(MATH_ML, Map.of()).pieces(formula));
      if (!formula.symbols().isEmpty()) {
        pieces.set(2, new FormulaWriter(MATH_ML, digits(step, formula, shown)).pieces(formula));
      }
    }
    return pieces;
  }

  /**
   * Writes a symbol as plain text.
   *
   * @param name as it stands in a formula
   * @return for example {@code ρ_s} for {@code rho_s}
   */
  public static String symbol(String name) {
    return PLAIN.symbol(SymbolName.of(name));
  }

  /**
   * Writes an equation between formulas as one MathML element, as for a line of a proof.
   *
   * @param equation formulas in the notation of {@link Formula} with {@code " = "} between them
   * @return well-formed inline markup
   * @throws IllegalArgumentException if a side does not follow the notation
   */
  public static String mathMlEquation(String equation) {
    String text = "";
    for (String side : equation.split(" = ", -1)) {
      String written = new FormulaWriter(MATH_ML, Map.of()).write(Formula.parse(side));
      text = text.isEmpty() ? written : MATH_ML.equation(text, written);
    }
    return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\"><mrow>" + text + "</mrow></math>";
  }

  /**
   * Writes a derivation as Markdown: a heading, then each step with its name, its line and its
   * source.
   *
   * @param derivation the derivation
   * @return Markdown that ends with a line break
   */
  public static String markdown(Derivation derivation) {
    StringBuilder text = new StringBuilder("### ");
    text.append(Escapes.markdown(derivation.title())).append("\n\n");
    String section = "";
    for (Step step : derivation.steps()) {
      if (!step.section().equals(section)) {
        section = step.section();
        text.append("#### ").append(Escapes.markdown(section)).append("\n\n");
      }
      text.append("- ").append(Escapes.markdown(capitalised(step.name()))).append(": `");
      text.append(Escapes.markdownCode(plain(step))).append('`');
      step.source()
          .ifPresent(
              source -> text.append(" (").append(Escapes.markdown(source.citation())).append(')'));
      if (!step.note().isEmpty()) {
        text.append(". ").append(Escapes.markdown(step.note()));
      }
      text.append('\n');
    }
    return text.toString();
  }

  /**
   * Writes a derivation as LaTeX text: a subsection heading, and for each step a paragraph with one
   * displayed line an equals sign. It needs the amsmath package. Each display is the argument of a
   * command {@code \\fitted}, which a document may define to scale down what is too wide.
   *
   * @param derivation the derivation
   * @return LaTeX for the body of a document that ends with a line break
   */
  public static String latex(Derivation derivation) {
    StringBuilder text = new StringBuilder("\\providecommand{\\fitted}[1]{#1}\n");
    text.append("\\subsection*{").append(Escapes.latex(derivation.title())).append("}\n");
    String section = "";
    for (Step step : derivation.steps()) {
      if (!step.section().equals(section)) {
        section = step.section();
        text.append("\n\\paragraph{").append(Escapes.latex(section)).append("}\n");
      }
      text.append('\n').append(Escapes.latex(capitalised(step.name()))).append(":\n");
      text.append(display(step, Shown.IN_FULL));
      step.source()
          .ifPresent(source -> text.append(Escapes.latex(source.citation())).append(".\n"));
      if (!step.note().isEmpty()) {
        text.append(Escapes.latex(step.note())).append('\n');
      }
    }
    return text.toString();
  }

  private static String display(Step step, Shown shown) {
    List<String> parts = parts(step, LATEX, shown);
    StringBuilder lines = new StringBuilder(parts.get(0));
    for (int i = 1; i < parts.size(); i++) {
      lines.append(i == 1 ? " &= " : " \\\\\n  &= ").append(parts.get(i));
    }
    return "\\[ \\fitted{\\begin{aligned}\n  " + lines + "\n\\end{aligned}} \\]\n";
  }

  private static String chain(Step step, FormulaDialect dialect, Shown shown) {
    List<String> parts = parts(step, dialect, shown);
    String text = parts.get(0);
    for (String part : parts.subList(1, parts.size())) {
      text = dialect.equation(text, part);
    }
    return text;
  }

  private static List<String> parts(Step step, FormulaDialect dialect, Shown shown) {
    List<String> parts = new ArrayList<>();
    parts.add(dialect.symbol(SymbolName.of(step.symbol())));
    step.formula()
        .ifPresent(
            formula -> {
              parts.add(new FormulaWriter(dialect, Map.of()).write(formula));
              String numbersIn =
                  new FormulaWriter(dialect, digits(step, formula, shown)).write(formula);
              if (!formula.symbols().isEmpty()) {
                parts.add(numbersIn);
              }
            });
    boolean angle = step.unit().equals("rad");
    if (!angle || !shown.degrees()) {
      parts.add(dialect.quantity(digits(step.value(), shown), step.unit()));
    }
    if (angle) {
      parts.add(dialect.quantity(digits(Math.toDegrees(step.value()), shown), "°"));
    }
    return parts;
  }

  /**
   * Writes the numbers that go in. Where digits cancel, as in a difference of nearly equal numbers,
   * more of them are shown, so that whoever follows with a pocket calculator finds the result.
   */
  private static Map<String, String> digits(Step step, Formula formula, Shown shown) {
    double enough = StrictMath.pow(10, 1.0 - shown.digits()) * Math.abs(step.value());
    for (int digits = shown.digits(); digits < MOST_DIGITS; digits++) {
      Shown more = new Shown(digits, shown.degrees());
      if (Math.abs(followed(step, formula, more) - step.value()) <= enough) {
        return digits(step, more);
      }
    }
    return digits(step, shown);
  }

  /** The result that the shown numbers give. */
  private static double followed(Step step, Formula formula, Shown shown) {
    Map<String, Double> numbers = new HashMap<>();
    for (Step.Input input : step.inputs()) {
      boolean inDegrees = shown.degrees() && input.unit().equals("rad");
      double rounded =
          Double.parseDouble(
              digits(inDegrees ? Math.toDegrees(input.value()) : input.value(), shown));
      numbers.put(input.symbol(), inDegrees ? Math.toRadians(rounded) : rounded);
    }
    return formula.evaluate(numbers);
  }

  private static Map<String, String> digits(Step step, Shown shown) {
    Map<String, String> digits = new HashMap<>();
    if (shown.degrees() && step.unit().equals("rad")) {
      digits.put(Formula.PI, "180°");
    }
    for (Step.Input input : step.inputs()) {
      boolean inDegrees = shown.degrees() && input.unit().equals("rad");
      digits.put(
          input.symbol(),
          inDegrees
              ? digits(Math.toDegrees(input.value()), shown) + "°"
              : digits(input.value(), shown));
    }
    return digits;
  }

  private static String digits(double value, Shown shown) {
    return Numbers.significant(value, shown.digits());
  }

  private static String capitalised(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
