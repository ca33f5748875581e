package io.github.seamstead.examples.derivations;

import io.github.seamstead.geometry.survey.Adjustment;
import io.github.seamstead.geometry.survey.AdjustmentSummary;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.geometry.survey.Reading;
import io.github.seamstead.geometry.survey.Survey;
import io.github.seamstead.geometry.survey.SurveyShape;
import io.github.seamstead.geometry.tape.Tape;
import io.github.seamstead.geometry.tape.TapeCorrections;
import io.github.seamstead.geometry.tape.TapeUse;
import io.github.seamstead.geometry.templates.AsBuilt;
import io.github.seamstead.geometry.templates.TemplateSet;
import io.github.seamstead.geometry.templates.Templates;
import java.util.ArrayList;
import java.util.List;

/** Survey and templates. */
final class SurveySamples {

  private SurveySamples() {}

  static void addTo(Samples to) {
    to.add(
        "geometry.tape.correction",
        steps ->
            TapeCorrections.correct(12.5, TAPE, TapeUse.hung(31, 60, List.of(6.0, 6.5)), steps));
    to.add(
        "geometry.tape.cancelling-pull",
        steps -> TapeCorrections.cancellingPull(12.5, TAPE, 31, List.of(12.5), steps));
    to.add(
        "geometry.survey.global-test",
        steps -> AdjustmentSummary.globalTest(adjustment(), steps).varianceFactor());
    to.add(
        "geometry.survey.standardised-residual",
        steps -> AdjustmentSummary.standardisedResidual(adjustment(), 3, steps));
    to.add(
        "geometry.survey.minimal-detectable-error",
        steps -> AdjustmentSummary.minimalDetectableError(adjustment(), 3, steps));
    to.add("geometry.templates.misfit", steps -> misfit(steps));
  }

  private static final Tape TAPE =
      Tape.asMarked()
          .standardised(30, 30.004)
          .expanding(Tape.STEEL_EXPANSION, 20)
          .stretching(5e5, 50)
          .weighing(0.17);

  private static double misfit(io.github.seamstead.shared.derivation.Steps steps) {
    AsBuilt built = AsBuilt.of(adjustment());
    TemplateSet set = Templates.plan(built, 0.05).sets().get(0);
    return Templates.worstMisfit(built, set, 0.95, steps);
  }

  private static Adjustment adjustment() {
    List<Reading> readings = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      readings.add(reading("B" + i, "A", Math.sqrt(8), i));
      for (int apart = 1; apart <= 2; apart++) {
        double chord = 4 * Math.sin(Math.PI * apart / 5);
        readings.add(reading("B" + i, "B" + ((i + apart - 1) % 5 + 1), chord, 7 * i + apart));
      }
    }
    return Survey.of(SurveyShape.whole(5).meant(new SurveyShape.Ideal(2, 2, 0)), readings)
        .adjust()
        .orThrow();
  }

  private static Reading reading(String from, String to, double metres, int stray) {
    double read = metres + (stray % 5 - 2) / 1000.0;
    return Reading.distance(Node.parse(from), Node.parse(to), read, 0.003);
  }
}
