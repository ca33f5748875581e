package io.github.seamstead.geometry.survey;

import io.github.seamstead.geometry.survey.Blunder.Alternative;
import io.github.seamstead.geometry.survey.Blunder.Cause;
import io.github.seamstead.geometry.survey.BlunderSearch.Found;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Weighs readings that no test can tell apart. A rival of a reading that was taken out is one whose
 * removal in its stead leaves all else in agreement too. Of rivals, the one is named whose error a
 * slip of tape or pen explains, else the one that is much further off the regular frame. The others
 * stay, believed no better than the error they would have: with even chances that it is there, the
 * root of the mean square error is {@code e / sqrt(2)}.
 */
final class RivalSearch {

  /** Off the regular frame by this factor more, one rival is the likelier. */
  private static final double FURTHER_OFF = 2;

  /** Below so many usual bends it says nothing that a reading is off the regular frame. */
  private static final double NOTABLE = 3;

  private final Survey survey;
  private final RegularEvidence evidence;
  private final List<Found> found;
  private AcceptedReadings accepted;
  private final SearchTerms terms;
  private final List<Blunder> blunders = new ArrayList<>();

  RivalSearch(
      Survey survey,
      RegularEvidence evidence,
      List<Found> found,
      AcceptedReadings accepted,
      SearchTerms terms) {
    this.survey = survey;
    this.terms = terms;
    this.evidence = evidence;
    this.found = found;
    this.accepted = accepted;
  }

  /** A reading that may be the wrong one, if it alone of its rivals is out. */
  private record Case(
      int index, AcceptedReadings rest, Adjustment without, Uncertain predicted, boolean slip) {}

  BlunderReport report(Adjustment first, boolean suspectsLeft) {
    List<List<Case>> rivals = new ArrayList<>();
    for (Found one : found) {
      List<Case> cases = cases(one);
      rivals.add(cases);
      accepted = cases.get(0).rest();
    }
    AcceptedReadings wide = accepted;
    boolean undecided = suspectsLeft;
    for (int i = 0; i < found.size(); i++) {
      List<Case> cases = rivals.get(i);
      Blunder blunder = describe(found.get(i), cases);
      blunders.add(blunder);
      undecided |= !blunder.isCertain();
      for (Case rival : cases.subList(1, cases.size())) {
        Reading reading = survey.readings().get(rival.index());
        double error = (reading.value() - rival.predicted().value()) / Math.sqrt(2);
        wide =
            wide.widened(
                rival.index(),
                Math.min(
                    StrictMath.hypot(reading.standardUncertainty(), error),
                    ReadingChecks.MOST_UNCERTAINTY));
      }
    }
    Adjustment last = found.isEmpty() ? first : wide.adjust().orElseThrow();
    return new BlunderReport(first, blunders, last, undecided);
  }

  /** The likeliest first; alone if nothing rivals it. */
  private List<Case> cases(Found one) {
    List<Case> cases = new ArrayList<>();
    cases.add(caseOf(one.index(), accepted, accepted.adjust().orElseThrow()));
    if (accepted.isStoodInFor(one.index())) {
      return cases;
    }
    for (int index : one.alike()) {
      if (!accepted.indices().contains(index) || terms.isSpent()) {
        continue;
      }
      AcceptedReadings other = accepted.with(one.index()).without(index);
      Optional<Adjustment> without = other.adjust().filter(a -> other.worst(a).isEmpty());
      without.ifPresent(a -> cases.add(caseOf(index, other, a)));
    }
    int best = 0;
    for (int i = 1; i < cases.size(); i++) {
      best = isLikelier(cases.get(i), cases.get(best)) ? i : best;
    }
    cases.add(0, cases.remove(best));
    return cases;
  }

  private Case caseOf(int index, AcceptedReadings rest, Adjustment without) {
    Reading reading = survey.readings().get(index);
    Uncertain predicted = without.predict(reading);
    return new Case(
        index, rest, without, predicted, BlunderHints.explain(reading, predicted, without));
  }

  private boolean isLikelier(Case a, Case b) {
    if (a.slip() != b.slip()) {
      return a.slip();
    }
    double off = evidence.ratio(a.index());
    return off > NOTABLE && off > FURTHER_OFF * evidence.ratio(b.index());
  }

  private Blunder describe(Found one, List<Case> cases) {
    Case named = cases.get(0);
    Reading reading = survey.readings().get(named.index());
    return new Blunder(
        named.index() + 1,
        reading,
        one.statistic(),
        one.critical(),
        named.predicted(),
        reading.value() - named.predicted().value(),
        BlunderHints.of(reading, named.predicted(), named.without()),
        alternatives(one, cases),
        cause(named, cases));
  }

  private Cause cause(Case named, List<Case> cases) {
    if (named.rest().isStoodInFor(named.index())) {
      return Cause.UNCONTROLLED;
    }
    return cases.size() > 1 ? Cause.RIVAL : Cause.CONTRADICTED;
  }

  /** The rivals, then those that only look alike. */
  private List<Alternative> alternatives(Found one, List<Case> cases) {
    List<Alternative> alternatives = new ArrayList<>();
    for (Case rival : cases.subList(1, cases.size())) {
      alternatives.add(alternative(rival));
    }
    for (int index : one.alike()) {
      boolean listed = cases.stream().anyMatch(c -> c.index() == index);
      if (!listed && accepted.indices().contains(index) && !terms.isSpent()) {
        AcceptedReadings other = accepted.without(index);
        other.adjust().ifPresent(a -> alternatives.add(alternative(caseOf(index, other, a))));
      }
    }
    return alternatives;
  }

  private Alternative alternative(Case rival) {
    Reading reading = survey.readings().get(rival.index());
    return new Alternative(
        rival.index() + 1,
        reading,
        rival.predicted(),
        BlunderHints.of(reading, rival.predicted(), rival.without()));
  }
}
