package io.github.seamstead.examples.derivations;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.derivation.Derivation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkedFilesTest {

  private static final Path JOB = Path.of("jobs", "class-model.json");

  @TempDir private Path folder;

  @Test
  void workedStepsAreAlsoWrittenAsMarkdownAndLatex() throws IOException {
    Job job = JobReader.read(JOB);
    JobPlan plan = JobPlanner.plan(job, PlanOptions.defaults().withWorkedSteps());
    BookWriter.write(plan, folder.resolve("worked"));
    String markdown = Files.readString(folder.resolve("worked/worked.md"));
    String latex = Files.readString(folder.resolve("worked/worked.tex"));
    assertThat(latex).startsWith("\\documentclass").endsWith("\\end{document}\n");
    assertThat(plan.derivations()).isNotEmpty();
    for (Derivation derivation : plan.derivations()) {
      assertThat(markdown).contains(derivation.title());
      assertThat(latex).contains(derivation.title());
    }
    assertThat(balance(latex, '{', '}')).isZero();
  }

  @Test
  void aPlainBookHasNoWorkedFiles() {
    Path plain = folder.resolve("plain");
    BookWriter.write(JobPlanner.plan(JobReader.read(JOB), PlanOptions.defaults()), plain);
    assertThat(plain.resolve("book.html")).exists();
    assertThat(plain.resolve("worked.md")).doesNotExist();
    assertThat(plain.resolve("worked.tex")).doesNotExist();
  }

  private static long balance(String text, char open, char close) {
    return text.chars().filter(c -> c == open).count()
        - text.chars().filter(c -> c == close).count();
  }
}
