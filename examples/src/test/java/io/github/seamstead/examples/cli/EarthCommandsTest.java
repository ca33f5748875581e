package io.github.seamstead.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EarthCommandsTest {

  private static final Path DEMO = Path.of("jobs/clay-bank.json");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void soilSaysWhatItIsAndWhatToTestNext() {
    assertThat(run("soil", DEMO.toString())).isZero();
    assertThat(out.toString())
        .contains("yellow-bank is clay (", "earth floor: suits with sand added")
        .contains("The times of the marks are not known")
        .contains("Next, most told for the effort first:")
        .doesNotContain("NaN", "worked:");
  }

  @Test
  void workedStepsEndInTheClayShare() {
    assertThat(run("soil", DEMO.toString(), "--worked")).isZero();
    assertThat(out.toString())
        .contains("worked:", "Bayes' rule at the most probable texture")
        .contains("mean clay share of the dry mass below 2 mm: ");
  }

  @Test
  void mixNamesBothSidesOfEveryRatio() {
    assertThat(run("mix", DEMO.toString())).isZero();
    assertThat(out.toString())
        .contains("yellow-bank to ", "washed-sand, by dry mass", "by bucket, loose")
        .contains("Trial samples to make first:");
  }

  @Test
  void chartsAreWritten(@TempDir Path folder) {
    Path charts = folder.resolve("charts");
    assertThat(run("soil", DEMO.toString(), "--out", charts.toString())).isZero();
    assertThat(charts.resolve("drawings/texture-yellow-bank.svg")).exists();
  }

  @Test
  void aSoilTooLeanCannotBeMet(@TempDir Path folder) throws IOException {
    Path lean = folder.resolve("lean.json");
    Files.writeString(
        lean,
        Files.readString(DEMO)
            .replace("\"ribbon\": \"70 mm\"", "\"ribbon\": \"2 mm\"")
            .replace(
                "\"sandTop\": \"12 mm\", \"siltTop\": \"34 mm\"",
                "\"sandTop\": \"82 mm\", \"siltTop\": \"89 mm\""));
    assertThat(run("mix", lean.toString())).isEqualTo(1);
    assertThat(out.toString())
        .contains("Cannot be met: coat: clay of 14 % to 20 %", "richer clay soil");
  }

  @Test
  void aDocumentWithoutSoilsIsBadInput(@TempDir Path folder) throws IOException {
    Path bare = folder.resolve("bare.json");
    Files.writeString(
        bare,
        "{\"seamstead\": 1, \"frame\": {\"sides\": 6, \"measures\": {\"baseSide\": \"2 m\","
            + " \"height\": \"2 m\"}}}");
    assertThat(run("soil", bare.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("soils: the document has none");
    assertThat(run("mix", bare.toString())).isEqualTo(2);
  }

  private int run(String... args) {
    return Main.run(args, new PrintWriter(out), new PrintWriter(err));
  }
}
