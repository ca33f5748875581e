package io.github.seamstead.api.book.front;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.chapter.progress.ProgressPart;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.SmallJob;
import io.github.seamstead.shared.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** The sheet for the evening: what is next, and what changed why. */
class ChangeSheetTest {

  private static final String TITLE = "Next day, and what changed";
  private static final Words WORDS = new Words(UnitSystem.METRIC);

  @Test
  void theNextDayAndTheChangesStandOnIt() {
    JobPlan plan =
        JobPlanner.plan(
            SmallJob.job(),
            SmallJob.diary(
                "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\"]}},"
                    + " {\"date\": \"2031-05-06\", \"spoiled\": {\"pieces\": [\"2\"],"
                    + " \"why\": \"a tear\"}}"),
            PlanOptions.defaults());
    Desk desk = new Desk(plan, WORDS);
    ChangeSheet.write(desk);
    assertThat(desk.sheets()).hasSize(1);
    String text = Sheets.text(desk, TITLE);
    ProgressPart progress = plan.parts().one(ProgressPart.class).orElseThrow();
    PlanChanges changes = plan.changes().orElseThrow();
    assertThat(text).contains("evening of 2031-05-06").contains("Next day, 2031-05-07");
    progress.nextDay().forEach(task -> assertThat(text).contains(task.replaceAll(" +", " ")));
    assertThat(changes.changes()).isNotEmpty();
    changes.changes().stream()
        .limit(14)
        .forEach(change -> assertThat(text).contains(change.name()));
    assertThat(text).contains("spoiled 2 (a tear)");
    if (changes.changes().size() > 14) {
      assertThat(text).contains(changes.changes().size() - 14 + " more stand in the chapter");
    }
  }

  @Test
  void aPlanWithoutADiaryHasNoSuchSheet() {
    Desk desk = new Desk(JobPlanner.plan(SmallJob.job(), PlanOptions.defaults()), WORDS);
    ChangeSheet.write(desk);
    assertThat(desk.sheets()).isEmpty();
  }
}
