package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * The pull on the worst peg beside what a peg held in the builder's test.
 *
 * @param screen the wind on the cover
 * @param test the pull tests
 */
public record PegCheck(WindScreen screen, PegTest test) {

  private static final Source DERIVED = Source.derived("pull over holding");

  /**
   * Compares.
   *
   * @param screen the wind on the cover
   * @param test the pull tests
   * @return the comparison
   */
  public static PegCheck of(WindScreen screen, PegTest test) {
    return new PegCheck(screen, test);
  }

  /**
   * Computes how much of the holding is used.
   *
   * @return pull over holding; more than 1 is too much
   */
  public double usedRatio() {
    return screen.pegPull() / test.holding();
  }

  /**
   * Computes how many such pegs would be needed.
   *
   * @return pegs round the base, the present number or more
   */
  public int pegsNeeded() {
    return (int) pegsNeeded(Steps.none());
  }

  /**
   * Computes how many such pegs would be needed, with the steps. The pull on a peg falls as their
   * number grows.
   *
   * @param steps where the steps go
   * @return pegs round the base, a whole number, the present number or more
   * @throws IllegalArgumentException if more than a million would be needed
   */
  @Calculation("assembly.anchor.pegs")
  public double pegsNeeded(Steps steps) {
    double pull = screen.pegPull(steps);
    double holding = test.holding(steps);
    double needed = Math.max(screen.pegs(), Math.ceil(screen.pegs() * pull / holding - 0.000001));
    Args.require(
        needed <= 1e6,
        "pegs needed: " + Numbers.significant(needed, 3) + ", the tested pegs are of no use here");
    return steps
        .step("N_need", "pegs needed")
        .formula("max(N, ceil(N * P / F_h - 0.000001))")
        .with("N", screen.pegs(), "")
        .with("P", pull, "N")
        .with("F_h", holding, "N")
        .from(DERIVED)
        .gives(needed, "");
  }

  /**
   * Writes the outcome.
   *
   * @return pull, holding, ratio and pegs, and that this is a screening
   */
  public String text() {
    double ratio = usedRatio();
    String outcome =
        ratio <= 1
            ? "within what the pegs held in your test"
            : "more than the pegs may be asked to hold: "
                + pegsNeeded()
                + " such pegs, longer pegs or ballast are needed, or a lower wind limit";
    return "Worst peg: "
        + Numbers.significant(screen.pegPull(), 3)
        + " N, "
        + Numbers.fixed(Math.toDegrees(screen.pullAngle()), 0)
        + " degrees above the ground; a peg may be asked to hold "
        + Numbers.significant(test.holding(), 3)
        + " N ("
        + Numbers.fixed(100 * ratio, 0)
        + " % used): "
        + outcome
        + ". "
        + Caution.DEFERENCE;
  }

  /**
   * Gives the cautions of both sides.
   *
   * @return wind, structure and test
   */
  public List<Caution> cautions() {
    List<Caution> all = new ArrayList<>(screen.cautions());
    all.add(test.caution());
    return List.copyOf(all);
  }
}
