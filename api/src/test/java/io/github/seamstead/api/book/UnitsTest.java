package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.DemoJobs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A crew with an imperial tape reads imperial numbers everywhere. */
class UnitsTest {

  /** A metric quantity, unless it stands in brackets behind the same in imperial units. */
  private static final Pattern METRIC =
      Pattern.compile(
          "(?<!(?:lb|in|ft|mph|lbf|oz)[ \u00a0]\\(|[\\d.])[\\d.]+[ \u00a0]"
              + "(?:micrometres|kg/m[³3]|kPa|kN|m/s|mm|cm|ml|kg|Pa|m[²2]|m[³3]|m|g|t|l|N|°C|degC)"
              + "(?![\\w²³/])");

  private static String readable(String html) {
    return html.replaceAll("(?s)<(style|script)[^>]*>.*?</\\1>", "")
        .replaceAll("</(text|td|th|p|li|h\\d|dd|dt|desc|title|span|label|b|figcaption)>", "\n")
        .replaceAll("<[^>]+>", "")
        .replace("&quot;", "\"")
        .replace("&amp;", "&");
  }

  private static List<String> metric(String text) {
    return METRIC
        .matcher(text)
        .results()
        .map(MatchResult::start)
        .map(at -> text.substring(Math.max(0, at - 40), Math.min(text.length(), at + 20)))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"seed-loft", "hill-hide", "hill-hide-blunder", "clay-bank", "class-model"})
  void anImperialBookHoldsNoMetricQuantity(String job) throws IOException {
    String text =
        Files.readString(DemoJobs.FOLDER.resolve(job + ".json"))
            .replace("\"units\": \"metric\"", "\"units\": \"imperial\"");
    assertThat(text).contains("\"units\": \"imperial\"");
    Book book =
        Book.of(
            JobPlanner.plan(
                JobReader.parse(text.getBytes(StandardCharsets.UTF_8)), PlanOptions.defaults()));
    String read = readable(book.html());
    assertThat(read).containsPattern("\\d[ \u00a0]in");
    assertThat(metric(read)).isEmpty();
    assertThat(read).doesNotContain("(mm)").doesNotContain("(kg)").doesNotContain("(m)");
  }

  @Test
  void theSearchSeesAMetricQuantity() {
    assertThat(metric("a circle of 6.1\u00a0m about")).hasSize(1);
    assertThat(metric("over 25 kg, 4.3 m/s, 17 degC, 1.2 kg/m³")).hasSize(4);
    assertThat(metric("55 lb (25 kg), 12 panels, 3 min")).isEmpty();
  }
}
