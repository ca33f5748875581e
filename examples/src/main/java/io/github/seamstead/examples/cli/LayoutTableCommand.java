package io.github.seamstead.examples.cli;

import io.github.seamstead.examples.instance.InstanceReader;
import io.github.seamstead.examples.instance.LayoutInstance;
import io.github.seamstead.geometry.layout.StripLayout;
import io.github.seamstead.geometry.layout.StripResult;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.IoReason;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays every strip instance of a folder and sets the densities beside the published ones. */
@Command(
    name = "layout-table",
    mixinStandardHelpOptions = true,
    description = "Lays all strip instances of a folder and compares with published densities.")
final class LayoutTableCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "Folder with *.json instances.")
  private Path folder = Path.of("");

  @Option(
      names = "--seconds",
      paramLabel = "S",
      defaultValue = "60",
      description = "How long to search each instance. Default: ${DEFAULT-VALUE}.")
  private double seconds;

  @Option(
      names = "--seeds",
      paramLabel = "K,K,...",
      split = ",",
      defaultValue = "1,2,3",
      description = "Seeds, of which the best counts. Default: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of();

  LayoutTableCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    var out = console.out();
    out.println("| instance | best % | mean % | published % | best / published |");
    out.println("| --- | ---: | ---: | ---: | ---: |");
    double sum = 0;
    int counted = 0;
    for (Path file : files()) {
      LayoutInstance instance = InstanceReader.read(file);
      double best = 0;
      double mean = 0;
      for (long seed : seeds) {
        Budget budget = Budget.ofTime(Duration.ofMillis(Math.round(seconds * 1000)));
        StripResult result = StripLayout.solve(instance.problem(), Work.of(budget, seed));
        best = Math.max(best, 100 * result.density());
        mean += 100 * result.density() / seeds.size();
      }
      String row = String.format(Locale.ROOT, "| %s | %.2f | %.2f |", instance.name(), best, mean);
      if (instance.bestPublishedPercent().isPresent()) {
        double published = instance.bestPublishedPercent().get();
        row += String.format(Locale.ROOT, " %.2f | %.4f |", published, best / published);
        sum += best / published;
        counted++;
      } else {
        row += " | |";
      }
      out.println(row);
      out.flush();
    }
    if (counted > 0) {
      out.printf(Locale.ROOT, "| mean | | | | %.4f |%n", sum / counted);
    }
    out.printf(
        Locale.ROOT,
        "%n%s s for each instance and seed, seeds %s, %d processors, Java %s%n",
        seconds,
        seeds,
        Runtime.getRuntime().availableProcessors(),
        System.getProperty("java.version"));
    return 0;
  }

  private List<Path> files() {
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.json")) {
      found.forEach(files::add);
    } catch (IOException e) {
      throw new UncheckedIOException(folder + ": cannot be read: " + IoReason.of(e), e);
    }
    if (files.isEmpty()) {
      throw ArgumentFault.finding(folder + ": has no *.json file");
    }
    files.sort(null);
    return files;
  }
}
