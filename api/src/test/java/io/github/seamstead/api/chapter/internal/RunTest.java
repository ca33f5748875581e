package io.github.seamstead.api.chapter.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.check.Args;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RunTest {

  private final Run run =
      new Run(
          JobReader.read(DemoJobs.FOLDER.resolve("class-model.json")),
          PlanOptions.defaults(),
          List.of());

  @Test
  void whatValuesContradictIsAFaultOfTheDocument() {
    assertThat(run.require("$.cover.seam", () -> Args.positive("allowance", -2, "m"))).isEmpty();
    assertThatThrownBy(() -> run.findings().requireNoFaults(new Parts(Map.of())))
        .isInstanceOfSatisfying(
            JobFaultsException.class,
            e ->
                assertThat(e.faults())
                    .extracting(JobFault::given, JobFault::allowed)
                    .containsExactly(tuple("-2 m for allowance", "must be greater than 0 m")));
  }

  @Test
  void anyOtherRefusalIsADefectWithItsPlace() {
    assertThatThrownBy(
            () ->
                run.attempt(
                    "$.cover.seam",
                    () -> {
                      throw new IllegalArgumentException("x, must not happen");
                    }))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("$.cover.seam")
        .hasCauseInstanceOf(IllegalArgumentException.class);
    run.findings().requireNoFaults(new Parts(Map.of()));
  }
}
