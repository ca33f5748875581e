package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;
import java.util.Optional;

/**
 * Roll test: how thin a roll of moist fine soil can be rolled before it falls apart.
 *
 * <p>The published table gives clay bands for 3 to 6, 3, 2, 1 to 1.5, 1 and below 1 mm. Its holes
 * are closed half-way (6 mm and more counts with "cannot be rolled"). Likelihood: ordered outcomes
 * with a spread of 4 % at 25 % of clay and in proportion to clay + 5 % elsewhere; with probability
 * 0.08 the test misleads.
 *
 * @param thinnest diameter of the thinnest roll that holds, in metres, 0.0003 to 0.05; empty if it
 *     cannot be rolled; 0.0003 to 0.05 m if present
 */
public record RollTest(Optional<Double> thinnest) implements SoilEvidence {

  /** Where the table stands. */
  public static final Source SOURCE =
      Source.found("Lag, in Berge", "The Ecology of Building Materials", "1979", "table 8.4");

  private static final double[] FROM_MM = {6, 3.25, 2.5, 1.5, 1.15, 0.85};

  public RollTest {
    thinnest.ifPresent(d -> Args.within("thinnest roll", d, 0.0003, 0.05, "m"));
  }

  /**
   * Makes a test whose roll held.
   *
   * @param thinnest diameter of the thinnest roll that holds, in metres
   * @return the test
   */
  public static RollTest holding(double thinnest) {
    return new RollTest(Optional.of(thinnest));
  }

  /**
   * Makes a test of a soil that cannot be rolled.
   *
   * @return the test
   */
  public static RollTest cannotBeRolled() {
    return new RollTest(Optional.empty());
  }

  @Override
  public String label() {
    return thinnest.isEmpty()
        ? "roll test: cannot be rolled"
        : "roll test: holds at " + Numbers.significant(thinnest.get() * 1000, 2) + " mm";
  }

  @Override
  public List<Source> sources() {
    return List.of(SOURCE);
  }

  @Override
  public TextureLikelihood likelihood() {
    int outcome = 0;
    if (thinnest.isPresent()) {
      while (outcome < FROM_MM.length && thinnest.get() * 1000 < FROM_MM[outcome]) {
        outcome++;
      }
    }
    return new OrdinalScale(0.04, 0.02, 0.05, 0.15, 0.25, 0.40, 0.60).of(outcome);
  }
}
