package io.github.seamstead.geometry.survey;

import io.github.seamstead.geometry.survey.Blunder.Alternative;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Iterative data snooping: take out the reading that is tested worst, adjust anew, test anew; at
 * the end try to take each back. At most a quarter of the readings goes, since beyond that nothing
 * tells the right ones from the wrong.
 */
final class BlunderSearch {

  /** Suspects tested at least this part as badly as the worst are taken out on trial. */
  private static final double NEARLY = 0.7;

  /** How many of them, at most. */
  private static final int TRIED = 6;

  /** Standardised residuals beyond this are gross. */
  private static final double GROSS = 20;

  /** How many of those furthest off the regular frame are tried where an error is gross. */
  private static final int TRIED_BY_REGULAR = 3;

  /** Below this redundancy a reading stands nearly alone. */
  private static final double CONTROLLED = 0.05;

  private final Survey survey;
  private final List<Integer> active = new ArrayList<>();
  private final List<Found> found = new ArrayList<>();

  private record Found(int index, double statistic, double critical, List<Alternative> alike) {}

  /** A suspect and the adjustment without it. */
  private record Removal(ReadingResult suspect, Adjustment next) {

    boolean isClean() {
      return worst(next).isEmpty();
    }

    boolean isControlled() {
      return suspect.redundancy() >= CONTROLLED;
    }

    boolean isBetterThan(Removal other) {
      if (isClean() != other.isClean()) {
        return isClean();
      }
      if (isControlled() != other.isControlled()) {
        return isControlled();
      }
      return next.weightedSquares() < other.next.weightedSquares();
    }
  }

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
      Optional<Removal> removal = bestRemoval(current);
      if (removal.isEmpty()) {
        undecided = true;
        break;
      }
      ReadingResult suspect = removal.get().suspect();
      found.add(
          new Found(
              active.get(suspect.number() - 1),
              suspect.statistic().getAsDouble(),
              current.critical().getAsDouble(),
              alternatives(current, suspect)));
      active.remove(suspect.number() - 1);
      current = removal.get().next();
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
      Optional<Adjustment> next = adjust(tried).filter(a -> worst(a).isEmpty());
      if (next.isPresent()) {
        active.clear();
        active.addAll(tried);
        found.remove(i);
        i--;
        current = next.get();
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
   * Takes each of the worst suspects out in turn, since several may be tested about equally badly
   * and large errors bend the tests. Best is one after which all is well; then one that the others
   * control, since to take out a reading that hardly any other backs would loosen the frame; then
   * the one that leaves the least weighted squares.
   */
  private Optional<Removal> bestRemoval(Adjustment current) {
    List<ReadingResult> suspects = new ArrayList<>(current.readings());
    double least = NEARLY * largest(suspects);
    suspects.removeIf(r -> !r.suspect() || Math.abs(r.statistic().orElse(0)) < least);
    suspects.sort(Comparator.comparingDouble(result -> -Math.abs(result.statistic().orElse(0))));
    Set<ReadingResult> tried = new LinkedHashSet<>(firstOf(suspects, TRIED));
    if (largest(suspects) > GROSS) {
      // So large an error bends the whole frame; the undisturbed regular one is asked as well.
      List<ReadingResult> byRegular = new ArrayList<>(current.readings());
      byRegular.removeIf(result -> result.statistic().isEmpty());
      byRegular.sort(Comparator.comparingDouble(r -> -current.offRegular(r.number() - 1)));
      tried.addAll(firstOf(byRegular, TRIED_BY_REGULAR));
    }
    Removal best = null;
    for (ReadingResult suspect : tried) {
      List<Integer> rest = new ArrayList<>(active);
      rest.remove(suspect.number() - 1);
      // Without a reading that hardly any other backs the set may be deficient.
      Optional<Removal> removal = adjust(rest).map(next -> new Removal(suspect, next));
      if (removal.isPresent() && (best == null || removal.get().isBetterThan(best))) {
        best = removal.get();
      }
    }
    return Optional.ofNullable(best);
  }

  private static List<ReadingResult> firstOf(List<ReadingResult> results, int most) {
    return results.subList(0, Math.min(most, results.size()));
  }

  private static double largest(List<ReadingResult> results) {
    return results.stream().mapToDouble(r -> Math.abs(r.statistic().orElse(0))).max().orElse(0);
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

  private Optional<Adjustment> adjust(List<Integer> indices) {
    List<Reading> readings = indices.stream().map(survey.readings()::get).toList();
    return Adjuster.attempt(new Survey(survey.shape(), readings, survey.sigmaBasis()))
        .filter(outcome -> outcome instanceof Adjustment)
        .map(SurveyOutcome::orThrow);
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
