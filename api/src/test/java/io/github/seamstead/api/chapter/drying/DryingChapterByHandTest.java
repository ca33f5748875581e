package io.github.seamstead.api.chapter.drying;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A coat of 20 mm on a pack of 50 mm, nine square metres under twenty cubic metres of air. */
class DryingChapterByHandTest {

  /** Vapour in saturated air of 18 degC: 2064 Pa over 461.5 times 291.15 K, in kg/m3. */
  private static final double SATURATED = 2064.4 / (461.5 * 291.15);

  private static final String AIR =
      "\"temperature\": \"18 degC\", \"humidity\": \"60 %\", \"airSpeed\": \"0.3 m/s\"";

  private static Fixture planned() {
    return Fixture.of(EarthJob.TEXT, Chapter.DRYING);
  }

  private static Fixture planned(String old, String changed) {
    return Fixture.of(EarthJob.with(old, changed), Chapter.DRYING);
  }

  private static void about(Fixture f, String pointer, double value, double part) {
    assertThat(f.number(pointer)).as(pointer).isCloseTo(value, within(part * Math.abs(value)));
  }

  @Test
  void thePackIsCoveredTheNextDayAndTheCoatWaitsUntilItIsDry() {
    Fixture f = planned();
    assertThat(f.at("/drying")).hasSize(2);
    assertThat(f.at("/drying/0/layer").asText()).isEqualTo("pack");
    near(f, "/drying/0/thickness_m", 0.05);
    near(f, "/drying/0/moisture", 0.09);
    near(f, "/drying/0/start_d", 0);
    assertThat(f.at("/drying/0/laid").asText()).isEqualTo("2027-05-03");
    assertThat(f.at("/drying/0/air").isMissingNode()).isTrue();
    assertThat(f.at("/drying/0/cracks").isMissingNode()).isTrue();
    assertThat(f.at("/drying/1/layer").asText()).isEqualTo("coat");
    near(f, "/drying/1/thickness_m", 0.02);
    near(f, "/drying/1/moisture", 0.18);
    near(f, "/drying/1/start_d", 1);
    assertThat(f.at("/drying/1/laid").asText()).isEqualTo("2027-05-04");
    // At 60 %, between 1.2 % at half and 2 % at four fifths of humidity.
    double exponent = Math.log(Math.log(5) / Math.log(2)) / Math.log(5.0 / 3);
    near(
        f,
        "/drying/1/balanceMoisture",
        0.012 * Math.pow(Math.log(2.5) / Math.log(2), 1 / exponent));
    near(f, "/drying/1/milestones/0/moisture", 0.14);
    near(f, "/drying/1/milestones/1/moisture", 0.07);
    for (int i = 0; i < 2; i++) {
      String one = "/drying/1/milestones/" + i;
      assertThat(f.number(one + "/soonest_d")).isPositive().isLessThan(f.number(one + "/likely_d"));
      assertThat(f.number(one + "/latest_d")).isGreaterThan(f.number(one + "/likely_d"));
    }
    assertThat(f.noughts("/drying/1")).isEmpty();
    assertThat(f.noughts("/drying/0"))
        .isEqualTo(
            Set.of(
                "/crackAdvice",
                "/crackChanges",
                "/milestones/likely_d",
                "/milestones/soonest_d",
                "/milestones/latest_d",
                "/start_d"));
  }

