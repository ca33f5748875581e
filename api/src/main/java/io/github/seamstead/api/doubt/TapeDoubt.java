package io.github.seamstead.api.doubt;

import io.github.seamstead.api.job.SurveyReadings;
import io.github.seamstead.api.job.WrittenQuantity;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.sensitivity.NormalScore;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;

/** The errors of all readings of a survey: one doubt with an input for each reading. */
final class TapeDoubt {

  private record Taped(String path, double length, double uncertainty) {}

  private TapeDoubt() {}

  static Doubt of(SurveyReadings survey) {
    List<Taped> taped = new ArrayList<>();
    for (int i = 0; i < survey.distances().size(); i++) {
      WrittenQuantity read = survey.distances().get(i).distance();
      taped.add(taped("distances[" + i + "].distance", read, survey.uncertainty()));
    }
    for (int i = 0; i < survey.heights().size(); i++) {
      WrittenQuantity read = survey.heights().get(i).rise();
      taped.add(taped("heights[" + i + "].rise", read, survey.heightUncertainty()));
    }
    for (int i = 0; i < survey.plumbs().size(); i++) {
      WrittenQuantity read = survey.plumbs().get(i).offset();
      taped.add(taped("plumbs[" + i + "].offset", read, survey.heightUncertainty()));
    }
    return new Doubt(
        "readings of the tape",
        Numbers.significant(survey.uncertainty() * 1000, 2)
            + " mm and what single readings state, one standard deviation",
        Source.derived("the uncertainty of the readings, as the job states it"),
        "Tape every distance twice, with a steel tape at one pull",
        taped.size(),
        (at, width, draw) -> {
          for (int i = 0; i < taped.size(); i++) {
            Taped one = taped.get(i);
            double off = width * one.uncertainty() * NormalScore.of(at[i]);
            draw.set(
                one.path(), one.length() + off, "m ± " + Numbers.plain(one.uncertainty()) + " m");
          }
        });
  }

  private static Taped taped(String key, WrittenQuantity read, double usual) {
    return new Taped("frame.survey." + key, read.value(), read.standardUncertainty().orElse(usual));
  }
}
