package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.TrialMix;
import io.github.seamstead.api.job.TrialSample;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.TrialOutcome;
import io.github.seamstead.materials.mix.TrialReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the trial samples. */
final class TrialPlanner {

  private TrialPlanner() {}

  static List<TrialPart> plan(Run run, List<MixPart> mixes) {
    List<TrialMix> trials = run.document().trialMixes();
    List<TrialPart> parts = new ArrayList<>();
    for (int i = 0; i < trials.size(); i++) {
      TrialMix trial = trials.get(i);
      Optional<MixPart> mix =
          mixes.stream().filter(m -> m.spec().id().equals(trial.mix())).findFirst();
      String path = "$.trialMixes[" + i + "]";
      mix.flatMap(m -> run.attempt(path, () -> read(run, trial, m))).ifPresent(parts::add);
    }
    return parts;
  }

  private static TrialPart read(Run run, TrialMix trial, MixPart mix) {
    List<TrialOutcome> outcomes = trial.samples().stream().map(TrialPlanner::outcome).toList();
    TrialReading reading =
        run.worked(
            "materials.mix.trials",
            "What the trial samples of " + trial.mix() + " say",
            steps ->
                TrialReading.of(
                    outcomes,
                    mix.blend(),
                    Basis.LOOSE_VOLUME,
                    trial.crackLimit(),
                    trial.step(),
                    steps));
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
