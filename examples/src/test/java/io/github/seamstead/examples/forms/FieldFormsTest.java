package io.github.seamstead.examples.forms;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.job.HeightReading;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.StockSheet;
import io.github.seamstead.api.job.SurveyReadings;
import io.github.seamstead.api.job.TapedDistance;
import io.github.seamstead.examples.cli.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Forms are written, filled as a crew fills them, and read back into the job. */
class FieldFormsTest {

  private static final String JOB = "jobs/seed-loft.json";

  @TempDir private Path folder;

  private final StringWriter said = new StringWriter();

  private int run(Object... args) {
    String[] words = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      words[i] = args[i].toString();
    }
    PrintWriter to = new PrintWriter(said, true);
    return Main.run(words, to, to);
  }

  private Path written() {
    Path forms = folder.resolve("forms");
    assertThat(run("forms", JOB, "--out", forms)).isZero();
    return forms;
  }

  /** Writes the wanted value, as if the frame were perfect, into every reading. */
  private static void fillSurvey(Path table) throws IOException {
    List<String> lines = Files.readAllLines(table);
    StringBuilder filled = new StringBuilder(lines.get(0)).append('\n');
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      filled.append(
          String.join(",", cells[0], cells[1], cells[2], cells[3], cells[4], "", cells[5], ""));
      filled.append('\n');
    }
    Files.writeString(table, filled);
  }

  @Test
  void aFilledSurveyStandsInTheJobAndControlsEveryReading() throws IOException {
    Path forms = written();
    fillSurvey(forms.resolve("survey.csv"));
    Path job = folder.resolve("taped.json");
    assertThat(run("fill", JOB, forms, "--out", job)).isZero();
    SurveyReadings survey =
        JobReader.read(job).document().frame().orElseThrow().survey().orElseThrow();
    assertThat(survey.distances()).hasSizeGreaterThan(60);
    TapedDistance first = survey.distances().get(0);
    assertThat(first.from() + first.to()).isEqualTo("B1B2");
    assertThat(first.distance().value()).isEqualTo(1.6);
    assertThat(survey.heights()).extracting(HeightReading::from).containsOnly("B1");
    Path book = folder.resolve("book");
    said.getBuffer().setLength(0);
    run("plan", job, "--out", book);
    assertThat(said.toString()).doesNotContain("nothing controls");
  }

  @Test
  void sheetsAndPullsAreTakenWithTheirUnits() throws IOException {
    Path forms = written();
    Files.writeString(
        forms.resolve("stock.csv"),
        "\uFEFFname;length;width;count;reinforced edges;flaw from left;flaw from bottom;flaw along;"
            + "flaw across;what is wrong;unit\n"
            + "awning;412;255;1;bottom top;50;60;12;8;tear;cm\n"
            + "awning;;;;;300;10;20;20;;cm\n"
            + "curtain-short;6,1;2.48 m;2;;;;;;;m\n");
    Files.writeString(
        forms.resolve("pegs.csv"),
        "peg,pull when it moved,unit\n1,95,kgf\n2,1.1 kN,kgf\n3,88,kgf\n");
    Path job = folder.resolve("new.json");
    assertThat(run("fill", JOB, forms, "--out", job)).as(said.toString()).isZero();
    Job read = JobReader.read(job);
    List<StockSheet> sheets = read.document().stock().orElseThrow().sheets();
    assertThat(sheets)
        .extracting(StockSheet::id)
        .containsExactly("curtain-long", "curtain-short", "awning");
    StockSheet awning = sheets.get(2);
    assertThat(awning.length()).isEqualTo(4.12);
    assertThat(awning.flaws()).hasSize(2);
    assertThat(awning.flaws().get(1).x()).isEqualTo(3.0);
    assertThat(sheets.get(1).length()).isEqualTo(6.1);
    assertThat(read.document().site().orElseThrow().pegs().orElseThrow().pulls())
        .containsExactly(95 * 9.80665, 1100.0, 88 * 9.80665);
  }

  @Test
  void aReadingWithoutUnitOrCornerIsRefusedWithItsRow() throws IOException {
    Path forms = written();
    Path out = folder.resolve("new.json");
    Files.writeString(
        forms.resolve("survey.csv"), "kind,from,to,reading,unit\ndistance,B1,B2,1602,\n");
    assertThat(run("fill", JOB, forms, "--out", out)).isEqualTo(2);
    assertThat(said.toString()).contains("row 1, reading: given 1602, must have its unit");
    Files.writeString(
        forms.resolve("survey.csv"), "kind,from,to,reading,unit\ndistance,B1,X9,1.6,m\n");
    assertThat(run("fill", JOB, forms, "--out", out)).isEqualTo(2);
    assertThat(said.toString()).contains("survey.csv, row 1").contains("X9");
    Files.writeString(forms.resolve("survey.csv"), "from,to\nB1,B2\n");
    assertThat(run("fill", JOB, forms, "--out", out)).isEqualTo(2);
    assertThat(said.toString()).contains("no column \"reading\"");
    assertThat(out).doesNotExist();
  }

  @Test
  void blankFormsPutNothingIntoAJob() {
    Path forms = written();
    assertThat(run("fill", JOB, forms, "--out", folder.resolve("new.json"))).isEqualTo(2);
    assertThat(said.toString()).contains("no table with a value filled in");
    assertThat(run("forms", JOB, "--out", forms)).isEqualTo(2);
    assertThat(forms.resolve("forms.html")).exists();
  }
}
