package io.github.seamstead.api.chapter.drying;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What the page of a drying coat says is what its results say, and a diary's tile is a tile. */
class DryingNumbersByHandTest {

  private static String fixed(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value);
  }

  private static String days(double days) {
    return days < 0.01 ? "at once" : fixed(days, days < 10 ? 1 : 0) + " d";
  }

  /** Days with the date of the evening by which they are over. */
  private static String when(Fixture f, String pointer, LocalDate laid) {
    if (f.at(pointer).isMissingNode()) {
      return "not in 180 d";
    }
    double days = f.number(pointer);
    return days(days) + ", " + laid.plusDays((long) Math.ceil(days));
  }

  private static String thousandths(Fixture f, String pointer) {
    return fixed(1000 * f.number(pointer + "/likely"), 1)
        + " in 1000 ("
        + fixed(1000 * f.number(pointer + "/low"), 1)
        + " in 1000 to "
        + fixed(1000 * f.number(pointer + "/high"), 1)
        + " in 1000)";
  }

  private static String litres(double cubicMetres) {
    return fixed(1000 * cubicMetres, 1) + " l";
  }

  private static String litres(Fixture f, String pointer) {
    return litres(f.number(pointer + "/likely"))
        + " ("
        + litres(f.number(pointer + "/low"))
        + " to "
        + litres(f.number(pointer + "/high"))
        + ")";
  }

  private static String two(double value) {
    return new BigDecimal(value).round(new MathContext(2)).stripTrailingZeros().toPlainString();
  }

  @Test
  void thePageSaysTheNumbersOfTheResults() {
    Fixture f = Fixture.of(EarthJob.TEXT, Chapter.DRYING);
    List<String> page = f.read(Chapter.DRYING);
    LocalDate[] laid = {LocalDate.of(2027, 5, 3), LocalDate.of(2027, 5, 4)};
    for (int layer = 0; layer < 2; layer++) {
      for (int i = 0; i < 3; i++) {
        String one = "/drying/" + layer + "/milestones/" + i;
        assertThat(page)
            .contains(
                f.at(one + "/name").asText()
                    + " | "
                    + when(f, one + "/soonest_d", laid[layer])
                    + " | "
                    + when(f, one + "/likely_d", laid[layer])
                    + " | "
                    + when(f, one + "/latest_d", laid[layer]));
      }
    }
    String air = "/drying/1/air/";
    assertThat(page)
        .contains(
            "water given off in the first day | "
                + fixed(f.number(air + "waterFirstDay_kg"), 1)
                + " kg",
            "air changes a day, at the very least | " + two(f.number(air + "leastChangesPerDay")),
            "air changes a day, to keep the stated humidity | "
                + two(f.number(air + "changesPerDayToHold")),
            "humidity under a shut cover | "
                + fixed(100 * f.number(air + "shutHumidity"), 0)
                + " %")
        .anyMatch(
            line ->
                line.contains("With the cover shut, 12 air changes a day, its own water")
                    && line.contains(
                        "Until dry to coat: with the cover shut, after "
                            + days(f.number(air + "shutMilestones/2/likely_d"))
                            + "; open, after "
                            + days(f.number("/drying/1/milestones/2/likely_d"))
                            + "."));
  }

  @Test
  void thePageSaysTheCracksAndTheirSlip() {
    Fixture f = Fixture.of(EarthJob.TEXT, Chapter.DRYING);
    List<String> page = f.read(Chapter.DRYING);
    String cracks = "/drying/1/cracks/";
    String slip = "/drying/1/repair/";
    // Grains of 2650 kg/m³ with 0.4 of water: soil is 5/12 of the dry mass, sand the rest.
    double dry = f.number(slip + "volume_m3/likely") / (1 / 2650.0 + 0.4 / 1000);
    assertThat(page)
        .contains(
            "crack width by the soil's bar | " + thousandths(f, cracks + "forecast"),
            "all crack widths together, that counts | " + thousandths(f, cracks + "widthPerMetre"),
            "slip for the cracks | " + litres(f, slip + "cracks_m3"),
            "slip for a skim over the whole floor | " + litres(f.number(slip + "skim_m3")),
            "slip to mix in all | " + litres(f, slip + "volume_m3"),
            "slip: pit | " + fixed(dry * 5 / 12, 1) + " kg",
            "slip: sand | " + fixed(dry * 7 / 12, 1) + " kg",
            "slip: water | " + fixed(0.4 * dry, 1) + " l");
    for (int i = 0; i < 2; i++) {
      String change = "/drying/1/crackChanges/" + i;
      assertThat(page)
          .contains(
              f.at(change + "/what").asText()
                  + " | "
                  + thousandths(f, change + "/widthPerMetre")
                  + " | "
                  + litres(f.number(slip + "cracks_m3/likely") * f.number(change + "/slipFactor")));
      assertThat(page).contains(f.at("/drying/1/crackAdvice/" + i).asText());
    }
    assertThat(f.sums("materials.drying.crack-width"))
        .singleElement()
        .satisfies(
            width ->
                assertThat(width).isCloseTo(f.number(cracks + "forecast/likely"), within(1e-12)));
  }

  private static final double[] LOSSES = {0, 0.085, 0.16, 0.225, 0.28, 0.32};

  /** A tile of the diary in the weather seen is the tile of the document in the same air. */
  @Test
  void aTileOfTheDiaryCountsAsOneOfTheDocument() {
    StringBuilder weighings = new StringBuilder();
    StringBuilder diary =
        new StringBuilder(
            "{\"date\": \"2027-05-03\", \"time\": \"08:00\", \"tileMade\": {\"tile\": \"a\","
                + " \"layer\": \"coat\", \"thickness\": \"20 mm\", \"area\": \"0.09 m2\","
                + " \"scale\": \"2 g\"}}");
    for (int day = 0; day < LOSSES.length; day++) {
      String mass = fixed(6 - LOSSES[day], 3);
      weighings
          .append(day == 0 ? "" : ", ")
          .append("{\"time\": \"" + 24 * day + " h\", \"mass\": \"" + mass + " kg\"}");
      diary.append(
          ", {\"date\": \"2027-05-0%d\", \"time\": \"08:00\", \"tileWeighed\": {\"tile\": \"a\", \"mass\": \"%s kg\"}}"
              .formatted(3 + day, mass));
    }
    diary.append(
        ", {\"date\": \"2027-05-08\", \"time\": \"09:00\", \"weather\": {\"days\": 6,"
            + " \"temperature\": \"18 degC\", \"humidity\": \"60 %\", \"airSpeed\": \"0.3"
            + " m/s\"}}");
    // The document expects damp air, in which a tile would dry much slower.
    String damp = EarthJob.with("\"humidity\": \"60 %\"", "\"humidity\": \"75 %\"");
    Fixture seen =
        Fixture.of(
            JobPlanner.plan(
                JobReader.parse(damp),
                SmallJob.diary(diary.toString()),
                Fixture.options(Chapter.DRYING)));
    String tile =
        "\"tiles\": [{\"mix\": \"coat\", \"thickness\": \"20 mm\", \"area\": \"0.09 m2\","
            + " \"moisture\": \"18 %\", \"scale\": \"2 g\", \"temperature\": \"18 degC\","
            + " \"humidity\": \"60 %\", \"airSpeed\": \"0.3 m/s\", \"weighings\": ["
            + weighings
            + "]}], \"temperature\"";
    Fixture stated =
        Fixture.of(
            EarthJob.with("\"weather\": {\"temperature\"", "\"weather\": {" + tile),
            Chapter.DRYING);
    for (String factor : List.of("diffusivity", "exchange")) {
      for (String end : List.of("low", "likely", "high")) {
        String pointer = "/drying/1/tile/" + factor + "/" + end;
        assertThat(seen.number(pointer))
            .as(pointer)
            .isCloseTo(stated.number(pointer), within(1e-3 * stated.number(pointer)));
      }
    }
    assertThat(seen.at("/drying/1/tile/plausible").asBoolean()).isTrue();
    assertThat(seen.at("/drying/0/tile").isMissingNode()).isTrue();
    assertThat(seen.read(Chapter.DRYING))
        .contains(
            "how fast the air takes it | "
                + fixed(seen.number("/drying/1/tile/exchange/likely"), 2)
                + " ("
                + fixed(seen.number("/drying/1/tile/exchange/low"), 2)
                + " to "
                + fixed(seen.number("/drying/1/tile/exchange/high"), 2)
                + ")");
    near(stated, "/drying/1/start_d", 1);
  }

  /** Two weighings fit two unknowns always, and say nothing. */
  @Test
  void twoWeighingsAreTooFew() {
    String diary =
        "{\"date\": \"2027-05-03\", \"time\": \"08:00\", \"tileMade\": {\"tile\": \"a\", \"layer\":"
            + " \"coat\", \"thickness\": \"20 mm\", \"area\": \"0.09 m2\", \"scale\": \"2 g\"}},"
            + " {\"date\": \"2027-05-04\", \"tileWeighed\": {\"tile\": \"a\", \"mass\": \"6"
            + " kg\"}}, {\"date\": \"2027-05-05\", \"tileWeighed\": {\"tile\": \"a\", \"mass\":"
            + " \"5.9 kg\"}}";
    Fixture f =
        Fixture.of(
            JobPlanner.plan(
                JobReader.parse(EarthJob.TEXT),
                SmallJob.diary(diary),
                Fixture.options(Chapter.DRYING)));
    assertThat(f.at("/drying/1/tile").isMissingNode()).isTrue();
    assertThat(f.unmet(Chapter.DRYING)).isEmpty();
  }
}
