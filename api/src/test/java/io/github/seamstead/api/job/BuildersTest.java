package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BuildersTest {

  static Stream<Shape<?>> shapes() {
    return BuilderText.shapes().stream();
  }

  private static String words(String source) {
    return source.replaceAll("[\\s*]+", " ").strip();
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void aBuilderHasTheKeysOfTheTable(Shape<?> shape) throws IOException {
    String source = Files.readString(BuilderText.file(Path.of(""), shape));
    assertThat(words(source))
        .as("run BuilderText to write the builders anew")
        .isEqualTo(words(BuilderText.withBuilder(source, shape)));
  }

  private static Frame.Builder frame() {
    return Frame.builder()
        .sides(9)
        .measures(Map.of(FrameMeasure.BASE_SIDE, 1.25, FrameMeasure.HEIGHT, 2.286));
  }

  private static final String DOCUMENT =
      """
      {
        "seamstead": 1,
        "frame": {
          "sides": 9,
          "measures": { "baseSide": 1.25, "height": "7 ft 6 in" },
          "poles": { "diameter": "25 mm", "bars": [ { "length": "3 m" } ] }
        },
        "stock": { "rolls": [ { "id": "r-1", "width": "1.5 m", "length": "30 m" } ] },
        "plant": {}
      }
      """;

  private static Job.Builder inCode() {
    return Job.builder()
        .frame(
            frame()
                .poles(Poles.builder().diameter(0.025).bars(List.of(BarStock.builder().length(3)))))
        .stock(Stock.builder().rolls(List.of(StockRoll.builder().id("r-1").width(1.5).length(30))))
        .plant(Plant.builder());
  }

  @Test
  void aJobInCodeEqualsTheSameJobInADocument() {
    Job read = JobReader.parse(DOCUMENT);
    Job built = inCode().build();
    assertThat(built.assumptions()).isEqualTo(read.assumptions()).isNotEmpty();
    assertThat(built.document()).isEqualTo(read.document());
    assertThat(built).isEqualTo(read).hasSameHashCodeAs(read);
    assertThat(built.digest()).isEqualTo(read.digest()).matches("[0-9a-f]{64}");
  }

  @Test
  void aStatedDefaultIsStatedAndNotAssumed() {
    Job job = Job.builder().frame(frame()).plant(Plant.builder().bucket(0.012)).build();
    assertThat(job.assumptions()).isEmpty();
    assertThat(JobWriter.text(job)).contains("\"bucket\": \"12 l\"");
    assertThat(JobReader.parse(JobWriter.text(job))).isEqualTo(job);
  }

  @Test
  void faultsOfCodeAreThoseOfADocument() {
    assertThatThrownBy(
            () ->
                Job.builder()
                    .frame(frame().sides(2).purlins(List.of(Double.NaN, -1.0)))
                    .stock(Stock.builder().spacing(-0.01))
                    .build())
        .isInstanceOf(JobFaultsException.class)
        .hasMessageContaining("$.frame.sides: given 2; must be a whole number from 3 to 64")
        .hasMessageContaining("$.frame.purlins[0]: given NaN; must be from 0.01 m to 100 m")
        .hasMessageContaining("$.frame.purlins[1]: given \"-1 m\"; must be from 0.01 m to 100 m")
        .hasMessageContaining("$.stock.spacing");
  }

  @Test
  void whatMustBeThereIsMissedInCodeToo() {
    assertThatThrownBy(() -> Job.builder().soils(List.of(SoilSample.builder())).build())
        .hasMessage(
            "$.soils[0].id: given nothing; must be there: its name, by which mixes and"
                + " layers call it");
    assertThatNullPointerException().isThrownBy(() -> SoilSample.builder().id(null));
  }

  @Test
  void aChangedCopyKeepsWhatWasAssumed() {
    Job job = inCode().build();
    assertThat(job.toBuilder().build()).isEqualTo(job);
    Job other = job.toBuilder().plant(Plant.builder().bucket(0.01)).build();
    assertThat(other.assumptions())
        .isEqualTo(
            job.assumptions().stream().filter(a -> !a.path().startsWith("$.plant")).toList());
    assertThat(job.document().frame().orElseThrow().toBuilder().sides(8))
        .extracting(changed -> Job.builder().frame(changed).build().document().frame())
        .isEqualTo(
            Job.builder()
                .frame(
                    frame()
                        .sides(8)
                        .poles(
                            job.document().frame().orElseThrow().poles().orElseThrow().toBuilder()))
                .build()
                .document()
                .frame());
  }

  @Test
  void finishedRecordsAreCheckedAndNothingOfThemIsAssumed() {
    JobDocument document = inCode().build().document();
    assertThat(Job.of(document).assumptions()).isEmpty();
    assertThat(Job.of(document).document()).isEqualTo(document);
    JobDocument wrong =
        new JobDocument(
            7,
            document.site(),
            document.frame(),
            document.cover(),
            document.stock(),
            List.of(),
            List.of(),
            List.of(),
            document.floor(),
            document.plant(),
            document.weather(),
            List.of());
    assertThatThrownBy(() -> Job.of(wrong)).hasMessageStartingWith("$.seamstead: given 7; must be");
  }
}
