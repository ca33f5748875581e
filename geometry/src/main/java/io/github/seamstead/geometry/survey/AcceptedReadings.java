package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The readings of a survey that are believed, by their places in it from 0, and what stands in for
 * some of the others: the regular frame's value, as uncertain as the frame is bent. Immutable.
 */
final class AcceptedReadings {

  private final Survey survey;
  private final List<Integer> indices;
  private final Map<Integer, Reading> standIns;
  private final Map<Integer, Double> widened;
  private final SearchTerms terms;

  AcceptedReadings(Survey survey, SearchTerms terms) {
    this(survey, new ArrayList<>(), new TreeMap<>(), new TreeMap<>(), terms);
    for (int i = 0; i < survey.readings().size(); i++) {
      indices.add(i);
    }
  }

  private AcceptedReadings(
      Survey survey,
      List<Integer> indices,
      Map<Integer, Reading> standIns,
      Map<Integer, Double> widened,
      SearchTerms terms) {
    this.terms = terms;
    this.survey = survey;
    this.indices = indices;
    this.standIns = standIns;
    this.widened = widened;
  }

  List<Integer> indices() {
    return indices;
  }

  AcceptedReadings without(int index) {
    List<Integer> rest = new ArrayList<>(indices);
    rest.remove(Integer.valueOf(index));
    return new AcceptedReadings(survey, rest, standIns, widened, terms);
  }

  /** Takes a reading back; what stood in for it goes. */
  AcceptedReadings with(int index) {
    List<Integer> more = new ArrayList<>(indices);
    more.add(index);
    more.sort(null);
    Map<Integer, Reading> fewer = new TreeMap<>(standIns);
    fewer.remove(index);
    return new AcceptedReadings(survey, more, fewer, widened, terms);
  }

  /** Puts the regular frame's value in the place of a reading. */
  AcceptedReadings standIn(int index, RegularEvidence evidence) {
    Reading reading = survey.readings().get(index);
    Map<Integer, Reading> more = new TreeMap<>(standIns);
    more.put(
        index,
        reading
            .withValue(evidence.regular(index, reading))
            .withUncertainty(
                Math.max(evidence.standInUncertainty(), reading.standardUncertainty())));
    AcceptedReadings rest = without(index);
    return new AcceptedReadings(survey, rest.indices, more, widened, terms);
  }

  boolean isStoodInFor(int index) {
    return standIns.containsKey(index);
  }

  /** Believes a reading no better than a given standard uncertainty, in metres. */
  AcceptedReadings widened(int index, double u) {
    Map<Integer, Double> more = new TreeMap<>(widened);
    more.merge(index, u, Math::max);
    return new AcceptedReadings(survey, indices, standIns, more, terms);
  }

  /** Adjusts; empty if readings are then missing or no frame fits. */
  Optional<Adjustment> adjust() {
    List<Reading> readings = new ArrayList<>();
    for (int index : indices) {
      Reading reading = survey.readings().get(index);
      Double u = widened.get(index);
      readings.add(u == null ? reading : reading.withUncertainty(u));
    }
    readings.addAll(standIns.values());
    terms.adjusts(survey);
    return Adjuster.attempt(
            new Survey(survey.shape(), readings, survey.sigmaBasis()), terms.cancellation())
        .filter(outcome -> outcome instanceof Adjustment)
        .map(SurveyOutcome::orThrow);
  }

  /** Tells whether a result is of a reading, not of what stands in for one. */
  boolean isRead(ReadingResult result) {
    return result.number() <= indices.size();
  }

  /** The place in the survey, from 0, of a reading of this set's adjustment. */
  int indexOf(ReadingResult result) {
    return indices.get(result.number() - 1);
  }

  /** The reading that is tested worst and fails. */
  Optional<ReadingResult> worst(Adjustment adjustment) {
    ReadingResult worst = null;
    for (ReadingResult result : adjustment.readings()) {
      if (result.suspect()
          && isRead(result)
          && (worst == null
              || Math.abs(result.statistic().get()) > Math.abs(worst.statistic().get()))) {
        worst = result;
      }
    }
    return Optional.ofNullable(worst);
  }
}
