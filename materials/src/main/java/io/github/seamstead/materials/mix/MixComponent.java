package io.github.seamstead.materials.mix;

import io.github.seamstead.materials.soil.GradingCurve;
import io.github.seamstead.materials.soil.Texture;
import io.github.seamstead.materials.water.SandBulking;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Optional;

/**
 * A material that lies on site and goes into a mix.
 *
 * @param name what the builder calls it, such as {@code pit soil}
 * @param grading its grain size curve, gravel and stones included
 * @param clayStandardUncertainty standard uncertainty of its clay share, 0 to 0.5
 * @param particleDensity density of its grains, 2000 to 3500 kg/m3
 * @param looseDryDensity dry mass in a volume filled loosely when dry, with its standard
 *     uncertainty, 600 to 2200 kg/m3
 * @param compactedDryDensity dry mass in a volume when compacted by hand, more than loose, less
 *     than the grains', kg/m3
 * @param moistureRatio mass of water over dry mass as it lies, 0 to 0.6
 * @param bulkingRatio how much more room it takes as it lies than dry, 0 to 1
 * @param pricePerTonne price of a tonne as delivered, damp, in any one currency; empty if unknown
 * @param linearShrinkageRatio linear shrinkage of the material alone from a mould test, 0 to 0.5;
 *     empty if unknown
 */
