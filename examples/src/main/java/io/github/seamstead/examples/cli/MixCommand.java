package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.soil.TrialPart;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.MixCautions;
import io.github.seamstead.materials.mix.MixChoice;
import io.github.seamstead.materials.mix.Recipe;
import io.github.seamstead.materials.mix.TrialLadder;
import io.github.seamstead.materials.mix.TrialReading;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.quantity.Numbers;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says in plain words how to proportion the mixes of a document and which trials to make. */
@Command(
    name = "mix",
    mixinStandardHelpOptions = true,
    description = "Proportions each mix, in buckets and by mass, and lists the trial samples.")
final class MixCommand implements Callable<Integer> {

  private final Console console;

  @Mixin private final EarthInput input = new EarthInput();

  MixCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    JobPlan plan = input.plan(Chapter.MIX);
    if (plan.mixes().isEmpty() && unmet(plan).isEmpty()) {
      throw ArgumentFault.finding(
          "mixes: the document has none under floor", "list at least one with its soil and sand");
    }
    PrintWriter print = console.out();
    for (MixPart mix : plan.mixes()) {
      print(mix, print);
    }
    unmet(plan).forEach(what -> print.println("Cannot be met: " + what));
    plan.trials().forEach(trial -> print(trial, print));
    MixCautions.of(false).stream().map(Caution::text).forEach(c -> print.println("Caution: " + c));
    input.finish(plan, "materials.mix.", print);
    return unmet(plan).isEmpty() ? 0 : Failures.CANNOT_BE_MET;
  }

  private static List<String> unmet(JobPlan plan) {
    return plan.unmet().stream()
        .filter(unmet -> unmet.chapter() == Chapter.MIX)
        .map(Unmet::what)
        .toList();
  }

  private static void print(MixPart part, PrintWriter print) {
    ClayBlend blend = part.blend();
    Recipe rounded = part.choice().recipe();
    print.println(part.spec().id() + ", " + blend.band().use() + ":");
    print.println("  " + rounded.proportion(Basis.LOOSE_VOLUME).text());
    print.println("  " + part.choice().reason());
    part.choice().remarks().forEach(remark -> print.println("  " + remark));
    print.println("  " + rounded.proportion(Basis.DRY_MASS).perFirst().text());
    print.println("  " + rounded.proportion(Basis.DAMP_MASS).perFirst().text());
    print.println(
        "  clay "
            + SoilCommand.percent(rounded.clayRatio().value())
            + " of the dry mass (wanted "
            + SoilCommand.percent(blend.band().least())
            + " to "
            + SoilCommand.percent(blend.band().greatest())
            + "; doubt of one standard deviation "
            + SoilCommand.percent(rounded.clayRatio().standardUncertainty())
            + ")");
    if (part.choice().ground() == MixChoice.Ground.CALCULATED) {
      print.println(
          "  rounding the buckets moves the clay by "
              + Numbers.fixed(blend.clayShift() * 100, 1)
              + " points"
              + (blend.priceShiftPerTonne().isPresent()
                  ? " and the price of a dry tonne by "
                      + Numbers.fixed(blend.priceShiftPerTonne().get(), 2)
                  : ""));
    }
    print.println(
        "  compacted, the parts yield "
            + SoilCommand.range(rounded.yieldRatio())
            + " of their volume");
    part.ladder().ifPresent(ladder -> trials(ladder, print));
  }

  private static void print(TrialPart trial, PrintWriter print) {
    TrialReading reading = trial.reading();
    print.println("trial samples of " + trial.trials().mix() + ":");
    print.println(
        "  best: "
            + Numbers.plain(reading.sandParts())
            + " parts of sand to one part of soil, by the bucket; right with probability "
            + SoilCommand.percent(reading.probability())
            + (reading.decided() ? "" : ", not decided yet"));
    if (reading.nextSandParts().isPresent()) {
      print.println(
          "  try next: " + Numbers.plain(reading.nextSandParts().get()) + " parts of sand");
    }
    reading.advice().forEach(advice -> print.println("  " + advice));
  }

  private static void trials(TrialLadder ladder, PrintWriter print) {
    print.println("  Trial samples to make first:");
    for (int rung = 0; rung < ladder.sandParts().size(); rung++) {
      print.println("    " + ladder.proportion(rung).text());
    }
    ladder.reasons().forEach(reason -> print.println("    " + reason));
  }
}
