package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.testing.DemoJobs;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A limit of the wind is one number wherever a book says it: sheet, card, chapter or caution. */
class WindLimitsTest {

  private static final String SPEED = "[^0-9]{0,12}?([\\d.]+ (?:m/s|mph))";

  private static List<String> said(String text, String words) {
    return Pattern.compile("(?:" + words + ")" + SPEED)
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide"})
  void aLimitIsTheSameEverywhere(String demo) {
    String text =
        Book.of(DemoJobs.plan(demo)).html().replaceAll("<[^>]*>", " ").replace('\u00a0', ' ');
    assertThat(said(text, "(?:cover|start) in gusts (?:above|over)|gusts? under"))
        .hasSizeGreaterThan(3)
        .containsOnly(said(text, "do not start in gusts over").get(0));
    assertThat(said(text, "Bring it down at|bring it down in gusts over|tomorrow: gusts over"))
        .hasSizeGreaterThan(1)
        .containsOnly(said(text, "bring it down in gusts over").get(0));
    assertThat(said(text, "mean wind above|mean under"))
        .hasSizeGreaterThan(1)
        .containsOnly(said(text, "mean under").get(0));
  }
}
