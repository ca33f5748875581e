package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.sensitivity.Scatter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Doubts that a job states. */
class DoubtsTest {

  private static final String JOB =
      """
      {"seamstead": 1,
       "site": {"name": "Barn", "designWind": "20 m/s"},
       "frame": {"sides": 6, "measures": {"baseSide": "2 m", "height": "2.5 m"}},
       "soils": [{"id": "pit", "ribbon": "60 mm", "moisture": "12 %%", "pricePerTonne": 20}],
       "weather": {"temperature": "18 degC", "humidity": "60 %%", "airSpeed": "0.5 m/s"},
       "doubts": [%s]}
      """;

  private static byte[] job(String doubts) {
    return String.format(JOB, doubts).getBytes(StandardCharsets.UTF_8);
  }

  private static List<StatedDoubt> doubts(String doubts) {
    return JobDraft.parse(job(doubts)).doubts();
  }

  private static List<String> faults(String doubts) {
    JobFaultsException thrown =
        catchThrowableOfType(JobFaultsException.class, () -> JobReader.parse(job(doubts)));
    assertThat(thrown).isNotNull();
    return thrown.faults().stream().map(JobFault::text).toList();
  }

  @Test
  void aStandardUncertaintyIsADifferenceInTheValuesUnit() {
    List<StatedDoubt> doubts =
        doubts(
            """
            {"of": "weather.temperature", "standard": "3 K"},
            {"of": "weather.humidity", "standard": "5 %"},
            {"of": "soils[pit].moisture", "standard": "0.01"},
            {"of": "soils[0].pricePerTonne", "standard": "4"},
            {"of": "frame.measures.height", "standard": "1/2 in"}
            """);
    assertThat(doubts).extracting(StatedDoubt::value).containsExactly(18.0, 0.6, 0.12, 20.0, 2.5);
    double[] expected = {3, 0.05, 0.01, 4, 0.0127};
    for (int i = 0; i < expected.length; i++) {
      assertThat(doubts.get(i).scatter().form()).isEqualTo(Scatter.Form.NORMAL);
      assertThat(doubts.get(i).scatter().above()).isCloseTo(expected[i], within(1e-12));
    }
    assertThat(doubts.get(2).number().path()).isEqualTo("soils[0].moisture");
  }

  @Test
  void endsNeedNotLieEvenlyAboutTheValue() {
    StatedDoubt wind =
        doubts("{\"of\": \"site.designWind\", \"low\": \"18 m/s\", \"high\": \"90 km/h\"}").get(0);
    assertThat(wind.scatter().at(wind.value(), 0, 1)).isCloseTo(18, within(1e-12));
    assertThat(wind.scatter().at(wind.value(), 0.5, 1)).isEqualTo(20);
    assertThat(wind.scatter().at(wind.value(), 1, 1)).isCloseTo(25, within(1e-12));
    assertThat(wind.scatter().at(wind.value(), 1, 0.5)).isCloseTo(22.5, within(1e-12));
  }

  @Test
  void aNumberIsPutBackWithinItsLimits() {
    JobDraft draft = JobDraft.parse(job("{\"of\": \"weather.humidity\", \"standard\": \"9 %\"}"));
    JobNumber humidity = draft.doubts().get(0).number();
    JobDocument moved = draft.with(List.of(humidity.put(1.3))).job().document();
    assertThat(moved.weather().flatMap(Weather::humidity)).contains(1.0);
    double odd = 0.1 + 0.2;
    assertThat(
            draft
                .with(List.of(humidity.put(odd)))
                .job()
                .document()
                .weather()
                .orElseThrow()
                .humidity())
        .contains(odd);
    assertThat(draft.number("frame.sides")).isEmpty();
    assertThat(draft.number("site.name")).isEmpty();
    assertThat(draft.number("site.nothing")).isEmpty();
  }

  @Test
  void everyFaultIsNamedWithItsLine() {
    List<String> faults =
        faults(
            """
            {"of": "site.designWnd", "standard": "1 m/s"},
            {"of": "frame.sides", "standard": "1"},
            {"of": "soils[1].moisture", "standard": "1 %"},
            {"of": "soils[0].stones", "standard": "1 %"},
            {"of": "site.designWind", "standard": "1 kg"},
            {"of": "weather.humidity", "standard": "0 %"},
            {"of": "weather.airSpeed", "low": "0.6 m/s", "high": "0.9 m/s"},
            {"of": "weather.temperature", "low": "10 degC", "high": "90 degC"},
            {"of": "site designWind", "standard": "1 m/s"},
            {"of": "soils[pit].moisture", "standard": "1 %"},
            {"of": "soils[0].moisture", "standard": "2 %"}
            """);
    assertThat(faults).hasSize(10).allMatch(f -> f.contains("(line "));
    assertThat(faults.get(0)).startsWith("$.doubts[0].of").contains("did you mean \"designWind\"");
    assertThat(faults.get(1)).startsWith("$.doubts[1].of").contains("number with a unit");
    assertThat(faults.get(2)).startsWith("$.doubts[2].of").contains("is not in the job");
    assertThat(faults.get(3)).startsWith("$.doubts[3].of").contains("the job leaves out");
    assertThat(faults.get(4)).startsWith("$.doubts[4].standard").contains("kg is a unit of mass");
    assertThat(faults.get(5)).startsWith("$.doubts[5].standard").contains("more than nothing");
    assertThat(faults.get(6)).startsWith("$.doubts[6]").contains("must hold the value");
    assertThat(faults.get(7)).startsWith("$.doubts[7].high").contains("must be from -40 degC");
    assertThat(faults.get(8)).startsWith("$.doubts[8].of").contains("must be keys with dots");
    assertThat(faults.get(9)).startsWith("$.doubts[10].of").contains("twice").contains("doubts[9]");
  }

  @Test
  void aDoubtIsStatedInOneWay() {
    assertThat(
            faults(
                """
                {"of": "site.designWind"},
                {"of": "site.designWind", "low": "18 m/s"},
                {"of": "site.designWind", "standard": "1 m/s", "low": "1 m/s", "high": "30 m/s"}
                """))
        .hasSize(3)
        .allMatch(f -> f.contains("must state standard, or both low and high"));
  }

  @Test
  void writtenAndReadAgainItIsTheSame() {
    Job job = JobReader.parse(job("{\"of\": \"site.designWind\", \"standard\": \"1 m/s\"}"));
    assertThat(JobReader.parse(JobWriter.text(job)).document()).isEqualTo(job.document());
    Job built =
        Job.builder()
            .site(Site.builder().name("Barn").designWind(20))
            .frame(
                Frame.builder()
                    .sides(6)
                    .measures(Map.of(FrameMeasure.BASE_SIDE, 2.0, FrameMeasure.HEIGHT, 2.5)))
            .doubts(List.of(ValueDoubt.builder().of("site.designWind").standard("1 m/s")))
            .build();
    assertThat(built.document().doubts())
        .containsExactly(
            new ValueDoubt(
                "site.designWind", Optional.of("1 m/s"), Optional.empty(), Optional.empty()));
  }
}
