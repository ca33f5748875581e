package io.github.seamstead.benchmarks;

import io.github.seamstead.geometry.layout.CuttingLayout;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Prints how densely eight invented heaps of odd sheets are cut, beside what their areas alone
 * would allow: the fewest items, the largest first, that have the area of the pieces, and how full
 * those would be.
 *
 * <p>The arguments are work units, one column each; as in {@code HeapDensityTable 4000 3000000}.
 */
public final class HeapDensityTable {

  private static final int HEAPS = 8;
  private static final long SEED = 8_000;

  private HeapDensityTable() {}

  /** The fewest items by area, and the part of them that the pieces fill. */
  private record AreaBound(int items, double density) {

    static AreaBound of(LayoutRequest request) {
      double pieces = area(request);
      List<Double> areas = new ArrayList<>();
      request
          .stock()
          .forEach(
              item -> {
                for (int i = 0; i < item.count(); i++) {
                  areas.add(item.outline().area());
                }
              });
      areas.sort(Comparator.reverseOrder());
      double sum = 0;
      int items = 0;
      while (items < areas.size() && sum < pieces) {
        sum += areas.get(items++);
      }
      return new AreaBound(items, pieces / sum);
    }
  }

  private static double area(LayoutRequest request) {
    return request.pieces().stream().mapToDouble(p -> p.count() * p.outline().area()).sum();
  }

  /**
   * Lays every heap with each count of work.
   *
   * @param args work units
   */
  public static void main(String[] args) {
    double[] density = new double[args.length];
    for (int h = 0; h < HEAPS; h++) {
      LayoutRequest request = InventedHeaps.of(1, SEED + h).get(0);
      int copies = request.pieces().stream().mapToInt(Piece::count).sum();
      AreaBound bound = AreaBound.of(request);
      List<String> cells = new ArrayList<>();
      for (int a = 0; a < args.length; a++) {
        Work work = Work.of(Budget.ofWork(Long.parseLong(args[a])), 1).on(Runnable::run);
        LayoutResult result = CuttingLayout.plan(request, work);
        density[a] += result.density() / HEAPS;
        cells.add(cell(result));
      }
      System.out.printf(
          Locale.ROOT,
          "| %d | %d | %d | %.1f | %d, %.1f %% | %s |%n",
          h + 1,
          request.stock().size() - 1,
          copies,
          area(request),
          bound.items(),
          100 * bound.density(),
          String.join(" | ", cells));
    }
    List<String> means = new ArrayList<>();
    for (double mean : density) {
      means.add(String.format(Locale.ROOT, "mean %.1f %%", 100 * mean));
    }
    System.out.printf(Locale.ROOT, "| all | | | | | %s |%n", String.join(" | ", means));
  }

  private static String cell(LayoutResult result) {
    int out = result.unplaced().stream().mapToInt(Shortfall::count).sum();
    return String.format(
        Locale.ROOT,
        "%d, %.1f %%%s",
        result.used().size(),
        100 * result.density(),
        out > 0 ? ", " + out + " out" : "");
  }
}
