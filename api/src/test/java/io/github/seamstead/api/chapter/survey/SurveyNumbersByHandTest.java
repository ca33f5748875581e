package io.github.seamstead.api.chapter.survey;

import static io.github.seamstead.api.chapter.survey.TapedSquare.MEASURES;
import static io.github.seamstead.api.chapter.survey.TapedSquare.NAMES;
import static io.github.seamstead.api.chapter.survey.TapedSquare.SQUARE;
import static io.github.seamstead.api.chapter.survey.TapedSquare.distance;
import static io.github.seamstead.api.chapter.survey.TapedSquare.planned;
import static io.github.seamstead.api.chapter.survey.TapedSquare.readings;
import static io.github.seamstead.api.chapter.survey.TapedSquare.taped;
import static io.github.seamstead.api.chapter.survey.TapedSquare.terms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.Fixture;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Frames taped between known points, and what their results, page and drawings say. */
class SurveyNumbersByHandTest {

  private static Fixture square(String wrong, double by) {
    return planned(MEASURES, readings(SQUARE, wrong, by), terms("8 mm", ""));
  }

  private static void near(Fixture f, String pointer, double value, double by) {
    assertThat(f.number(pointer)).as(pointer).isCloseTo(value, within(by));
  }

  private static String fixed(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(one -> texts.add(one.asText()));
    return texts;
  }

  /**
   * A side of a square taped 6 mm too long: diagonals must be sqrt(1/2) of the sum of the sides'
   * changes, so the condition misses by 4.24 mm. Four sides of weight 1/2 and two diagonals of
   * weight 1 share it: 0.75 mm a side and 1.06 mm a diagonal.
   */
  @Test
  void oneSideTooLongIsShared() {
    Fixture f = square("B1-B2", 0.006);
    double miss = 0.006 * Math.sqrt(0.5);
    double side = -miss * Math.sqrt(0.5) / 4;
    double diagonal = miss / 4;
    double[] residuals = {side, diagonal, side, 0, side, diagonal, 0, side, 0, 0};
    for (int i = 0; i < 10; i++) {
      String one = "/survey/readings/" + i;
      near(f, one + "/residual_m", residuals[i], 2e-6);
      near(f, one + "/number", i + 1, 0);
      assertThat(f.at(one + "/suspect").asBoolean()).isFalse();
      // A statistic is the residual over its own deviation: the square root of the redundancy.
      double deviation = 0.002 * Math.sqrt(f.number(one + "/redundancy"));
      near(f, one + "/statistic", f.number(one + "/residual_m") / deviation, 1e-6);
    }
    near(f, "/survey/readings/0/adjusted_m", 4.006 + side, 2e-6);
    assertThat(f.at("/survey/readings/0/written").asText()).isEqualTo("4.006 m");
    // Squares over the variance of 2 mm, by two degrees of freedom.
    double factor = (4 * side * side + 2 * diagonal * diagonal) / 4e-6 / 2;
    near(f, "/survey/varianceFactor", factor, 1e-3);
    assertThat(f.at("/survey/verdict").asText()).isEqualTo("AS_EXPECTED");
    assertThat(f.at("/survey/allControlled").asBoolean()).isTrue();
    assertThat(f.at("/survey/uncontrolled")).isEmpty();
    assertThat(f.unmet(Chapter.SURVEY)).isEmpty();
    // The reading that stands out the most is worked: a side or a diagonal, by 1.06.
    assertThat(f.sums("geometry.survey.standardised-residual"))
        .singleElement()
        .satisfies(s -> assertThat(Math.abs(s)).isCloseTo(1.0605, within(1e-3)));
    assertThat(f.worked("geometry.survey.minimal-detectable-error")).hasSize(1);
    assertThat(f.assumed()).anyMatch(a -> a.startsWith("$.frame.survey: readings along"));
    assertThat(f.read(Chapter.SURVEY))
        .contains(
            "variance factor | "
                + String.format(Locale.ROOT, "%.3f", f.number("/survey/varianceFactor")),
            "verdict of the chi-squared test | as expected",
            "No reading stands out: every one agrees with the others within its uncertainty.")
        .noneMatch(line -> line.startsWith("Before cutting"))
        .noneMatch(line -> line.startsWith("Two or more readings contradict"));
    bars(f, residuals);
    // Of equal ones the greatest by a hair is worked.
    double most = 0;
    int number = 0;
    for (int i = 0; i < 10; i++) {
      double statistic = Math.abs(f.number("/survey/readings/" + i + "/statistic"));
      number = statistic > most ? i + 1 : number;
      most = Math.max(most, statistic);
    }
    assertThat(f.plan().derivations().stream().map(d -> d.title()).toList())
        .contains("How far reading " + number + " stands out");
    // Three corners moved by more than a hair, drawn a hundred times too long, have arrows.
    assertThat(arrows(f)).isEqualTo(3);
    assertThat(arrows(square("", 0))).isZero();
  }

