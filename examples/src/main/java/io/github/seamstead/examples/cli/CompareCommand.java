package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.compare.CompareFolder;
import io.github.seamstead.api.compare.CompareOptions;
import io.github.seamstead.api.compare.Comparison;
import io.github.seamstead.api.compare.Measure;
import io.github.seamstead.api.compare.ParetoFront;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.VariantsDocument;
import io.github.seamstead.api.job.VariantsReader;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.Escapes;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans the variants of a job and lays them beside each other. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = {
      "Plans a job in several variants and lays them beside each other: what each takes, which"
          + " none beats, and what saves money and hours."
    })
final class CompareCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "JOB.json", description = "The job document.")
  private Path file = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "VARIANTS.json",
      description = "What is varied; `schema --of variants` prints the form.")
  private Path variants = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder for page and tables: new, empty, or made by an earlier run.")
  private Path out = Path.of("");

  @Option(
      names = "--quick",
      description = "Lay nothing out on the stock; the page says what lacks.")
  private boolean quick;

  @Option(
      names = "--objectives",
      split = ",",
      paramLabel = "WORD",
      description = "What counts, such as money,weeks,floorArea; a wrong word lists all.")
  private List<String> objectives = List.of();

  @Mixin private final SearchTerms terms = new SearchTerms();

  CompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Outputs.folder(out, file, variants);
    List<Measure> counts = measures(objectives, ParetoFront.USUAL);
    JobDraft job = JobDraft.read(file);
    job.job();
    VariantsDocument document = VariantsReader.read(variants, job);
    Comparison comparison;
    try (TerminalProgress progress = TerminalProgress.open(console.err());
        Workers workers = Workers.start()) {
      PlanOptions plan = terms.options().heardBy(progress);
      comparison =
          Comparison.of(
              job,
              document,
              new CompareOptions(plan, quick),
              counts,
              workers.executor(),
              workers.ahead());
      CompareFolder.write(comparison, out);
    }
    print(comparison);
    return 0;
  }

  private void print(Comparison comparison) {
    PrintWriter print = console.out();
    long met = comparison.rows().stream().filter(row -> row.isFeasible()).count();
    print.println(
        comparison.rows().size()
            + " plans, "
            + met
            + " can be met, "
            + comparison.front().numbers().size()
            + " are beaten by none ("
            + comparison.front().text()
            + "):");
    comparison.rows().stream()
        .filter(comparison::isBest)
        .limit(20)
        .forEach(row -> print.println(Escapes.terminal("  " + row.number() + ": " + row.name())));
    if (quick) {
      print.println(CompareOptions.LEFT_OUT);
    }
    print.println("The page is " + Escapes.terminal(out.resolve("compare.html").toString()));
  }

  /** Reads words of measures; some usual ones if none are given. */
  static List<Measure> measures(List<String> words, List<Measure> usual) {
    List<Measure> found = new ArrayList<>();
    for (String word : words) {
      found.add(
          Measure.of(word)
              .filter(m -> m.better() != Measure.Better.NEITHER)
              .orElseThrow(
                  () -> ArgumentFault.of("--objectives", word, "must be of: " + known(), "", "")));
    }
    return found.isEmpty() ? usual : found;
  }

  private static String known() {
    return Stream.of(Measure.values())
        .filter(m -> m.better() != Measure.Better.NEITHER)
        .map(Measure::word)
        .collect(Collectors.joining(", "));
  }
}
