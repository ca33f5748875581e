package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.TrialMix;
import io.github.seamstead.api.job.TrialSample;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.TrialOutcome;
import io.github.seamstead.materials.mix.TrialReading;
import java.util.List;
import java.util.Optional;

/** Reads the trial samples. */
final class TrialPlanner {

  private TrialPlanner() {}

  /** What the trial samples of a mix say, if the document has any. */
  static Optional<TrialPart> read(Run run, String mix, ClayBlend blend) {
    return run.document().trialMixes().stream()
        .filter(trial -> trial.mix().equals(mix))
        .findFirst()
        .map(trial -> read(run, trial, blend));
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
