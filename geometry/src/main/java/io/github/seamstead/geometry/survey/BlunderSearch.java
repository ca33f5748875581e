package io.github.seamstead.geometry.survey;

import io.github.seamstead.geometry.survey.Blunder.Alternative;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Iterative data snooping: take out the reading with the largest standardised residual, adjust
 * anew, test anew; at the end try to take each back. At most a quarter of the readings goes, since
 * beyond that nothing tells the right ones from the wrong.
 */
final class BlunderSearch {

  private static final double ALIKE = 0.9;

  private final Survey survey;
  private final List<Integer> active = new ArrayList<>();
  private final List<Found> found = new ArrayList<>();

  private record Found(int index, double statistic, double critical, List<Alternative> alike) {}

  private BlunderSearch(Survey survey) {
    this.survey = survey;
    for (int i = 0; i < survey.readings().size(); i++) {
      active.add(i);
    }
  }

  static BlunderReport run(Survey survey) {
    return new BlunderSearch(survey).search();
  }

  private BlunderReport search() {
    Adjustment first = survey.adjust().orThrow();
    Adjustment current = first;
    boolean undecided = false;
    Optional<ReadingResult> worst = worst(current);
    while (worst.isPresent()) {
      if (found.size() >= survey.readings().size() / 4) {
        undecided = true;
        break;
      }
      ReadingResult suspect = bestControlled(current, worst.get());
      int index = active.get(suspect.number() - 1);
      found.add(
          new Found(
              index,
              suspect.statistic().getAsDouble(),
              current.critical().getAsDouble(),
              alternatives(current, suspect)));
      active.remove((Integer) index);
      if (!(adjust(active) instanceof Adjustment next)) {
        // A reading that was controlled leaves a sound set, but for the last digits of rank.
        active.add(index);
        active.sort(null);
        found.remove(found.size() - 1);
        undecided = true;
        break;
      }
      current = next;
      worst = worst(current);
    }
    current = takeBack(current);
    return new BlunderReport(first, describe(current), current, undecided);
  }

  /** Readings that were taken out for another's fault come back. */
  private Adjustment takeBack(Adjustment accepted) {
    Adjustment current = accepted;
    for (int i = 0; found.size() > 1 && i < found.size(); i++) {
      List<Integer> tried = new ArrayList<>(active);
      tried.add(found.get(i).index());
      tried.sort(null);
      if (adjust(tried) instanceof Adjustment next && worst(next).isEmpty()) {
        active.clear();
        active.addAll(tried);
        found.remove(i);
        i--;
        current = next;
      }
    }
    return current;
  }

  private List<Blunder> describe(Adjustment accepted) {
    List<Blunder> blunders = new ArrayList<>();
    for (Found one : found) {
      Reading reading = survey.readings().get(one.index());
      Uncertain predicted = accepted.predict(reading);
      blunders.add(
          new Blunder(
              one.index() + 1,
              reading,
              one.statistic(),
              one.critical(),
              predicted,
              reading.metres() - predicted.value(),
              BlunderHints.of(reading, predicted, accepted),
              one.alike()));
    }
    return blunders;
  }

  /**
   * Of readings whose errors look alike and that are tested about equally badly, the one that the
   * others control best: to take out a reading that hardly any other backs would loosen the frame.
   */
  private static ReadingResult bestControlled(Adjustment current, ReadingResult worst) {
    double least = ALIKE * Math.abs(worst.statistic().getAsDouble());
    ReadingResult best = worst;
    for (ReadingResult result : Correlations.alike(current, worst)) {
      if (result.suspect()
          && Math.abs(result.statistic().getAsDouble()) >= least
          && result.redundancy() > best.redundancy()) {
        best = result;
      }
    }
    return best;
  }

  private List<Alternative> alternatives(Adjustment current, ReadingResult suspect) {
    List<Alternative> alternatives = new ArrayList<>();
    for (ReadingResult result : Correlations.alike(current, suspect)) {
      Uncertain predicted = result.predictedByOthers().orElseThrow();
      alternatives.add(
          new Alternative(
              active.get(result.number() - 1) + 1,
              result.reading(),
              predicted,
              BlunderHints.of(result.reading(), predicted, current)));
    }
    return alternatives;
  }

  private SurveyOutcome adjust(List<Integer> indices) {
    List<Reading> readings = indices.stream().map(survey.readings()::get).toList();
    return Adjuster.adjust(new Survey(survey.shape(), readings, survey.sigmaBasis()));
  }

  private static Optional<ReadingResult> worst(Adjustment adjustment) {
    ReadingResult worst = null;
    for (ReadingResult result : adjustment.readings()) {
      if (result.suspect()
          && (worst == null
              || Math.abs(result.statistic().getAsDouble())
                  > Math.abs(worst.statistic().getAsDouble()))) {
        worst = result;
      }
    }
    return Optional.ofNullable(worst);
  }
}