  /** Heads of arrows are filled triangles. */
  private static int arrows(Fixture f) {
    return f.book().drawings().get("survey-deviations").split("Z\" fill=\"#111\"", -1).length - 1;
  }

  private static final Pattern BAR =
      Pattern.compile("<path d=\"M([0-9.]+) ([0-9.]+)L([0-9.]+) ([0-9.]+)\"[^>]*width=\"1.4\"");

  /** Bars in the order of the readings, as long as their residuals, with the numbers beside. */
  private static void bars(Fixture f, double[] residuals) {
    String drawing = f.book().drawings().get("survey-residuals");
    Matcher bar = BAR.matcher(drawing);
    double scale = 0;
    double above = 0;
    for (int i = 0; i < residuals.length; i++) {
      if (residuals[i] == 0) {
        continue;
      }
      assertThat(bar.find()).isTrue();
      double length = Double.parseDouble(bar.group(3)) - Double.parseDouble(bar.group(1));
      double y = Double.parseDouble(bar.group(2));
      assertThat(Double.parseDouble(bar.group(4))).isEqualTo(y);
      assertThat(y).isGreaterThan(above);
      above = y;
      scale = scale == 0 ? length / residuals[i] : scale;
      assertThat(length / residuals[i]).isCloseTo(scale, within(0.01 * scale));
      // On the line of the bar stand its number and, in millimetres, its residual.
      String row = " " + bar.group(2).replace(".", "\\.") + "\\)\"[^>]*>";
      assertThat(drawing)
          .containsPattern(row + (i + 1) + "\\. ")
          .containsPattern(
              row
                  + String.format(
                      Locale.ROOT, "%.1f", 1000 * f.number("/survey/readings/" + i + "/residual_m"))
                  + "<");
    }
    assertThat(bar.find()).isFalse();
    assertThat(scale).isPositive();
    // The line from which they start runs from above the first row to below the last.
    Matcher start =
        Pattern.compile("<path d=\"M([0-9.]+) ([0-9.]+)L([0-9.]+) ([0-9.]+)\"[^>]*width=\"0.72\"")
            .matcher(drawing);
    assertThat(start.find()).isTrue();
    double first = place(drawing, "1\\. B1-B2")[1];
    double last = place(drawing, "13\\. B3-B4 \\(height\\)")[1];
    double row = (last - first) / 12;
    assertThat(Double.parseDouble(start.group(2))).isCloseTo(last + row / 2, within(0.05));
    assertThat(Double.parseDouble(start.group(4))).isCloseTo(first - 0.7 * row, within(0.05));
    assertThat(place(drawing, "mm")[1]).isCloseTo(first - row, within(0.05));
    assertThat(drawing).contains(" height=\"" + fixed(last + row / 2 + 4) + "\"");
    assertThat(drawing).contains("the longest bar is 1.1\u00a0mm").contains(">mm<");
    assertThat(drawing).doesNotContain(" !<").doesNotContain("width=\"2.8\"");
  }

