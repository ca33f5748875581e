package io.github.seamstead.api.results;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.JobSchema;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.DemoJobs;
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
