package io.github.seamstead.api.chapter.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
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

  @Test
  void whatIsBegunAheadIsTakenUpWhereItIsAskedFor() {
    List<Runnable> lent = new ArrayList<>();
    Run run = new Run(job(), PlanOptions.defaults().on(lent::add), List.of());
    List<String> soil = List.of("soil");
    run.beside().begin(soil, () -> "begun ahead");
    assertThat(lent).hasSize(1);
    lent.get(0).run();
    assertThat(run.beside().begun(soil, String.class)).contains("begun ahead");
    // By the object itself: another that is equal to it was not begun.
    assertThat(run.beside().begun(new ArrayList<>(soil), String.class)).isEmpty();
  }

  /** The one thread is the plan's own, so that nothing lent to it is ever begun. */
  @Test
  void aPlanOnTheOneThreadThatItIsLentDoesNotWaitForIt() throws Exception {
    JobPlan alone = JobPlanner.plan(job(), PlanOptions.defaults());
    ExecutorService one = Executors.newSingleThreadExecutor();
    try {
      JobPlan lent =
          one.submit(() -> JobPlanner.plan(job(), PlanOptions.defaults().on(one)))
              .get(5, TimeUnit.MINUTES);
      assertThat(ResultsJson.text(lent)).isEqualTo(ResultsJson.text(alone));
    } finally {
      one.shutdownNow();
    }
  }

  private static Job job() {
    return JobReader.read(DemoJobs.FOLDER.resolve("seed-loft.json"));
  }
}
