package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import java.util.Optional;

/**
 * Pull on a block and tackle. Used is the Navy's rule, a part of the load for each sheave: {@code F
 * (1 + k n) / p}. Its rival lets each sheave lose that part of the tension: {@code F / sum eta^i},
 * {@code eta = 1 / (1 + k)}.
 *
 * @param parts parts of rope at the moving block, 1 to 8
 * @param sheaves sheaves that the rope runs over, {@code parts} or one less
 * @param loss loss at a sheave as a part of the load, 0 to 0.5; sailors say 0.05 to 0.08, the Navy
 *     0.10
 */
public record Tackle(int parts, int sheaves, double loss) {

  /** The most parts of rope at the moving block. */
  public static final int MOST_PARTS = 8;

  /** Loss at a sheave, a tenth of the load. */
  public static final double USUAL_LOSS = 0.1;

  private static final Source NAVY =
      Source.found("US Navy", "Steelworker, volume 2", "", "friction of tackle, 10 % each sheave");
  private static final Source TENSION = Source.derived("tension falls at each sheave");

  public Tackle {
    Args.within("parts at the moving block", parts, 1, MOST_PARTS);
    Args.within("sheaves", sheaves, parts - 1, parts);
    Args.within("loss at a sheave", loss, 0, 0.5, "");
  }

  /**
   * Finds the least tackle that lets few people raise a load: the hauling part comes off the
   * standing block, so that there are as many sheaves as parts, with a loss of a tenth at each. The
   * greater of the two printed rules counts.
   *
   * @param load load of one rope, in newtons, greater than 0
   * @param people people who haul on that rope, 1 or more
   * @param pullPerPerson steady pull of one person, in newtons, greater than 0
   * @return the tackle, or nothing if {@link #MOST_PARTS} parts do not do
   * @throws IllegalArgumentException if a number is not positive
   */
  public static Optional<Tackle> least(double load, int people, double pullPerPerson) {
    Args.positive("load of the tackle", load, "N");
    Args.within("people who haul", people, 1, 1000);
    Args.positive("pull of one person", pullPerPerson, "N");
    for (int parts = 2; parts <= MOST_PARTS; parts++) {
      Tackle tackle = new Tackle(parts, parts, USUAL_LOSS);
      if (tackle.greaterPull(load) <= people * pullPerPerson) {
        return Optional.of(tackle);
      }
    }
    return Optional.empty();
  }

  /**
   * Gives the greater of the pulls by both rules.
   *
   * @param load the load, in newtons, greater than 0
   * @return in newtons
   * @throws IllegalArgumentException if the load is not positive
   */
  public double greaterPull(double load) {
    return Math.max(pull(load), rivalPull(load));
  }

  /**
   * Computes the pull that raises a load.
   *
   * @param load the load, in newtons, greater than 0
   * @return in newtons
   * @throws IllegalArgumentException if the load is not positive
   */
  public double pull(double load) {
    return pull(load, Steps.none());
  }

  /**
   * Computes the pull that raises a load, with the steps.
   *
   * @param load the load, in newtons, greater than 0
   * @param steps where the steps go
   * @return in newtons
   * @throws IllegalArgumentException if the load is not positive
   */
  @Calculation("assembly.handling.tackle")
  public double pull(double load, Steps steps) {
    Args.positive("load of the tackle", load, "N");
    steps
        .step("F_rival", "pull by the rival rule, for comparison")
        .from(TENSION)
        .gives(rivalPull(load), "N");
    return steps
        .step("F_t", "pull on the tackle")
        .formula("F * (1 + k * n) / p")
        .with("F", load, "N")
        .with("k", loss, "")
        .with("n", sheaves, "")
        .with("p", parts, "")
        .from(NAVY)
        .gives(load * (1 + loss * sheaves) / parts, "N");
  }

  /**
   * Computes the pull by the rival rule, for comparison.
   *
   * @param load the load, in newtons, greater than 0
   * @return in newtons
   * @throws IllegalArgumentException if the load is not positive
   */
  public double rivalPull(double load) {
    Args.positive("load of the tackle", load, "N");
    double kept = 1 / (1 + loss);
    double tension = sheaves == parts ? kept : 1;
    double sum = 0;
    for (int part = 0; part < parts; part++) {
      sum += tension;
      tension *= kept;
    }
    return load / sum;
  }
}
