package io.github.seamstead.api.job;

import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.DropTest;
import io.github.seamstead.materials.soil.DryStrengthTest;
import io.github.seamstead.materials.soil.ShineTest;
import io.github.seamstead.materials.soil.SqueezeTest;
import io.github.seamstead.materials.soil.WarningSign;
import io.github.seamstead.materials.soil.WashTest;
import java.util.List;
import java.util.Optional;

/**
 * A local soil and the tests that were made of it.
 *
 * @param id its name, by which mixes and layers call it
 * @param note where it was dug, if stated
 * @param squeeze a moist handful squeezed, if stated
 * @param drop a moist ball dropped from 1.5 m, if stated
 * @param thread the thinnest thread that it can be rolled to, in metres, if stated
 * @param cannotBeRolled true if no thread holds
 * @param bend a roll bent to a ring, if stated
 * @param ribbon mean length of the ribbons before they break, in metres, if stated
 * @param wash how it feels between wet hands, if stated
 * @param shine a moist ball cut with a knife, if stated
 * @param dryStrength a dry lump broken by hand, if stated
 * @param jar the jar test, if stated
 * @param laboratory shares from a laboratory, if stated
 * @param sieve a sieve analysis, if stated
 * @param hydrometer a hydrometer analysis, if stated
 * @param liquidLimit liquid limit, as a part of one, if stated
 * @param plasticLimit plastic limit, as a part of one, if stated
 * @param shrinkage the shrinkage bar, if stated
 * @param signs warning signs noticed
 * @param moisture water over dry mass as it lies, as a part of one
 * @param bulking how much more room it takes as it lies than dry, as a part of one
 * @param stones share of the raw soil that is screened out, as a part of one
 * @param dried a sample dried to tell its moisture, if made
 * @param weighed a weighed bucket of it, if made
 * @param screened a weighed heap that was screened, if made
 * @param pricePerTonne price of a tonne, in the money of the site, if stated
 */
public record SoilSample(
    String id,
    Optional<String> note,
    Optional<SqueezeTest.Outcome> squeeze,
    Optional<DropTest.Outcome> drop,
    Optional<Double> thread,
    boolean cannotBeRolled,
    Optional<BendTest.Outcome> bend,
    Optional<Double> ribbon,
    Optional<WashTest.Outcome> wash,
    Optional<ShineTest.Outcome> shine,
    Optional<DryStrengthTest.Outcome> dryStrength,
    Optional<JarReading> jar,
    Optional<LaboratorySheet> laboratory,
    Optional<SieveSheet> sieve,
    Optional<HydrometerSheet> hydrometer,
    Optional<Double> liquidLimit,
    Optional<Double> plasticLimit,
    Optional<ShrinkageBar> shrinkage,
    List<WarningSign.Kind> signs,
    double moisture,
    double bulking,
    double stones,
    Optional<DriedSample> dried,
    Optional<WeighedBucket> weighed,
    Optional<ScreenedHeap> screened,
    Optional<Double> pricePerTonne) {

  /**
   * Copies the lists.
   *
   * @param id its name, by which mixes and layers call it
   * @param note where it was dug, if stated
   * @param squeeze a moist handful squeezed, if stated
   * @param drop a moist ball dropped from 1.5 m, if stated
   * @param thread the thinnest thread that it can be rolled to, in metres, if stated
   * @param cannotBeRolled true if no thread holds
   * @param bend a roll bent to a ring, if stated
   * @param ribbon mean length of the ribbons before they break, in metres, if stated
   * @param wash how it feels between wet hands, if stated
   * @param shine a moist ball cut with a knife, if stated
   * @param dryStrength a dry lump broken by hand, if stated
   * @param jar the jar test, if stated
   * @param laboratory shares from a laboratory, if stated
   * @param sieve a sieve analysis, if stated
   * @param hydrometer a hydrometer analysis, if stated
   * @param liquidLimit liquid limit, as a part of one, if stated
   * @param plasticLimit plastic limit, as a part of one, if stated
   * @param shrinkage the shrinkage bar, if stated
   * @param signs warning signs noticed
   * @param moisture water over dry mass as it lies, as a part of one
   * @param bulking how much more room it takes as it lies than dry, as a part of one
   * @param stones share of the raw soil that is screened out, as a part of one
   * @param dried a sample dried to tell its moisture, if made
   * @param weighed a weighed bucket of it, if made
   * @param screened a weighed heap that was screened, if made
   * @param pricePerTonne price of a tonne, in the money of the site, if stated
   */
  public SoilSample {
    signs = List.copyOf(signs);
  }
}
