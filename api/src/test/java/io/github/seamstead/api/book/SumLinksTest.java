package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
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
    Matcher links = Pattern.compile("<td[^>]*><a href=\"#(sum-\\d+)\"").matcher(html);
    int count = 0;
    while (links.find()) {
      assertThat(html).contains("id=\"" + links.group(1) + "\"");
      count++;
    }
    assertThat(count).isGreaterThan(30);
    assertThat(html).contains("Lesson: How long are the poles?<");
    assertThat(Book.of(DemoJobs.plan("seed-loft")).html()).doesNotContain("href=\"#sum-");
  }
}
