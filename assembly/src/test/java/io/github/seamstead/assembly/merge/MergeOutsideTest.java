package io.github.seamstead.assembly.merge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.assembly.ring.Piece;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Published and recomputed merge costs. */
class MergeOutsideTest {

  private static final Source LETTERS =
      Source.fromMemory(
          "Gilbert and Moore",
          "Variable-length binary encodings",
          "1959",
          "27 letter frequencies, also in Knuth vol. 3, 6.2.2");
  private static final Source OLYMPIAD =
      Source.fromMemory("", "Merging heaps round a ring, national olympiad problem", "1995", "");
  private static final Source PAGES = Source.found("", "Stone game II, problem text", "", "0593");
  private static final Source MERGE_PAGE =
      Source.found("", "Minimum cost to merge stones, problem text", "", "K = 2");
  private static final Source DERIVED = Source.derived("interval programming, recomputed");

  private static PieceRing pieces(boolean ring, double... masses) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < masses.length; i++) {
      pieces.add(Piece.of(Integer.toString(i + 1), Load.ofMass(masses[i])));
    }
    return ring
        ? PieceRing.ring(pieces, Collections.nCopies(masses.length, 1.0))
        : PieceRing.line(pieces, Collections.nCopies(masses.length - 1, 1.0));
  }

  private static double merged(boolean ring, double... masses) {
    return JoinPlanner.plan(pieces(ring, masses), PlanOptions.least(Objective.HANDLED_MASS))
        .orThrow()
        .cost()
        .mergedMass();
  }

  private static void check(String what, Source source, double expected, double got) {
    OutsideCheck.of("assembly.merge", what, source).expect(expected).within(1e-9).got(got);
  }

  @Test
  void publishedCosts() {
    check("ring 1 1 4 4: least merged weight", PAGES, 18, merged(true, 1, 1, 4, 4));
    check("ring 1 1 1 1: least merged weight", PAGES, 8, merged(true, 1, 1, 1, 1));
    check("line 4 1 1 4: least merged weight", PAGES, 18, merged(false, 4, 1, 1, 4));
    check("line 3 2 4 1: least merged weight", MERGE_PAGE, 20, merged(false, 3, 2, 4, 1));
    check("ring 4 4 5 9: least merged weight", OLYMPIAD, 43, merged(true, 4, 4, 5, 9));
    check("line 6 1 5 2 4 3", DERIVED, 54, merged(false, 6, 1, 5, 2, 4, 3));
    check("line 10 1 10 1 10 1", DERIVED, 88, merged(false, 10, 1, 10, 1, 10, 1));
    check(
        "line 3 1 4 1 5 9 2 6 5 3 5 8",
        DERIVED,
        181,
        merged(false, 3, 1, 4, 1, 5, 9, 2, 6, 5, 3, 5, 8));
  }

  @Test
  void englishLetters() {
    double[] letters = {
      186, 64, 13, 22, 32, 103, 21, 15, 47, 57, 1, 5, 32, 20, 57, 63, 15, 1, 48, 51, 80, 23, 8, 18,
      1, 16, 1
    };
    check("27 English letters, per mille", LETTERS, 4200, merged(false, letters));
  }

  @Test
  void ringAgainstLine() {
    double[][] weights = {
      {1, 9, 9, 1}, {3, 4, 3}, {6, 4, 4, 6}, {7, 6, 5, 7, 100}, {1, 2, 3, 4, 5, 6, 7, 8, 9, 10}
    };
    double[] line = {40, 17, 40, 175, 173};
    double[] ring = {33, 16, 40, 175, 173};
    for (int i = 0; i < weights.length; i++) {
      check(
          "line of " + weights[i].length + ", row " + i,
          DERIVED,
          line[i],
          merged(false, weights[i]));
      check(
          "ring of " + weights[i].length + ", row " + i,
          DERIVED,
          ring[i],
          merged(true, weights[i]));
    }
  }

  @Test
  void equalPieces() {
    int[] best = {5, 8, 12, 16, 20, 24, 29, 34, 39, 44};
    int[] oneByOne = {5, 9, 14, 20, 27, 35, 44, 54, 65, 77};
    for (int n = 3; n <= 12; n++) {
      PieceRing ring = PieceRing.ofEqualPieces(n, 1, 3);
      List<MergePlan> plans =
          JoinPlanner.compare(ring, PlanOptions.least(Objective.HANDLED_MASS)).plans();
      check(n + " equal pieces, one by one", DERIVED, oneByOne[n - 3], merged(plans, "one by one"));
      check(n + " equal pieces, best", DERIVED, best[n - 3], merged(plans, "least handled mass"));
    }
  }

  @Test
  void tenEqualPiecesPairsFirst() {
    List<MergePlan> plans =
        JoinPlanner.compare(
                PieceRing.ofEqualPieces(10, 1, 3), PlanOptions.least(Objective.HANDLED_MASS))
            .plans();
    check(
        "ten equal pieces, pairs, fours, eight, last pair",
        Source.commonPractice("five pairs, two fours, the eight, then the last pair"),
        36,
        merged(plans, "pairs first"));
    check("ten equal pieces, best", DERIVED, 34, merged(plans, "least handled mass"));
  }

  private static double merged(List<MergePlan> plans, String name) {
    return plans.stream()
        .filter(plan -> plan.name().equals(name))
        .findFirst()
        .orElseThrow()
        .cost()
        .mergedMass();
  }

  private static final Source CORMEN =
      Source.fromMemory(
          "Cormen, Leiserson, Rivest and Stein",
          "Introduction to Algorithms",
          "",
          "matrix-chain product, dynamic programming");

  @Test
  void matrixChain() {
    int[] p = {30, 35, 15, 5, 10, 20, 25};
    SpanProgramme programme =
        new SpanProgramme(
            6,
            false,
            (first, left, right) -> (double) p[first] * p[first + left] * p[first + left + right],
            (first, left, right) -> 0,
            SpanProgramme.Combine.SUM,
            new Cancellation());
    check("matrix chain 30 35 15 5 10 20 25: multiplications", CORMEN, 15125, programme.value(0));
    // ((1 (2 3)) ((4 5) 6)): spans by first leaf and number of leaves.
    Tree tree = programme.tree(0);
    List<String> spans = new ArrayList<>();
    for (int node = 6; node < 11; node++) {
      spans.add(tree.first[node] + "+" + tree.count[node]);
    }
    assertThat(spans).containsExactlyInAnyOrder("1+2", "0+3", "3+2", "3+3", "0+6");
  }

  @Test
  void heapsRoundARing() {
    double[] w = {4, 4, 5, 9};
    SpanCost weight =
        (first, left, right) -> {
          double sum = 0;
          for (int i = 0; i < left + right; i++) {
            sum += w[(first + i) % 4];
          }
          return sum;
        };
    check("ring 4 4 5 9 by the general programme", OLYMPIAD, 43, cheapest(weight));
    // The greatest total is the least of a cost turned round.
    double most = 3 * 22 - cheapest((f, l, r) -> 22 - weight.of(f, l, r));
    check("ring 4 4 5 9: greatest merged weight", OLYMPIAD, 54, most);
    assertThat(cheapest((f, l, r) -> Double.POSITIVE_INFINITY)).isInfinite();
  }

  /** The least cost round a ring of four over all cuts. */
  private static double cheapest(SpanCost cost) {
    SpanProgramme programme =
        new SpanProgramme(
            4, true, cost, (f, l, r) -> 0, SpanProgramme.Combine.SUM, new Cancellation());
    return IntStream.range(0, programme.cuts()).mapToDouble(programme::value).min().orElseThrow();
  }

  @Test
  void moreGroupsThanAreDocumentedAreRefused() {
    PieceRing ring = PieceRing.ofEqualPieces(JoinPlanner.MOST_GENERAL + 1, 1, 1);
    assertThatThrownBy(() -> JoinPlanner.plan(ring, PlanOptions.least(Objective.HANDLED_MASS)))
        .hasMessage("groups to join: given 501, must be from 1 to 500");
  }

  @Test
  void theNearestOrderSaysThatItBreaksTheLimit() {
    PieceRing ring = pieces(true, 4, 4, 5, 9);
    PlanOptions tight =
        PlanOptions.least(Objective.HANDLED_MASS).with(Limits.NONE.withCarriedMass(3));
    assertThat(JoinPlanner.plan(ring, tight).plan()).isEmpty();
    MergePlan nearest = JoinPlanner.nearest(ring, tight).orThrow();
    assertThat(nearest.cost().withinLimits()).isFalse();
    assertThat(nearest.steps()).hasSize(4);
    // Half of the whole at the closing joint is the least there is.
    assertThat(nearest.cost().heaviestCarried()).isEqualTo(11);
  }

  @Test
  void theClosingJointHasTheWholeCoverInHand() {
    MergePlan plan =
        JoinPlanner.plan(pieces(true, 4, 4, 5, 9), PlanOptions.least(Objective.HANDLED_MASS))
            .orThrow();
    assertThat(plan.steps()).hasSize(4);
    assertThat(plan.cost().closingMass()).isEqualTo(22);
    assertThat(plan.cost().handledMass()).isEqualTo(65);
    assertThat(plan.closingStep()).isPresent();
  }
}
