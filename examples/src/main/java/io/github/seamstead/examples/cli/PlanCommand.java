package io.github.seamstead.examples.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a whole job and writes its book. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Plans a whole job and writes its book into a folder.")
final class PlanCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "JOB.json", description = "The job document.")
  private Path file = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder for the book: new, empty, or made by an earlier run.")
  private Path out = Path.of("");

  @Option(
      names = "--effort",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "How hard the layout search tries, 1 to 9; each step doubles its work."
              + " Default: ${DEFAULT-VALUE}.")
  private int effort;

  @Option(
      names = "--seed",
      paramLabel = "K",
      defaultValue = "1",
      description = "Seed of searches and simulations. Default: ${DEFAULT-VALUE}.")
  private long seed;

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
    return new PlanRequest(file, out, effort, seed, worked, diary, was).run(console);
  }
}