  /** Names, places and shapes of a frame without an error. */
  @Test
  void theResultsNameWhatTheyMeasure() {
    Fixture f = square("", 0);
    assertThat(f.at("/survey/edges").findValuesAsText("name"))
        .containsExactly("B4-B1", "B1-B2", "B2-B3", "B3-B4", "B1-A", "B2-A", "B3-A", "B4-A");
    assertThat(f.at("/survey/nodes").findValuesAsText("node"))
        .containsExactly("B1", "B2", "B3", "B4", "A");
    assertThat(f.at("/survey/baseCorners").findValuesAsText("corner"))
        .containsExactly("B1", "B2", "B3", "B4");
    assertThat(f.at("/survey/templateSets/0/hem").findValuesAsText("corner"))
        .containsExactly("B1", "B2", "B3", "B4");
    assertThat(f.at("/survey/facesAsBuilt")).hasSize(4);
    for (JsonNode face : f.at("/survey/facesAsBuilt")) {
      double[][] triangle = {{0, 0}, {4, 0}, {2, Math.sqrt(13)}};
      assertThat(face.at("/outline_m")).hasSize(3);
      for (int i = 0; i < 3; i++) {
        assertThat(face.at("/outline_m/" + i + "/0").asDouble())
            .isCloseTo(triangle[i][0], within(1e-6));
        assertThat(face.at("/outline_m/" + i + "/1").asDouble())
            .isCloseTo(triangle[i][1], within(1e-6));
      }
    }
    // The template is as much larger as the results say that a face is full.
    double full = f.number("/survey/templateSets/0/faces/0/greatestFullness_m");
    near(f, "/survey/templateSets/0/templates/0/outline_m/1/0", 4 + full, 1e-6);
    assertThat(f.at("/survey/templateSets/0/templates/0/faces").toString()).isEqualTo("[1,2,3,4]");
    JsonNode next = f.at("/survey/nextReadings/0");
    assertThat(List.of(NAMES)).contains(next.at("/from").asText(), next.at("/to").asText());
    assertThat(next.at("/from").asText()).isNotEqualTo(next.at("/to").asText());
    assertThat(next.at("/repeats").asBoolean()).isTrue();
    assertThat(next.at("/worstAfter_m").asDouble())
        .isLessThan(next.at("/worstBefore_m").asDouble());
    String uncertain =
        String.format(
            Locale.ROOT,
            "%.0f",
            1000 * f.number("/survey/templateSets/0/hem/0/takeUp_m/standardUncertainty"));
    String taken =
        String.format(
            Locale.ROOT, "%.0f", 1000 * f.number("/survey/templateSets/0/hem/0/takeUp_m/value"));
    assertThat(f.read(Chapter.SURVEY))
        .anyMatch(
            line ->
                line.startsWith(
                    "The next reading worth taking: "
                        + next.at("/from").asText()
                        + "-"
                        + next.at("/to").asText()
                        + ". It brings the worst panel edge (B"))
        .anyMatch(line -> line.matches("The two worth taking together: \\S+ and \\S+\\. They .*"))
        .anyMatch(line -> line.startsWith("1 (taken) | ") && line.endsWith(" | proved"))
        .contains("B1 | 0 ± 0 mm | " + taken + " ± " + uncertain + " mm")
        .anyMatch(line -> line.startsWith("1 | 1 | " + taken + " ± 2 mm | "))
        .anyMatch(
            line ->
                line.startsWith("Where the frame stands. Seen from above. Thin lines: readings. "))
        .anyMatch(line -> line.startsWith("Residuals of the readings. "));
    String drawing = f.book().drawings().get("survey-deviations");
    // Ten taped lines and three levels, five nodes, and nowhere an arrow.
    assertThat(drawing.split("width=\"0.72\" stroke-linejoin", -1)).hasSize(14);
    assertThat(drawing.split("r=\"3\"", -1)).hasSize(6);
    // B1 and B3 stand below and above each other, their names outside, the apex in the middle.
    double[] first = place(drawing, "B1");
    double[] third = place(drawing, "B3");
    double[] apex = place(drawing, "A");
    double[] second = place(drawing, "B2");
    assertThat(Math.abs(first[1] - third[1])).isCloseTo(298, within(3.0));
    assertThat(first[0]).isCloseTo(third[0], within(0.02));
    assertThat(second[1]).isCloseTo((first[1] + third[1]) / 2, within(0.02));
    assertThat(Math.hypot(apex[0] - 180, apex[1] - 175)).isBetween(10.0, 25.0);
  }

