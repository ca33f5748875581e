package io.github.seamstead.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompareCommandTest {

  private static final String LOFT = "jobs/seed-loft.json";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(args, new PrintWriter(out), new PrintWriter(err));
  }

  private int compare(String variants, String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("variants.json"), variants);
    String[] args = new String[5 + more.length];
    String[] first = {"compare", LOFT, file.toString(), "--out", folder.resolve("out").toString()};
    System.arraycopy(first, 0, args, 0, first.length);
    System.arraycopy(more, 0, args, first.length, more.length);
    return run(args);
  }

  @Test
  void theDemoIsComparedQuickly() throws IOException {
    Path to = folder.resolve("compared");
    assertThat(
            run("compare", LOFT, "jobs/variants/seed-loft.json", "--quick", "--out", to.toString()))
        .isZero();
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString()).contains("7 plans").contains("beaten by none").contains("Quick:");
    assertThat(to.resolve("compare.html")).exists();
    assertThat(Files.readAllLines(to.resolve("variants.csv"))).hasSize(8);
    assertThat(to.resolve("variants.json")).exists();
    assertThat(to.resolve("drawings/variant-0.svg")).exists();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"seamstead\": 1} | $.vary (line 1): given nothing to vary",
        "{\"seamstead\": 1, \"vary\": [{\"path\": \"frame.side\", \"values\": [8]}]} |"
            + " $.vary[0].path (line 1): given \"frame.side\"",
        "{\"seamstead\": 1, \"vary\": [{\"path\": \"frame.sides\", \"values\": [\"x\"]}]} |"
            + " $.vary[0].values[0] (line 1): given \"x\"; must be a whole number",
        "nonsense | text that is not JSON"
      })
  void badVariantsAreBadInput(String variants, String said) throws IOException {
    assertThat(compare(variants)).isEqualTo(2);
    assertThat(err.toString()).startsWith("1 fault; nothing was written:").contains(said);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void anUnknownObjectiveIsBadInput() throws IOException {
    assertThat(compare("{}", "--objectives", "beauty")).isEqualTo(2);
    assertThat(err.toString()).contains("given beauty").contains("money, personDays");
  }

  @Test
  void aFileThatIsNotThereIsBadInput() {
    assertThat(run("compare", LOFT, "none.json", "--out", folder.resolve("out").toString()))
        .isEqualTo(2);
    assertThat(run("matters", "none.json", "--out", folder.resolve("out").toString())).isEqualTo(2);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void tooFewPointsAreBadInput() {
    assertThat(run("matters", LOFT, "--points", "3", "--out", folder.resolve("out").toString()))
        .isEqualTo(2);
    assertThat(err.toString()).contains("points: given 3");
  }

  @Test
  void whatMattersInAModelIsWritten() throws IOException {
    Path to = folder.resolve("matters");
    assertThat(run("matters", "jobs/class-model.json", "--points", "16", "--out", to.toString()))
        .isZero();
    assertThat(err.toString()).isEmpty();
    assertThat(to.resolve("matters.html")).exists();
    assertThat(Files.readString(to.resolve("matters.csv"))).startsWith("number,doubt,low,high");
    assertThat(out.toString()).contains("cloth");
  }

  @Test
  void theSchemaOfVariantsIsPrinted() {
    assertThat(run("schema", "--of", "variants")).isZero();
    assertThat(out.toString()).contains("variants document");
    assertThat(run("schema", "--of", "soup")).isEqualTo(2);
  }
}
