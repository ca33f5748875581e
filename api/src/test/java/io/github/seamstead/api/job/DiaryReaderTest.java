package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.seamstead.api.testing.SmallJob;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DiaryReaderTest {

  @Test
  void linesAreReadInTheirOrder() {
    Diary diary =
        SmallJob.diary(
            """
            {"date": "2031-05-05", "cut": {"pieces": ["1", "cap 2"]}},
            {"date": "2031-05-06", "time": "07:30", "tileWeighed": {"tile": "t", "mass": "2 kg"}},
            {"date": "2031-05-06", "note": "rain"}
            """);
    assertThat(diary.lines())
        .extracting(DiaryLine::date)
        .containsExactly(
            LocalDate.of(2031, 5, 5), LocalDate.of(2031, 5, 6), LocalDate.of(2031, 5, 6));
    assertThat(diary.lines().get(0).entry())
        .isEqualTo(new DiaryEntry.Cut(List.of("1", "cap 2"), java.util.Optional.empty()));
    assertThat(diary.lines().get(1).time()).contains(LocalTime.of(7, 30));
    assertThat(diary.last()).contains(LocalDate.of(2031, 5, 6));
    assertThat(diary.before().lines()).hasSize(1);
  }

  @Test
  void allFaultsAreToldAtOnceWithTheirPlaces() {
    JobFaultsException faults =
        catchThrowableOfType(
            JobFaultsException.class,
            () ->
                SmallJob.diary(
                    """
                    {"date": "2031-02-30", "note": "no such day"},
                    {"date": "2031-05-05", "cutt": {"pieces": ["1"]}},
                    {"date": "2031-05-05", "cut": {"pieces": ["1"]}, "note": "two things"},
                    {"date": "2031-05-05"},
                    {"date": "2031-05-05", "joined": {"edges": ["1R"]}},
                    {"date": "2031-05-05", "cut": {"pieces": ["1", "2"],
                      "place": {"stock": "tarp", "x": "1 m", "y": "0 m"}}},
                    {"date": "2031-05-05", "laid": {"layer": "coat", "loads": 3}},
                    {"date": "2031-05-05", "tileMade":
                      {"tile": "t", "layer": "coat", "thickness": 25, "area": "0.04 m2",
                       "scale": "1 g"}},
                    {"date": "2031-05-05", "weather":
                      {"temperature": "18 degC", "humidity": "130 %", "airSpeed": "0.5 m/s"}}
                    """));
    assertThat(faults.faults())
        .extracting(JobFault::path)
        .contains(
            "$.diary[0].date",
            "$.diary[1].cutt",
            "$.diary[2]",
            "$.diary[3]",
            "$.diary[4].joined.edges",
            "$.diary[5].cut.pieces",
            "$.diary[6].laid.sector",
            "$.diary[7].tileMade.thickness",
            "$.diary[8].weather.humidity");
    assertThat(faults.getMessage())
        .contains("did you mean \"cut\"?")
        .contains("must state exactly one of: cut, spoiled")
        .contains("must be a day that exists");
  }

  private static byte[] tenThousandLines() {
    String lines =
        IntStream.range(0, 10_000)
            .mapToObj(
                i ->
                    "{\"date\": \""
                        + LocalDate.of(2031, 1, 1).plusDays(i / 20)
                        + "\", \"joined\": {\"edges\": [\""
                        + i
                        + "R\", \""
                        + (i + 1)
                        + "L\"]}}")
            .collect(Collectors.joining(",\n"));
    return ("{\"seamstead\": 1, \"diary\": [" + lines + "]}").getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void tenThousandLinesAreRead() {
    assertThat(DiaryReader.parse(tenThousandLines()).lines()).hasSize(10_000);
  }

  @Tag("soak")
  @Test
  void tenThousandLinesAreReadInUnderASecond() {
    byte[] text = tenThousandLines();
    DiaryReader.parse(text);
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long least = Long.MAX_VALUE;
    for (int i = 0; i < 5; i++) {
      // The time of this thread alone: others on the machine are not part of the reading.
      long begun = threads.getCurrentThreadCpuTime();
      assertThat(DiaryReader.parse(text).lines()).hasSize(10_000);
      least = Math.min(least, threads.getCurrentThreadCpuTime() - begun);
    }
    assertThat(least).isLessThan(1_000_000_000L);
  }

  @Test
  void thePublishedSchemaIsTheOneThatTheShapesGive() throws IOException {
    try (var in = DiarySchema.class.getResourceAsStream(DiarySchema.RESOURCE)) {
      assertThat(in).as("the published schema").isNotNull();
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
          .isEqualTo(DiarySchema.text());
    }
  }

  static Stream<Shape<?>> shapes() {
    return DiaryShapes.diaryDocument().reachable().stream();
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void aShapeHasTheKeysOfItsRecordInOrder(Shape<?> shape) {
    List<String> components =
        Arrays.stream(shape.type().getRecordComponents()).map(RecordComponent::getName).toList();
    assertThat(shape.names()).isEqualTo(components);
  }

  @Test
  void everyEntryHasAShape() {
    List<String> entries =
        Arrays.stream(DiaryEntry.class.getPermittedSubclasses())
            .map(Class::getSimpleName)
            .filter(name -> !name.equals("Note") && !name.startsWith("Cloth"))
            .filter(name -> !name.equals("SoilTested"))
            .toList();
    assertThat(shapes().map(Shape::type).map(Class::getSimpleName))
        .containsAll(entries)
        .contains("ClothPart", "ClothBought", "SoilTests");
  }
}
