package io.github.seamstead.examples.cli;

import io.github.seamstead.examples.instance.InstanceReader;
import io.github.seamstead.examples.instance.InstanceWriter;
import io.github.seamstead.examples.instance.LayoutInstance;
import io.github.seamstead.geometry.layout.StripLayout;
import io.github.seamstead.geometry.layout.StripResult;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
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
  private @Nullable Path out;

  LayoutCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    if (!(seconds >= 0 && seconds <= 1e6)) {
      throw new IllegalArgumentException(
          "--seconds: given " + seconds + ", must be from 0 to 1000000");
    }
    LayoutInstance instance = InstanceReader.read(file);
    StripResult result;
    try (TerminalProgress progress = TerminalProgress.open(console.err())) {
      Budget budget = Budget.ofTime(Duration.ofMillis(Math.round(seconds * 1000)));
      result = StripLayout.solve(instance.problem(), Work.of(budget, seed).heardBy(progress));
    }
    if (out != null) {
      Files.createDirectories(out);
      Path draft = Files.createTempFile(out, "layout", ".part");
      Files.writeString(draft, InstanceWriter.svg(instance, result), StandardCharsets.UTF_8);
      Path drawing = out.resolve(instance.name().replaceAll("[^A-Za-z0-9._-]", "_") + ".svg");
      Files.move(draft, drawing, StandardCopyOption.REPLACE_EXISTING);
    }
    console.out().println(InstanceWriter.json(instance, result, seconds, seed));
    return 0;
  }
}
