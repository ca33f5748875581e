package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
  void aMissingFileAndAFolderAreFaults() {
    assertThatThrownBy(() -> JobReader.read(folder.resolve("none.json")))
        .hasMessage("$: given no file none.json; must be a file that exists");
    assertThatThrownBy(() -> JobReader.read(folder))
        .isInstanceOf(JobFaultsException.class)
        .hasMessageContaining("which is not a file");
  }

  @Test
  void noTextMakesTheReaderFailInAnotherWay() {
    for (String text : new String[] {"{", "[", "\"", "{\"a\":", "{\"seamstead\":{}}", "nul", "1"}) {
      assertThatThrownBy(() -> parse(text)).isInstanceOf(JobFaultsException.class);
    }
  }
}