  /** The wet coat gives off what the air takes; that much must be carried away. */
  @Test
  void theAirUnderTheCover() {
    Fixture f = planned();
    near(f, "/drying/1/air/roomVolume_m3", 20);
    near(f, "/drying/1/air/shutChangesPerDay", 12);
    double daily = f.number("/drying/1/air/waterFirstDay_kg");
    // Air of 60 % leaves saturated, or at 70 %.
    about(f, "/drying/1/air/leastChangesPerDay", daily / (20 * SATURATED * 0.4), 1e-3);
    about(f, "/drying/1/air/changesPerDayToHold", daily / (20 * SATURATED * 0.1), 1e-3);
    // In the first day the coat gives off as a wet floor: less the part that is dry by evening.
    double shut = f.number("/drying/1/air/shutHumidity");
    double taken = 12 * 20 * SATURATED;
    // G (1 - r) = T (r - r_o), with G from the water of a wet floor into air of 60 %.
    double wet = taken * (shut - 0.6) / (1 - shut) * 0.4;
    assertThat(daily).isBetween(0.9 * wet, 1.01 * wet);
    assertThat(f.at("/drying/1/air/shutMilestones")).hasSize(3);
    assertThat(f.number("/drying/1/air/shutMilestones/0/likely_d"))
        .isGreaterThan(2 * f.number("/drying/1/milestones/0/likely_d"));
    assertThat(f.worked("materials.drying"))
        .containsExactlyInAnyOrder(
            "materials.drying.air-changes",
            "materials.drying.closed-cover",
            "materials.drying.crack-width",
            "materials.drying.crack-width-doubt",
            "materials.drying.evaporation",
            "materials.drying.open-time",
            "materials.drying.saturation-pressure",
            "materials.drying.simulation",
            "materials.drying.slip");
    assertThat(f.assumed())
        .contains("$.weather: dry at 75 %", "$.floor.mixes[*].plasticLimit: 14 %");
    assertThat(f.cautions(Chapter.DRYING)).isNotEmpty();
    assertThat(f.unmet(Chapter.DRYING)).isEmpty();
  }

  /** A bar of 140 mm that shrank by 14 mm; soil is 99 % of 5/12 of the coat. */
  @Test
  void cracksAndTheirSlip() {
    Fixture f = planned();
    double share = 0.99 * 5 / 12;
    near(f, "/drying/1/cracks/freeShrinkage/low", 0.1 * share * share);
    near(f, "/drying/1/cracks/freeShrinkage/likely", 0.1 * Math.pow(share, 1.5));
    near(f, "/drying/1/cracks/freeShrinkage/high", 0.1 * share);
    // With straw it stretches by 1 mm/m, and the base holds four fifths.
    double width = 0.8 * 0.1 * Math.pow(share, 1.5) - 0.001;
    near(f, "/drying/1/cracks/forecast/likely", width);
    near(f, "/drying/1/cracks/widthPerMetre/likely", width);
    assertThat(f.at("/drying/1/cracks/measured").isMissingNode()).isTrue();
    double cracks = (1 - (1 - width) * (1 - width)) * 9 * 0.02 * 1.15;
    near(f, "/drying/1/repair/cracks_m3/likely", cracks);
    near(f, "/drying/1/repair/skim_m3", 9 * 0.001 * 1.15);
    near(f, "/drying/1/repair/volume_m3/likely", cracks + 0.01035);
    double dry = (cracks + 0.01035) / (1 / 2650.0 + 0.4 / 1000);
    near(f, "/drying/1/repair/water_kg", 0.4 * dry);
    // Half a bucket of sand more: 1 to 1.5 by volume are 1000 to 2100 by mass.
    double leaner = 1 / (1 + 1.5 * (1 / share - 1));
    double then = 0.8 * 0.1 * Math.pow(share, 1.5) * Math.pow(leaner / share, 1.5) - 0.001;
    assertThat(f.at("/drying/1/crackChanges/0/what").asText()).contains("more of sand");
    near(f, "/drying/1/crackChanges/0/widthPerMetre/likely", then);
    assertThat(f.at("/drying/1/crackChanges")).hasSize(2);
    assertThat(f.at("/drying/1/crackAdvice").toString())
        .contains("too many for slip")
        .doesNotContain("straw");
  }

