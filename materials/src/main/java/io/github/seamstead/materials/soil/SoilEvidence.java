package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Optional;

/**
 * One test of a soil: what was seen, how likely that was for each texture, and where the reading
 * rule comes from.
 *
 * <p>Every likelihood is above zero everywhere: each test has a stated probability of misleading
 * altogether (wrong wetness, wrong sample, misprint), so that two tests that contradict each other
 * widen the result instead of silencing one another.
 */
public sealed interface SoilEvidence
    permits BendTest,
        ConsistencyLimits,
        DropTest,
        DryStrengthTest,
        HarmfulContent,
        HydrometerTest,
        JarTest,
        LaboratoryTexture,
        LinearShrinkage,
        RibbonTest,
        RollTest,
        ShineTest,
        SieveAnalysis,
        SqueezeTest,
        StonesScreened,
        WarningSign,
        WashTest {

  /**
   * Names the test and what was seen.
   *
   * @return one line, for example {@code ribbon test: 45 mm}
   */
  String label();

  /**
   * Tells where the reading rules stand; more than one when published charts differ.
   *
   * @return one source or more
   */
  List<Source> sources();

  /**
   * Prepares the likelihood of what was seen, as a function of the texture.
   *
   * @return a function that is above zero everywhere
   */
  TextureLikelihood likelihood();

  /**
   * Tells what the test says about itself: a reading taken too early, a chart with a hole, a
   * warning on salts.
   *
   * @return sentences, possibly none
   */
  default List<String> remarks() {
    return List.of();
  }

  /**
   * Gives the share of gravel and stones, if the test tells it.
   *
   * @return share of the whole dry mass coarser than 2 mm, with its standard uncertainty
   */
  default Optional<Uncertain> gravelRatio() {
    return Optional.empty();
  }
}
