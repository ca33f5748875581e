package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.api.job.TrialMix;
import io.github.seamstead.api.job.TrialSample;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.TrialOutcome;
import io.github.seamstead.materials.mix.TrialReading;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Optional;

/** Reads the trial samples. */
final class TrialPlanner {

  private TrialPlanner() {}

  /** What the trial samples of a mix say, if the document has any with its straw. */
  static Optional<TrialPart> read(Run run, MixSpec spec, ClayBlend blend) {
    Optional<TrialMix> all =
        run.document().trialMixes().stream()
            .filter(trial -> trial.mix().equals(spec.id()))
            .findFirst();
    if (all.isEmpty()) {
      return Optional.empty();
    }
    double straw = straw(spec);
    List<TrialSample> alike =
        all.get().samples().stream()
            .filter(s -> Math.abs(s.straw().orElse(straw) - straw) <= TrialOutcome.SAME_STRAW)
            .toList();
    int others = all.get().samples().size() - alike.size();
    if (others > 0) {
      run.skip(
          Chapter.MIX,
          "trial samples of "
              + spec.id()
              + ": "
              + others
              + (others == 1 ? " has" : " have")
              + " other straw than the "
              + Numbers.fixed(straw * 100, 1)
              + " % of the mix, and cannot tell its ratio");
    }
    return alike.isEmpty()
        ? Optional.empty()
        : Optional.of(
            read(
                run,
                new TrialMix(spec.id(), alike, all.get().crackLimit(), all.get().step()),
                blend));
  }

  /** Straw of a mix over its dry mass. */
  static double straw(MixSpec spec) {
    return spec.fibre()
        ? spec.straw().orElse(io.github.seamstead.materials.floor.MixPart.USUAL_STRAW)
        : 0;
  }

  private static TrialPart read(Run run, TrialMix trial, ClayBlend blend) {
    List<TrialOutcome> outcomes = trial.samples().stream().map(TrialPlanner::outcome).toList();
    TrialReading reading =
        run.worked(
            "materials.mix.trials",
            "What the trial samples of " + trial.mix() + " say",
            steps ->
                TrialReading.of(
                    outcomes, blend, Basis.LOOSE_VOLUME, trial.crackLimit(), trial.step(), steps));
    return new TrialPart(trial, reading);
  }

  private static TrialOutcome outcome(TrialSample sample) {
    return new TrialOutcome(
        sample.sandParts(),
        sample.crack(),
        sample.mould(),
        sample.dusting(),
        sample.scratch(),
        sample.drop(),
        sample.sticky());
  }
}
