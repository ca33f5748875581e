package io.github.seamstead.examples.cli;

import io.github.seamstead.api.page.Anchors;
import io.github.seamstead.examples.instance.InstanceReader;
import io.github.seamstead.examples.instance.InstanceWriter;
import io.github.seamstead.examples.instance.LayoutInstance;
import io.github.seamstead.geometry.layout.StripLayout;
import io.github.seamstead.geometry.layout.StripResult;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.text.IoReason;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays one strip instance and prints it as one JSON line. */
@Command(
    name = "layout",
    mixinStandardHelpOptions = true,
    description = {
      "Lays the pieces of a strip instance as short as it can, prints one JSON line,",
      "and draws the layout if a folder is given."
    })
final class LayoutCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "INSTANCE.json", description = "The strip instance.")
  private Path file = Path.of("");

  @Option(
      names = "--seconds",
      paramLabel = "S",
      defaultValue = "10",
      description = "How long to search. Default: ${DEFAULT-VALUE}.")
  private double seconds;

  @Option(
      names = "--seed",
      paramLabel = "K",
      defaultValue = "1",
      description = "Seed of the search. Default: ${DEFAULT-VALUE}.")
  private long seed;

  @Option(names = "--out", paramLabel = "DIR", description = "Folder for the drawing.")
  private Optional<Path> out = Optional.empty();

  LayoutCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    if (!(seconds >= 0 && seconds <= 1e6)) {
      throw ArgumentFault.of(
          "--seconds", Numbers.plain(seconds), "must be from 0 to 1000000", "", "");
    }
    LayoutInstance instance = InstanceReader.read(file);
    Optional<Path> drawing = out.map(folder -> drawing(folder, instance));
    StripResult result;
    try (TerminalProgress progress = TerminalProgress.open(console.err())) {
      Budget budget = Budget.ofTime(Duration.ofMillis(Math.round(seconds * 1000)));
      result = StripLayout.solve(instance.problem(), Work.of(budget, seed).heardBy(progress));
    }
    if (drawing.isPresent()) {
      Files.writeString(
          drawing.get(), InstanceWriter.svg(instance, result), StandardOpenOption.CREATE_NEW);
    }
    console.out().println(InstanceWriter.json(instance, result, seconds, seed));
    return 0;
  }

  /** Where the drawing goes; made sure of before the search, which may take long. */
  private static Path drawing(Path folder, LayoutInstance instance) {
    Path drawing = folder.resolve(Anchors.plain(instance.name()) + ".svg");
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UncheckedIOException("--out: " + folder + " cannot be made: " + IoReason.of(e), e);
    }
    if (Files.exists(drawing, LinkOption.NOFOLLOW_LINKS)) {
      throw ArgumentFault.of(
          "--out",
          folder + ", which has " + drawing.getFileName(),
          "must be a folder without it",
          "",
          "move that file elsewhere");
    }
    return drawing;
  }
}
