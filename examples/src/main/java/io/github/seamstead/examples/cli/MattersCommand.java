package io.github.seamstead.examples.cli;

import io.github.seamstead.api.doubt.Advice;
import io.github.seamstead.api.doubt.Matters;
import io.github.seamstead.api.doubt.MattersFolder;
import io.github.seamstead.api.doubt.MattersOptions;
import io.github.seamstead.api.doubt.MattersSearch;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.shared.text.Escapes;
import io.github.seamstead.shared.work.Cancellation;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says which doubt moves the numbers that people decide by. */
@Command(
    name = "matters",
    mixinStandardHelpOptions = true,
    description = {
      "Finds which doubtful input moves weeks, money, cloth, clay, peg pull and seam misfit most,"
          + " and what is won by knowing it better."
    })
final class MattersCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "JOB.json", description = "The job document.")
  private Path file = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder for page and charts: new, empty, or made by an earlier run.")
  private Path out = Path.of("");

  @Option(
      names = "--points",
      paramLabel = "N",
      defaultValue = "96",
      description =
          "Points of each sample, 16 to 100000; errors fall with the root. Default:"
              + " ${DEFAULT-VALUE}.")
  private int points;

  @Option(
      names = "--seed",
      paramLabel = "K",
      defaultValue = "1",
      description = "Seed of the points. Default: ${DEFAULT-VALUE}.")
  private long seed;

  MattersCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Outputs.folder(out, file);
    JobDraft job = JobDraft.read(file);
    job.job();
    Matters matters;
    try (TerminalProgress progress = TerminalProgress.open(console.err());
        Workers workers = Workers.start()) {
      MattersOptions options = new MattersOptions(points, seed, progress, new Cancellation());
      matters = MattersSearch.of(job, options, workers.executor(), workers.ahead());
      MattersFolder.write(matters, out);
    }
    List<String> advice = Advice.of(matters);
    advice.forEach(sentence -> console.out().println(Escapes.terminal(sentence)));
    if (advice.isEmpty()) {
      console.out().println("No single doubt makes a tenth of any number's variance.");
    }
    console
        .out()
        .println("The page is " + Escapes.terminal(out.resolve("matters.html").toString()));
    return 0;
  }
}
