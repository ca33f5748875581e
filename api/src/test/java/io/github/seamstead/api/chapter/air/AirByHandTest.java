package io.github.seamstead.api.chapter.air;

import static io.github.seamstead.api.testing.Fixture.near;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.testing.EarthJob;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.Weather;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The air of documents, and how long an edge of a coat of 1780 kg/m³ stays open in it. */
class AirByHandTest {

  private static final String AIR =
      "\"temperature\": \"18 degC\", \"humidity\": \"60 %\", \"airSpeed\": \"0.3 m/s\"";

  /** Three times the wind and half the humidity: an edge dries within the hour. */
  private static final String DRY_WIND =
      "\"temperature\": \"18 degC\", \"humidity\": \"30 %\", \"airSpeed\": \"3 m/s\"";

  private static Weather weather(String changed) {
    String text = EarthJob.with(AIR, changed);
    return FloorAir.of(
        JobReader.parse(text.getBytes(StandardCharsets.UTF_8)).document().weather().orElseThrow());
  }

  private static Fixture planned(String old, String changed) {
    return Fixture.of(EarthJob.with(old, changed), Chapter.FLOOR);
  }

  /** FAO Irrigation and Drainage Paper 56, eq. 11, in Pa. */
  private static double saturation(double temperature) {
    return 610.8 * Math.exp(17.27 * temperature / (temperature + 237.3));
  }

  /** The same paper, eq. 15 at sea level (101.3 kPa) with a ventilated bulb, in Pa. */
  private static double vapour(double dry, double wet) {
    return saturation(wet) - 0.000662 * 101_300 * (dry - wet);
  }

  /**
   * Water that a wet floor gives to air of 18 degC, in kg/(m² s): Penman's balance (1948, from
   * memory) with h = 2.8 + 3 v by Watmuff (1977, from memory), 5.4 W/(m² K) of radiation, the
   * number of Lewis 0.87 and air of 1.20 kg/m³ and 1006 J/(kg K).
   */
  private static double evaporation(double humidity, double speed) {
    double h = 2.8 + 3 * speed;
    double beta = h / (1.20 * 1006 * Math.pow(0.87, 2.0 / 3));
    double density = saturation(18) / (461.5 * 291.15);
    double rise = density * (17.27 * 237.3 / (255.3 * 255.3) - 1 / 291.15);
    double latent = 2_501_000 - 2361 * 18.0;
    return beta / (1 + latent * beta * rise / (h + 5.4)) * density * (1 - humidity);
  }

  @Test
  void oneMeanIsAirThatNeverChanges() {
    Weather weather = weather(AIR);
    assertThat(weather.states()).containsExactly(new AirState(18, 0.6, 0.3));
    assertThat(weather.interval()).isEqualTo(86_400);
  }

  @Test
  void theWetBulbGivesTheHumidity() {
    assertThat(FloorAir.humidity(18, 13.3))
        .isCloseTo(vapour(18, 13.3) / saturation(18), within(1e-9));
    assertThat(FloorAir.humidity(18, 18)).isEqualTo(1);
    AirState air =
        weather("\"temperature\": \"18 degC\", \"wetBulb\": \"13.3 degC\", \"airSpeed\": \"1 m/s\"")
            .states()
            .get(0);
    assertThat(air.relativeHumidity()).isCloseTo(vapour(18, 13.3) / saturation(18), within(1e-9));
    assertThat(air.temperature()).isEqualTo(18);
    assertThat(air.speed()).isEqualTo(1);
  }

  /** Two weeks of rain and four of sun are 42 days of 24 hours. */
  @Test
  void weeksFollowOneAnother() {
    Weather weather =
        weather(
            "\"weeks\": [{\"weeks\": 2, \"lowest\": \"9 degC\", \"highest\": \"13 degC\","
                + " \"humidity\": \"96 %\", \"airSpeed\": \"0.2 m/s\"}, {\"weeks\": 4, \"lowest\":"
                + " \"12 degC\", \"highest\": \"24 degC\", \"humidity\": \"55 %\", \"airSpeed\":"
                + " \"0.4 m/s\"}]");
    List<AirState> hours = weather.states();
    assertThat(weather.interval()).isEqualTo(3600);
    assertThat(hours).hasSize(42 * 24);
    assertThat(hours.subList(0, 14 * 24)).allMatch(air -> air.speed() == 0.2);
    assertThat(hours.subList(14 * 24, 42 * 24)).allMatch(air -> air.speed() == 0.4);
    // Each day swings about the middle of its night and its afternoon.
    assertThat(hours.subList(0, 24).stream().mapToDouble(AirState::temperature).average())
        .hasValueCloseTo(11.0, within(1e-9));
    assertThat(hours.subList(14 * 24, 15 * 24).stream().mapToDouble(AirState::temperature).max())
        .hasValueCloseTo(18 + 6 * Math.cos(Math.PI / 24), within(1e-9));
    // The vapour of the day is the mean humidity of the mean of both pressures (FAO-56, eq. 19).
    AirState sunny = hours.get(14 * 24 + 14);
    assertThat(sunny.relativeHumidity())
        .isCloseTo(
            0.55 * (saturation(12) + saturation(24)) / 2 / saturation(sunny.temperature()),
            within(1e-9));
  }

