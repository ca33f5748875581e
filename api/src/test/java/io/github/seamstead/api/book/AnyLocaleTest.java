package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.api.testing.DemoJobs;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TimeZone;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written does not depend on where the computer stands. */
class AnyLocaleTest {

  private static final Locale LOCALE = Locale.getDefault();
  private static final TimeZone ZONE = TimeZone.getDefault();

  private static String metric = "";
  private static String imperial = "";
  private static String faults = "";

  @BeforeAll
  static void writeAtHome() {
    Locale.setDefault(Locale.ROOT);
    TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
    metric = written("seed-loft");
    imperial = written("hill-hide");
    faults = faults();
  }

  @AfterEach
  void backHome() {
    Locale.setDefault(LOCALE);
    TimeZone.setDefault(ZONE);
  }

  private static String written(String job) {
    JobPlan plan = DemoJobs.plan(job, PlanOptions.defaults().withWorkedSteps());
    Book book = Book.of(plan);
    return ResultsJson.text(plan) + book.html() + book.lists() + book.printSheets();
  }

  private static String faults() {
    JobFaultsException e =
        Assertions.catchThrowableOfType(
            JobFaultsException.class,
            () -> JobReader.read(Path.of("src/test/resources/bad-jobs/huge-number.json")));
    return e.getMessage();
  }

  /** Decimal commas, an i without its dot, other digits; a day that is already tomorrow. */
  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
  void theSameJobGivesTheSameTexts(String tag) {
    Locale.setDefault(Locale.forLanguageTag(tag));
    TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
    assertThat(written("seed-loft")).isEqualTo(metric);
    assertThat(written("hill-hide")).isEqualTo(imperial);
    assertThat(faults()).isEqualTo(faults);
  }

  /** Else the comparison above would compare alike with alike. */
  @Test
  void theLocalesWouldShow() {
    Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
    assertThat(String.format(Locale.getDefault(), "%.1f", 1.5)).doesNotContain("1");
    Locale.setDefault(Locale.forLanguageTag("tr-TR"));
    assertThat("TITLE".toLowerCase(Locale.getDefault())).isNotEqualTo("title");
  }
}
