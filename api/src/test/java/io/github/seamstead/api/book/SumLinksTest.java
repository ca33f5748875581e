package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.page.LinkedNumbers;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.StepRecorder;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class SumLinksTest {

  private static Derivation sum(String id, double value, String unit) {
    StepRecorder steps = new StepRecorder();
    steps
        .step("x", "what is sought")
        .formula("2 * y")
        .with("y", value / 2, unit)
        .gives(value, unit);
    return steps.derivation(id, "a sum");
  }

  private static final SumLinks LINKS =
      new SumLinks(
          List.of(
              sum("geometry.frame.measures", 2.3456, "m"),
              sum("geometry.frame.lap", 0.5, "rad"),
              sum("materials.floor.order", 0.12345, "m3"),
              sum("materials.floor.batch-clay", 0.1234, "")));

  @Test
  void aNumberLeadsToTheSumOfItsChapter() {
    assertThat(LINKS.anchorOf(Chapter.FRAME, "2.346 m")).contains("sum-1");
    assertThat(LINKS.anchorOf(Chapter.FRAME, "2346 mm")).contains("sum-1");
    assertThat(LINKS.anchorOf(Chapter.FRAME, "7 ft 8 3/8 in")).contains("sum-1");
    assertThat(LINKS.anchorOf(Chapter.FRAME, "28.65°")).contains("sum-2");
    assertThat(LINKS.anchorOf(Chapter.FLOOR, "12.3 %")).contains("sum-4");
    assertThat(LINKS.anchorOf(Chapter.FLOOR, "0.1235 m³")).contains("sum-3");
  }

  @Test
  void whatIsOfAnotherValueChapterOrKindLeadsNowhere() {
    assertThat(LINKS.anchorOf(Chapter.FRAME, "2.344 m")).isEmpty();
    assertThat(LINKS.anchorOf(Chapter.FRAME, "2.346 kg")).isEmpty();
    assertThat(LINKS.anchorOf(Chapter.SOIL, "2.346 m")).isEmpty();
    assertThat(LINKS.anchorOf(Chapter.FRAME, "2.3 m")).isEmpty();
    assertThat(LINKS.anchorOf(Chapter.FRAME, "hip 2.346 m")).isEmpty();
    assertThat(LINKS.anchorOf(Chapter.FRAME, "")).isEmpty();
  }

  @Test
  void aBookLeadsFromItsNumbersToItsSumsAndOnToLessons() {
    String html =
        Book.of(DemoJobs.plan("seed-loft", PlanOptions.defaults().withWorkedSteps())).html();
    assertThat(links(html, "<td[^>]*>")).isGreaterThan(30);
    assertThat(links(html, "<p>[^<]*")).as("in running text").isPositive();
    assertThat(links(html, "<b class=\"want\">")).as("on day sheets").isPositive();
    assertThat(html).contains("Lesson: How long are the poles?<");
    assertThat(Book.of(DemoJobs.plan("seed-loft")).html()).doesNotContain("href=\"#sum-");
  }

  /** Counts links to sums after an opening; each leads to a sum that is there. */
  private static int links(String html, String opening) {
    Matcher links = Pattern.compile(opening + "<a href=\"#(sum-\\d+)\"").matcher(html);
    int count = 0;
    while (links.find()) {
      assertThat(html).contains("id=\"" + links.group(1) + "\"");
      count++;
    }
    return count;
  }

  @Test
  void aSheetLeadsOnlyWhereOneChapterAloneHasTheNumber() {
    SumLinks twice =
        new SumLinks(
            List.of(
                sum("geometry.frame.measures", 2.3456, "m"),
                sum("geometry.pattern.cut", 2.3456, "m"),
                sum("geometry.pattern.cut", 4.567, "m")));
    assertThat(twice.anchorOf("2.346 m")).isEmpty();
    assertThat(twice.anchorOf("4.567 m")).contains("sum-3");
  }

  @Test
  void aShareOfADoubtIsNoNumberOfAChapter() {
    SumLinks sums =
        new SumLinks(
            List.of(
                sum("materials.floor.batches", 23.45, ""),
                sum("materials.floor.batches-doubt", 0.4567, "")));
    assertThat(sums.anchorOf(Chapter.FLOOR, "45.7 %")).isEmpty();
    assertThat(sums.doubtOf(0)).contains("sum-2");
    assertThat(sums.doubtOf(1)).isEmpty();
  }

  @Test
  void quantitiesInRunningTextLeadToTheirSums() {
    Markup m = new Markup();
    LinkedNumbers.write(
        m.open("p"),
        "Hip 2.346 m long, 2.346 kg/m3, in 2.346 m-steps",
        text -> LINKS.anchorOf(Chapter.FRAME, text));
    assertThat(m.close().toString())
        .isEqualTo(
            "<p>Hip <a href=\"#sum-1\">2.346 m</a> long, 2.346 kg/m3, in <a"
                + " href=\"#sum-1\">2.346 m</a>-steps</p>");
  }
}
