package io.github.seamstead.benchmarks;

import io.github.seamstead.geometry.layout.CuttingLayout;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Prints how near the layouts of invented heaps come to the lower bound on the sheets they need.
 *
 * <p>The arguments are work units, one column each; as in {@code HeapTable 4000 64000 30000000}.
 */
public final class HeapTable {

  private static final int HEAPS = 20;
  private static final long SEED = 20_260;

  private HeapTable() {}

  /**
   * Lays every heap with each count of work.
   *
   * @param args work units
   */
  public static void main(String[] args) {
    List<LayoutRequest> heaps = InventedHeaps.of(HEAPS, SEED);
    double[] gap = new double[args.length];
    int[] items = new int[args.length];
    double[] length = new double[args.length];
    int[] missing = new int[args.length];
    double bound = 0;
    for (int h = 0; h < HEAPS; h++) {
      LayoutRequest request = heaps.get(h);
      int copies = request.pieces().stream().mapToInt(Piece::count).sum();
      List<String> cells = new ArrayList<>();
      double least = 0;
      for (int a = 0; a < args.length; a++) {
        Work work = Work.of(Budget.ofWork(Long.parseLong(args[a])), 1).on(Runnable::run);
        LayoutResult result = CuttingLayout.plan(request, work);
        int out = result.unplaced().stream().mapToInt(Shortfall::count).sum();
        gap[a] += result.gap() / HEAPS;
        items[a] += result.used().size();
        length[a] += result.usedLength();
        missing[a] += out;
        least = Math.max(least, result.lowerBound());
        cells.add(cell(result, out));
      }
      bound += least;
      System.out.printf(
          Locale.ROOT,
          "| %d | %d | %d | %.0f | %s |%n",
          h + 1,
          request.stock().size() - 1,
          copies,
          least,
          String.join(" | ", cells));
    }
    List<String> sums = new ArrayList<>();
    for (int a = 0; a < args.length; a++) {
      sums.add(
          String.format(
              Locale.ROOT,
              "%d, %.1f m, %d out, gap %.1f %%",
              items[a],
              length[a],
              missing[a],
              100 * gap[a]));
    }
    System.out.printf(Locale.ROOT, "| all | | | %.0f | %s |%n", bound, String.join(" | ", sums));
  }

  private static String cell(LayoutResult result, int out) {
    return String.format(
        Locale.ROOT,
        "%d, %.2f m%s",
        result.used().size(),
        result.usedLength(),
        out > 0 ? ", " + out + " out" : "");
  }
}
