package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class EchoesTest {

  private static Map<String, String> echoes(String sections) {
    return Echoes.of("{\"seamstead\": 2, " + sections + "}");
  }

  @Test
  void feetAndInchesAreEchoedInMetres() {
    // 17 ft = 5.1816 m and 3 1/2 in = 0.0889 m, by the definition of the inch as 25.4 mm.
    assertThat(echoes("\"frame\": {\"measures\": {\"height\": \"17 ft 3 1/2 in\"}}"))
        .containsExactly(Map.entry("$.frame.measures.height", "5.2705 m"));
  }

  @Test
  void aBareNumberIsEchoedWithTheUnitItIsReadIn() {
    assertThat(echoes("\"site\": {\"crew\": {\"hoursPerDay\": 7}}"))
        .containsExactly(Map.entry("$.site.crew.hoursPerDay", "7 h"));
  }

  @Test
  void aReadingIsEchoedWithItsUncertainty() {
    String survey =
        "\"frame\": {\"survey\": {\"distances\": [{\"from\": \"B1\", \"to\": \"B2\","
            + " \"distance\": \"2.13 m ± 4 mm\"}]}}";
    assertThat(echoes(survey))
        .containsExactly(Map.entry("$.frame.survey.distances[0].distance", "2.13 m ± 0.004 m"));
  }

  @Test
  void temperaturesAreEchoedInTheUnitOfTheKey() {
    assertThat(echoes("\"weather\": {\"temperature\": \"68 degF\"}"))
        .containsExactly(Map.entry("$.weather.temperature", "20 degC"));
  }

  @Test
  void whatCannotBeReadIsLeftOutAndTheRestIsEchoed() {
    String soils = "\"soils\": [{\"id\": 3, \"ribbon\": \"long\"}, {\"ribbon\": \"8.5 cm\"}]";
    assertThat(echoes(soils)).containsExactly(Map.entry("$.soils[1].ribbon", "85 mm"));
    assertThat(Echoes.of("{")).isEmpty();
    assertThat(Echoes.of("[1]")).isEmpty();
  }

  @Test
  void aNumberOfAPathIsSaidInTheUnitOfItsKey() {
    assertThat(Echoes.of("$.frame.measures.height", 5.2705)).contains("5.2705 m");
    assertThat(Echoes.of("$.cover.seam.allowance", 0.03)).contains("30 mm");
    assertThat(Echoes.of("$.stock.sheets[2].width", 2.5)).contains("2.5 m");
    assertThat(Echoes.of("$.weather.temperature", 20)).contains("20 degC");
  }

  @Test
  void whereNoPlainNumberStandsNothingIsSaid() {
    assertThat(Echoes.of("$.frame.measures", 1)).isEmpty();
    assertThat(Echoes.of("$.frame.nothing.here", 1)).isEmpty();
    assertThat(Echoes.of("$.frame.survey.distances[0].distance", 1)).isEmpty();
    assertThat(Echoes.of("$.name[0]", 1)).isEmpty();
  }
}
