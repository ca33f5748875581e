package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.PlanOptions;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a whole job and writes its book. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Plans a whole job and writes its book into a folder.")
final class PlanCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "JOB.json",
      description = "The job document; - for the standard input.")
  private Path file = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder for the book: new, empty, or made by an earlier run.")
  private Path out = Path.of("");

  @Mixin private final SearchTerms terms = new SearchTerms();

  @Option(names = "--worked", description = "Keep the worked steps of every calculation.")
  private boolean worked;

  @Option(
      names = "--diary",
      paramLabel = "DIARY.json",
      description =
          "What was done so far: pieces that are cut stay as they are, and the rest is planned on.")
  private Optional<Path> diary = Optional.empty();

  @Option(
      names = "--was",
      paramLabel = "JOB.json",
      description = "The job document by which pieces of the diary were cut, if it was changed.")
  private Optional<Path> was = Optional.empty();

  PlanCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    PlanOptions options = worked ? terms.options().withWorkedSteps() : terms.options();
    return new PlanRequest(file, out, options, diary, was).run(console);
  }
}
