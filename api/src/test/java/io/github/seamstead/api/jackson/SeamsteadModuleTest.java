package io.github.seamstead.api.jackson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.api.Seamstead;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.JobWriter;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.results.Results;
import io.github.seamstead.api.results.ResultsException;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.api.testing.DemoJobs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SeamsteadModuleTest {

  private static final ObjectMapper MAPPER =
      new ObjectMapper().registerModule(new SeamsteadModule());

  /** What a host may keep: values of the library within a value of its own. */
  record Order(String customer, Job job, Results results) {}

  @ParameterizedTest
  @MethodSource("io.github.seamstead.api.results.ResultsSchemaTest#demoJobs")
  void aJobGoesThroughTheMapperBothWays(Path file) throws IOException {
    Job job = JobReader.read(file);
    assertThat(MAPPER.readValue(Files.readString(file), Job.class)).isEqualTo(job);
    assertThat(MAPPER.readValue(MAPPER.writeValueAsBytes(job), Job.class)).isEqualTo(job);
    JsonNode tree = MAPPER.valueToTree(job);
    assertThat(MAPPER.treeToValue(tree, Job.class)).isEqualTo(job);
    assertThat(MAPPER.readTree(JobWriter.text(job))).isEqualTo(MAPPER.readTree(tree.toString()));
  }

  @Test
  void valuesOfTheLibraryStandWithinThoseOfTheHost() throws IOException {
    JobPlan plan = DemoJobs.plan("class-model");
    Order order = new Order("school", plan.job(), Results.of(plan));
    assertThat(MAPPER.readValue(MAPPER.writeValueAsString(order), Order.class)).isEqualTo(order);
    assertThat(MAPPER.writeValueAsString(plan))
        .isEqualTo(MAPPER.writeValueAsString(Results.of(plan)));
    assertThat(MAPPER.readValue(ResultsJson.text(plan), Results.class)).isEqualTo(Results.of(plan));
  }

  @Test
  void faultsKeepTheirCause() {
    assertThatThrownBy(() -> MAPPER.readValue("{\"seamstead\": 1}", Job.class))
        .isInstanceOf(JsonMappingException.class)
        .hasCauseInstanceOf(JobFaultsException.class)
        .hasMessageContaining("$.frame");
    assertThatThrownBy(() -> MAPPER.readValue("{}", Results.class))
        .hasCauseInstanceOf(ResultsException.class);
  }

  @Test
  void theModuleSaysWhatItIs() {
    SeamsteadModule module = new SeamsteadModule();
    assertThat(module.getModuleName()).isEqualTo("Seamstead");
    assertThat(module.version().toString()).isEqualTo(Seamstead.version());
  }
}