  @Test
  void thePageTellsAllOfIt() {
    Fixture f = planned();
    List<String> page = f.read(Chapter.DRYING);
    assertThat(page)
        .contains(
            "pack",
            "coat",
            "When",
            "Laid on 2027-05-03 if all below goes as likely; days count from then.",
            "Laid on 2027-05-04, 1.0 d after the lowest mixed layer if all below goes as likely;"
                + " days count from then.",
            "Air under the cover: coat",
            "air under the cover | 20.00 m³",
            "Cracks: coat",
            "What a change would do: coat");
    assertThat(page).anyMatch(line -> line.startsWith("It is walked on as soon as it is rammed."));
    assertThat(page).anyMatch(line -> line.startsWith("walkable, as rammed | at once"));
    assertThat(page).anyMatch(line -> line.startsWith("Published rates scatter widely"));
    assertThat(page).anyMatch(line -> line.startsWith("Nothing was measured on this mix"));
    assertThat(page).anyMatch(line -> line.startsWith("The days above hold only while"));
    assertThat(page).anyMatch(line -> line.startsWith("cracks so wide are too many"));
    assertThat(page).anyMatch(line -> line.startsWith("slip: pit | "));
    assertThat(page).noneMatch(line -> line.startsWith("Its materials are wetter"));
    assertThat(f.book().drawings()).containsKeys("drying-pack", "drying-coat");
    // Firm on the day after the likely one, with its date.
    double firm = f.number("/drying/1/milestones/0/likely_d");
    String date = java.time.LocalDate.of(2027, 5, 4).plusDays((long) Math.ceil(firm)).toString();
    assertThat(page)
        .anyMatch(
            line ->
                line.startsWith("firm | ")
                    && line.contains(
                        String.format(java.util.Locale.ROOT, "%.1f d, ", firm) + date));
  }

  /** One bucket to one: the sample of that ratio counts more than the bar. */
  @Test
  void aSampleOfTheMixCounts() {
    String trial =
        "\"trialMixes\": [{\"mix\": \"coat\", \"samples\": [{\"sandParts\": 1, \"crack\": \"1.5"
            + " mm\", \"mould\": \"500 mm\", \"dusting\": \"none\", \"scratch\": \"hard\"},"
            + " {\"sandParts\": 2, \"crack\": \"0 mm\", \"mould\": \"500 mm\", \"dusting\":"
            + " \"heavy\", \"scratch\": \"marked\"}]}], \"floor\": {";
    Fixture f = planned("\"floor\": {", trial);
    near(f, "/drying/1/cracks/measured", 0.003);
    near(f, "/drying/1/cracks/widthPerMetre/likely", 0.003);
    near(f, "/drying/1/cracks/widthPerMetre/high", 0.006);
    assertThat(f.read(Chapter.DRYING))
        .anyMatch(
            line -> line.startsWith("The trial sample of the mix as it is laid cracked by 3.0"))
        .anyMatch(line -> line.startsWith("crack width of the trial sample | 3.0 in 1000"));
    // Without a bar the sample stands alone; without both nothing is said.
    String bar = "\"shrinkage\": {\"mould\": \"140 mm\", \"gap\": \"14 mm\"}, ";
    Fixture alone =
        Fixture.of(EarthJob.with(EarthJob.with(bar, ""), "\"floor\": {", trial), Chapter.DRYING);
    near(alone, "/drying/1/cracks/forecast/likely", 0.003);
    Fixture none = planned(bar, "");
    assertThat(none.at("/drying/1/cracks").isMissingNode()).isTrue();
    assertThat(none.skipped(Chapter.DRYING))
        .singleElement()
        .asString()
        .startsWith("cracks of coat: the soil pit has no shrinkage bar");
  }

  @Test
  void dampAirNeverDriesIt() {
    Fixture f = planned("\"humidity\": \"60 %\"", "\"humidity\": \"85 %\"");
    assertThat(f.unmet(Chapter.DRYING))
        .singleElement()
        .asString()
        .startsWith("coat: in air of 85 % it never gets as dry")
        .contains("below 75 %");
    assertThat(f.read(Chapter.DRYING)).anyMatch(line -> line.contains(" | not in "));
  }

  @Test
  void saturatedAirTakesNothing() {
    Fixture f = planned("\"humidity\": \"60 %\"", "\"humidity\": \"100 %\"");
    assertThat(f.at("/drying/1/air").isMissingNode()).isTrue();
  }

