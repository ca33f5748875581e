package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.seamstead.api.testing.DemoJobs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VariantsReaderTest {

  private static final JobDraft JOB = JobDraft.read(DemoJobs.FOLDER.resolve("seed-loft.json"));

  private static VariantsDocument read(String text) {
    return VariantsReader.parse(text.getBytes(StandardCharsets.UTF_8), JOB);
  }

  private static List<String> faults(String text) {
    JobFaultsException faults = catchThrowableOfType(JobFaultsException.class, () -> read(text));
    assertThat(faults).as("a document with faults").isNotNull();
    return faults.faults().stream().map(JobFault::text).toList();
  }

  private static String vary(String inside) {
    return "{\"seamstead\": 1, \"vary\": [" + inside + "]}";
  }

  @Test
  void aChangedDraftIsTheDocumentWithThatValueAndTheDraftStays() {
    JobDraft changed =
        JOB.with(
            List.of(
                new JobChange("frame.sides", JobValue.number(10)),
                new JobChange("$.cover.skirt", JobValue.none()),
                new JobChange("floor.mixes[coat].sandParts", JobValue.number(3)),
                new JobChange("stock.sheets[1].count", JobValue.number(4)),
                new JobChange("site.start", JobValue.text("2030-05-01"))));
    JobDocument document = changed.job().document();
    assertThat(document.frame().orElseThrow().sides()).isEqualTo(10);
    assertThat(document.cover().orElseThrow().skirt()).isEmpty();
    assertThat(document.floor().orElseThrow().mixes().get(1).sandParts()).contains(3.0);
    assertThat(document.stock().orElseThrow().sheets().get(1).count()).isEqualTo(4);
    assertThat(document.site().orElseThrow().start()).isPresent();
    JobDocument before = JOB.job().document();
    assertThat(before.frame().orElseThrow().sides()).isEqualTo(12);
    assertThat(before.cover().orElseThrow().skirt()).isPresent();
  }

  @Test
  void anUnchangedDraftIsTheJobAsTheReaderReadsIt() throws IOException {
    byte[] text = Files.readAllBytes(DemoJobs.FOLDER.resolve("seed-loft.json"));
    assertThat(JobDraft.parse(text).job()).isEqualTo(JobReader.parse(text));
  }

  @Test
  void everyChoiceMeetsEveryOther() {
    VariantsDocument document =
        read(
            vary(
                "{\"path\": \"frame.sides\", \"values\": [10, 12]},"
                    + "{\"path\": \"cover.skirt\", \"values\": [null], \"names\": [\"off\"]},"
                    + "{\"name\": \"floor\", \"choices\": [{\"name\": \"thin\", \"set\":"
                    + " [{\"path\": \"floor.layers[3].thickness\", \"value\": \"40 mm\"}]},"
                    + " {\"name\": \"as is\"}]}"));
    assertThat(document.count()).isEqualTo(4);
    assertThat(document.variants().stream().map(Alternative::name))
        .containsExactly(
            "sides 10, skirt off, floor thin",
            "sides 10, skirt off, floor as is",
            "sides 12, skirt off, floor thin",
            "sides 12, skirt off, floor as is");
    assertThat(document.variants().get(0).set()).hasSize(3);
  }

  @Test
  void oneAtATimeAddsUp() {
    VariantsDocument document =
        read(
            "{\"seamstead\": 1, \"combine\": \"single\", \"vary\": ["
                + "{\"path\": \"frame.sides\", \"values\": [8, 10]},"
                + "{\"path\": \"frame.measures.height\", \"values\": [\"3 m\"]}]}");
    assertThat(document.count()).isEqualTo(3);
    assertThat(document.variants()).hasSize(3).allSatisfy(v -> assertThat(v.set()).hasSize(1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"path\": \"frame.side\", \"values\": [8]} | $.vary[0].path (line 1): given"
            + " \"frame.side\"; did you mean \"sides\"?",
        "{\"path\": \"frame.sides.x\", \"values\": [8]} | frame.sides holds no keys",
        "{\"path\": \"frame..sides\", \"values\": [8]} | must be keys with dots between them",
        "{\"path\": \"stock.sheets[7].count\", \"values\": [8]} | stock.sheets has the items [0] to"
            + " [1]",
        "{\"path\": \"stock.sheets.count\", \"values\": [8]} | stock.sheets is a list; call an item"
            + " as in stock.sheets[0]",
        "{\"path\": \"cover.vents[0].face\", \"values\": [8]} | the job has no cover.vents",
        "{\"path\": \"frame.sides\", \"values\": [8, \"ten\"]} | $.vary[0].values[1] (line 1):"
            + " given \"ten\"; must be a whole number from 3 to",
        "{\"path\": \"frame.measures.height\", \"values\": [\"3 kg\"]} | $.vary[0].values[0]",
        "{\"path\": \"cover.seam.kind\", \"values\": [\"finn\"]} | did you mean \"fin\"?",
        "{\"path\": \"cover.fabric\", \"values\": [null]} | must be there: a job cannot do without"
            + " cover.fabric",
        "{\"path\": \"frame.sides\", \"values\": []} | must be a list of 1 to 5000 items",
        "{\"path\": \"frame.sides\"} | must state path with values, or name with choices",
        "{\"path\": \"frame.sides\", \"values\": [8], \"names\": [\"a\", \"b\"]} | must have a name"
            + " for each of the 1 values",
        "{\"path\": \"cover.skirt\", \"values\": [null]}, {\"path\": \"cover.skirt.drop\","
            + " \"values\": [\"0.2 m\"]} | must be varied in one place"
      })
  void aFaultOfAVariationIsSaidWithItsPlace(String variation, String said) {
    List<String> faults = faults(vary(variation));
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0)).contains(said);
  }

  @Test
  void allFaultsAreSaidAtOnce() {
    assertThat(
            faults(
                vary(
                    "{\"path\": \"frame.side\", \"values\": [8]},"
                        + "{\"path\": \"frame.sides\", \"values\": [2, 65, 12]},"
                        + "{\"path\": \"cover.skirt\"}")))
        .hasSize(4);
  }

  @Test
  void nothingToVaryIsSaid() {
    assertThat(faults("{\"seamstead\": 1}"))
        .singleElement()
        .asString()
        .contains("$.vary")
        .contains("nothing to vary")
        .contains("must state one of: vary, list");
    assertThat(faults("{\"seamstead\": 1, \"vary\": []}")).hasSize(1);
    assertThat(faults("{\"seamstead\": 1, \"list\": [{\"name\": \"a\"}], \"vary\": []}"))
        .isNotEmpty();
  }

  @Test
  void tooManyVariantsAreRefusedWithTheBound() {
    String many =
        IntStream.range(0, 100).mapToObj(Integer::toString).collect(Collectors.joining(","));
    String variation = "{\"path\": \"%s\", \"values\": [" + many + "]}";
    String text =
        vary(
            variation.formatted("weather.airChanges").replace("[0,", "[100,")
                + ","
                + variation.formatted("site.crew.people").replace("[0,", "[100,"));
    assertThat(faults(text))
        .anySatisfy(fault -> assertThat(fault).contains("10000 variants").contains("at most 5000"));
  }

  @Test
  void whatIsNoJsonIsSaid() {
    assertThat(faults("{\"seamstead\": 1, ")).singleElement().asString().contains("not JSON");
    assertThat(faults("[]")).singleElement().asString().contains("must be an object");
  }

  @Test
  void thePublishedSchemaIsTheOneThatTheShapesGive() throws IOException {
    try (var in = VariantsSchema.class.getResourceAsStream(VariantsSchema.RESOURCE)) {
      assertThat(in).as("the published schema").isNotNull();
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
          .isEqualTo(VariantsSchema.text());
    }
  }
}
