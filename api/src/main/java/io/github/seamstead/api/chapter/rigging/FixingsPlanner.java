package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.job.Adhesive;
import io.github.seamstead.api.job.Fixings;
import io.github.seamstead.assembly.fixings.AdhesiveNeed;
import io.github.seamstead.assembly.fixings.Bead;
import io.github.seamstead.assembly.fixings.CureConditions;
import io.github.seamstead.assembly.fixings.FixingCount;
import io.github.seamstead.assembly.fixings.FixingKind;
import io.github.seamstead.assembly.fixings.FixingPattern;
import io.github.seamstead.assembly.fixings.HemPegs;
import io.github.seamstead.assembly.fixings.SeamBill;
import io.github.seamstead.assembly.fixings.ShoppingItem;
import io.github.seamstead.assembly.fixings.ShoppingList;
import io.github.seamstead.assembly.schedule.AdhesiveTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Counts what holds seams and hem. */
final class FixingsPlanner {

  private FixingsPlanner() {}

  static Optional<FixingsPart> plan(Run run, CoverPart cover, JoiningPart joining) {
    Optional<Fixings> stated = run.document().cover().flatMap(c -> c.fixings());
    if (stated.isEmpty()) {
      run.skip(Chapter.FIXINGS, "the document has no fixings under cover");
      return Optional.empty();
    }
    return run.attempt("$.cover.fixings", () -> part(run, cover, joining, stated.get()));
  }

  private static FixingsPart part(Run run, CoverPart cover, JoiningPart joining, Fixings stated) {
    SeamBill seams = joining.seams();
    List<Double> joints = seams.lengths();
    FixingKind kind =
        switch (stated.method()) {
          case STAPLES -> FixingKind.STAPLES;
          case STITCHES -> FixingKind.STITCHES;
          case SCREWS -> FixingKind.SCREWS;
        };
    FixingPattern pattern = FixingPattern.of(kind, stated.spacing(), stated.rows());
    FixingCount count = FixingCount.of(pattern, joints, stated.spare(), stated.packSize());
    run.worked(
        "assembly.fixings.count",
        "Fixings in one seam",
        steps -> pattern.count(joints.get(0), steps));
    Optional<AdhesiveNeed> adhesive =
        stated
            .adhesiveBead()
            .map(
                bead ->
                    AdhesiveNeed.of(
                        Bead.round(bead), joints, 1, stated.cartridge(), stated.spare()));
    adhesive.ifPresent(
        need -> {
          run.worked("assembly.fixings.adhesive", "Cartridges of adhesive", need::cartridges);
          run.caution(Chapter.FIXINGS, need.caution());
        });
    Optional<AdhesiveTimes> glue = adhesive.flatMap(need -> glue(run, stated, joining));
    run.assume(
        "(pegs)",
        "at most 0.6 m apart round the hem",
        "common practice; local ground and wind may need them closer");
    double side = cover.face(1).edgeLength(0);
    HemPegs pegs = new HemPegs(cover.panels().size(), side, HemPegs.USUAL_SPACING);
    run.worked("assembly.fixings.hempegs", "Pegs round the hem", pegs::pegs);
    List<ShoppingItem> items = new ArrayList<>();
    items.add(count.item());
    adhesive.ifPresent(need -> items.add(need.item()));
    items.add(pegs.item(stated.spare(), 1));
    for (ShoppingItem item : items) {
      run.worked("assembly.fixings.packs", "Packs of " + item.name(), item::packs);
    }
    return new FixingsPart(count, seams, adhesive, glue, pegs, ShoppingList.of(items));
  }

  /**
   * The adhesive by its maker's figures: in how many portions, and whether the weather allows it.
   */
  private static Optional<AdhesiveTimes> glue(Run run, Fixings stated, JoiningPart joining) {
    return stated
        .adhesive()
        .map(
            a -> {
              // Spreading and pressing share the time of a seam: half of its pace for each.
              double pace = joining.secondsPerMetre() / 2;
              AdhesiveTimes times = new AdhesiveTimes(a.openTime(), a.cureTime(), pace, pace);
              double longest =
                  joining.seams().lengths().stream()
                      .mapToDouble(Double::doubleValue)
                      .max()
                      .orElse(0);
              double portions =
                  run.worked(
                      "assembly.schedule.adhesive",
                      "Portions of the longest seam",
                      steps -> times.portions(longest, steps));
              judge(run, a, longest / portions * pace);
              run.caution(Chapter.FIXINGS, times.caution());
              return times;
            });
  }

  private static void judge(Run run, Adhesive a, double wait) {
    CureConditions conditions =
        new CureConditions(
            a.leastTemperature(),
            a.greatestTemperature(),
            a.greatestHumidity(),
            a.openTime(),
            a.cureTime(),
            a.source());
    run.caution(Chapter.FIXINGS, conditions.caution());
    run.document()
        .weather()
        .flatMap(
            w -> w.temperature().flatMap(t -> w.humidity().map(h -> conditions.judge(t, h, wait))))
        .filter(verdict -> !verdict.within())
        .ifPresent(
            verdict ->
                run.unmet(Chapter.FIXINGS, "gluing: " + String.join("; ", verdict.reasons())));
  }
}
