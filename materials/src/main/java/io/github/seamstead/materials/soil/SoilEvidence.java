package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * One test of a soil: what was seen, how likely that was for each texture, and where the reading
 * rule comes from.
 *
 * <p>Every likelihood is above zero everywhere: each test has a stated probability of misleading
 * altogether (wrong wetness, wrong sample, misprint), so that two tests that contradict each other
 * widen the result instead of silencing one another.
 */
public sealed interface SoilEvidence permits JarTest, LaboratoryTexture, RibbonTest {

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
}
