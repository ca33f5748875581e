package io.github.seamstead.shared.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.InputSource;

/** Hostile texts: what a name may hold that would be run, or read as more than a name. */
class EscapesTest {

  static List<String> hostile() {
    return List.of(
        "<script>alert(1)</script>",
        "\"><svg onload=x>",
        "]]>&amp;<!--",
        "[a](javascript:alert(1))",
        "![a](x) **b** _c_ `d` ~e~ |f|",
        "one\n# two\n- three\n\n    four",
        "\r\nSet-Cookie: a",
        "\\input{/etc/passwd}\\write18{id}",
        "{}^~$x$ % & # _ \\",
        "=HYPERLINK(\"x\")",
        "-2+3+cmd|'/C calc'!A0",
        "+1+1",
        "@SUM(A1)",
        "\t=1",
        "  =1+1",
        "\uFF1D1+1",
        "\uFF0B1",
        "\uFF0D1+1",
        "\uFF20x",
        "\u001b[2J\u001b]0;title\u0007",
        "\u009b2J",
        "a\u202Eb\u2066c\u2069",
        "\u200Bx\uFEFF\u00AD",
        "bad \uFFFE \uFFFF \uD800 x \uDC00",
        "\u0000\u0001\u0008\u000B\u000C",
        "line\u2028line\u2029line\u0085line",
        "\u05D0\u05D1 (3) \u0627",
        "\uD83C\uDFE0 \u6C34 \u0391\u03C9",
        "'''---``");
  }

  /** Every code point of the first plane alone, which no list of examples covers. */
  static Stream<String> all() {
    return Stream.concat(
        hostile().stream(), IntStream.rangeClosed(0, 0xFFFF).mapToObj(c -> "a" + (char) c + "b"));
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void aTerminalGetsOneLineThatStaysInItsDirection(String text) {
    String safe = Escapes.terminal(text);
    assertThat(safe.codePoints().map(Character::getType).boxed())
        .doesNotContain(
            (int) Character.CONTROL,
            (int) Character.FORMAT,
            (int) Character.SURROGATE,
            (int) Character.LINE_SEPARATOR,
            (int) Character.PARAGRAPH_SEPARATOR);
  }

  @Test
  void aTerminalIsShownWhatWasHidden() {
    assertThat(Escapes.terminal("\u001b[2J\nx\u202Ey")).isEqualTo("\\u001B[2J\\u000Ax\\u202Ey");
    assertThat(Escapes.terminal("plain Größe 水 5 °")).isEqualTo("plain Größe 水 5 °");
  }

  @Test
  void xmlIsReadBackByAParser() throws Exception {
    var builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    StringBuilder document = new StringBuilder("<a>");
    all()
        .forEach(
            t ->
                document
                    .append("<b c=\"")
                    .append(Escapes.xml(t))
                    .append("\">")
                    .append(Escapes.xml(t))
                    .append("</b>"));
    var root =
        builder
            .parse(new InputSource(new StringReader(document.append("</a>").toString())))
            .getDocumentElement();
    assertThat(root.getChildNodes().getLength()).isEqualTo((int) all().count());
    assertThat(root.getElementsByTagName("script").getLength()).isZero();
    assertThat(root.getFirstChild().getTextContent()).isEqualTo(hostile().get(0));
  }

  @Test
  void wordsFromRightToLeftAreSetApart() {
    assertThat(Escapes.xml("for \u05D0\u05D1 (3) \u05D2 in"))
        .isEqualTo("for \u2068\u05D0\u05D1 (3) \u05D2\u2069 in");
    assertThat(Escapes.xml("\u05D0 a \u05D1")).isEqualTo("\u2068\u05D0\u2069 a \u2068\u05D1\u2069");
    assertThat(Escapes.xml("a\u202Eb")).isEqualTo("ab");
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void markdownHasNoMarkupAndNoSecondLine(String text) {
    String safe = Escapes.markdown(text);
    assertThat(safe).doesNotContainPattern("[\n\r\t\u2028\u2029\u0085]");
    // What is left when every escaped mark is taken away has no mark that means anything.
    String left = safe.replaceAll("\\\\[\\\\`*_\\[\\]<>#+.)!|~&:$^=-]", "e");
    assertThat(left).doesNotContainPattern("[\\\\`*_\\[\\]<>!|~$^]|://|&[#A-Za-z]");
    assertThat(left).doesNotContainPattern("^\\s*([#+=-]|\\d+[.)])");
    assertThat(Escapes.markdownCode(text)).doesNotContainPattern("[`\n\r]");
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void latexKeepsNoCommandOfTheText(String text) {
    String safe = Escapes.latex(text);
    String left =
        safe.replaceAll(
                "\\\\ensuremath\\{(\\\\[A-Za-z]+|\\^\\{\\d\\}|-|'+|[A-Zo]|\\\\frac\\{1\\}\\{\\d\\})\\}",
                "")
            .replaceAll("\\\\(text[a-z]+|ldots)\\{\\}", "")
            .replaceAll("\\\\[{}$&#%_,]", "")
            .replaceAll("(?<=-)\\{\\}", "");
    assertThat(left).doesNotContainPattern("[\\\\{}$&#%_^\"`<>|\n\r]");
  }

  @ParameterizedTest
  @CsvSource({
    "α β Ω, \\ensuremath{\\alpha} \\ensuremath{\\beta} \\ensuremath{\\Omega}",
    "50 % of 3 m², 50 \\% of 3 m\\ensuremath{^{2}}",
    "水, [U+6C34]",
    "Größe, Größe",
    "a_b^c, a\\_b\\textasciicircum{}c"
  })
  void latexSetsWhatItCan(String text, String expected) {
    assertThat(Escapes.latex(text)).isEqualTo(expected);
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void noCellStartsAFormula(String text) {
    String safe = Escapes.csv(text);
    String seen = safe.startsWith("\"") ? safe.substring(1) : safe;
    assertThat(seen.strip()).doesNotContainPattern("^[=+\\-@|%\uFF1D\uFF0B\uFF0D\uFF20\u2212]");
    assertThat(seen).doesNotContainPattern("^[\t\r\n]");
  }

  @ParameterizedTest
  @CsvSource({"-5, -5", "+2.5, +2.5", "-1.5e-3, -1.5e-3", "plain, plain", "12 %, 12 %"})
  void numbersAndPlainTextStayAsTheyAre(String text, String expected) {
    assertThat(Escapes.csv(text)).isEqualTo(expected);
  }

  @Test
  void cellsAreQuotedWhereTheyNeedIt() {
    assertThat(Escapes.csv("a, \"b\"")).isEqualTo("\"a, \"\"b\"\"\"");
    assertThat(Escapes.csv("two\nlines")).isEqualTo("\"two\nlines\"");
    assertThat(Escapes.csv("-2+3")).isEqualTo("'-2+3");
  }
}
