package io.github.seamstead.examples.derivations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sets the worked sums of every demo with a real LaTeX. */
@Tag("long")
class WorkedLatexTest {

  private static final Path JOBS = Path.of("jobs");
  private static final String PROGRAM = "pdflatex";

  /** Exponents of fractions of exponents are set at this size; all else is larger. */
  private static final double SMALLEST = 5;

  @TempDir private Path folder;

  @BeforeAll
  static void findLatex() {
    boolean found =
        Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
            .anyMatch(place -> Files.isExecutable(Path.of(place, PROGRAM)));
    if (!found) {
      String message = "skipped: no " + PROGRAM + " on the path";
      if ("1".equals(System.getenv("SEAMSTEAD_REQUIRE_LATEX"))) {
        fail("SEAMSTEAD_REQUIRE_LATEX=1, but " + message);
      }
      abort(message);
    }
  }

  static List<String> jobs() throws IOException {
    try (Stream<Path> files = Files.list(JOBS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void setsOnA4WithNothingOffThePage(String job) throws IOException, InterruptedException {
    BookWriter.write(
        JobPlanner.plan(
            JobReader.read(JOBS.resolve(job)), PlanOptions.defaults().withWorkedSteps()),
        folder.resolve("book"));
    Process process =
        new ProcessBuilder(
                PROGRAM,
                "-interaction=nonstopmode",
                "-halt-on-error",
                "-output-directory=" + folder,
                folder.resolve("book/worked.tex").toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
    String log = Files.readString(folder.resolve("worked.log"), StandardCharsets.ISO_8859_1);
    assertThat(process.exitValue()).as(log).isZero();
    assertThat(log.lines().filter(line -> line.startsWith("!") || line.startsWith("Overfull")))
        .isEmpty();
    assertThat(log).doesNotContain("Missing character");
    try (PDDocument document = Loader.loadPDF(folder.resolve("worked.pdf").toFile())) {
      PDRectangle page = document.getPage(0).getMediaBox();
      assertThat((double) page.getWidth()).isBetween(595.0, 596.0);
      assertThat((double) page.getHeight()).isBetween(841.0, 843.0);
      Letters letters = new Letters(page);
      letters.getText(document);
      assertThat(letters.count).isGreaterThan(500);
      assertThat(letters.outside).as("letters off the page").isZero();
      assertThat(letters.least).as("smallest letter, pt").isGreaterThanOrEqualTo(SMALLEST);
    }
  }

  /** Looks where each letter stands and how large it is. */
  private static final class Letters extends PDFTextStripper {

    private final PDRectangle page;
    private int count;
    private int outside;
    private double least = Double.MAX_VALUE;

    Letters(PDRectangle page) {
      this.page = page;
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
      count++;
      double right = letter.getXDirAdj() + letter.getWidthDirAdj();
      boolean within =
          letter.getXDirAdj() >= 0
              && right <= page.getWidth()
              && letter.getYDirAdj() >= 0
              && letter.getYDirAdj() <= page.getHeight();
      outside += within ? 0 : 1;
      least = Math.min(least, letter.getFontSizeInPt());
      super.processTextPosition(letter);
    }
  }
}