public record MixComponent(
    String name,
    GradingCurve grading,
    double clayStandardUncertainty,
    double particleDensity,
    Uncertain looseDryDensity,
    double compactedDryDensity,
    double moistureRatio,
    double bulkingRatio,
    Optional<Double> pricePerTonne,
    Optional<Double> linearShrinkageRatio) {

  /** Loose densities of the defaults: earth 1220, dry sand 1555, dry gravel 1680 kg/m3. */
  public static final Source LOOSE_DENSITIES =
      Source.found("", "Engineering tables, dirt and mud densities", "", "loose dry");

  private static final double CLAY_LIMIT = 0.002e-3;
  private static final double LEAST_LOOSE = 600;
  private static final double MOST_COMPACTED = 0.99;

  /** Compacted over loose, at least (common practice). */
  private static final double PACKS = 1.1;

  /**
   * Checks the ranges and that loose is lighter than compacted, and compacted than solid.
   *
   * @param name not blank
   * @param grading the grain size curve
   * @param clayStandardUncertainty 0 to 0.5
   * @param particleDensity 2000 to 3500 kg/m3
   * @param looseDryDensity 600 to 2200 kg/m3
   * @param compactedDryDensity between the loose and the particle density
   * @param moistureRatio 0 to 0.6
   * @param bulkingRatio 0 to 1
   * @param pricePerTonne 0 or more
   * @param linearShrinkageRatio 0 to 0.5
   * @throws IllegalArgumentException if a value is out of range, with the reason
   */
  public MixComponent {
    Args.notBlank("component name", name);
    Args.within(name + ": uncertainty of the clay ratio", clayStandardUncertainty, 0, 0.5, "");
    Args.within(name + ": particle density", particleDensity, 2000, 3500, "kg/m3");
    Args.agree(
        looseDryDensity.value() >= 600 && looseDryDensity.value() <= 2200,
        name + ": loose dry density: given " + Numbers.plain(looseDryDensity.value()) + " kg/m3",
        "must be from 600 kg/m3 to 2200 kg/m3 (a 10 L bucket then holds 6 to 22 kg)");
    Args.agree(
        compactedDryDensity > looseDryDensity.value() && compactedDryDensity < particleDensity,
        name + ": compacted dry density: given " + Numbers.plain(compactedDryDensity) + " kg/m3",
        "must be above the loose "
            + Numbers.plain(looseDryDensity.value())
            + " kg/m3 and below the grains' "
            + Numbers.plain(particleDensity)
            + " kg/m3");
    Args.agree(
        moistureRatio >= 0 && moistureRatio <= 0.6,
        name + ": moisture: given " + Numbers.plain(moistureRatio),
        "must be from 0 to 0.6 (water over dry mass; above that it flows)");
    Args.within(name + ": bulking", bulkingRatio, 0, 1, "");
    pricePerTonne.ifPresent(price -> Args.notNegative(name + ": price per tonne", price, ""));
    linearShrinkageRatio.ifPresent(
        shrinkage -> Args.within(name + ": linear shrinkage", shrinkage, 0, 0.5, ""));
  }

  /**
   * Makes a clay soil with the usual densities: grains 2700 (default for clayey soil), loose 1220
   * ({@link #LOOSE_DENSITIES}, earth), compacted by hand 1750 kg/m3 (common practice).
   *
   * @param name what the builder calls it
   * @param grading its grain size curve
   * @param clayStandardUncertainty standard uncertainty of its clay share
   * @return the component, dry and without a price
   */
  public static MixComponent claySoil(
      String name, GradingCurve grading, double clayStandardUncertainty) {
    return plain(name, grading, clayStandardUncertainty, 2700, 1220, 1750);
  }

  /**
   * Makes a clay soil from its clay share alone; the rest is taken as half silt, half sand, which
   * matters only for the grading.
   *
   * @param name what the builder calls it
   * @param clayRatio clay share of its dry mass with its standard uncertainty
   * @return the component, dry and without a price
   */
  public static MixComponent claySoil(String name, Uncertain clayRatio) {
    double rest = 1 - Args.within(name + ": clay ratio", clayRatio.value(), 0, 1, "");
    Texture texture = Texture.ofClayAndSand(clayRatio.value(), rest / 2);
    return claySoil(name, texture, clayRatio.standardUncertainty());
  }

  /**
   * Makes a clay soil from its texture, without stones.
   *
   * @param name what the builder calls it
   * @param texture its shares of clay, silt and sand
   * @param clayStandardUncertainty standard uncertainty of its clay share
   * @return the component, dry and without a price
   */
  public static MixComponent claySoil(
      String name, Texture texture, double clayStandardUncertainty) {
    return claySoil(name, GradingCurve.ofTexture(texture, 0, 0.02), clayStandardUncertainty);
  }

  /**
   * Makes a washed sand without clay: all of it from 0.063 to 2 mm, grains 2650, loose 1555,
   * compacted 1750 kg/m3; grounds as for {@link #claySoil(String, GradingCurve, double)}.
   *
   * @param name what the builder calls it
   * @return the component, dry and without a price
   */
  public static MixComponent washedSand(String name) {
    GradingCurve curve =
        new GradingCurve(
            List.of(new GradingCurve.Point(0.063e-3, 0), new GradingCurve.Point(2e-3, 1)));
    return plain(name, curve, 0, 2650, 1555, 1750);
  }

  /**
   * Makes a sand as it is dug, with clay in it: the rest as {@link #washedSand}. Its clay counts in
   * the mix.
   *
   * @param name what the builder calls it
   * @param clayRatio clay share of its dry mass with its standard uncertainty, 0 to 0.3
   * @return the component, dry and without a price
   * @throws IllegalArgumentException if the share is out of range
   */
  public static MixComponent pitSand(String name, Uncertain clayRatio) {
    double clay = Args.within(name + ": clay ratio", clayRatio.value(), 0, 0.3, "");
    GradingCurve curve = GradingCurve.ofTexture(Texture.ofClayAndSand(clay, 1 - clay), 0, 2e-3);
    return plain(name, curve, clayRatio.standardUncertainty(), 2650, 1555, 1750);
  }

  /**
   * Makes a gravel without fines: grains 2650, loose 1680, compacted 1900 kg/m3.
   *
   * @param name what the builder calls it
   * @param smallest smallest stone, 0.002 m or more
   * @param largest largest stone, above the smallest, to 0.2 m
   * @return the component, dry and without a price
   */
  public static MixComponent gravel(String name, double smallest, double largest) {
    GradingCurve curve =
        new GradingCurve(
            List.of(
                new GradingCurve.Point(Args.within("smallest stone", smallest, 0.002, 0.2, "m"), 0),
                new GradingCurve.Point(largest, 1)));
    return plain(name, curve, 0, 2650, 1680, 1900);
  }

  private static MixComponent plain(
      String name,
      GradingCurve grading,
      double clayDoubt,
      double grain,
      double loose,
      double compacted) {
    return new MixComponent(
        name,
        grading,
        clayDoubt,
        grain,
        // Published loose densities scatter by about 15 %, taken as two standard deviations.
        new Uncertain(loose, 0.075 * loose),
        compacted,
        0,
        0,
        Optional.empty(),
        Optional.empty());
  }

  /**
   * The same with a moisture and a bulking.
   *
   * @param moisture mass of water over dry mass as it lies, 0 to 0.6
   * @param bulking how much more room it takes than dry, 0 to 1; see {@link SandBulking}
   * @return the changed component
   */
  public MixComponent damp(double moisture, double bulking) {
    return new MixComponent(
        name,
        grading,
        clayStandardUncertainty,
        particleDensity,
        looseDryDensity,
        compactedDryDensity,
        moisture,
        bulking,
        pricePerTonne,
        linearShrinkageRatio);
  }

  /**
   * The same with other densities, such as those of a weighed bucket.
   *
   * @param grain density of the grains, kg/m3
   * @param loose loose dry density with its standard uncertainty, kg/m3
   * @param compacted compacted dry density, kg/m3
   * @return the changed component
   */
  public MixComponent withDensities(double grain, Uncertain loose, double compacted) {
    return new MixComponent(
        name,
        grading,
        clayStandardUncertainty,
        grain,
        loose,
        compacted,
        moistureRatio,
        bulkingRatio,
        pricePerTonne,
        linearShrinkageRatio);
  }

  /**
   * The same with a loose density off what is thought, but never as dense as compacted.
   *
   * @param score how many of its standard uncertainties it is off; finite
   * @return the changed component
   */
  public MixComponent withLooseDensityMoved(double score) {
    return score == 0
        ? this
        : withDensities(
            particleDensity,
            looseDryDensity.moved(score, LEAST_LOOSE, compactedDryDensity * MOST_COMPACTED),
            compactedDryDensity);
  }

  /**
   * The same with the loose density that a weighed bucket tells, as it lies: {@code m / (V (1 +
   * w))} of dry mass in a cubic metre. The balance is good to 3 % with the filling (common
   * practice).
   *
   * @param volume of the material in the bucket, struck level, in m3, above 0
   * @param mass of the material, water included, in kg, above 0
   * @return the changed component; its moisture and bulking stay
   * @throws IllegalArgumentException if that is not the density of loose earth, sand or gravel
   */
  public MixComponent weighed(double volume, double mass) {
    Args.positive(name + ": volume of the bucket", volume, "m3");
    Args.positive(name + ": mass in the bucket", mass, "kg");
    double loose = mass / volume / (1 + moistureRatio) * (1 + bulkingRatio);
    double compacted =
        Math.min(0.95 * particleDensity, Math.max(compactedDryDensity, PACKS * loose));
    return withDensities(particleDensity, new Uncertain(loose, 0.03 * loose), compacted);
  }

  /**
   * The same with a price.
   *
   * @param price price of a tonne as delivered, damp, in any one currency
   * @return the changed component
   */
  public MixComponent withPricePerTonne(double price) {
    return new MixComponent(
        name,
        grading,
        clayStandardUncertainty,
        particleDensity,
        looseDryDensity,
        compactedDryDensity,
        moistureRatio,
        bulkingRatio,
        Optional.of(price),
        linearShrinkageRatio);
  }

  /**
   * The same with the linear shrinkage of the material alone.
   *
   * @param shrinkage shortening over mould length, 0 to 0.5
   * @return the changed component
   */
  public MixComponent withLinearShrinkage(double shrinkage) {
    return new MixComponent(
        name,
        grading,
        clayStandardUncertainty,
        particleDensity,
        looseDryDensity,
        compactedDryDensity,
        moistureRatio,
        bulkingRatio,
        pricePerTonne,
        Optional.of(shrinkage));
  }

  /**
   * Gives the clay share of its whole dry mass, gravel included.
   *
   * @return the share finer than 0.002 mm with its standard uncertainty
   */
  public Uncertain clayRatio() {
    return new Uncertain(grading.finer(CLAY_LIMIT), clayStandardUncertainty);
  }

  /**
   * Gives the dry mass in a cubic metre as it lies: {@code rho_loose / (1 + bulking)}.
   *
   * @return kg of dry mass per cubic metre of damp loose material
   */
  public Uncertain dryMassPerLooseVolume() {
    return looseDryDensity.times(1 / (1 + bulkingRatio));
  }

  /**
   * Gives the mass of a cubic metre as it lies: {@code rho_loose (1 + w) / (1 + bulking)}.
   *
   * @return kg/m3, water included
   */
  public Uncertain dampLooseDensity() {
    return dryMassPerLooseVolume().times(1 + moistureRatio);
  }
}
