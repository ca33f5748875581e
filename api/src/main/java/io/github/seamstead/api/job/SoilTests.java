package io.github.seamstead.api.job;

import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.DropTest;
import io.github.seamstead.materials.soil.DryStrengthTest;
import io.github.seamstead.materials.soil.ShineTest;
import io.github.seamstead.materials.soil.SqueezeTest;
import io.github.seamstead.materials.soil.WashTest;
import java.util.Optional;

/**
 * Tests made of one soil while the job goes on. What is left out stays as the job states it.
 *
 * @param soil the soil, by its name
 * @param squeeze a moist handful squeezed, if made
 * @param drop a moist ball dropped from 1.5 m, if made
 * @param thread the thinnest thread that it can be rolled to, in metres, if made
 * @param bend a roll bent to a ring, if made
 * @param ribbon mean length of the ribbons before they break, in metres, if made
 * @param wash how it feels between wet hands, if made
 * @param shine a moist ball cut with a knife, if made
 * @param dryStrength a dry lump broken by hand, if made
 * @param jar the jar test, if made
 * @param laboratory shares from a laboratory, if made
 * @param sieve a sieve analysis, if made
 * @param hydrometer a hydrometer analysis, if made
 * @param shrinkage the shrinkage bar, if made
 * @param moisture water over dry mass as it lies, as a part of one, if measured
 */
public record SoilTests(
    String soil,
    Optional<SqueezeTest.Outcome> squeeze,
    Optional<DropTest.Outcome> drop,
    Optional<Double> thread,
    Optional<BendTest.Outcome> bend,
    Optional<Double> ribbon,
    Optional<WashTest.Outcome> wash,
    Optional<ShineTest.Outcome> shine,
    Optional<DryStrengthTest.Outcome> dryStrength,
    Optional<JarReading> jar,
    Optional<LaboratorySheet> laboratory,
    Optional<SieveSheet> sieve,
    Optional<HydrometerSheet> hydrometer,
    Optional<ShrinkageBar> shrinkage,
    Optional<Double> moisture) {

  /**
   * Puts the tests into what the job states of the soil.
   *
   * @param stated the soil as the job states it
   * @return the soil with each test replaced by the newer one
   */
  public SoilSample into(SoilSample stated) {
    boolean rolled = thread.isPresent();
    return new SoilSample(
        stated.id(),
        stated.note(),
        squeeze.or(stated::squeeze),
        drop.or(stated::drop),
        thread.or(stated::thread),
        stated.cannotBeRolled() && !rolled,
        bend.or(stated::bend),
        ribbon.or(stated::ribbon),
        wash.or(stated::wash),
        shine.or(stated::shine),
        dryStrength.or(stated::dryStrength),
        jar.or(stated::jar),
        laboratory.or(stated::laboratory),
        sieve.or(stated::sieve),
        hydrometer.or(stated::hydrometer),
        stated.liquidLimit(),
        stated.plasticLimit(),
        shrinkage.or(stated::shrinkage),
        stated.signs(),
        moisture.orElse(stated.moisture()),
        stated.bulking(),
        stated.stones(),
        moisture.isPresent() ? Optional.empty() : stated.dried(),
        stated.weighed(),
        stated.screened(),
        stated.pricePerTonne());
  }
}
