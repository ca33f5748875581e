package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

class OverviewTest {

  private static String lead(String job, UnitSystem units) {
    return Overview.lead(DemoJobs.plan(job), new Words(units)).toString();
  }

  private static String assumed(List<Assumption> assumptions, UnitSystem units) {
    Page page = new Page("t", "en");
    BookContext book =
        new BookContext(DemoJobs.plan("clay-bank").parts(), List.of(), new Words(units), page, 1);
    Overview.assumed(book, assumptions);
    return page.html();
  }

  @Test
  void theLoftIsToldInSevenNumbers() {
    String text = lead("seed-loft", UnitSystem.METRIC);
    // Twelve sides of 1.6 m, by the document; the rest by its plan.
    JobPlan plan = DemoJobs.plan("seed-loft");
    assertThat(text)
        .contains("Twelve-sided loft")
        .contains("12")
        .contains("1.600\u00a0m")
        .contains(new Words(UnitSystem.METRIC).mass(plan.cover().orElseThrow().clothMass()));
    assertThat(text.split("<tr", -1)).hasSize(1 + 1 + 7);
    assertThat(text.split(java.util.regex.Pattern.quote(Caution.DEFERENCE), -1)).hasSize(2);
  }

  @Test
  void whatIsMissingIsSaidInTheUnitsOfTheJob() {
    assertThat(lead("clay-bank", UnitSystem.METRIC)).contains("Not planned:").contains("no cover");
    String unmet = DemoJobs.plan("hill-hide-blunder").unmet().get(0).what();
    assertThat(unmet).contains(" mm");
    assertThat(lead("hill-hide-blunder", UnitSystem.IMPERIAL))
        .contains("Cannot be met as stated:")
        .doesNotContain(" mm")
        .contains("3\u00a0ft\u00a08");
  }

  @Test
  void likeAssumptionsAreOne() {
    List<Assumption> twice =
        List.of(
            new Assumption("$.floor.layers[0].lifts", "0.6 m", "common practice"),
            new Assumption("$.floor.layers[1].lifts", "0.6 m", "common practice"));
    String text = assumed(twice, UnitSystem.METRIC);
    assertThat(text).contains("Check each one").doesNotContain("$.");
    assertThat(text.split("0.6 m", -1).length).isLessThanOrEqualTo(3);
    assertThat(assumed(twice, UnitSystem.IMPERIAL)).doesNotContain("0.6 m");
    assertThat(assumed(List.of(), UnitSystem.METRIC)).contains("Nothing was assumed");
  }
}
