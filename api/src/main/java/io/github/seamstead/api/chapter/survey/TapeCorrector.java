package io.github.seamstead.api.chapter.survey;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.SurveyTape;
import io.github.seamstead.geometry.tape.Tape;
import io.github.seamstead.geometry.tape.TapeCorrections;
import io.github.seamstead.geometry.tape.TapeUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Corrects taped distances for the tape that was used, if the document states it. */
final class TapeCorrector {

  private final Optional<SurveyTape> stated;
  private final Optional<Tape> tape;
  private final List<TapePart.Corrected> corrected = new ArrayList<>();

  TapeCorrector(Optional<SurveyTape> stated) {
    this.stated = stated;
    tape = stated.map(TapeCorrector::tape);
  }

  private static Tape tape(SurveyTape t) {
    Tape tape =
        Tape.asMarked()
            .standardised(t.markedLength(), t.trueLength())
            .expanding(t.expansion(), t.referenceTemperature());
    if (t.stiffness().isPresent()) {
      tape = tape.stretching(t.stiffness().get(), t.referencePull());
    }
    return t.massPerLength().isPresent() ? tape.ofMass(t.massPerLength().get()) : tape;
  }

  private TapeUse use(double reading) {
    return new TapeUse(
        stated.flatMap(SurveyTape::temperature), stated.flatMap(SurveyTape::pull), spans(reading));
  }

  private List<Double> spans(double reading) {
    return stated.filter(SurveyTape::hung).isPresent() ? List.of(reading) : List.of();
  }

  /** The distance behind what the tape showed. */
  double distance(String name, double taped) {
    if (tape.isEmpty()) {
      return taped;
    }
    double metres = TapeCorrections.correct(taped, tape.get(), use(taped));
    corrected.add(new TapePart.Corrected(name, taped, metres));
    return metres;
  }

  /** What was corrected, with the sums of the distance that is corrected the most. */
  Optional<TapePart> part(Run run) {
    if (tape.isEmpty() || corrected.isEmpty()) {
      return Optional.empty();
    }
    TapePart.Corrected most = new TapePart(corrected, Optional.empty()).most();
    run.workedOnly(
        "geometry.tape.correction",
        "The taped distance " + most.name(),
        steps -> TapeCorrections.correct(most.taped(), tape.get(), use(most.taped()), steps));
    return Optional.of(new TapePart(corrected, truePull(run, tape.get())));
  }

  private Optional<Double> truePull(Run run, Tape known) {
    double longest = corrected.stream().mapToDouble(TapePart.Corrected::taped).max().orElseThrow();
    return stated
        .flatMap(SurveyTape::temperature)
        .filter(t -> TapeCorrections.canCancel(longest, known, t, spans(longest)))
        .map(
            t ->
                run.worked(
                    "geometry.tape.cancelling-pull",
                    "The pull at which the tape is true",
                    steps ->
                        TapeCorrections.cancellingPull(longest, known, t, spans(longest), steps)));
  }
}
