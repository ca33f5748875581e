package io.github.seamstead.geometry.bars;

import io.github.seamstead.geometry.bars.BarPlan.CutBar;
import io.github.seamstead.shared.check.Args;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Turns pieces and bars into whole numbers and a plan back into named pieces. */
final class BarModel {

  /** What a bar that is not there costs beside the dearest that is. */
  private static final long LACK = 1000;

  private final List<BarStock> stock;
  private final double kerf;
  private final TreeMap<Long, List<BarPiece>> byWidth = new TreeMap<>(Collections.reverseOrder());
  private final BarProblem problem;
  private final int lack;

  BarModel(List<BarPiece> pieces, List<BarStock> stock, double kerf) {
    this.stock = List.copyOf(stock);
    this.kerf = kerf;
    long cut = (long) Math.ceil(kerf / BarProblem.UNIT - 1e-6);
    for (BarPiece piece : pieces) {
      long width = (long) Math.ceil(piece.length() / BarProblem.UNIT - 1e-6) + cut;
      byWidth.computeIfAbsent(width, w -> new ArrayList<>()).add(piece);
    }
    Args.require(
        byWidth.size() <= BarCutting.MOST_LENGTHS,
        "pieces",
        byWidth.size() + " different lengths",
        "must be at most " + BarCutting.MOST_LENGTHS);
    long[] length = new long[stock.size()];
    for (int s = 0; s < length.length; s++) {
      length[s] = (long) Math.floor(stock.get(s).length() / BarProblem.UNIT + 1e-6);
    }
    boolean suffices = suffices(length, cut);
    this.lack = suffices ? -1 : length.length;
    this.problem = problem(length, cut, suffices);
  }

  /** Some bar that can be had without limit holds the longest piece. */
  private boolean suffices(long[] length, long cut) {
    for (int s = 0; s < length.length; s++) {
      if (stock.get(s).available().isEmpty() && length[s] + cut >= byWidth.firstKey()) {
        return true;
      }
    }
    return false;
  }

  private BarProblem problem(long[] length, long cut, boolean suffices) {
    int stocks = length.length + (suffices ? 0 : 1);
    long[] capacity = new long[stocks];
    long[] cost = new long[stocks];
    int[] available = new int[stocks];
    long longest = 0;
    for (int s = 0; s < length.length; s++) {
      capacity[s] = length[s] + cut;
      cost[s] = length[s];
      available[s] = stock.get(s).available().orElse(BarProblem.UNLIMITED);
      longest = Math.max(longest, length[s]);
    }
    if (!suffices) {
      capacity[stocks - 1] = longest + cut;
      cost[stocks - 1] = LACK * longest;
      available[stocks - 1] = BarProblem.UNLIMITED;
    }
    long[] width = byWidth.keySet().stream().mapToLong(Long::longValue).toArray();
    int[] demand =
        byWidth.values().stream()
            .mapToInt(same -> same.stream().mapToInt(BarPiece::count).sum())
            .toArray();
    return new BarProblem(width, demand, capacity, cost, available);
  }

  BarProblem problem() {
    return problem;
  }

  BarPlan plan(List<BarPattern> patterns, double lowerBound, boolean proven) {
    List<Deque<BarPiece>> waiting = new ArrayList<>();
    for (List<BarPiece> same : byWidth.values()) {
      Deque<BarPiece> queue = new ArrayDeque<>();
      for (BarPiece piece : same) {
        BarPiece one = new BarPiece(piece.name(), piece.length(), 1);
        queue.addAll(Collections.nCopies(piece.count(), one));
      }
      waiting.add(queue);
    }
    Map<CutBar, Integer> bars = new LinkedHashMap<>();
    List<BarPiece> missing = new ArrayList<>();
    double pieceLength = 0;
    double used = 0;
    for (BarPattern pattern : patterns) {
      List<BarPiece> pieces = named(pattern, waiting);
      if (pattern.stock == lack) {
        missing.addAll(pieces);
        continue;
      }
      double length = pieces.stream().mapToDouble(p -> p.length() * p.count()).sum();
      int cuts = pieces.stream().mapToInt(BarPiece::count).sum();
      BarStock bar = stock.get(pattern.stock);
      double offcut = Math.max(0, bar.length() - length - cuts * kerf);
      bars.merge(new CutBar(bar, 1, pieces, offcut), 1, Integer::sum);
      pieceLength += length;
      used += bar.length();
    }
    List<CutBar> grouped = new ArrayList<>();
    bars.forEach(
        (bar, times) -> grouped.add(new CutBar(bar.stock(), times, bar.pieces(), bar.offcut())));
    double bound = missing.isEmpty() ? lowerBound : 0;
    return new BarPlan(grouped, kerf, used, pieceLength, bound, proven, merged(missing));
  }

  private static List<BarPiece> named(BarPattern pattern, List<Deque<BarPiece>> waiting) {
    List<BarPiece> pieces = new ArrayList<>();
    for (int i = 0; i < waiting.size(); i++) {
      for (int k = 0; k < pattern.count(i); k++) {
        pieces.add(waiting.get(i).remove());
      }
    }
    return merged(pieces);
  }

  private static List<BarPiece> merged(List<BarPiece> pieces) {
    Map<BarPiece, Integer> counts = new LinkedHashMap<>();
    for (BarPiece piece : pieces) {
      counts.merge(new BarPiece(piece.name(), piece.length(), 1), piece.count(), Integer::sum);
    }
    List<BarPiece> merged = new ArrayList<>();
    counts.forEach((piece, n) -> merged.add(new BarPiece(piece.name(), piece.length(), n)));
    return merged;
  }
}
