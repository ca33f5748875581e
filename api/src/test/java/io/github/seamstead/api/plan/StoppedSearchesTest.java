package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.NotPlanned;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.api.testing.SmallJob;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A search that was stopped says so in the plan, the results and the book. */
class StoppedSearchesTest {

  private static final String SAID =
      "the search for how long the joining may take was stopped, since its time was up; the best"
          + " so far is given";

  private static List<String> stopped(JobPlan plan) {
    return plan.notPlanned().stream()
        .filter(left -> left.chapter() == Chapter.JOINING)
        .map(NotPlanned::reason)
        .filter(reason -> reason.contains("was stopped"))
        .toList();
  }

  @Test
  void aTimeLimitThatEndsASearchIsSaidEverywhere() {
    JobPlan plan =
        JobPlanner.plan(SmallJob.job(), PlanOptions.defaults().withTimeLimit(Duration.ofNanos(1)));
    assertThat(stopped(plan)).contains(SAID);
    assertThat(ResultsJson.text(plan)).contains(SAID);
    assertThat(Book.of(plan).html()).contains(SAID);
    // What was found by then is given all the same, and nothing more is asked for because of it.
    assertThat(plan.schedule().orElseThrow().simulation().runs()).isPositive();
    assertThat(plan.unmet())
        .hasSameSizeAs(JobPlanner.plan(SmallJob.job(), PlanOptions.defaults()).unmet());
  }

  @Test
  void aSearchThatRunsToItsEndSaysNothing() {
    assertThat(stopped(JobPlanner.plan(SmallJob.job(), PlanOptions.defaults()))).isEmpty();
  }
}