  /** 18 degC with a wet bulb of 13.3: near 58 %, by the ventilated psychrometer. */
  @Test
  void theWetBulbTellsTheHumidity() {
    Fixture f =
        planned("\"humidity\": \"60 %\", \"airSpeed\"", "\"wetBulb\": \"13.3 degC\", \"airSpeed\"");
    double vapour =
        610.8 * Math.exp(17.27 * 13.3 / (13.3 + 237.3)) - 0.000662 * 101_300 * (18 - 13.3);
    double humidity = vapour / (610.8 * Math.exp(17.27 * 18 / (18 + 237.3)));
    double daily = f.number("/drying/1/air/waterFirstDay_kg");
    about(f, "/drying/1/air/leastChangesPerDay", daily / (20 * SATURATED * (1 - humidity)), 1e-3);
    assertThat(f.worked("materials.drying.wet-bulb")).hasSize(1);
  }

  @Test
  void closedRoomsDryLater() {
    Fixture f =
        planned("\"roomVolume\": \"20 m3\"", "\"roomVolume\": \"20 m3\", \"airChanges\": 12");
    Fixture open = planned();
    assertThat(f.number("/drying/1/milestones/0/likely_d"))
        .isCloseTo(open.number("/drying/1/air/shutMilestones/0/likely_d"), within(1e-9));
    Fixture nowhere = planned(",\n   \"roomVolume\": \"20 m3\"", "");
    assertThat(nowhere.at("/drying/1/air").isMissingNode()).isTrue();
  }

  /** A stated plastic limit is where it is firm, and half of it where it is walked on. */
  @Test
  void aStatedPlasticLimitIsTaken() {
    Fixture f =
        planned(
            "\"placingMoisture\": \"18 %\"",
            "\"placingMoisture\": \"18 %\", \"plasticLimit\": \"12 %\"");
    near(f, "/drying/1/milestones/0/moisture", 0.12);
    near(f, "/drying/1/milestones/1/moisture", 0.06);
    assertThat(f.assumed()).noneMatch(a -> a.contains("plasticLimit"));
  }

  private static String weeks(String first) {
    return "\"weeks\": ["
        + first
        + "{\"weeks\": 4, \"lowest\": \"12 degC\", \"highest\": \"24 degC\", \"humidity\": \"55"
        + " %\", \"airSpeed\": \"0.3 m/s\"}]";
  }

  /** Two wet weeks first: the coat is laid on the second day and waits them out. */
  @Test
  void weeksOfRainAreWaitedOut() {
    Fixture dry = planned(AIR, weeks(""));
    Fixture wet =
        planned(
            AIR,
            weeks(
                "{\"weeks\": 2, \"lowest\": \"9 degC\", \"highest\": \"13 degC\", \"humidity\":"
                    + " \"96 %\", \"airSpeed\": \"0.2 m/s\"}, "));
    double late = wet.number("/drying/1/milestones/2/likely_d");
    assertThat(late).isGreaterThan(13);
    assertThat(late - 13).isLessThan(dry.number("/drying/1/milestones/2/likely_d") + 1);
  }

  private static final String TILE =
      "\"tiles\": [{\"mix\": \"coat\", \"thickness\": \"20 mm\", \"area\": \"0.09 m2\","
          + " \"moisture\": \"18 %\", \"scale\": \"2 g\", \"temperature\": \"18 degC\","
          + " \"humidity\": \"60 %\", \"airSpeed\": \"0.3 m/s\", \"weighings\": [";

  private static String weighed(double... losses) {
    StringBuilder list = new StringBuilder();
    for (int day = 0; day < losses.length; day++) {
      list.append(day == 0 ? "" : ", ")
          .append("{\"time\": \"" + 24 * day + " h\", \"mass\": \"" + (6 - losses[day]) + " kg\"}");
    }
    return TILE + list + "]}], ";
  }

