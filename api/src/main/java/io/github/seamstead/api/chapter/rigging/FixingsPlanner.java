package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.job.Adhesive;
import io.github.seamstead.api.job.FixingMethod;
import io.github.seamstead.api.job.Fixings;
import io.github.seamstead.api.job.SeamLayers;
import io.github.seamstead.assembly.fixings.AdhesiveNeed;
import io.github.seamstead.assembly.fixings.Bead;
import io.github.seamstead.assembly.fixings.CureConditions;
import io.github.seamstead.assembly.fixings.FixingCount;
import io.github.seamstead.assembly.fixings.FixingKind;
import io.github.seamstead.assembly.fixings.FixingPattern;
import io.github.seamstead.assembly.fixings.HemPegs;
import io.github.seamstead.assembly.fixings.SeamBill;
import io.github.seamstead.assembly.fixings.SeamStack;
import io.github.seamstead.assembly.fixings.SeamsLeft;
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
        stated.adhesiveBead().map(bead -> glued(stated, bead, joints));
    adhesive.ifPresent(
        need -> {
          run.worked(
              "assembly.fixings.bead",
              "Cross-section of the bead",
              steps -> need.bead().area(steps));
          run.worked("assembly.fixings.adhesive", "Cartridges of adhesive", need::cartridges);
          run.caution(Chapter.FIXINGS, need.caution());
        });
    Optional<AdhesiveTimes> glue = adhesive.flatMap(need -> glue(run, stated, joining));
    run.assume(
        "(pegs)",
        "at most 0.6 m apart round the hem",
        "common practice; local ground and wind may need them closer");
    double side = cover.face(1).edgeLength(0);
    HemPegs pegs = new HemPegs(cover.faces().size(), side, HemPegs.USUAL_SPACING);
    run.worked("assembly.fixings.hempegs", "Pegs round the hem", pegs::pegs);
    StackPart through = through(run, stated, thickness(run), seams.length());
    FixingsLeft left = left(stated, pattern, through.stack(), joining.left());
    List<ShoppingItem> items = items(stated, pattern, left);
    items.add(pegs.item(stated.spare(), 1));
    for (ShoppingItem item : items) {
      run.worked("assembly.fixings.packs", "Packs of " + item.name(), item::packs);
    }
    return new FixingsPart(
        count, seams, adhesive, glue, pegs, through, left, ShoppingList.of(items));
  }

  private static FixingsLeft left(
      Fixings stated, FixingPattern pattern, SeamStack stack, SeamsLeft seams) {
    boolean any = !seams.left().isEmpty();
    return new FixingsLeft(
        seams.madeFixings(pattern),
        seams.leftFixings(pattern),
        stated
            .adhesiveBead()
            .filter(bead -> any)
            .map(bead -> glued(stated, bead, seams.leftLengths())),
        Optional.of(seams.leftLength())
            .filter(metres -> any && stated.method() == FixingMethod.STITCHES)
            .map(metres -> stack.threadLength(stated.spacing(), metres, stated.rows())));
  }

  private static AdhesiveNeed glued(Fixings stated, double bead, List<Double> joints) {
    return AdhesiveNeed.of(Bead.round(bead), joints, 1, stated.cartridge(), stated.spare());
  }

  /** What holds the seams that are left; nothing if all are made. */
  private static List<ShoppingItem> items(Fixings stated, FixingPattern pattern, FixingsLeft left) {
    List<ShoppingItem> items = new ArrayList<>();
    if (left.open() > 0) {
      items.add(
          ShoppingItem.of(
              pattern.kind().label(), "piece", left.open(), stated.spare(), stated.packSize()));
    }
    left.thread()
        .flatMap(
            metres ->
                stated
                    .through()
                    .flatMap(SeamLayers::reel)
                    .map(reel -> thread(metres, stated, reel)))
        .ifPresent(items::add);
    left.adhesive().ifPresent(need -> items.add(need.item()));
    return items;
  }

  private static double thickness(Run run) {
    return run.document().cover().orElseThrow().fabric().thickness();
  }

  private static ShoppingItem thread(double metres, Fixings stated, double reel) {
    return ShoppingItem.of("thread", "m", metres, stated.spare(), reel);
  }

  private static StackPart through(Run run, Fixings stated, double cloth, double seams) {
    if (stated.through().isEmpty()) {
      run.assume(
          "$.cover.fixings.through",
          SeamStack.USUAL_LAYERS + " layers",
          "two panels lie on each other in a seam; where seams meet there are more");
    }
    SeamStack stack =
        new SeamStack(
            stated.through().map(SeamLayers::layers).orElse(SeamStack.USUAL_LAYERS),
            cloth,
            stated.through().map(SeamLayers::extra).orElse(0.0));
    Optional<Double> beyond = stated.through().flatMap(SeamLayers::beyond);
    if (beyond.isEmpty() && stated.method() == FixingMethod.STAPLES) {
      beyond = Optional.of(SeamStack.STAPLE_CLINCH);
      run.assume(
          "$.cover.fixings.through.beyond",
          "4 mm",
          "common practice: what a clinched staple turns over");
    }
    if (stated.method() == FixingMethod.STITCHES) {
      double thread =
          run.worked(
              "assembly.fixings.thread",
              "Thread of all seams",
              steps -> stack.threadLength(stated.spacing(), seams, stated.rows(), steps));
      return new StackPart(stack, Optional.empty(), Optional.of(thread));
    }
    Optional<Double> leg =
        beyond.map(
            far ->
                run.worked(
                    "assembly.fixings.leg",
                    "Least length of a leg",
                    steps -> stack.leastLeg(far, steps)));
    return new StackPart(stack, leg, Optional.empty());
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
              double pace = joining.timePerLength() / 2;
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
