package io.github.seamstead.api.chapter.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import org.junit.jupiter.api.Test;

/** A square of 4 m, 3 m high, taped without an error: 4, the square roots of 32 and of 17. */
class SurveyChapterByHandTest {

  private static final double HIP = Math.sqrt(17);
  private static final double DIAGONAL = Math.sqrt(32);

  private static String distance(String from, String to, double metres) {
    return "{\"from\": \"%s\", \"to\": \"%s\", \"distance\": %s}".formatted(from, to, metres);
  }

  private static String text(double side, double more) {
    String readings =
        String.join(
            ", ",
            distance("B1", "B2", side),
            distance("B2", "B3", 4),
            distance("B3", "B4", 4),
            distance("B4", "B1", 4),
            distance("B1", "B3", DIAGONAL),
            distance("B2", "B4", DIAGONAL),
            distance("B1", "A", HIP),
            distance("B2", "A", HIP),
            distance("B3", "A", HIP),
            distance("B4", "A", HIP + more));
    return """
    {"seamstead": 1,
     "frame": {"sides": 4, "measures": {"baseSide": "4 m", "height": "3 m"},
       "survey": {"distances": [%s],
         "heights": [{"from": "B1", "to": "B2", "rise": "0 mm"},
           {"from": "B2", "to": "B3", "rise": "0 mm"},
           {"from": "B3", "to": "B4", "rise": "0 mm"}],
         "uncertainty": "2 mm", "heightUncertainty": "2 mm", "tolerance": "8 mm"}}}
    """
        .formatted(readings);
  }

  private static Fixture planned(String text) {
    return Fixture.of(text, Chapter.SURVEY);
  }

  private static void near(Fixture f, String pointer, double value) {
    assertThat(f.number(pointer)).as(pointer).isCloseTo(value, within(1e-6));
  }

  /** Fifteen coordinates less six of a rigid move: nine are needed, thirteen were read. */
  @Test
  void aTrueFrameIsFoundAsItIs() {
    Fixture f = planned(text(4, 0));
    near(f, "/survey/degreesOfFreedom", 13 - (15 - 4));
    near(f, "/survey/varianceFactor", 0);
    assertThat(f.at("/survey/blunders")).isEmpty();
    assertThat(f.at("/survey/undecided").asBoolean()).isFalse();
    assertThat(f.at("/survey/readings")).hasSize(13);
    for (JsonNode reading : f.at("/survey/readings")) {
      assertThat(reading.at("/residual_m").asDouble()).isCloseTo(0, within(1e-6));
      assertThat(reading.at("/redundancy").asDouble()).isBetween(-1e-9, 1.0);
      assertThat(reading.at("/suspect").asBoolean()).isFalse();
    }
    double redundancy =
        f.at("/survey/readings").findValuesAsText("redundancy").stream()
            .mapToDouble(Double::parseDouble)
            .sum();
    assertThat(redundancy).isCloseTo(f.number("/survey/degreesOfFreedom"), within(1e-6));
    for (JsonNode edge : f.at("/survey/edges")) {
      double length = edge.at("/length_m/value").asDouble();
      assertThat(Math.min(Math.abs(length - 4), Math.abs(length - HIP)))
          .as(edge.toString())
          .isCloseTo(0, within(1e-6));
      assertThat(edge.at("/length_m/standardUncertainty").asDouble()).isPositive();
    }
    for (JsonNode node : f.at("/survey/nodes")) {
      double out = Math.hypot(node.at("/x_m").asDouble(), node.at("/y_m").asDouble());
      boolean apex = node.at("/node").asText().equals("A");
      assertThat(out).isCloseTo(apex ? 0 : Math.sqrt(8), within(1e-6));
      assertThat(node.at("/z_m").asDouble()).isCloseTo(apex ? 3 : 0, within(1e-6));
      assertThat(node.at("/covariance_m2")).hasSize(6);
      assertThat(node.at("/covariance_m2/0").asDouble()).isPositive();
    }
    for (JsonNode face : f.at("/survey/facesAsBuilt")) {
      assertThat(face.at("/middle_m/value").asDouble()).isCloseTo(Math.sqrt(13), within(1e-6));
      assertThat(face.at("/outOfPlane_m").asDouble()).isCloseTo(0, within(1e-6));
    }
    for (JsonNode corner : f.at("/survey/baseCorners")) {
      assertThat(corner.at("/aboveLowest_m/value").asDouble()).isCloseTo(0, within(1e-6));
    }
    assertThat(f.at("/survey/baseCorners")).hasSize(4);
    near(f, "/survey/templatesChosen", 1);
    // What the doubt of the readings asks for, and no more.
    assertThat(f.at("/survey/templateSets/0/worstMisfit_m").asDouble()).isBetween(0.0, 0.008);
    assertThat(f.at("/survey/templateSets/0/templates/0/faces")).hasSize(4);
    assertThat(f.at("/survey/templatesStopped").asBoolean()).isFalse();
    assertThat(f.unmet(Chapter.SURVEY)).isEmpty();
    assertThat(f.worked("geometry.survey")).contains("geometry.survey.global-test");
    assertThat(f.worked("geometry.templates.misfit")).hasSize(1);
    assertThat(f.read(Chapter.SURVEY))
        .contains(
            "The adjustment",
            "readings used | 13",
            "Templates",
            "How many templates",
            "The templates",
            "Fullness (+) of each face in its panel",
            "Seams",
            "Base corners")
        .anyMatch(line -> line.startsWith("A template is made so large"))
        .anyMatch(line -> line.startsWith("No reading"));
  }

