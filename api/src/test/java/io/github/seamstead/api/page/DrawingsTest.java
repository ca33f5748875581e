package io.github.seamstead.api.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class DrawingsTest {

  @Test
  void aBookDrawingFitsItsBox() {
    Canvas canvas = Canvas.fit(-2, 1, 8, 4, 20, 300);
    assertThat(canvas.x(-2)).isCloseTo(20, within(1e-9));
    assertThat(canvas.x(8)).isCloseTo(340, within(1e-9));
    assertThat(canvas.y(4)).isCloseTo(20, within(1e-9));
    assertThat(canvas.y(1) - canvas.y(4)).isCloseTo(3 * canvas.scale(), within(1e-9));
  }

  @Test
  void aTallDrawingIsCentredAndNoHigherThanAllowed() {
    Canvas canvas = Canvas.fit(0, 0, 1, 10, 10, 300);
    assertThat(canvas.y(0)).isCloseTo(290, within(1e-9));
    assertThat((canvas.x(0) + canvas.x(1)) / 2).isCloseTo(180, within(1e-9));
  }

  @Test
  void aTrueSizeFileStatesMillimetres() throws Exception {
    Canvas canvas = Canvas.trueSize(0, 0, 1.5, 2, 10);
    canvas.path(
        List.of(new double[] {0, 0}, new double[] {1.5, 0}, new double[] {0, 2}),
        true,
        Ink.SEAM,
        Shade.HATCH);
    canvas.label(0.5, 0.5, "A & B").arrow(0, 0, 1, 1, Ink.THIN).dot(0, 0, 2, Ink.CUT, Shade.DOTS);
    Element svg = parse(canvas.drawing("panel-1", "Panel 1", "A triangle <1>").file());
    assertThat(svg.getAttribute("width")).isEqualTo("1520mm");
    assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 1520 2020");
    assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
        .isEqualTo("A triangle <1>");
  }

  @Test
  void chartsAreWellFormedAndTicksAreRound() throws Exception {
    Chart chart =
        new Chart(
            Chart.Axis.logarithmic("grain size (mm)", 0.001, 10),
            Chart.Axis.linear("finer (%)", 0, 100),
            240);
    List<double[]> low = List.of(new double[] {0.001, 0}, new double[] {10, 90});
    List<double[]> high = List.of(new double[] {0.001, 20}, new double[] {10, 100});
    chart.band(low, high, Shade.LIGHT).line(low, Ink.SEAM, "sand", 1).dots(high, Shade.PAPER);
    parse(chart.drawing("grading", "Grading", "Two lines").file());
    assertThat(Chart.Axis.linear("x", 0, 23).ticks()).containsExactly(0.0, 5.0, 10.0, 15.0, 20.0);
    assertThat(Chart.Axis.logarithmic("x", 0.002, 63).ticks())
        .hasSize(4)
        .first()
        .satisfies(t -> assertThat(t).isCloseTo(0.01, within(1e-12)));
  }

  @Test
  void aPageLinksItsChapters() {
    String html = new Page("Book", "en").chapter("Cut list", new Markup().element("p", "x")).html();
    assertThat(html)
        .contains("href=\"#cut-list\"")
        .contains("id=\"cut-list\"")
        .doesNotContain("<script")
        .doesNotContain("http://www.w3.org/1999");
  }

  @Test
  void aTableHasAsManyCellsAsColumns() {
    Table table = new Table("Cuts", "piece", "#length (m)");
    assertThatThrownBy(() -> table.row("a")).hasMessageContaining("given 1 cells, must be 2");
    Markup markup = new Markup();
    table.row("a", "1.2").write(markup);
    assertThat(markup.toString()).contains("<td class=\"n\">1.2</td>");
  }

  private static Element parse(String xml) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)))
        .getDocumentElement();
  }
}
