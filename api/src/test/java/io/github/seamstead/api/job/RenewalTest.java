package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RenewalTest {

  private static final Path JOBS = Path.of("../examples/jobs");

  static List<Path> jobs() throws IOException {
    try (Stream<Path> files = Files.list(JOBS)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aRenewedJobIsTheSameJobInTheNewestForm(Path file) throws IOException {
    String renewed = Renewal.job(Files.readString(file));
    Job job = JobReader.parse(renewed);
    assertThat(job.document()).isEqualTo(JobReader.read(file).document());
    assertThat(job.assumptions()).isEqualTo(JobReader.read(file).assumptions());
    assertThat(renewed).contains("\"seamstead\": " + Forms.NEWEST);
    assertThat(Renewal.job(renewed)).isSameAs(renewed);
  }

  @Test
  void keysAreRenamedAndValuesStayAsTheyAreWritten() {
    String jar =
        "\"soils\": [{\"id\": \"bank\", \"jar\": {\"sandTop\": \"1/2 in\", \"siltTop\": \"1 3/16"
            + " in\", \"total\": \"4 1/4 in\", \"fall\": \"7 1/2 in\"}}]";
    String renewed = Renewal.job("{\"seamstead\": 1, " + jar + "}");
    assertThat(renewed)
        .contains("\"waterDepth\": \"7 1/2 in\"")
        .contains("\"siltTop\": \"1 3/16 in\"")
        .doesNotContain("\"fall\"");
  }

  @Test
  void aRenewedDiaryIsTheSameDiary() throws IOException {
    String diary = Files.readString(JOBS.resolve("diaries/seed-loft-diary.json"));
    String renewed = Renewal.diary(diary);
    assertThat(DiaryReader.parse(renewed.getBytes(StandardCharsets.UTF_8)).lines())
        .usingRecursiveComparison()
        .ignoringFieldsMatchingRegexes(".*[lL]ine")
        .isEqualTo(DiaryReader.parse(diary.getBytes(StandardCharsets.UTF_8)).lines());
    assertThat(renewed).contains("\"seamstead\": " + Forms.NEWEST);
  }
}
