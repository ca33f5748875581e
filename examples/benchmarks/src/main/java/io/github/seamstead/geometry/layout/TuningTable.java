package io.github.seamstead.geometry.layout;

import io.github.seamstead.benchmarks.InventedStrips;
import io.github.seamstead.geometry.layout.internal.Tuning;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Prints what the strip search comes to on invented strips when one of its numbers is changed.
 *
 * <p>The arguments are the work units for each strip and how many seeds; as in {@code TuningTable
 * 8000000 1}. Names of rows after those leave out the others.
 */
public final class TuningTable {

  private static final long STRIPS = 2026;

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
    StringBuilder row = new StringBuilder("| " + name + " |");
    double mean = 0;
    for (StripProblem strip : strips.values()) {
      double density = 0;
      for (int seed = 1; seed <= seeds; seed++) {
        Work work = Work.of(Budget.ofWork(units), seed).on(Runnable::run);
        density += 100 * StripLayout.solve(strip, work, tuning).density() / seeds;
      }
      mean += density / strips.size();
      row.append(String.format(Locale.ROOT, " %.2f |", density));
    }
    System.out.println(row + String.format(Locale.ROOT, " %.2f |", mean));
  }

  /** The numbers chosen, and each but a few of them halved and doubled. */
  private static Map<String, Tuning> variants() {
    Tuning c = Tuning.CHOSEN;
    Map<String, Tuning> out = new LinkedHashMap<>();
    out.put("chosen", c);
    out.put("half-the-places", places(c, c.wide() / 2, c.near() / 2, c.touch() / 2, c.kept()));
    out.put("twice-the-places", places(c, 2 * c.wide(), 2 * c.near(), 2 * c.touch(), c.kept()));
    out.put("no-touches", places(c, c.wide() + c.touch(), c.near(), 0, c.kept()));
    out.put("kept-1", places(c, c.wide(), c.near(), c.touch(), 1));
    out.put("kept-6", places(c, c.wide(), c.near(), c.touch(), 6));
    out.put("grace-500", parting(c, 500, c.growth(), c.fade()));
    out.put("grace-8000", parting(c, 8_000, c.growth(), c.fade()));
    out.put("growth-0.3", parting(c, c.grace(), 0.3, c.fade()));
    out.put("growth-3", parting(c, c.grace(), 3, c.fade()));
    out.put("fade-0.8", parting(c, c.grace(), c.growth(), 0.8));
    out.put("fade-1", parting(c, c.grace(), c.growth(), 1));
    out.put("reach-0.01", steps(c, 0.01, c.leastStride(), c.reserve(), c.widest()));
    out.put("reach-0.1", steps(c, 0.1, c.leastStride(), c.reserve(), c.widest()));
    out.put("stride-0.0005", steps(c, c.reach(), 0.0005, c.reserve(), c.widest()));
    out.put("stride-0.003", steps(c, c.reach(), 0.003, c.reserve(), c.widest()));
    out.put("reserve-1", steps(c, c.reach(), c.leastStride(), 1, c.widest()));
    out.put("reserve-64", steps(c, c.reach(), c.leastStride(), 64, c.widest()));
    out.put("widest-0.1", steps(c, c.reach(), c.leastStride(), c.reserve(), 0.1));
    return out;
  }

  private static Tuning places(Tuning c, int wide, int near, int touch, int kept) {
    return new Tuning(
        wide,
        near,
        touch,
        kept,
        c.grace(),
        c.record(),
        c.growth(),
        c.fade(),
        c.reach(),
        c.leastStride(),
        c.rungs(),
        c.reserve(),
        c.widest());
  }

  private static Tuning parting(Tuning c, long grace, double growth, double fade) {
    return new Tuning(
        c.wide(),
        c.near(),
        c.touch(),
        c.kept(),
        grace,
        c.record(),
        growth,
        fade,
        c.reach(),
        c.leastStride(),
        c.rungs(),
        c.reserve(),
        c.widest());
  }

  private static Tuning steps(
      Tuning c, double reach, double leastStride, int reserve, double widest) {
    return new Tuning(
        c.wide(),
        c.near(),
        c.touch(),
        c.kept(),
        c.grace(),
        c.record(),
        c.growth(),
        c.fade(),
        reach,
        leastStride,
        c.rungs(),
        reserve,
        widest);
  }
}