  @Test
  void theSumsOfTheAirAreKept() {
    Fixture f =
        Fixture.of(
            EarthJob.with("\"humidity\": \"60 %\", \"air", "\"wetBulb\": \"13.3 degC\", \"air"),
            Chapter.DRYING);
    assertThat(f.sums("materials.drying.wet-bulb"))
        .singleElement()
        .satisfies(e -> assertThat(e).isCloseTo(vapour(18, 13.3), within(1e-9 * e)));
    assertThat(f.sums("materials.drying.saturation-pressure"))
        .singleElement()
        .satisfies(e -> assertThat(e).isCloseTo(saturation(18), within(1e-9 * e)));
    double humidity = vapour(18, 13.3) / saturation(18);
    assertThat(f.sums("materials.drying.evaporation"))
        .singleElement()
        .satisfies(e -> assertThat(e).isCloseTo(evaporation(humidity, 0.3), within(1e-9 * e)));
  }

  @Test
  void theDayOfLayingIsThatOfTheWeatherElseThatOfTheSite() {
    String laid = "\"weather\": {\"laid\": \"2027-06-01\", ";
    Fixture stated = Fixture.of(EarthJob.with("\"weather\": {", laid), Chapter.DRYING);
    assertThat(stated.at("/drying/0/laid").asText()).isEqualTo("2027-06-01");
    Fixture start = Fixture.of(EarthJob.TEXT, Chapter.DRYING);
    assertThat(start.at("/drying/0/laid").asText()).isEqualTo("2027-05-03");
    Fixture nowhere = Fixture.of(EarthJob.with(", \"start\": \"2027-05-03\"", ""), Chapter.DRYING);
    assertThat(nowhere.at("/drying/0/laid").isMissingNode()).isTrue();
  }

  @Test
  void aStatedOpenTimeIsTaken() {
    Fixture f =
        planned(
            "\"edging\": \"0 mm\"",
            "\"edging\": \"0 mm\", \"shortestOpenTime\": \"40 min\", \"longestOpenTime\": \"90"
                + " min\"");
    for (int i = 0; i < 2; i++) {
      near(f, "/floor/joints/" + i + "/openTime_s/low", 2400);
      near(f, "/floor/joints/" + i + "/openTime_s/likely", 3900);
      near(f, "/floor/joints/" + i + "/openTime_s/high", 5400);
    }
    assertThat(f.worked("materials.drying.open-time")).isEmpty();
    assertThat(f.assumed()).noneMatch(a -> a.startsWith("$.floor.shortestOpenTime"));
  }

  /** The skin of 2 mm of the coat loses 18 % less the plastic limit of 14 % of its dry mass. */
  @Test
  void theWeatherTellsTheOpenTimeOfACoat() {
    Fixture f = planned(AIR, DRY_WIND);
    double time = 1780 * 0.002 * (0.18 - 0.14) / evaporation(0.3, 3);
    assertThat(time).isBetween(2400.0, 3600.0);
    near(f, "/floor/joints/1/openTime_s/low", time / 1.4);
    near(f, "/floor/joints/1/openTime_s/likely", time);
    near(f, "/floor/joints/1/openTime_s/high", time * 1.4);
    assertThat(f.sums("materials.drying.open-time"))
        .singleElement()
        .satisfies(t -> assertThat(t).isCloseTo(time, within(1e-9 * time)));
    // The pack is laid too dry for it: as usual, and said so.
    near(f, "/floor/joints/0/openTime_s/low", 1800);
    near(f, "/floor/joints/0/openTime_s/likely", 4500);
    near(f, "/floor/joints/0/openTime_s/high", 7200);
    assertThat(f.assumed()).contains("$.floor.shortestOpenTime: 30 min to 2 h");
  }

  /** A stated plastic limit of 16 % halves the water that the skin may lose. */
  @Test
  void thePlasticLimitOfTheMixCounts() {
    String text = EarthJob.with(AIR, DRY_WIND);
    String moisture = "\"placingMoisture\": \"18 %\"";
    Fixture f =
        Fixture.of(
            EarthJob.with(text, moisture, moisture + ", \"plasticLimit\": \"16 %\""),
            Chapter.FLOOR);
    near(f, "/floor/joints/1/openTime_s/likely", 1780 * 0.002 * 0.02 / evaporation(0.3, 3));
    assertThat(OpenTimes.plasticLimit("coat", f.plan().mixes())).isEqualTo(0.16);
    assertThat(OpenTimes.plasticLimit("pack", f.plan().mixes())).isEqualTo(0.14);
    // A coat that is no wetter than its limit has no skin that dries to it.
    Fixture stiff =
        Fixture.of(
            EarthJob.with(text, moisture, moisture + ", \"plasticLimit\": \"20 %\""),
            Chapter.FLOOR);
    near(stiff, "/floor/joints/1/openTime_s/low", 1800);
    assertThat(stiff.worked("materials.drying.open-time")).isEmpty();
  }

  @Test
  void withoutWeatherAnEdgeWaitsAsUsual() {
    int from = EarthJob.TEXT.indexOf(",\n \"weather\":");
    Fixture f = Fixture.of(EarthJob.TEXT.substring(0, from) + "}", Chapter.FLOOR);
    near(f, "/floor/joints/1/openTime_s/low", 1800);
    near(f, "/floor/joints/1/openTime_s/high", 7200);
  }
}
