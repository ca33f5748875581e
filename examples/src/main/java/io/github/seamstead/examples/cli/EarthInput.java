package io.github.seamstead.examples.cli;

import io.github.seamstead.api.book.BookWriter;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.text.Escapes;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands on earth take in common, and how they print sums and charts. */
final class EarthInput {

  @Parameters(
      index = "0",
      paramLabel = "FILE.json",
      description = "A job document; the parts about earth are enough.")
  private Path file = Path.of("");

  @Option(names = "--worked", description = "Print the worked steps as well.")
  private boolean worked;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Write the charts into this folder: new, empty, or made by an earlier run.")
  private Optional<Path> out = Optional.empty();

  /**
   * Reads, and plans one chapter with what it builds on; refuses a folder that may not be written
   * before any work is done.
   */
  JobPlan plan(Chapter chapter) {
    out.ifPresent(folder -> Outputs.folder(folder, file));
    PlanOptions options = PlanOptions.defaults().only(chapter);
    return JobPlanner.plan(JobInput.read(file), worked ? options.withWorkedSteps() : options);
  }

  /** Prints the worked steps of calculations whose id starts with a prefix, and writes charts. */
  void finish(JobPlan plan, String idPrefix, PrintWriter print) {
    if (worked) {
      for (Derivation derivation : plan.derivations()) {
        if (derivation.id().startsWith(idPrefix)) {
          WorkedText.print(derivation, print);
        }
      }
    }
    out.ifPresent(
        folder -> {
          BookWriter.write(plan, folder);
          print.println(
              "The charts are in " + Escapes.terminal(folder.resolve("drawings").toString()));
        });
  }
}
