package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * One line of the shopping list: what is needed, with spare, in whole packs.
 *
 * @param name what to buy, such as {@code staples}; not blank
 * @param unit what is counted, such as {@code piece}, {@code m} or {@code cartridge}; not blank
 * @param need what the work uses up, in {@code unit}, greater than 0
 * @param spare spare as a part of the need, 0 to 1
 * @param packSize how much one pack holds, in {@code unit}, greater than 0
 */
public record ShoppingItem(String name, String unit, double need, double spare, double packSize) {

  /** Unit symbols are shorter than this. */
  private static final int LEAST_WORD = 3;

  private static final Source DERIVED = Source.derived("whole packs that hold need and spare");

  public ShoppingItem {
    Args.notBlank("what to buy", name);
    Args.notBlank("unit of " + name, unit);
    Args.positive("need of " + name, need, unit);
    Args.within("spare of " + name, spare, 0, 1, "");
    Args.positive("pack of " + name, packSize, unit);
    Args.require(
        need * (1 + spare) / packSize <= 1e9,
        "packs of " + name,
        "a pack of " + Numbers.plain(packSize) + " for a need of " + Numbers.plain(need),
        "must be at most 1e9 packs");
  }

  /**
   * Makes a line.
   *
   * @param name what to buy
   * @param unit what is counted
   * @param need what the work uses up, in {@code unit}, greater than 0
   * @param spare spare as a part of the need, 0 to 1
   * @param packSize how much one pack holds, in {@code unit}, greater than 0
   * @return the line
   * @throws IllegalArgumentException if a text is blank or a number is out of range
   */
  public static ShoppingItem of(
      String name, String unit, double need, double spare, double packSize) {
    return new ShoppingItem(name, unit, need, spare, packSize);
  }

  /**
   * Computes need and spare together.
   *
   * @return in {@link #unit()}
   */
  public double withSpare() {
    return need * (1 + spare);
  }

  /**
   * Computes how many packs to buy.
   *
   * @return 1 or more
   */
  public int packs() {
    return (int) packs(Steps.none());
  }

  /**
   * Computes how many packs to buy with the steps.
   *
   * @param steps where the steps go
   * @return 1 or more, a whole number
   */
  @Calculation("assembly.fixings.packs")
  public double packs(Steps steps) {
    double wanted =
        steps
            .step("Q", "need and spare of " + name)
            .formula("q * (1 + w)")
            .with("q", need, unit)
            .with("w", spare, "")
            .from(DERIVED)
            .gives(withSpare(), unit);
    return steps
        .step("P", "packs of " + name)
        .formula("max(1, ceil(Q / p - 0.000001))")
        .with("Q", wanted, unit)
        .with("p", packSize, unit)
        .from(DERIVED)
        .gives(Math.max(1, Math.ceil(wanted / packSize - 0.000001)), "");
  }

  /**
   * Computes what the packs hold.
   *
   * @return in {@link #unit()}
   */
  public double bought() {
    return packs() * packSize;
  }

  /**
   * Computes what is left when the work has used its need and no spare.
   *
   * @return in {@link #unit()}
   */
  public double left() {
    return Math.max(0, bought() - need);
  }

  /**
   * Writes the line. What is sold singly is counted without packs.
   *
   * @return for example {@code staples: 3 packs of 1000 pieces (need 2215, with 10 % spare
   *     2436.5)}, or {@code adhesive: 4 cartridges (need 3.2, with 10 % spare 3.52)}
   */
  public String text() {
    String many = packs() == 1 ? "1 pack of " : packs() + " packs of ";
    return name
        + ": "
        + (packSize == 1 ? counted(packs()) : many + counted(packSize))
        + " (need "
        + Numbers.significant(need, 6)
        + ", with "
        + Numbers.significant(100 * spare, 3)
        + " % spare "
        + Numbers.significant(withSpare(), 6)
        + ")";
  }

  /** A word takes its plural; a symbol such as m or kg stays. */
  private String counted(double amount) {
    boolean word = unit.chars().allMatch(Character::isLetter) && unit.length() >= LEAST_WORD;
    boolean plural = word && amount != 1 && !unit.endsWith("s");
    boolean hissing = unit.endsWith("x") || unit.endsWith("ch") || unit.endsWith("sh");
    return Numbers.significant(amount, 6) + " " + unit + (plural ? hissing ? "es" : "s" : "");
  }
}