  private static double[] place(String drawing, String text) {
    Matcher at =
        Pattern.compile("translate\\(([0-9.]+) ([0-9.]+)\\)[^>]*>" + text + "<").matcher(drawing);
    assertThat(at.find()).as(text).isTrue();
    return new double[] {Double.parseDouble(at.group(1)), Double.parseDouble(at.group(2))};
  }

  /** With one hip left out the apex hangs on three: none of them checks the others. */
  @Test
  void whatIsLeftWithoutControlIsSaid() {
    Fixture f = square("B4-A", 0.1);
    assertThat(f.at("/survey/allControlled").asBoolean()).isFalse();
    assertThat(texts(f.at("/survey/uncontrolled"))).contains("B1-A", "B2-A", "B3-A");
    assertThat(texts(f.at("/survey/takeBeforeCutting"))).containsExactly("distance B4-A");
    JsonNode blunder = f.at("/survey/blunders/0");
    assertThat(blunder.at("/cause").asText()).isEqualTo("RIVAL");
    List<String> rivals = texts(blunder.at("/alsoPossible"));
    assertThat(rivals).contains("4", "7", "9");
    List<String> unmet = f.unmet(Chapter.SURVEY);
    assertThat(unmet.get(0))
        .startsWith(
            "reading 10 (B4-A, taped 4.22310562561766 m) is probably wrong, by about 100 mm: read"
                + " one decimetre (10 cm) too long; it is left out, measure it again; no test can"
                + " tell it from reading 4 (B1-A), reading 7 (B2-A), reading 9 (B3-A)")
        .endsWith(": measure that again too");
    assertThat(unmet)
        .anyMatch(u -> u.startsWith("nothing controls B1-A, B2-A, B3-A"))
        .contains(
            "no set of templates fits within the tolerance of 8 mm; the one with the least misfit"
                + " is used");
    assertThat(f.read(Chapter.SURVEY))
        .anyMatch(
            line ->
                line.startsWith(
                    "Reading 10, B4-A is probably wrong, by about 100.0 mm: the others say 4.123 m"
                        + " ± "))
        .anyMatch(line -> line.startsWith("No test can tell it from: B1-A, B2-A, B3-A"))
        .anyMatch(line -> line.startsWith("Before cutting: nothing controls B1-A, B2-A, B3-A"));
  }

  /** Hips taped twice: the other tape of the same hip says which of two is wrong. */
  @Test
  void aReadingThatTheOthersContradictIsWrong() {
    StringBuilder twice = new StringBuilder(readings(SQUARE, "B4-A", 0.1));
    for (String corner : List.of("B1", "B2", "B3", "B4")) {
      twice.append(", ").append(taped(corner, "A", Math.sqrt(17)));
    }
    Fixture f = planned(MEASURES, twice.toString(), terms("8 mm", ""));
    assertThat(f.at("/survey/blunders/0/cause").asText()).isEqualTo("CONTRADICTED");
    near(f, "/survey/blunders/0/error_m", 0.1, 1e-6);
    assertThat(f.unmet(Chapter.SURVEY))
        .containsExactly(
            "reading 10 (B4-A, taped 4.22310562561766 m) is wrong by about 100 mm: read one"
                + " decimetre (10 cm) too long; it is left out, measure it again");
    assertThat(f.read(Chapter.SURVEY))
        .anyMatch(
            line ->
                line.startsWith(
                    "Reading 10, B4-A is wrong by about 100.0 mm: the others say 4.123 m ± "))
        .noneMatch(line -> line.startsWith("No test can tell it from"))
        .noneMatch(line -> line.startsWith("Before cutting"));
  }

