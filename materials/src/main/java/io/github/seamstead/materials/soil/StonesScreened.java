package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Optional;

/**
 * Gravel and stones screened out of a weighed heap: {@code gravel = stones / all}. A screen coarser
 * than 2 mm leaves fine gravel behind, which is said. Standard uncertainty: 15 % of the share plus
 * 1 % (damp soil clings to stones: common practice).
 *
 * @param stonesMass mass held by the screen, kg, 0 or more; at most the total
 * @param totalMass mass before screening, kg, above 0
 * @param opening opening of the screen, in metres, 0.002 to 0.1; 0.002 to 0.1 m
 */
public record StonesScreened(double stonesMass, double totalMass, double opening)
    implements SoilEvidence {

  public StonesScreened {
    Args.positive("mass before screening", totalMass, "kg");
    Args.within("mass of stones", stonesMass, 0, totalMass, "kg");
    Args.within("screen opening", opening, 0.002, 0.1, "m");
  }

  @Override
  public String label() {
    return "stones screened out at "
        + Numbers.significant(opening * 1000, 3)
        + " mm: "
        + Numbers.significant(stonesMass / totalMass * 100, 2)
        + " %";
  }

  @Override
  public List<Source> sources() {
    return List.of(Source.derived("share of mass held by the screen"));
  }

  @Override
  public TextureLikelihood likelihood() {
    ClayLikelihood none = clay -> 1;
    return none;
  }

  @Override
  public Optional<Uncertain> gravelRatio() {
    double share = stonesMass / totalMass;
    return Optional.of(new Uncertain(share, 0.15 * share + 0.01));
  }

  @Override
  public List<String> remarks() {
    return opening > 0.0025
        ? List.of(
            "Gravel between 2 mm and the screen's "
                + Numbers.significant(opening * 1000, 3)
                + " mm passed and is not counted.")
        : List.of();
  }
}
