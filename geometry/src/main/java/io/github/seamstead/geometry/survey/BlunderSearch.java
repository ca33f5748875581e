package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Iterative data snooping: take out the reading that is tested worst, adjust anew, test anew; at
 * the end try to take each back, and weigh those that cannot be told apart. At most a quarter of
 * the readings goes, since beyond that nothing tells the right ones from the wrong.
 *
 * <p>An error in a reading that nothing controls bends the frame instead of showing in its own
 * residual, and good readings that the bend strains are then tested worst. So the reading that is
 * grossly and alone off the regular frame is always tried too, with the regular frame's value in
 * its place; if all else then agrees, it is the culprit. If it stays, and nothing controls it once
 * good readings went for it, the search begins anew without it.
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

  private final RegularEvidence evidence;
  private final AcceptedReadings accepted;
  private final List<Found> found = new ArrayList<>();
  private final SearchTerms terms;
  private final int mostTried;

  /** A reading taken out, by its place in the survey from 0, and those whose error looks alike. */
  record Found(int index, double statistic, double critical, List<Integer> alike) {}

  /** A suspect and the adjustment without it. */
  private record Removal(
      ReadingResult suspect, int index, AcceptedReadings rest, Adjustment next, boolean isGross) {

    boolean isClean() {
      return rest.worst(next).isEmpty();
    }

    boolean isControlled() {
      return isGross || suspect.isControlled();
    }

    boolean isBetterThan(Removal other) {
      if (isClean() != other.isClean()) {
        return isClean();
      }
      if (isClean() && isGross != other.isGross) {
        return isGross;
      }
      if (isControlled() != other.isControlled()) {
        return isControlled();
      }
      return next.weightedSquares() < other.next.weightedSquares();
    }
  }

  private BlunderSearch(Survey survey, SearchTerms terms) {
    this.evidence = new RegularEvidence(survey);
    this.accepted = new AcceptedReadings(survey, terms);
    this.terms = terms;
    this.mostTried = terms.tried(survey, TRIED);
  }

  static BlunderReport run(Survey survey, SearchTerms terms) {
    terms.adjusts(survey);
    Adjustment first = survey.adjust(terms.cancellation()).orThrow();
    BlunderSearch search = new BlunderSearch(survey, terms);
    return search.search(survey, first);
  }

  private BlunderReport search(Survey survey, Adjustment first) {
    Ending ending = snooped(survey, accepted, first);
    Optional<Integer> overlooked = overlooked(ending);
    if (overlooked.isPresent() && !terms.isSpent()) {
      ending = insteadOf(ending, overlooked.get(), survey, first);
    }
    found.clear();
    found.addAll(ending.found);
    return new RivalSearch(survey, evidence, found, ending.accepted, terms)
        .report(first, ending.undecided);
  }

  /** What is believed at the end of the search, and what was taken out for it. */
  private record Ending(AcceptedReadings accepted, List<Found> found, boolean undecided) {}

  /** Takes out the worst until nothing is suspect, beginning with what is believed already. */
  private Ending snooped(Survey survey, AcceptedReadings start, Adjustment first) {
    Adjustment current = first;
    boolean undecided = false;
    AcceptedReadings now = start;
    Optional<ReadingResult> worst = now.worst(current);
    while (worst.isPresent()) {
      Optional<Removal> removal =
          found.size() < survey.readings().size() / 4 && !terms.isSpent()
              ? bestRemoval(now, current)
              : Optional.empty();
      if (removal.isEmpty()) {
        undecided = true;
        break;
      }
      found.add(found(removal.get().index(), removal.get().suspect(), now, current));
      now = removal.get().rest();
      current = removal.get().next();
      worst = now.worst(current);
    }
    now = takenBack(now);
    return new Ending(now, List.copyOf(found), undecided);
  }

  private static Found found(
      int index, ReadingResult suspect, AcceptedReadings now, Adjustment current) {
    return new Found(
        index,
        suspect.statistic().orElse(0.0),
        current.critical().orElse(0.0),
        alike(now, current, suspect));
  }

  /**
   * A reading that is still believed though it is grossly and alone off the regular frame and
   * nothing controls it any more: good readings may have gone so that it could stay.
   */
  private Optional<Integer> overlooked(Ending ending) {
    if (ending.found.isEmpty()) {
      return Optional.empty();
    }
    return evidence
        .gross(ending.accepted.indices())
        .filter(
            gross ->
                ending.accepted.adjust().stream()
                    .flatMap(last -> last.readings().stream())
                    .filter(ending.accepted::isRead)
                    .filter(result -> ending.accepted.indexOf(result) == gross)
                    .anyMatch(result -> !result.isControlled()));
  }

  /** Searches anew without the one that was overlooked; taken if all then agrees. */
  private Ending insteadOf(Ending before, int overlooked, Survey survey, Adjustment first) {
    AcceptedReadings rest = accepted.standIn(overlooked, evidence);
    Optional<Adjustment> next = rest.adjust();
    if (next.isEmpty()) {
      return before;
    }
    found.clear();
    ReadingResult suspect = first.readings().get(overlooked);
    found.add(found(overlooked, suspect, accepted, first));
    Ending after = snooped(survey, rest, next.get());
    return after.undecided ? before : after;
  }

  private static List<Integer> alike(
      AcceptedReadings now, Adjustment current, ReadingResult suspect) {
    if (suspect.statistic().isEmpty()) {
      return List.of();
    }
    return Correlations.alike(current, suspect).stream()
        .filter(now::isRead)
        .map(now::indexOf)
        .toList();
  }

  /** Readings that were taken out for another's fault come back. */
  private AcceptedReadings takenBack(AcceptedReadings accepted) {
    AcceptedReadings now = accepted;
    for (int i = 0; found.size() > 1 && i < found.size() && !terms.isSpent(); i++) {
      AcceptedReadings tried = now.with(found.get(i).index());
      if (tried.adjust().filter(a -> tried.worst(a).isEmpty()).isPresent()) {
        now = tried;
        found.remove(i);
        i--;
      }
    }
    return now;
  }

  /**
   * Takes each of the worst suspects out in turn, since several may be tested about equally badly
   * and large errors bend the tests. Best is one after which all is well (of several, the one that
   * is grossly off the regular frame); then one that the others control, since to take out a
   * reading that hardly any other backs would loosen the frame; then the one that leaves the least
   * weighted squares.
   */
  private Optional<Removal> bestRemoval(AcceptedReadings now, Adjustment current) {
    Optional<Integer> gross = evidence.gross(now.indices());
    Removal best = null;
    for (ReadingResult suspect : suspects(now, current)) {
      int index = now.indexOf(suspect);
      boolean isGross = gross.isPresent() && gross.get() == index;
      AcceptedReadings rest = now.without(index);
      Optional<Adjustment> next = rest.adjust();
      // Without a reading that hardly any other backs the set may be deficient.
      if (isGross && (next.isEmpty() || !suspect.isControlled())) {
        rest = now.standIn(index, evidence);
        next = rest.adjust();
      }
      if (next.isPresent()) {
        Removal removal = new Removal(suspect, index, rest, next.get(), isGross);
        best = best == null || removal.isBetterThan(best) ? removal : best;
      }
    }
    return Optional.ofNullable(best);
  }

  private Set<ReadingResult> suspects(AcceptedReadings now, Adjustment current) {
    List<ReadingResult> suspects = new ArrayList<>(current.readings());
    suspects.removeIf(result -> !now.isRead(result));
    List<ReadingResult> byRegular = new ArrayList<>(suspects);
    double largest = largest(suspects);
    double least = NEARLY * largest;
    suspects.removeIf(r -> !r.suspect() || Math.abs(r.statistic().orElse(0.0)) < least);
    suspects.sort(Comparator.comparingDouble(result -> -Math.abs(result.statistic().orElse(0.0))));
    Set<ReadingResult> chosen = new LinkedHashSet<>(firstOf(suspects, mostTried));
    byRegular.sort(Comparator.comparingDouble(r -> -evidence.ratio(now.indexOf(r))));
    if (largest > GROSS) {
      // So large an error bends the whole frame; the undisturbed regular one is asked as well.
      chosen.addAll(
          firstOf(
              byRegular.stream().filter(r -> r.statistic().isPresent()).toList(),
              Math.min(mostTried, TRIED_BY_REGULAR)));
    }
    evidence
        .gross(now.indices())
        .ifPresent(i -> byRegular.stream().filter(r -> now.indexOf(r) == i).forEach(chosen::add));
    return chosen;
  }

  private static List<ReadingResult> firstOf(List<ReadingResult> results, int most) {
    return results.subList(0, Math.min(most, results.size()));
  }

  private static double largest(List<ReadingResult> results) {
    return results.stream().mapToDouble(r -> Math.abs(r.statistic().orElse(0.0))).max().orElse(0);
  }
}
