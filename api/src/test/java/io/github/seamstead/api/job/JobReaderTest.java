package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.seamstead.api.testing.DemoJobs;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JobReaderTest {

  @TempDir private Path folder;

  private static Job parse(String text) {
    return JobReader.parse(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String job(String rest) {
    return "{\"seamstead\": 1, \"frame\": {\"sides\": 9, \"measures\": {\"baseSide\": 1.25,"
        + " \"height\": \"7 ft 6 in\"}}"
        + rest
        + "}";
  }

  @Test
  void textWithUnitsAndBareNumbersBecomeSi() {
    Frame frame = parse(job("")).document().frame().orElseThrow();
    assertThat(frame.measures().orElseThrow().get(FrameMeasure.BASE_SIDE)).isEqualTo(1.25);
    // 7 ft 6 in = 90 in of 25.4 mm
    assertThat(frame.measures().orElseThrow().get(FrameMeasure.HEIGHT))
        .isCloseTo(90 * 0.0254, within(1e-12));
  }

  @Test
  void absentSectionsAreAbsent() {
    JobDocument document = parse(job("")).document();
    assertThat(document.cover()).isEmpty();
    assertThat(document.stock()).isEmpty();
    assertThat(parse(job("")).assumptions()).isEmpty();
  }

  @Test
  void anAssumedValueIsListedWithItsGround() {
    Job job = parse(job(", \"plant\": {\"mixer\": {\"workingVolume\": \"90 l\"}}"));
    assertThat(job.document().plant().orElseThrow().bucket()).isCloseTo(0.012, within(1e-15));
    assertThat(job.assumptions())
        .contains(
            new Assumption(
                "$.plant.bucket", "12 l", "common practice: a builder's bucket filled level"));
  }

  @Test
  void aStatedValueIsNotListedAsAssumed() {
    Job job = parse(job(", \"plant\": {\"bucket\": \"10 l\"}"));
    assertThat(job.assumptions()).isEmpty();
  }

  @Test
  void aByteOrderMarkIsSkipped() {
    assertThat(parse("\uFEFF" + job("")).document().frame().orElseThrow().sides()).isEqualTo(9);
  }

  @Test
  void aFaultLaterFoundNamesTheLineOfTheNearestValue() {
    Job job =
        parse(
            job(
                "\n, \"weather\": {\"temperature\": 18,\n \"humidity\": 0.6,\n"
                    + " \"airSpeed\": 1}"));
    assertThat(job.fault("$.weather.airSpeed", "1", "less").line()).isEqualTo(4);
    assertThat(job.fault("$.weather.frost", "none", "some").line()).isEqualTo(2);
    assertThat(job.fault("$", "x", "y").line()).isZero();
  }

  @Test
  void aFileOfFiftyMebibytesIsRefusedBeforeItIsRead() throws IOException {
    Path big = folder.resolve("big.json");
    try (RandomAccessFile file = new RandomAccessFile(big.toFile(), "rw")) {
      file.setLength(50L * 1024 * 1024);
    }
    assertThatThrownBy(() -> JobReader.read(big))
        .isInstanceOf(JobFaultsException.class)
        .hasMessage("$: given big.json of 52428800 bytes; must be at most 4194304 bytes");
  }

  @Test
  void aMissingFileAndAFolderAreNoFaultsOfADocument() {
    Path none = folder.resolve("none.json");
    assertThatThrownBy(() -> JobReader.read(none))
        .isInstanceOfSatisfying(JobFileException.class, e -> assertThat(e.path()).isEqualTo(none))
        .hasMessageContaining("cannot be read: there is no ")
        .hasCauseInstanceOf(NoSuchFileException.class);
    assertThatThrownBy(() -> JobReader.read(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessageContaining("is a folder");
  }

  @Test
  void aPipeIsRead() throws Exception {
    Path pipe = folder.resolve("pipe");
    try {
      new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();
    } catch (IOException e) {
      assumeTrue(false, "skipped: no mkfifo here");
    }
    Thread writer = new Thread(() -> write(pipe, job("")));
    writer.start();
    assertThat(JobReader.read(pipe).document().frame().orElseThrow().sides()).isEqualTo(9);
    writer.join();
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void faultsSurviveSerialisation() throws Exception {
    JobFaultsException thrown =
        catchThrowableOfType(JobFaultsException.class, () -> parse("{\"seamstead\": 1}"));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    new ObjectOutputStream(bytes).writeObject(thrown);
    try (var in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(((JobFaultsException) in.readObject()).faults()).isEqualTo(thrown.faults());
    }
  }

  @Test
  void aFaultTextIsOneSafeLine() {
    assertThatThrownBy(() -> parse(job(", \"a\\u001b[2J\\n\\u202e\": 1")))
        .hasMessageContaining("the unknown key \"a\\u001B[2J\\u000A\\u202E\"");
  }

  /** So many that, were each compared with all before it, nobody would wait for the answer. */
  @Test
  void manyUnknownKeysAreAnswered() {
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < 300_000; i++) {
      keys.append(",\"k").append(i).append("\":1");
    }
    JobFaultsException thrown =
        catchThrowableOfType(JobFaultsException.class, () -> parse(job(keys + "")));
    assertThat(thrown.faults()).hasSize(200);
  }

  @Test
  void aPrefixOfFaultsHidesNoMissingValue() {
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < 300; i++) {
      keys.append("\"k").append(i).append("\":1,");
    }
    assertThatThrownBy(() -> parse("{" + keys + "\"seamstead\": 1, \"frame\": {}}"))
        .isInstanceOf(JobFaultsException.class);
  }

  /** Each value of each demo is replaced by each of these in turn. */
  private static final List<String> HOSTILE =
      List.of(
          "\"1e999 mm\"",
          "\"-1e999 %\"",
          "1e308",
          "-1e308",
          "1e-320",
          "\"1e308 km\"",
          "\"1 m ± 1e999 mm\"",
          "\"1 m ± 1e308 km\"",
          "\"NaN m\"",
          "\"Infinity\"",
          "\"\"",
          "\"\\u0000\"",
          "\"\\ud800\"",
          "null",
          "true",
          "[]",
          "{}",
          "[[]]",
          "\"0/0 m\"",
          "\"1/1e999 m\"",
          "\"± m\"",
          "99999999999999999999");

  private static final Pattern VALUE =
      Pattern.compile("(?<=: )(\"[^\"]*\"|-?[0-9.]+|true|false)(?=[,}\\s])");

  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "clay-bank"})
  void onlyFaultsComeOfBadValues(String demo) throws IOException {
    String text = Files.readString(DemoJobs.FOLDER.resolve(demo + ".json"));
    for (String hostile : HOSTILE) {
      Matcher matcher = VALUE.matcher(text);
      while (matcher.find()) {
        String bad = text.substring(0, matcher.start()) + hostile + text.substring(matcher.end());
        try {
          assertThat(parse(bad)).isNotNull();
        } catch (JobFaultsException e) {
          assertThat(e.faults()).allMatch(f -> !f.path().isBlank());
        }
      }
    }
  }

  @Test
  void noTextMakesTheReaderFailInAnotherWay() {
    for (String text : new String[] {"{", "[", "\"", "{\"a\":", "{\"seamstead\":{}}", "nul", "1"}) {
      assertThatThrownBy(() -> parse(text)).isInstanceOf(JobFaultsException.class);
    }
  }
}
