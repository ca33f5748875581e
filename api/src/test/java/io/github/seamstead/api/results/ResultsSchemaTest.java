package io.github.seamstead.api.results;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.compare.CompareJson;
import io.github.seamstead.api.compare.CompareOptions;
import io.github.seamstead.api.compare.Comparison;
import io.github.seamstead.api.compare.Lever;
import io.github.seamstead.api.compare.LeverRow;
import io.github.seamstead.api.compare.Measure;
import io.github.seamstead.api.compare.ParetoFront;
import io.github.seamstead.api.doubt.Matters;
import io.github.seamstead.api.doubt.MattersJson;
import io.github.seamstead.api.doubt.MattersOptions;
import io.github.seamstead.api.doubt.MattersSearch;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.JobSchema;
import io.github.seamstead.api.job.VariantsDocument;
import io.github.seamstead.api.job.VariantsReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schemas hold for the demo jobs and for what comes of them. */
class ResultsSchemaTest {

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  static Stream<Path> demoJobs() throws IOException {
    try (Stream<Path> files = Files.list(DemoJobs.FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  private static List<Error> check(String schema, String json) {
    Schema checker = REGISTRY.getSchema(schema, InputFormat.JSON);
    return checker.validate(json, InputFormat.JSON);
  }

  @Test
  void thePublishedSchemaIsTheOneThatTheWriterGives() throws IOException {
    try (var in = ResultsJson.class.getResourceAsStream(ResultsJson.SCHEMA_RESOURCE)) {
      assertThat(in).as("the published schema").isNotNull();
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
          .isEqualTo(ResultsJson.schemaText());
    }
  }

  @ParameterizedTest
  @MethodSource("demoJobs")
  void aDemoJobFollowsTheSchemaOfJobs(Path file) throws IOException {
    assertThat(check(JobSchema.text(), Files.readString(file))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("demoJobs")
  void theResultsOfADemoJobFollowTheirSchema(Path file) {
    String results =
        ResultsJson.text(
            JobPlanner.plan(JobReader.read(file), PlanOptions.defaults().withWorkedSteps()));
    assertThat(check(ResultsJson.schemaText(), results)).isEmpty();
  }

  private static String resource(Class<?> beside, String name) throws IOException {
    try (var in = beside.getResourceAsStream(name)) {
      assertThat(in).as(name).isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static JobDraft draft(String demo) {
    return JobDraft.read(DemoJobs.FOLDER.resolve(demo));
  }

  @Test
  void theSchemasOfComparisonsAndDoubtsAreThoseThatTheWritersGive() throws IOException {
    assertThat(resource(CompareJson.class, CompareJson.SCHEMA_RESOURCE))
        .isEqualTo(CompareJson.schemaText())
        .contains(CompareJson.SCHEMA_ID);
    assertThat(resource(MattersJson.class, MattersJson.SCHEMA_RESOURCE))
        .isEqualTo(MattersJson.schemaText())
        .contains(MattersJson.SCHEMA_ID)
        .contains("#/$defs/");
  }

  @Test
  void theComparisonOfTheDemoFollowsItsSchema() {
    JobDraft job = draft("seed-loft.json");
    VariantsDocument variants =
        VariantsReader.read(DemoJobs.FOLDER.resolve("variants/seed-loft.json"), job);
    Comparison comparison =
        Comparison.of(job, variants, CompareOptions.quickly(), ParetoFront.USUAL, Runnable::run, 1);
    String text = CompareJson.text(comparison);
    assertThat(check(CompareJson.schemaText(), text)).isEmpty();
    assertThat(check(CompareJson.schemaText(), text.replace("\"variant\":", "\"number\":")))
        .isNotEmpty();
    assertThat(comparison.levers())
        .filteredOn(l -> l.lever().on() == Lever.On.FLOOR)
        .extracting(l -> l.lever().name())
        .contains("washed-sand dug on the site, not bought", "Coat thinner, 20 mm");
    LeverRow own =
        comparison.levers().stream()
            .filter(l -> l.lever().name().startsWith("washed-sand dug"))
            .findFirst()
            .orElseThrow();
    assertThat(own.saved(Measure.MONEY).orElseThrow()).isPositive();
    assertThat(own.saved(Measure.HOURS).orElseThrow()).isEqualTo(-own.lever().hours());
  }

  @Test
  void theDoubtsOfADemoFollowTheirSchema() {
    MattersOptions few = new MattersOptions(16, 1, Progress.NONE, new Cancellation());
    Matters matters = MattersSearch.of(draft("class-model.json"), few, Runnable::run, 1);
    String text = MattersJson.text(matters);
    assertThat(matters.numbers()).isNotEmpty();
    assertThat(check(MattersJson.schemaText(), text)).isEmpty();
    assertThat(check(MattersJson.schemaText(), text.replace("\"points\": 16", "\"points\": \"x\"")))
        .isNotEmpty();
  }

  @Test
  void theSchemaCatchesAWrongJob() {
    assertThat(check(JobSchema.text(), "{\"seamstead\": 1}")).isNotEmpty();
    assertThat(
            check(
                JobSchema.text(),
                "{\"seamstead\": 1, \"frame\": {\"sides\": 8, \"side\": 1}, \"stock\": {}}"))
        .isNotEmpty();
  }
}
