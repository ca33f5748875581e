package io.github.seamstead.api.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.Seamstead;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobFileException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.materials.soil.Suitability;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ResultsTest {

  private static final JobPlan MODEL = DemoJobs.plan("class-model");
  private static final JobPlan LOFT = DemoJobs.plan("seed-loft");

  @TempDir private Path folder;

  @ParameterizedTest
  @MethodSource("io.github.seamstead.api.results.ResultsSchemaTest#demoJobs")
  void whatIsReadEqualsWhatWasWritten(Path file) throws IOException {
    JobPlan plan = JobPlanner.plan(JobReader.read(file), PlanOptions.defaults().withWorkedSteps());
    String text = ResultsJson.text(plan);
    Path written = folder.resolve("results.json");
    Files.writeString(written, text);
    Results read = Results.read(written);
    assertThat(read).isEqualTo(Results.of(plan)).hasSameHashCodeAs(Results.of(plan));
    assertThat(read.text()).isEqualTo(text);
    assertThat(read.assumptions()).isEqualTo(plan.assumptions());
    assertThat(read.unmet()).isEqualTo(plan.unmet());
    assertThat(read.notPlanned()).isEqualTo(plan.notPlanned());
    assertThat(read.jobDigest()).isEqualTo(plan.job().digest());
    assertThat(read.library()).isEqualTo(Seamstead.version());
  }

  @Test
  void valuesAreReadByTypeAndKey() {
    ResultsNode root = Results.parse(ResultsJson.text(LOFT)).root();
    assertThat(root.text("schema")).isEqualTo(ResultsJson.SCHEMA_ID);
    assertThat(root.one("frame").whole("sides")).isEqualTo(12);
    assertThat(root.one("frame").one("measures").number("baseSide_m")).isCloseTo(1.6, within(1e-9));
    assertThat(root.one("floor").many("earth").get(0).range("dryMass_kg"))
        .isEqualTo(LOFT.floor().orElseThrow().buildUp().earth().get(0).dryMass());
    ResultsNode soil = root.many("soils").get(0);
    assertThat(soil.uncertain("clayRatio"))
        .isEqualTo(LOFT.soils().get(0).finding().texture().clay());
    Suitability.Verdict verdict = LOFT.soils().get(0).floor().verdict();
    assertThat(soil.text("floorVerdictCode").toUpperCase(java.util.Locale.ROOT))
        .isEqualTo(verdict.name().replace("_", ""));
    ResultsNode mix = root.many("mixes").get(0);
    List<ResultsNode> parts = mix.many("bucketParts");
    assertThat(parts.get(0).number("parts")).isEqualTo(1);
    assertThat(parts.get(1).number("parts")).isCloseTo(mix.number("sandParts"), within(1e-9));
    ResultsNode shape = root.one("cover").many("shapes").get(0);
    assertThat(shape.points("cut_m")).allMatch(point -> point.size() == 2);
    assertThat(root.findText("job")).isPresent();
    assertThat(Results.of(MODEL).root().findOne("floor")).isEmpty();
  }

  /** A notch runs from the stitch line, at its distance along the seam, out to the cut. */
  @Test
  void notchesLieOnTheSeamsOfTheirShape() {
    ResultsNode cover = Results.of(LOFT).root().one("cover");
    int notches = 0;
    for (ResultsNode shape : cover.many("shapes")) {
      List<List<Double>> stitch = shape.points("stitch_m");
      for (ResultsNode notch : shape.many("notches")) {
        int edge = notch.whole("edge");
        List<Double> at = notch.points("stitchToCut_m").get(0);
        List<Double> from = stitch.get(edge);
        List<Double> to = stitch.get((edge + 1) % stitch.size());
        double along = distance(from, to);
        assertThat(distance(from, at) + distance(at, to)).isCloseTo(along, within(1e-9));
        notches++;
      }
    }
    assertThat(notches).isPositive();
  }

  private static double distance(List<Double> a, List<Double> b) {
    return Math.hypot(a.get(0) - b.get(0), a.get(1) - b.get(1));
  }

  /** Edges between the corners that the results give are the edges that they give. */
  @Test
  void theSurveyedCornersAreWhereTheEdgesEnd() {
    ResultsNode survey = Results.of(DemoJobs.plan("hill-hide")).root().one("survey");
    int checked = 0;
    for (ResultsNode edge : survey.many("edges")) {
      for (ResultsNode a : survey.many("nodes")) {
        for (ResultsNode b : survey.many("nodes")) {
          if (edge.text("name").equals(a.text("node") + "-" + b.text("node"))) {
            double length =
                Math.sqrt(square(a, b, "x_m") + square(a, b, "y_m") + square(a, b, "z_m"));
            assertThat(edge.uncertain("length_m").value()).isCloseTo(length, within(1e-9));
            checked++;
          }
        }
      }
    }
    assertThat(checked).isGreaterThan(10);
  }

  private static double square(ResultsNode a, ResultsNode b, String key) {
    double apart = a.number(key) - b.number(key);
    return apart * apart;
  }

  @Test
  void aWrongQuestionIsAnsweredWithTheRightOnes() {
    ResultsNode frame = Results.of(MODEL).root().one("frame");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> frame.whole("side"))
        .withMessageContaining(
            "$.frame: given the key \"side\"; must be one of: [sides, truncated");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> frame.text("sides"))
        .withMessage("$.frame.sides: asked for as string; must be asked for as integer");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Results.of(MODEL).root().one("floor"))
        .withMessageContaining("$.floor: given nothing");
  }

  @Test
  void keysOfALaterReleaseAreKeptAndALaterFormIsRefused() {
    String text = ResultsJson.text(MODEL);
    String later =
        text.replaceFirst("\"library\"", "\"weatherToday\": {\"a\": [1]},\n \"library\"");
    Results read = Results.parse(later);
    assertThat(read.root().keys()).contains("weatherToday");
    assertThat(read.text()).contains("\"weatherToday\"");
    assertThatThrownBy(
            () ->
                Results.parse(
                    text.replaceFirst("\"seamsteadResults\": 1", "\"seamsteadResults\": 2")))
        .isInstanceOf(ResultsException.class)
        .hasMessage(
            "$.seamsteadResults: given 2; must be 1; a later version needs a later release of the"
                + " library than "
                + Seamstead.version());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "null", "{\"seamsteadResults\": 1} x", "{\"a\":1,\"a\":2}"})
  void whatIsNotJsonIsRefusedWithItsCause(String text) {
    assertThatThrownBy(() -> Results.parse(text))
        .isInstanceOf(ResultsException.class)
        .hasCauseInstanceOf(IOException.class);
  }

  @Test
  void allThatIsWrongIsToldAtOnce() {
    String text =
        ResultsJson.text(MODEL)
            .replaceFirst("\"sides\": 5", "\"sides\": 5.5")
            .replaceFirst("\"truncated\": false", "\"truncated\": \"no\"")
            .replaceFirst("\"seed\": \"[^\"]*\",", "")
            .replaceFirst("\"hazardCode\": \"[a-zA-Z]*\"", "\"hazardCode\": \"tigers\"");
    assertThatThrownBy(() -> Results.parse(text))
        .isInstanceOfSatisfying(ResultsException.class, e -> assertThat(e.faults()).hasSize(4))
        .hasMessageContaining("$.seed: given nothing; must be there")
        .hasMessageContaining("$.frame.sides: given a value of another type")
        .hasMessageContaining("$.frame.truncated")
        .hasMessageContaining("given \"tigers\"; must be one of: [");
    assertThatThrownBy(() -> Results.read(folder.resolve("none.json")))
        .isInstanceOf(JobFileException.class)
        .hasCauseInstanceOf(IOException.class);
  }

  @Test
  void theSchemaSharesItsParts() {
    String schema = ResultsJson.schemaText();
    assertThat(schema).contains("\"$id\": \"" + ResultsJson.SCHEMA_ID + "\"").contains("\"$defs\"");
    Set<String> used = new TreeSet<>();
    var reference = java.util.regex.Pattern.compile("\"#/\\$defs/(\\w+)\"").matcher(schema);
    while (reference.find()) {
      used.add(reference.group(1));
    }
    assertThat(used).contains("Range", "Uncertain").hasSizeGreaterThan(4);
    assertThat(schema.split("\"title\": \"Range\"", -1)).hasSize(2);
  }
}
