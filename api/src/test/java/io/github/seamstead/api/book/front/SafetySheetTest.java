package io.github.seamstead.api.book.front;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafetySheetTest {

  @Test
  void everyLimitStandsOnceAndTheSentenceOfDeferenceOnce() {
    Desk desk = Sheets.of("seed-loft");
    String text = Sheets.text(desk, SafetySheet.TITLE);
    assertThat(text.split(java.util.regex.Pattern.quote(Caution.DEFERENCE), -1)).hasSize(2);
    desk.plan().cautions().stream()
        .map(c -> c.caution())
        .filter(c -> !c.risk().startsWith("A laxer rule"))
        .map(Caution::limit)
        .map(limit -> limit.replaceAll("[ \\n]+", " "))
        .forEach(
            limit -> assertThat(text.split(java.util.regex.Pattern.quote(limit), -1)).hasSize(2));
  }

  /** What is carried is a rule, not a lecture: what lies behind it stands in the chapters. */
  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide", "orchard-tent", "orchard-floor", "clay-bank"})
  void everyLimitIsARuleOfAFewWords(String job) {
    Sheets.of(job)
        .plan()
        .cautions()
        .forEach(
            c ->
                assertThat(c.caution().limit().split("\\s+"))
                    .as(c.caution().limit())
                    .hasSizeLessThanOrEqualTo(35));
  }

  @Test
  void glueBelongsToTheClothAndRagsToTheFloor() {
    String text = Sheets.text(Sheets.of("seed-loft"), SafetySheet.TITLE);
    assertThat(text.indexOf("Glue away from flames"))
        .isBetween(text.indexOf("Cutting and joining"), text.indexOf("Turning, raising"));
    assertThat(text.indexOf("oily rags")).isGreaterThan(text.indexOf("Drying, oiling"));
  }

  @Test
  void aModelIsToldOfItsBladesAlone() {
    String text = Sheets.text(Sheets.of("class-model"), SafetySheet.TITLE);
    assertThat(text).contains("CAUTION: blades").doesNotContain("WARNING").doesNotContain("site's");
  }

  @Test
  void theWordTellsWhatCanHappen() {
    assertThat(SafetySheet.canKill(Hazard.CARBON_MONOXIDE)).isTrue();
    assertThat(SafetySheet.canKill(Hazard.LIFTING)).isFalse();
    String text = Sheets.text(Sheets.of("seed-loft"), SafetySheet.TITLE);
    assertThat(text)
        .contains("WARNING: carbon monoxide")
        .contains("WARNING: wind")
        .contains("CAUTION: lifting");
  }

  @Test
  void hazardsStandByTheMomentOfTheWork() {
    String text = Sheets.text(Sheets.of("seed-loft"), SafetySheet.TITLE);
    List<String> moments =
        List.of(
            "Frame and site",
            "Turning, raising, pegging",
            "Soil, mixing, laying",
            "Drying, oiling");
    int at = 0;
    for (String moment : moments) {
      assertThat(text.indexOf(moment)).as(moment).isGreaterThan(at);
      at = text.indexOf(moment);
    }
    assertThat(text.indexOf("silica"))
        .isBetween(text.indexOf("Soil, mixing"), text.indexOf("Drying, oiling"));
  }
}
