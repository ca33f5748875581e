package io.github.seamstead.geometry.layout;

import io.github.seamstead.benchmarks.InventedStrips;
import io.github.seamstead.geometry.layout.internal.Tuning;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Prints what the strip search comes to on invented strips when one of its numbers is changed.
 *
 * <p>The arguments are the work units for each strip and how many seeds; as in {@code TuningTable
 * 8000000 1}. Names of rows after those leave out the others.
 */
public final class TuningTable {

  private static final long STRIPS = 2026;

  private static final List<String> NAMES =
      List.of(
          "wide",
          "near",
          "touch",
          "kept",
          "grace",
          "record",
          "growth",
          "fade",
          "bias",
          "spread",
          "reach",
          "stride",
          "rungs",
          "reserve",
          "widest",
          "patience");

  /** What is tried for each of the names. */
  private static final double[][] TRIED = {
    {},
    {},
    {0},
    {1, 6},
    {500, 8_000},
    {0.9, 0.99},
    {0.3, 3},
    {0.8, 1},
    {0, 0.5},
    {0, 0.03},
    {0.01, 0.1},
    {0.0005, 0.003},
    {4, 8},
    {1, 64},
    {0.1, 0.6},
    {2_000_000, 1e12}
  };

  /** Searches at once; what each comes to depends on its work and seed alone. */
  private static final int THREADS = 4;

  private TuningTable() {}

  /**
   * Lays every strip with every variant.
   *
   * @param args work units, number of seeds, and the names of the rows wanted if not all
   */
  public static void main(String[] args) {
    long units = Long.parseLong(args[0]);
    int seeds = Integer.parseInt(args[1]);
    Map<String, StripProblem> strips = InventedStrips.of(STRIPS);
    System.out.println("| change | " + String.join(" | ", strips.keySet()) + " | mean |");
    variants()
        .forEach(
            (name, tuning) -> {
              boolean wanted = args.length == 2;
              for (int a = 2; a < args.length; a++) {
                wanted |= args[a].equals(name);
              }
              if (wanted) {
                row(name, tuning, strips, units, seeds);
              }
            });
  }

  private static void row(
      String name, Tuning tuning, Map<String, StripProblem> strips, long units, int seeds) {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    List<Future<Double>> densities = new ArrayList<>();
    for (StripProblem strip : strips.values()) {
      for (int seed = 1; seed <= seeds; seed++) {
        Work work = Work.of(Budget.ofWork(units), seed).on(Runnable::run);
        densities.add(threads.submit(() -> StripLayout.solve(strip, work, tuning).density()));
      }
    }
    threads.shutdown();
    StringBuilder row = new StringBuilder("| " + name + " |");
    double mean = 0;
    for (int s = 0; s < strips.size(); s++) {
      double density = 0;
      for (Future<Double> each : densities.subList(s * seeds, (s + 1) * seeds)) {
        density += 100 * value(each) / seeds;
      }
      mean += density / strips.size();
      row.append(String.format(Locale.ROOT, " %.2f |", density));
    }
    System.out.println(row + String.format(Locale.ROOT, " %.2f |", mean));
  }

  private static double value(Future<Double> density) {
    try {
      return density.get();
    } catch (InterruptedException | ExecutionException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The numbers chosen, and each of them smaller and larger. */
  private static Map<String, Tuning> variants() {
    Tuning c = Tuning.CHOSEN;
    Map<String, Tuning> out = new LinkedHashMap<>();
    out.put("chosen", c);
    out.put("half-the-places", changed(c.wide() / 2.0, c.near() / 2.0, c.touch() / 2.0));
    out.put("twice-the-places", changed(2 * c.wide(), 2 * c.near(), 2 * c.touch()));
    for (int k = 0; k < NAMES.size(); k++) {
      for (double value : TRIED[k]) {
        double[] numbers = numbers(c);
        numbers[k] = value;
        String text = value == Math.rint(value) ? Long.toString((long) value) : "" + value;
        out.put(NAMES.get(k) + "-" + text, tuning(numbers));
      }
    }
    return out;
  }

  private static Tuning changed(double wide, double near, double touch) {
    double[] numbers = numbers(Tuning.CHOSEN);
    numbers[0] = wide;
    numbers[1] = near;
    numbers[2] = touch;
    return tuning(numbers);
  }

  private static double[] numbers(Tuning c) {
    return new double[] {
      c.wide(),
      c.near(),
      c.touch(),
      c.kept(),
      c.grace(),
      c.record(),
      c.growth(),
      c.fade(),
      c.bias(),
      c.spread(),
      c.reach(),
      c.leastStride(),
      c.rungs(),
      c.reserve(),
      c.widest(),
      c.patience()
    };
  }

  private static Tuning tuning(double[] v) {
    return new Tuning(
        (int) v[0],
        (int) v[1],
        (int) v[2],
        (int) v[3],
        (long) v[4],
        v[5],
        v[6],
        v[7],
        v[8],
        v[9],
        v[10],
        v[11],
        (int) v[12],
        (int) v[13],
        v[14],
        (long) v[15]);
  }
}
