package io.github.seamstead.geometry.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Whatever was cut and lost, the rest is laid beside it, and nothing cut is moved. */
class ContinuedLayoutProperties {

  private static final int REQUESTS = Integer.getInteger("seamstead.layout.continued", 40);

  private static Work work(long seed) {
    return Work.of(Budget.ofWork(300), seed);
  }

  private static List<LaidPiece> laid(LayoutResult result) {
    List<LaidPiece> laid = new ArrayList<>();
    for (StockUse use : result.used()) {
      use.placements().forEach(p -> laid.add(new LaidPiece(use.stockId(), use.copy(), p)));
    }
    return laid;
  }

  private static double missing(LayoutRequest request, LayoutResult result) {
    return result.unplaced().stream()
        .mapToDouble(
            s ->
                s.count()
                    * ContinuedLayout.piece(request, s.pieceId()).orElseThrow().outline().area())
        .sum();
  }

  private record Begun(List<LaidPiece> cut, List<LaidPiece> planned, List<LostCloth> lost) {}

  /** Some of the layout cut, some of those spoiled, and a tear somewhere. */
  private static Begun begun(LayoutRequest request, LayoutResult first, RandomGenerator random) {
    List<LaidPiece> cut = new ArrayList<>();
    List<LostCloth> lost = new ArrayList<>();
    List<LaidPiece> all = laid(first);
    for (LaidPiece piece : all) {
      int fate = random.nextInt(6);
      if (fate < 2) {
        cut.add(piece);
      } else if (fate == 2) {
        Outline hole = ContinuedLayout.outline(request, piece.placement());
        lost.add(new LostCloth(piece.stockId(), piece.copy(), hole, true));
      }
    }
    if (random.nextInt(3) == 0 && !all.isEmpty()) {
      LaidPiece near = all.get(random.nextInt(all.size()));
      Vector2D at = ContinuedLayout.outline(request, near.placement()).centroid();
      boolean overCut =
          cut.stream()
              .anyMatch(
                  c ->
                      c.stockId().equals(near.stockId())
                          && c.copy() == near.copy()
                          && LayoutVerifier.polygon(ContinuedLayout.outline(request, c.placement()))
                                  .distance(
                                      LayoutVerifier.polygon(
                                          Outline.rectangle(0.1, 0.1).placed(0, at)))
                              < 1e-9);
      if (!overCut) {
        lost.add(
            new LostCloth(
                near.stockId(), near.copy(), Outline.rectangle(0.1, 0.1).placed(0, at), false));
      }
    }
    return new Begun(cut, all, lost);
  }

  private static void check(LayoutRequest request, Begun begun, LayoutResult result) {
    LayoutVerifier.verify(request, result);
    Set<String> now = new HashSet<>();
    for (LaidPiece piece : laid(result)) {
      Placement p = piece.placement();
      now.add(piece.stockId() + piece.copy() + p.pieceId() + p.copy() + p.rotation() + p.shift());
      Outline outline = ContinuedLayout.outline(request, p);
      for (LostCloth part : begun.lost()) {
        if (part.stockId().equals(piece.stockId()) && part.copy() == piece.copy()) {
          double shared =
              LayoutVerifier.polygon(outline)
                  .intersection(LayoutVerifier.polygon(part.outline()))
                  .getArea();
          assertThat(shared).as("on lost cloth: %s", piece).isLessThan(1e-5);
        }
      }
    }
    for (LaidPiece piece : begun.cut()) {
      Placement p = piece.placement();
      assertThat(now)
          .contains(
              piece.stockId() + piece.copy() + p.pieceId() + p.copy() + p.rotation() + p.shift());
    }
  }

  @Test
  void theRestIsLaidAndWhatIsCutStays() {
    int spoiled = 0;
    for (long seed = 0; seed < REQUESTS; seed++) {
      LayoutRequest request = RandomRequests.of(seed);
      LayoutResult first = CuttingLayout.plan(request, work(seed));
      Begun begun = begun(request, first, Seeds.stream(seed, "fate", 0));
      spoiled += begun.lost().isEmpty() ? 0 : 1;
      try {
        LayoutResult result =
            ContinuedLayout.plan(request, begun.cut(), begun.planned(), begun.lost(), work(seed));
        check(request, begun, result);
        LayoutResult anew =
            ContinuedLayout.plan(request, begun.cut(), List.of(), begun.lost(), work(seed));
        check(request, begun, anew);
        double here = missing(request, result);
        double there = missing(request, anew);
        assertThat(here).isLessThanOrEqualTo(there + 1e-9);
        if (request.objective() == Objective.FEWEST_ITEMS && Math.abs(here - there) < 1e-9) {
          assertThat(result.used().size()).isLessThanOrEqualTo(anew.used().size());
        }
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("request " + seed + ": " + request + begun, e);
      }
    }
    assertThat(spoiled).isGreaterThan(REQUESTS / 3);
  }

  @Test
  void nothingHappenedMeansNothingMoves() {
    for (long seed = 0; seed < REQUESTS / 2; seed++) {
      LayoutRequest request = RandomRequests.of(seed);
      LayoutResult first = CuttingLayout.plan(request, work(seed));
      if (!first.isComplete()) {
        continue;
      }
      List<LaidPiece> all = laid(first);
      List<LaidPiece> half = all.subList(0, all.size() / 2);
      LayoutResult then = ContinuedLayout.plan(request, half, all, List.of(), work(seed + 1));
      assertThat(laid(then)).as("request %s", seed).containsExactlyInAnyOrderElementsOf(all);
      assertThat(then.lowerBound()).isLessThanOrEqualTo(then.objectiveValue());
      assertThat(then.density())
          .isCloseTo(first.density(), org.assertj.core.data.Offset.offset(1e-6));
    }
  }
}
