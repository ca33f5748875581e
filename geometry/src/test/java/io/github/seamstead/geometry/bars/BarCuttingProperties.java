package io.github.seamstead.geometry.bars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class BarCuttingProperties {

  /** Against all ways of putting few pieces on bars, tried one piece after another. */
  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, seed = "2026110014")
  void smallPlansAreTheBest(
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 5, max = 60) Integer> lengths,
      @ForAll @IntRange(min = 0, max = 2) int kerf,
      @ForAll boolean twoLengths) {
    List<BarPiece> pieces = new ArrayList<>();
    for (int i = 0; i < lengths.size(); i++) {
      pieces.add(new BarPiece("p" + i, lengths.get(i) / 10.0, 1));
    }
    List<BarStock> stock = new ArrayList<>(List.of(BarStock.unlimited("long", 6)));
    int[] bars = twoLengths ? new int[] {60, 45} : new int[] {60};
    if (twoLengths) {
      stock.add(BarStock.unlimited("short", 4.5));
    }
    BarPlan plan = BarCutting.plan(pieces, stock, kerf * 0.01);
    BarCuttingTest.assertSound(plan, pieces);
    assertThat(plan.proven()).isTrue();
    double least = brute(lengths, 0, new ArrayList<>(), bars, kerf * 0.1) / 10.0;
    assertThat(plan.usedLength()).isCloseTo(least, within(1e-9));
  }

  /** Rooms are what is left of each open bar, one kerf more at the start; in decimetres. */
  private static double brute(
      List<Integer> lengths, int next, List<Double> rooms, int[] bars, double kerf) {
    if (next == lengths.size()) {
      return 0;
    }
    double width = lengths.get(next) + kerf;
    double best = Double.POSITIVE_INFINITY;
    for (int b = 0; b < rooms.size(); b++) {
      double room = rooms.get(b);
      if (width <= room + 1e-9) {
        rooms.set(b, room - width);
        best = Math.min(best, brute(lengths, next + 1, rooms, bars, kerf));
        rooms.set(b, room);
      }
    }
    for (int bar : bars) {
      if (width <= bar + kerf + 1e-9) {
        rooms.add(bar + kerf - width);
        best = Math.min(best, bar + brute(lengths, next + 1, rooms, bars, kerf));
        rooms.remove(rooms.size() - 1);
      }
    }
    return best;
  }
}
