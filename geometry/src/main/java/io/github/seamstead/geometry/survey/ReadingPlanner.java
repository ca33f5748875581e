package io.github.seamstead.geometry.survey;

import io.github.seamstead.geometry.survey.SurveyShape.PanelEdge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Tries every further distance on the covariance by a rank-one update, {@code Q+ = Q - Q a' a Q /
 * (u^2 + a Q a')}, and looks at the least certain panel edge that is left. O(c e) for c candidate
 * pairs and e panel edges, after O(e u) preparation; O(c^2 e) for two distances at once.
 */
final class ReadingPlanner {

  /** A gain below a thousandth is no reason to stretch a tape. */
  private static final double LEAST_GAIN = 1e-3;

  /** Distances of which all pairs are tried; beyond, those that help most alone. */
  static final int MOST_PAIRED = 400;

  private final Adjustment adjustment;
  private final List<PanelEdge> edges;
  private final double[][] edgeTimesQ;
  private final double[] edgeVariance;
  private final double readingVariance;

  ReadingPlanner(Adjustment adjustment) {
    this.adjustment = adjustment;
    this.edges = adjustment.survey().shape().panelEdges();
    this.edgeTimesQ = new double[edges.size()][];
    this.edgeVariance = new double[edges.size()];
    DesignRow row = new DesignRow(6);
    for (int i = 0; i < edges.size(); i++) {
      adjustment.distanceRow(edges.get(i).from(), edges.get(i).to(), row);
      edgeTimesQ[i] = row.times(adjustment.cofactors());
      edgeVariance[i] = row.dot(edgeTimesQ[i]);
    }
    double u = usualUncertainty(adjustment.survey().readings());
    this.readingVariance = u * u;
  }

  List<NextReading> best(int count, Predicate<PanelEdge> measurable) {
    int worst = worstEdge();
    double scale = adjustment.uncertaintyScale();
    double before = Math.sqrt(edgeVariance[worst]);
    Set<Set<Node>> read = new HashSet<>();
    for (Reading reading : adjustment.survey().readings()) {
      if (reading instanceof Reading.Distance) {
        read.add(Set.copyOf(reading.nodes()));
      }
    }
    List<NextReading> candidates = new ArrayList<>();
    DesignRow row = new DesignRow(6);
    for (PanelEdge pair : pairs(adjustment.nodeNames())) {
      if (!measurable.test(pair)) {
        continue;
      }
      adjustment.distanceRow(pair.from(), pair.to(), row);
      double after = Math.sqrt(worstAfter(row));
      double edgeAfter = Math.sqrt(edgeAfter(worst, row, divisor(row)));
      if (edgeAfter < before * (1 - LEAST_GAIN)) {
        candidates.add(
            new NextReading(
                pair,
                read.contains(Set.of(pair.from(), pair.to())),
                adjustment.distance(pair.from(), pair.to()),
                scale * Math.sqrt(readingVariance),
                edges.get(worst),
                scale * before,
                scale * edgeAfter,
                scale * after));
      }
    }
    // Where several edges are about equally uncertain, what helps the first decides.
    candidates.sort(
        Comparator.comparingLong(
                (NextReading next) ->
                    Math.round(next.worstAfter() / next.worstBefore() / LEAST_GAIN))
            .thenComparingDouble(NextReading::edgeAfter));
    return List.copyOf(candidates.subList(0, Math.min(count, candidates.size())));
  }

  private int worstEdge() {
    int worst = 0;
    for (int i = 1; i < edges.size(); i++) {
      worst = edgeVariance[i] > edgeVariance[worst] ? i : worst;
    }
    return worst;
  }

  /**
   * A distance that may be read: its row, {@code e Q a'} for each edge e, and {@code u² + a Q a'}.
   */
  private static final class Candidate {

    private final PanelEdge pair;
    private final DesignRow row = new DesignRow(6);
    private final double[] shared;
    private final double divisor;
    private final double helps;

    Candidate(PanelEdge pair, ReadingPlanner planner) {
      this.pair = pair;
      planner.adjustment.distanceRow(pair.from(), pair.to(), row);
      this.divisor = planner.divisor(row);
      this.shared = new double[planner.edges.size()];
      double most = 0;
      for (int i = 0; i < shared.length; i++) {
        shared[i] = row.dot(planner.edgeTimesQ[i]);
        most = Math.max(most, shared[i] * shared[i] / divisor);
      }
      this.helps = most;
    }
  }

  Optional<NextReadingSet> bestPair(Predicate<PanelEdge> measurable) {
    List<Candidate> candidates = new ArrayList<>();
    for (PanelEdge pair : pairs(adjustment.nodeNames())) {
      if (measurable.test(pair)) {
        candidates.add(new Candidate(pair, this));
      }
    }
    candidates.sort(Comparator.comparingDouble(candidate -> -candidate.helps));
    if (candidates.size() > MOST_PAIRED) {
      candidates.subList(MOST_PAIRED, candidates.size()).clear();
    }
    int worst = worstEdge();
    double least = edgeVariance[worst] * (1 - LEAST_GAIN) * (1 - LEAST_GAIN);
    Optional<NextReadingSet> best = Optional.empty();
    double scale = adjustment.uncertaintyScale();
    for (int i = 0; i < candidates.size(); i++) {
      for (int j = i; j < candidates.size(); j++) {
        double after = worstAfter(candidates.get(i), candidates.get(j), least);
        if (after < least * (1 - 1e-9)) {
          least = after;
          best =
              Optional.of(
                  new NextReadingSet(
                      List.of(candidates.get(i).pair, candidates.get(j).pair),
                      scale * Math.sqrt(readingVariance),
                      edges.get(worst),
                      scale * Math.sqrt(edgeVariance[worst]),
                      scale * Math.sqrt(after)));
        }
      }
    }
    return best;
  }

  /** The worst edge once both are read; stops where one is not below the bound. */
  private double worstAfter(Candidate a, Candidate b, double bound) {
    double ab = a.row.form(adjustment.cofactors(), b.row);
    double left = b.divisor - ab * ab / a.divisor;
    double worst = 0;
    for (int i = 0; i < edgeVariance.length && worst < bound; i++) {
      double shared = b.shared[i] - a.shared[i] * ab / a.divisor;
      double after =
          edgeVariance[i] - a.shared[i] * a.shared[i] / a.divisor - shared * shared / left;
      worst = Math.max(worst, after);
    }
    return worst;
  }

  private double worstAfter(DesignRow row) {
    double worst = 0;
    double divisor = divisor(row);
    for (int i = 0; i < edgeVariance.length; i++) {
      worst = Math.max(worst, edgeAfter(i, row, divisor));
    }
    return worst;
  }

  private double divisor(DesignRow row) {
    return readingVariance + row.form(adjustment.cofactors(), row);
  }

  private double edgeAfter(int edge, DesignRow row, double divisor) {
    double shared = row.dot(edgeTimesQ[edge]);
    return Math.max(0, edgeVariance[edge] - shared * shared / divisor);
  }

  static List<PanelEdge> pairs(List<Node> nodes) {
    List<PanelEdge> pairs = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      for (int j = i + 1; j < nodes.size(); j++) {
        pairs.add(new PanelEdge(nodes.get(i), nodes.get(j)));
      }
    }
    return pairs;
  }

  /** The middle uncertainty of the distances read, or of all readings if there is none. */
  static double usualUncertainty(List<Reading> readings) {
    double[] sorted =
        readings.stream()
            .filter(r -> r instanceof Reading.Distance)
            .mapToDouble(Reading::standardUncertainty)
            .sorted()
            .toArray();
    if (sorted.length == 0) {
      sorted = readings.stream().mapToDouble(Reading::standardUncertainty).sorted().toArray();
    }
    return sorted[sorted.length / 2];
  }
}
