package io.github.seamstead.examples.derivations;

import io.github.seamstead.assembly.fixings.AdhesiveNeed;
import io.github.seamstead.assembly.fixings.Bead;
import io.github.seamstead.assembly.fixings.Fibre;
import io.github.seamstead.assembly.fixings.FixingKind;
import io.github.seamstead.assembly.fixings.FixingPattern;
import io.github.seamstead.assembly.fixings.HemPegs;
import io.github.seamstead.assembly.fixings.RopeStrength;
import io.github.seamstead.assembly.fixings.SeamBill;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.fixings.SeamRun;
import io.github.seamstead.assembly.fixings.SeamStack;
import io.github.seamstead.assembly.fixings.ShoppingItem;
import java.util.List;

/** Staples, adhesive, pegs and rope. */
final class FixingSamples {

  private FixingSamples() {}

  static void addTo(Samples to) {
    to.add(
        "assembly.fixings.seams",
        steps ->
            new SeamBill(
                    List.of(
                        new SeamRun(SeamKind.SPLICE, "1-2 over 1-1", 1.2, 6),
                        new SeamRun(SeamKind.RING, "ring", 4, 6)))
                .length(steps));
    to.add(
        "assembly.fixings.count",
        steps -> FixingPattern.of(FixingKind.STAPLES, 0.04, 2).count(3.2, steps));
    to.add(
        "assembly.fixings.packs",
        steps -> ShoppingItem.of("staples", "piece", 1620, 0.1, 1000).packs(steps));
    to.add("assembly.fixings.leg", steps -> STACK.leastLeg(0.003, steps));
    to.add("assembly.fixings.thread", steps -> STACK.threadLength(0.004, 3.2, 2, steps));
    to.add("assembly.fixings.bead", steps -> Bead.fillet(0.01, 0.005).area(steps));
    to.add(
        "assembly.fixings.adhesive",
        steps ->
            AdhesiveNeed.of(Bead.round(0.006), List.of(3.2, 3.2, 2.9), 2, 310e-6, 0.1)
                .cartridges(steps));
    to.add("assembly.fixings.hempegs", steps -> new HemPegs(10, 1.6, 0.7).pegs(steps));
    to.add(
        "assembly.fixings.rope",
        steps -> RopeStrength.of(Fibre.POLYESTER, 0.01, true, 6).workingLoad(steps));
  }

  private static final SeamStack STACK = new SeamStack(4, 0.0005, 0.001);
}