  /** A tile of 0.09 m2 holds 0.09 * 0.02 * 1780 * 0.18 = 0.577 kg of water. */
  @Test
  void aTileOfTheMixNarrowsTheDays() {
    Fixture f =
        planned("\"temperature\"", weighed(0, 0.085, 0.16, 0.225, 0.28, 0.32) + "\"temperature\"");
    assertThat(f.at("/drying/1/tile/plausible").asBoolean()).isTrue();
    assertThat(f.noughts("/drying/1/tile")).isEmpty();
    assertThat(f.number("/drying/1/tile/misfit_kg")).isLessThan(0.03);
    assertThat(f.at("/drying/0/tile").isMissingNode()).isTrue();
    Fixture open = planned();
    assertThat(
            f.number("/drying/1/milestones/1/latest_d")
                - f.number("/drying/1/milestones/1/soonest_d"))
        .isLessThan(
            open.number("/drying/1/milestones/1/latest_d")
                - open.number("/drying/1/milestones/1/soonest_d"));
    assertThat(f.read(Chapter.DRYING)).contains("By the weighed test tile");
    // Ten times as slow as any earth.
    Fixture slow =
        planned("\"temperature\"", weighed(0, 0.002, 0.004, 0.006, 0.008) + "\"temperature\"");
    assertThat(slow.at("/drying/1/tile/plausible").asBoolean()).isFalse();
    assertThat(slow.unmet(Chapter.DRYING))
        .singleElement()
        .asString()
        .startsWith("the test tile of coat dries as no tile of such earth does");
    assertThat(slow.read(Chapter.DRYING))
        .anyMatch(line -> line.startsWith("The test tile does not count"));
    assertThat(slow.number("/drying/1/milestones/2/likely_d"))
        .isCloseTo(open.number("/drying/1/milestones/2/likely_d"), within(1e-9));
  }

  /** The coat was laid on the tenth, in weather of its own. */
  @Test
  void theDiaryTellsTheDayAndTheWeather() {
    Fixture f =
        Fixture.of(
            EarthJob.TEXT,
            SmallJob.diary(
                "{\"date\": \"2027-05-07\", \"laid\": {\"layer\": \"levelling\"}}, {\"date\":"
                    + " \"2027-05-07\", \"laid\": {\"layer\": \"capillaryBreak\"}}, {\"date\":"
                    + " \"2027-05-08\", \"laid\": {\"layer\": \"sheet\"}}, {\"date\":"
                    + " \"2027-05-09\", \"laid\": {\"layer\": \"pack\"}}, {\"date\":"
                    + " \"2027-05-10\", \"laid\": {\"layer\": \"coat\"}}, {\"date\":"
                    + " \"2027-05-16\", \"weather\": {\"days\": 7, \"temperature\":"
                    + " \"12 degC\", \"humidity\": \"97 %\", \"airSpeed\": \"0.1 m/s\"}}"));
    assertThat(f.at("/drying/1/since").asText()).isEqualTo("2027-05-10");
    assertThat(f.at("/drying/1/laid").asText()).isEqualTo("2027-05-10");
    // A week of fog dries nothing: it is walked on a week later, but for what the pack draws off.
    double open = planned().number("/drying/1/milestones/1/likely_d");
    assertThat(f.number("/drying/1/milestones/1/likely_d")).isBetween(open + 4, open + 8);
    assertThat(f.read(Chapter.DRYING))
        .anyMatch(line -> line.startsWith("It was laid on 2027-05-10, from which the days count"))
        .noneMatch(line -> line.startsWith("Laid on"));
  }

  @Test
  void wetPartsMakeAWetCoat() {
    Fixture f = planned("\"placingMoisture\": \"9 %\"", "\"placingMoisture\": \"6 %\"");
    // 5/12 of 10 % and 7/12 of 5 %.
    near(f, "/drying/0/moisture", 0.5 / 12 + 0.35 / 12);
    assertThat(f.read(Chapter.DRYING))
        .contains(
            "Its materials are wetter than wanted: reckoned from 7.1 % of water as it is laid, not"
                + " from 6.0 %.");
  }

  @Test
  void withoutWeatherNothingIsForecast() {
    String text = EarthJob.TEXT;
    int from = text.indexOf(",\n \"weather\":");
    Fixture f = Fixture.of(text.substring(0, from) + "}", Chapter.DRYING);
    assertThat(f.at("/drying")).isEmpty();
    assertThat(f.skipped(Chapter.DRYING)).contains("the document has no weather");
  }
}
