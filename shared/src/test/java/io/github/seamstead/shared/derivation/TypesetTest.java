package io.github.seamstead.shared.derivation;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.source.Source;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.objecthunter.exp4j.ExpressionBuilder;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class TypesetTest {

  private static Derivation slant() {
    StepRecorder steps = new StepRecorder();
    steps.section("Face");
    double s =
        steps
            .step("s", "slant height")
            .formula("sqrt(r^2 + H^2)")
            .with("r", 3, "m")
            .with("H", 4, "m")
            .from(Source.derived("Pythagoras"))
            .gives(5, "m");
    steps
        .step("theta_f", "face slope")
        .formula("asin(H / s)")
        .with("H", 4, "m")
        .with("s", s, "m")
        .note("From the horizontal.")
        .gives(Math.asin(0.8), "rad");
    return steps.derivation("test.slant", "Slant height & slope");
  }

  @Test
  void plainLineShowsFormulaNumbersAndResult() {
    List<Step> steps = slant().steps();
    assertThat(Typeset.plain(steps.get(0))).isEqualTo("s = √(r^2 + H^2) = √(3^2 + 4^2) = 5 m");
    assertThat(Typeset.plain(steps.get(1)))
        .isEqualTo("θ_f = asin(H / s) = asin(4 / 5) = 0.927295 rad = 53.1301 °");
  }

  @Test
  void latexHasFractionsRootsAndEscapedText() {
    assertThat(Typeset.latex(slant()))
        .isEqualTo(
            """
            \\providecommand{\\fitted}[1]{#1}
            \\subsection*{Slant height \\& slope}

            \\paragraph{Face}

            Slant height:
            \\[ \\fitted{\\begin{aligned}
              s &= \\sqrt{{r}^{2} + {H}^{2}} \\\\
              &= \\sqrt{{3}^{2} + {4}^{2}} \\\\
              &= 5\\,\\mathrm{m}
            \\end{aligned}} \\]
            Pythagoras [derived].

            Face slope:
            \\[ \\fitted{\\begin{aligned}
              \\theta_{\\mathrm{f}} &= \\arcsin\\left(\\frac{H}{s}\\right) \\\\
              &= \\arcsin\\left(\\frac{4}{5}\\right) \\\\
              &= 0.927295\\,\\mathrm{rad} \\\\
              &= 53.1301\\,\\mathrm{^{\\circ}}
            \\end{aligned}} \\]
            From the horizontal.
            """);
  }

  @Test
  void markdownListsNamesLinesAndSources() {
    assertThat(Typeset.markdown(slant()))
        .contains("### Slant height & slope\n\n#### Face\n\n- Slant height: `s = ")
        .contains("(Pythagoras \\[derived\\])")
        .endsWith("From the horizontal.\n");
  }

  @Test
  void negativeNumbersAndPowersOfTenGetParentheses() {
    StepRecorder steps = new StepRecorder();
    steps.step("y", "y").formula("a * b^2").with("a", 1e-9, "").with("b", -2, "").gives(4e-9, "");
    assertThat(Typeset.plain(steps.derivation("t", "t").result()))
        .isEqualTo("y = a × b^2 = (1.0E-9) × (-2)^2 = 4.0E-9");
  }

  @Property(tries = 100, seed = "20260718")
  void plainTextMeansWhatTheFormulaMeans(@ForAll("formulas") String text) {
    String written =
        new FormulaWriter(new PlainDialect(), Map.of())
            .write(Formula.parse(text))
            .replace('×', '*')
            .replace('−', '-')
            .replace("√", "sqrt");
    assertThat(value(written)).isEqualTo(value(text)); // boxed, so that NaN equals NaN
  }

  @Property(tries = 100, seed = "20260719")
  void mathMlIsWellFormed(@ForAll("formulas") String text) throws Exception {
    StepRecorder steps = new StepRecorder();
    steps.step("y_1", "y").formula(text).with("a", 2, "").with("b", -3, "").gives(1, "kg/m3");
    Step step = steps.derivation("t", "t").result();
    assertThat(parse(Typeset.mathMl(step)).getLocalName()).isEqualTo("math");
    for (String link : Typeset.mathMlLinks(step)) {
      requireArity(parse(link));
    }
  }

  @Provide
  Arbitrary<String> formulas() {
    Arbitrary<String> atoms = Arbitraries.of("a", "b", "2", "1.5", "pi");
    return Arbitraries.recursive(() -> atoms, TypesetTest::grown, 0, 4);
  }

  private static Arbitrary<String> grown(Arbitrary<String> inner) {
    return Arbitraries.oneOf(
        inner.flatMap(
            l ->
                inner.flatMap(
                    r ->
                        Arbitraries.of("+", "-", "*", "/")
                            .map(op -> "(" + l + ") " + op + " (" + r + ")"))),
        inner.map(x -> "sqrt(" + x + ")"),
        inner.map(x -> "(" + x + ")^2"),
        inner.map(x -> "(-(" + x + "))"));
  }

  private static Double value(String text) {
    try {
      return new ExpressionBuilder(text)
          .variables("a", "b")
          .build()
          .setVariable("a", 2)
          .setVariable("b", 0.7)
          .evaluate();
    } catch (ArithmeticException divisionByZero) {
      return Double.POSITIVE_INFINITY;
    }
  }

  private static Element parse(String xml) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)))
        .getDocumentElement();
  }

  /** Elements of MathML with a fixed number of children have that number. */
  private static void requireArity(Element element) {
    int children = element.getElementsByTagName("*").getLength();
    assertThat(children).isPositive();
    for (String pair : List.of("mfrac", "msup", "msub", "mroot")) {
      for (int i = 0; i < element.getElementsByTagName(pair).getLength(); i++) {
        assertThat(element.getElementsByTagName(pair).item(i).getChildNodes().getLength())
            .as(pair)
            .isEqualTo(2);
      }
    }
  }
}