  /** A hip taped 10 cm too long stands out; without it the frame is found. */
  @Test
  void aReadingThatIsWrongIsNamed() {
    Fixture f = planned(text(4, 0.1));
    assertThat(f.at("/survey/blunders/0/number").asInt()).isEqualTo(10);
    assertThat(f.number("/survey/blunders/0/error_m")).isCloseTo(0.1, within(0.01));
    assertThat(f.number("/survey/blunders/0/predicted_m/value")).isCloseTo(HIP, within(0.01));
    assertThat(f.unmet(Chapter.SURVEY))
        .anyMatch(u -> u.startsWith("reading 10 (B4-A") || u.contains("reading 10 ("));
    assertThat(f.read(Chapter.SURVEY)).anyMatch(line -> line.contains("Reading 10, "));
    assertThat(f.at("/survey/blunders/0/cause").asText()).isNotEmpty();
    assertThat(f.at("/survey/blunders/0/written").asText()).isNotEmpty();
  }

  /** A tape of 30 m that is 30.015 m long shows every length too short by one in two thousand. */
  @Test
  void aLongTapeIsCorrected() {
    Fixture f =
        planned(
            EarthJob.with(
                text(4, 0),
                "\"uncertainty\": \"2 mm\"",
                "\"tape\": {\"markedLength\": \"30 m\", \"trueLength\": \"30.015 m\"},"
                    + " \"uncertainty\": \"2 mm\""));
    JsonNode first = f.at("/survey/tape/distances/0");
    assertThat(first.at("/taped_m").asDouble()).isEqualTo(4);
    assertThat(first.at("/distance_m").asDouble()).isCloseTo(4.002, within(1e-9));
    assertThat(first.at("/name").asText()).isEqualTo("B1-B2");
    assertThat(f.at("/survey/tape/distances")).hasSize(10);
    assertThat(f.worked("geometry.tape.correction")).hasSize(1);
    assertThat(f.read(Chapter.SURVEY))
        .anyMatch(line -> line.startsWith("Every taped distance was corrected"));
    double edge = f.number("/survey/edges/0/length_m/value");
    assertThat(Math.min(Math.abs(edge - 4.002), Math.abs(edge - HIP * 1.0005)))
        .isCloseTo(0, within(1e-5));
  }

  @Test
  void withoutReadingsThatIsSaid() {
    Fixture f =
        planned(
            "{\"seamstead\": 1, \"frame\": {\"sides\": 4, \"measures\": {\"baseSide\": \"4 m\","
                + " \"height\": \"3 m\"}}}");
    assertThat(f.at("/survey").isMissingNode()).isTrue();
    assertThat(f.skipped(Chapter.SURVEY)).isNotEmpty();
  }
}
