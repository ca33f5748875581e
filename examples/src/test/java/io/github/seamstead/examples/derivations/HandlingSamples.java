package io.github.seamstead.examples.derivations;

import io.github.seamstead.assembly.handling.Bundle;
import io.github.seamstead.assembly.handling.CoverEnds;
import io.github.seamstead.assembly.handling.DropZone;
import io.github.seamstead.assembly.handling.LiftLimit;
import io.github.seamstead.assembly.handling.LiftTask;
import io.github.seamstead.assembly.handling.Packing;
import io.github.seamstead.assembly.handling.RaisingWind;
import io.github.seamstead.assembly.handling.RopePull;
import io.github.seamstead.assembly.handling.Tackle;
import io.github.seamstead.assembly.handling.Turning;
import java.util.Optional;

/** Bundle, lift, turn and raise. */
final class HandlingSamples {

  private HandlingSamples() {}

  static void addTo(Samples to) {
    to.add("assembly.handling.mass", steps -> COVER.mass(steps));
    to.add("assembly.handling.roll", steps -> COVER.rollDiameter(3, 0.7, steps));
    to.add("assembly.handling.turn", steps -> TURNING.bundle(0.2, steps));
    to.add("assembly.handling.turnloop", steps -> TURNING.leastLoop(steps));
    to.add(
        "assembly.handling.apex",
        steps -> new RopePull(500, 0.37, 1.7, 2, RopePull.ONE_PERSON).apexPull(steps));
    to.add(
        "assembly.handling.pull",
        steps -> new RopePull(500, 0.37, 1.7, 2, RopePull.ONE_PERSON).people(steps));
    to.add("assembly.handling.tackle", steps -> new Tackle(4, 4, 0.1).pull(500, steps));
    to.add("assembly.handling.dropzone", steps -> DropZone.of(3, 4).ropeLength(steps));
    to.add("assembly.handling.wind", steps -> RaisingWind.of(40, 4).limitGust(steps));
    to.add("assembly.handling.lift", steps -> LiftLimit.of(LiftTask.ofBundle()).mass(steps));
  }

  private static final Bundle COVER = Bundle.of(60, 0.68, 0.0005, 2.2);
  private static final Turning TURNING =
      Turning.of(
          new CoverEnds(19, Optional.of(1.5), Optional.of(4.0)), 0.0005, 0.002, Packing.BUNCHED);
}
