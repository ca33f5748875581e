package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Runs of tape or rope cut from rolls.
 *
 * <p>Tape may be pieced: its runs are summed. A rope must be in one piece: the runs are laid on
 * rolls longest first, each on the first roll that holds it, which never needs fewer than {@code
 * ceil(sum / roll)} rolls; that bound is told beside the count. Time grows with runs times rolls.
 *
 * @param name what to buy
 * @param rolls rolls to buy, 1 or more
 * @param leastRolls no way of cutting needs fewer
 * @param totalLength length of all runs with their extra, without spare, in metres
 * @param item what to buy
 */
public record Runs(String name, int rolls, int leastRolls, double totalLength, ShoppingItem item) {

  private static final int MOST_RUNS = 10_000;
  private static final double HAIR = 1e-9;

  /**
   * Reckons the rolls.
   *
   * @param name what to buy, not blank
   * @param runsLength length of each run, in metres, each greater than 0, 1 to 10 000 of them
   * @param extraPerRun overlaps, knots or tails of one run, in metres, 0 or more
   * @param spare spare as a part of the need, 0 to 1; each run in one piece is lengthened by it
   * @param rollLength length of a roll, in metres, greater than 0
   * @param inOnePiece true if no run may be pieced
   * @return the rolls
   * @throws IllegalArgumentException if a number is out of range, or a run in one piece is longer
   *     than a roll
   */
  public static Runs of(
      String name,
      List<Double> runsLength,
      double extraPerRun,
      double spare,
      double rollLength,
      boolean inOnePiece) {
    Args.notEmpty("runs of " + name, runsLength);
    Args.within("runs of " + name, runsLength.size(), 1, MOST_RUNS);
    Args.notNegative("extra of each run of " + name, extraPerRun, "m");
    Args.within("spare of " + name, spare, 0, 1, "");
    Args.positive("roll of " + name, rollLength, "m");
    List<Double> lengths = new ArrayList<>();
    for (double run : runsLength) {
      lengths.add(Args.positive("run of " + name, run, "m") + extraPerRun);
    }
    double total = lengths.stream().mapToDouble(Double::doubleValue).sum();
    ShoppingItem summed = ShoppingItem.of(name, "m", total, spare, rollLength);
    if (!inOnePiece) {
      return new Runs(name, summed.packs(), summed.packs(), total, summed);
    }
    int rolls = firstFit(name, lengths.stream().map(l -> l * (1 + spare)).toList(), rollLength);
    ShoppingItem whole = ShoppingItem.of(name + " in whole runs", "roll", rolls, 0, 1);
    return new Runs(name, rolls, summed.packs(), total, whole);
  }

  private static int firstFit(String name, List<Double> lengths, double roll) {
    List<Double> free = new ArrayList<>();
    for (double length : lengths.stream().sorted(Comparator.reverseOrder()).toList()) {
      Args.require(
          length <= roll + HAIR,
          "run of " + name,
          Numbers.significant(length, 4) + " m with extra and spare",
          "must be at most a roll of " + Numbers.plain(roll) + " m as it must be in one piece");
      int at = 0;
      while (at < free.size() && free.get(at) + HAIR < length) {
        at++;
      }
      if (at == free.size()) {
        free.add(roll);
      }
      free.set(at, free.get(at) - length);
    }
    return free.size();
  }
}