  /**
   * A base of 4.4 by 4 m: the faces over the long sides take one template, those over the short
   * another.
   */
  @Test
  void unlikeFacesTakeTwoTemplates() {
    double[][] at = {{2.2, -2, 0}, {2.2, 2, 0}, {-2.2, 2, 0}, {-2.2, -2, 0}, {0, 0, 3}};
    Fixture f = planned("", readings(at, "", 0), terms("8 mm", ""));
    near(f, "/survey/templatesChosen", 2, 0);
    // Face 1 stands over B4 and B1, 4.4 m apart.
    List<Double> bases = new ArrayList<>();
    f.plan()
        .survey()
        .orElseThrow()
        .faces(4)
        .forEach(o -> bases.add(o.vertices().get(0).distance(o.vertices().get(1))));
    double[] expected = {4.4, 4, 4.4, 4};
    assertThat(bases).hasSize(4);
    for (int i = 0; i < 4; i++) {
      assertThat(bases.get(i)).isCloseTo(expected[i], within(0.008));
    }
    assertThat(f.read(Chapter.SURVEY))
        .anyMatch(line -> line.matches("\\d \\| 1, 3 \\| 4\\.40\\d m \\| .*"))
        .anyMatch(line -> line.matches("\\d \\| 2, 4 \\| 4\\.00\\d m \\| .*"))
        .anyMatch(line -> line.startsWith("2 (taken) | "))
        .anyMatch(
            line -> line.startsWith("1 | ") && line.contains(" mm | ") && !line.contains("±"));
    // Half a millimetre is asked for and the doubt of the readings is more: nothing fits.
    Fixture tight = planned(MEASURES, readings(SQUARE, "", 0), terms("0.5 mm", ""));
    assertThat(tight.unmet(Chapter.SURVEY))
        .containsExactly(
            "no set of templates fits within the tolerance of 0.5 mm; the one with the least misfit"
                + " is used");
    assertThat(tight.read(Chapter.SURVEY).stream().filter(l -> l.contains("(taken)"))).hasSize(1);
  }

  /** The plumb line from the apex falls 2 m along the side from its corner. */
  @Test
  void plumbLinesAndLevelTapesAreReadings() {
    String plumb =
        ", \"plumbs\": [{\"hung\": \"A\", \"mark\": \"B1\", \"towards\": \"B2\", \"offset\": \"2"
            + " m\"}]";
    Fixture f = planned(MEASURES, readings(SQUARE, "", 0), terms("8 mm", plumb));
    assertThat(f.at("/survey/readings")).hasSize(14);
    near(f, "/survey/readings/13/adjusted_m", 2, 1e-6);
    near(f, "/survey/degreesOfFreedom", 3, 0);
    String level =
        readings(SQUARE, "", 0)
            + ", {\"from\": \"B1\", \"to\": \"A\", \"level\": true, \"distance\": "
            + Math.sqrt(8)
            + "}";
    Fixture flat = planned(MEASURES, level, terms("8 mm", ""));
    near(flat, "/survey/readings/10/adjusted_m", Math.sqrt(8), 1e-6);
    assertThat(flat.unmet(Chapter.SURVEY)).isEmpty();
  }

  /** A frame without measures is open at the top if a corner of the opening was taped. */
  @Test
  void aBareFrameWithAnOpening() {
    double[][] base = {{2, -2, 0}, {2, 2, 0}, {-2, 2, 0}, {-2, -2, 0}};
    double[][] top = {{0.5, -0.5, 2.25}, {0.5, 0.5, 2.25}, {-0.5, 0.5, 2.25}, {-0.5, -0.5, 2.25}};
    List<String> list = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      for (int k = 0; k < 4; k++) {
        if (k > i) {
          list.add(taped("B" + (i + 1), "B" + (k + 1), distance(base[i], base[k])));
          list.add(taped("T" + (i + 1), "T" + (k + 1), distance(top[i], top[k])));
        }
        list.add(taped("B" + (i + 1), "T" + (k + 1), distance(base[i], top[k])));
      }
    }
    Fixture f = planned("", String.join(", ", list), terms("20 mm", ""));
    assertThat(f.at("/survey/nodes")).hasSize(8);
    for (JsonNode node : f.at("/survey/nodes")) {
      boolean high = node.at("/node").asText().startsWith("T");
      assertThat(node.at("/z_m").asDouble()).isCloseTo(high ? 2.25 : 0, within(1e-6));
    }
    // The middle of a face: 1.5 m inwards and 2.25 m up.
    near(f, "/survey/facesAsBuilt/0/middle_m/value", Math.hypot(1.5, 2.25), 1e-6);
    Fixture whole = planned("", readings(SQUARE, "", 0), terms("8 mm", ""));
    assertThat(whole.at("/survey/nodes")).hasSize(5);
    near(whole, "/survey/facesAsBuilt/0/middle_m/value", Math.sqrt(13), 1e-6);
  }
}
