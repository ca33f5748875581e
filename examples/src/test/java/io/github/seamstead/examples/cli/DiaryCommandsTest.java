package io.github.seamstead.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiaryCommandsTest {

  private static final String JOB = "jobs/class-model.json";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(args, new PrintWriter(out), new PrintWriter(err));
  }

  private Path diary(String line) throws IOException {
    return Files.writeString(
        folder.resolve("diary.json"), "{\"seamstead\": 1, \"diary\": [" + line + "]}");
  }

  @Test
  void aPlanGoesOnFromTheDiary() throws IOException {
    Path book = folder.resolve("book");
    Path diary = diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\"]}}");
    assertThat(run("plan", JOB, "--diary", diary.toString(), "--out", book.toString())).isZero();
    String html = Files.readString(book.resolve("book.html"));
    assertThat(html)
        .contains("Next day, and what changed")
        .contains("piece 1: uncut, now cut")
        .contains("The job so far");
    assertThat(Files.readString(book.resolve("results.json"))).contains("\"progress\"");
    assertThat(book.resolve("lists/changes.csv")).exists();
  }

  @Test
  void aContradictionWritesNothingAndTheLastBookStays() throws IOException {
    Path book = folder.resolve("book");
    assertThat(run("plan", JOB, "--out", book.toString())).isZero();
    String before = Files.readString(book.resolve("results.json"));
    Path diary =
        diary(
            "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"1\"]}},"
                + "{\"date\": \"2031-05-04\", \"joined\": {\"edges\": [\"3R\", \"4L\"]}}");
    assertThat(run("plan", JOB, "--diary", diary.toString(), "--out", book.toString()))
        .isEqualTo(2);
    assertThat(err.toString())
        .contains("nothing was written")
        .contains("$.diary[0].cut.pieces[1]")
        .contains("$.diary[1].date")
        .contains("$.diary[1].joined.edges[0]");
    assertThat(Files.readString(book.resolve("results.json"))).isEqualTo(before);
  }

  @Test
  void aCheckNamesEveryContradictionAndWritesNothing() throws IOException {
    Path diary =
        diary(
            "{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"1\"]}},"
                + "{\"date\": \"2031-05-04\", \"joined\": {\"edges\": [\"3R\", \"4L\"]}}");
    assertThat(run("check", JOB, "--diary", diary.toString())).isEqualTo(2);
    assertThat(err.toString())
        .contains("faults of the diary")
        .contains("nothing was written")
        .contains("$.diary[0].cut.pieces[1]")
        .contains("$.diary[1].date")
        .contains("$.diary[1].joined.edges[0]");
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(diary);
    }
  }

  @Test
  void aCheckNamesTheFaultsOfBothDocuments() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("job.json"),
            Files.readString(Path.of(JOB)).replaceFirst("\"sides\": \\d+", "\"sides\": 2"));
    Path diary = diary("{\"date\": \"2031-05-05\", \"cutt\": {\"pieces\": [\"1\"]}}");
    assertThat(run("check", job.toString(), "--diary", diary.toString())).isEqualTo(2);
    assertThat(err.toString())
        .contains("of the job document " + job)
        .contains("$.frame.sides")
        .contains("of the diary " + diary)
        .contains("$.diary[0]")
        .contains("held against the job once");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void aCheckOfAGoodDiaryHasNoFaults() throws IOException {
    Path diary = diary("{\"date\": \"2031-05-05\", \"cut\": {\"pieces\": [\"1\", \"2\"]}}");
    assertThat(run("check", JOB, "--diary", diary.toString())).isZero();
    assertThat(out.toString()).startsWith("No faults.");
    assertThat(run("check", JOB, "--was", JOB)).isEqualTo(2);
    assertThat(err.toString()).contains("--was");
  }

  @Test
  void changesOfTwoDocumentsArePrinted() throws IOException {
    String text = Files.readString(Path.of(JOB));
    Path same = Files.writeString(folder.resolve("same.json"), text);
    assertThat(run("changes", JOB, same.toString())).isZero();
    assertThat(out.toString()).contains("Nothing changes by more than its tolerance.");
  }

  @Test
  void theSchemaOfTheDiaryIsPrinted() {
    assertThat(run("schema", "--of", "diary")).isZero();
    assertThat(out.toString()).contains("Seamstead diary of a job, version 1");
  }

  @Test
  void anEarlierDocumentNeedsADiary() {
    Path book = folder.resolve("book");
    assertThat(run("plan", JOB, "--was", JOB, "--out", book.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("--was");
    assertThat(book).doesNotExist();
  }
}
