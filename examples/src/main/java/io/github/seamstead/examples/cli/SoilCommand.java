package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.soil.SoilPart;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.materials.soil.Conflict;
import io.github.seamstead.materials.soil.NextTest;
import io.github.seamstead.materials.soil.Plasticity;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.SoilUse;
import io.github.seamstead.materials.soil.Suitability;
import io.github.seamstead.materials.soil.TextureClass;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Range;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says in plain words what the soils of a document are. */
@Command(
    name = "soil",
    mixinStandardHelpOptions = true,
    description = "Says what each soil is, for what it suits, and which test to make next.")
final class SoilCommand implements Callable<Integer> {

  private static final double SHOWN_CLASS = 0.05;
  private static final int SHOWN_TESTS = 3;

  private final Console console;

  @Mixin private final EarthInput input = new EarthInput();

  SoilCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    JobPlan plan = input.plan(Chapter.SOIL);
    if (plan.soils().isEmpty()) {
      throw ArgumentFault.finding("soils: the document has none", "list at least one");
    }
    PrintWriter print = console.out();
    for (SoilPart soil : plan.soils()) {
      print(soil.sample().id(), soil.finding(), print);
    }
    input.finish(plan, "materials.soil.", print);
    return 0;
  }

  private static void print(String name, SoilFinding finding, PrintWriter print) {
    print.println(name + " is " + classes(finding.texture().classProbabilities()) + ".");
    print.println("  clay " + range(finding.texture().clayRange()));
    print.println("  silt " + range(finding.texture().siltRange()));
    print.println("  sand " + range(finding.texture().sandRange()));
    finding
        .gravelRatio()
        .ifPresent(g -> print.println("  gravel " + percent(g.value()) + " of the whole dry mass"));
    print.println("  (shares of the dry mass below 2 mm; nine times in ten within the range)");
    print.println("  " + plasticity(finding.plasticity()));
    for (SoilUse use : SoilUse.values()) {
      Suitability judged = Suitability.of(finding, use);
      print.println("  " + use.label() + ": " + judged.verdict().label());
    }
    Suitability floor = Suitability.of(finding, SoilUse.FLOOR);
    floor.reasons().forEach(reason -> print.println("  - " + reason));
    finding.conflicts().stream()
        .map(Conflict::message)
        .forEach(message -> print.println("  Contradiction: " + message));
    finding.remarks().stream().distinct().forEach(r -> print.println("  Remark: " + r));
    List<NextTest> next = NextTest.rank(finding);
    if (!next.isEmpty()) {
      print.println(
          "  Next, most told for the effort first: "
              + next.stream()
                  .limit(SHOWN_TESTS)
                  .map(
                      t ->
                          t.kind().label()
                              + " ("
                              + percent(t.clayDoubtLeft())
                              + " of the doubt of the clay left, "
                              + Numbers.fixed(t.kind().handsOnTime() / 60, 0)
                              + " min)")
                  .collect(Collectors.joining("; ")));
    }
    floor.cautions().stream().map(Caution::text).forEach(c -> print.println("  Caution: " + c));
  }

  private static String classes(Map<TextureClass, Double> classes) {
    return classes.entrySet().stream()
        .filter(entry -> entry.getValue() >= SHOWN_CLASS)
        .map(entry -> entry.getKey().label() + " (" + percent(entry.getValue()) + ")")
        .collect(Collectors.joining(" or "));
  }

  private static String plasticity(Plasticity plasticity) {
    String text =
        "plasticity: "
            + plasticity.label()
            + ", index "
            + percent(plasticity.index().low())
            + " to "
            + percent(plasticity.index().high())
            + (plasticity.measured() ? ", measured" : ", drawn from the clay");
    return text
        + plasticity.chart().map(chart -> "; plasticity chart " + chart.symbol()).orElse("")
        + plasticity.activity().map(a -> "; clay " + a.label()).orElse("");
  }

  static String range(Range range) {
    return percent(range.likely())
        + " ("
        + percent(range.low())
        + " to "
        + percent(range.high())
        + ")";
  }

  static String percent(double ratio) {
    return Numbers.fixed(ratio * 100, ratio < 0.1 ? 1 : 0) + " %";
  }
}
