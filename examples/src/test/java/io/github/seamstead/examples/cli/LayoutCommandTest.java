package io.github.seamstead.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LayoutCommandTest {

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(args, new PrintWriter(out), new PrintWriter(err));
  }

  private Path instance(String pieces) throws Exception {
    Path file = folder.resolve("two.json");
    Files.writeString(
        file,
        "{\"name\": \"two\", \"stripWidth\": 2, \"bestPublishedDensityPercent\": 100, \"pieces\": ["
            + pieces
            + "]}");
    return file;
  }

  private static final String SQUARES =
      "{\"id\": \"sq\", \"quantity\": 4, \"rotationsDeg\": [0, 90],"
          + " \"vertices\": [[0,0],[1,0],[1,1],[0,1]]}";

  @Test
  void printsOneJsonLineAndDraws() throws Exception {
    Path file = instance(SQUARES);
    int code =
        run("layout", file.toString(), "--seconds", "0.2", "--seed", "3", "--out", folder + "/o");
    assertThat(err.toString()).isEmpty();
    assertThat(code).isZero();
    assertThat(out.toString().trim().lines()).hasSize(1);
    assertThat(out.toString())
        .contains("\"name\":\"two\"")
        .contains("\"seed\":3")
        .contains("\"piece\":\"sq\",\"copy\":4,\"rotationDeg\":");
    assertThat(Files.readString(folder.resolve("o/two.svg"))).contains("<polygon");
  }

  @Test
  void setsDensitiesBesidePublishedOnes() throws Exception {
    instance(SQUARES);
    assertThat(run("layout-table", folder.toString(), "--seconds", "0.1", "--seeds", "1,2"))
        .isZero();
    assertThat(out.toString()).contains("| two | 100.00 | 100.00 | 100.00 | 1.0000 |");
  }

  @Test
  void refusesBadInputWithThePlace() throws Exception {
    assertThat(run("layout", folder.resolve("none.json").toString())).isEqualTo(2);
    assertThat(err.toString()).contains("there is no such file");
    Path crossed = instance("{\"id\": \"bow\", \"vertices\": [[0,0],[1,1],[1,0],[0,1]]}");
    assertThat(run("layout", crossed.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("bow: outline:");
  }

  @Test
  void aDrawingThatIsThereIsNotOverwritten() throws Exception {
    Path file = instance(SQUARES);
    Path mine = Files.writeString(folder.resolve("two.svg"), "mine");
    assertThat(run("layout", file.toString(), "--seconds", "0.1", "--out", folder.toString()))
        .isEqualTo(2);
    assertThat(err.toString()).contains("which has two.svg");
    assertThat(mine).hasContent("mine");
  }
}
