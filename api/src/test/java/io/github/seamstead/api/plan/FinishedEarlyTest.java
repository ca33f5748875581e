package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.json.JsonReader;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.geometry.layout.LayoutResult;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A run that is asked to finish leaves nothing out. */
class FinishedEarlyTest {

  private static final Path JOBS = Path.of("../examples/jobs");

  @Test
  void aRunThatIsAskedToFinishHasEveryChapter() throws IOException {
    Job job = JobReader.read(JOBS.resolve("seed-loft.json"));
    PlanOptions whole = PlanOptions.defaults();
    PlanOptions hurried = PlanOptions.defaults().withEffort(9);
    JobPlan early =
        JobPlanner.plan(job, hurried.heardBy((done, stage) -> hurried.cancellation().finish()));
    JobPlan full = JobPlanner.plan(job, whole);
    assertThat(early.layout().flatMap(part -> part.result().stopped()))
        .contains(LayoutResult.Stop.FINISHED_EARLY);
    assertThat(keys(early)).isEqualTo(keys(full));
    assertThat(early.notPlanned().stream().map(Object::toString).toList())
        .filteredOn(left -> left.contains("cancelled"))
        .isEmpty();
    assertThat(early.notPlanned().toString()).contains("it was asked to end");
  }

  private static Object keys(JobPlan plan) throws IOException {
    return ((Map<?, ?>) JsonReader.read(ResultsJson.text(plan))).keySet();
  }
}
