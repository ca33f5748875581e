package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Optional;

/**
 * How much sand a soil needs for a clay share: two components, exact.
 *
 * <pre>{@code
 * MixComponent soil = MixComponent.claySoil("pit", new Uncertain(0.35, 0.05));
 * MixComponent sand = MixComponent.washedSand("sand");
 * ClayBlend blend = ClayBlend.of(soil, sand, ClayBand.FLOOR, BucketRounding.HALF);
 * blend.sandPerSoilDryMass(); // 1.06 by dry mass
 * }</pre>
 *
 * @param band the clay share aimed at
 * @param sandPerSoilDryMass dry mass of sand per dry mass of soil for the middle of the band; 0 if
 *     the soil is too lean already
 * @param leastSandPerSoilDryMass the same for the rich end of the band
 * @param greatestSandPerSoilDryMass the same for the lean end of the band
 * @param exact the recipe for one cubic metre of loose soil, not rounded
 * @param rounded the recipe in rounded buckets, one bucket standing for one cubic metre
 * @param clayShift clay share of the rounded recipe less that of the exact one
 * @param priceShiftPerTonne price of a dry tonne of the rounded mix less that of the exact one;
 *     empty without prices
 * @param unmet what cannot be met and the nearest that can; empty if the band is met
 */
public record ClayBlend(
    ClayBand band,
    double sandPerSoilDryMass,
    double leastSandPerSoilDryMass,
    double greatestSandPerSoilDryMass,
    Recipe exact,
    Recipe rounded,
    double clayShift,
    Optional<Double> priceShiftPerTonne,
    Optional<String> unmet) {

  private static final double MOST_SAND = 50;

  /**
   * Solves for the sand.
   *
   * @param soil the clay soil
   * @param sand the sand, with less clay than the soil
   * @param band the clay share aimed at
   * @param rounding how the buckets are rounded
   * @return the blend
   * @throws IllegalArgumentException if the sand has as much clay as the soil
   */
  public static ClayBlend of(
      MixComponent soil, MixComponent sand, ClayBand band, BucketRounding rounding) {
    return of(soil, sand, band, rounding, Steps.none());
  }

  /**
   * As {@link #of(MixComponent, MixComponent, ClayBand, BucketRounding)}, with its worked steps;
   * the last step is the clay share of the rounded recipe.
   *
   * @param soil the clay soil
   * @param sand the sand, with less clay than the soil
   * @param band the clay share aimed at
   * @param rounding how the buckets are rounded
   * @param steps receives the worked steps
   * @return the blend
   * @throws IllegalArgumentException if the sand has as much clay as the soil
   */
  @Calculation("materials.mix.clay_blend")
  public static ClayBlend of(
      MixComponent soil, MixComponent sand, ClayBand band, BucketRounding rounding, Steps steps) {
    double rich = soil.clayRatio().value();
    double lean = sand.clayRatio().value();
    Args.require(
        rich > lean,
        "clay of " + soil.name(),
        Numbers.plain(rich),
        "must be more than that of " + sand.name() + " (" + Numbers.plain(lean) + ")");
    Optional<String> unmet = unmet(soil, sand, band, rich, lean);
    double aim = Math.min(rich, Math.max(band.middle(), nearest(rich, lean)));
    double ratio = ratio(rich, lean, aim);
    steps
        .step("r", "dry mass of sand per dry mass of soil")
        .formula("(c_s - c) / (c - c_n)")
        .with("c_s", rich, "")
        .with("c", aim, "")
        .with("c_n", lean, "")
        .from(MixSources.MASS_BALANCE)
        .note(
            unmet.isPresent()
                ? "c: the nearest clay share that can be reached"
                : "c: the middle of the clay band; c_s: clay of the soil, c_n: clay of the sand")
        .gives(ratio, "");
    double volume = volumeRatio(soil, sand, ratio, steps);
    Recipe exact = recipe(soil, 1, sand, volume);
    double[] buckets = BucketSearch.pair(soil, sand, band, volume, aim, rounding);
    Recipe rounded = recipe(soil, buckets[0], sand, buckets[1]);
    double clay = roundedClay(soil, sand, buckets, steps);
    Optional<Double> shift =
        exact.price().isPresent() && rounded.price().isPresent()
            ? Optional.of(perDryTonne(rounded) - perDryTonne(exact))
            : Optional.empty();
    return new ClayBlend(
        band,
        ratio,
        ratio(rich, lean, Math.min(rich, Math.max(band.greatest(), nearest(rich, lean)))),
        ratio(rich, lean, Math.min(rich, Math.max(band.least(), nearest(rich, lean)))),
        exact,
        rounded,
        clay - exact.clayRatio().value(),
        shift,
        unmet);
  }

  /** Leanest clay share that a sensible amount of sand can reach. */
  private static double nearest(double rich, double lean) {
    return (rich + MOST_SAND * lean) / (1 + MOST_SAND);
  }

  private static double ratio(double rich, double lean, double clay) {
    return (rich - clay) / (clay - lean);
  }

  private static Optional<String> unmet(
      MixComponent soil, MixComponent sand, ClayBand band, double rich, double lean) {
    if (rich < band.least()) {
      return Optional.of(
          "clay of "
              + percent(band.least())
              + " to "
              + percent(band.greatest())
              + " cannot be met: "
              + soil.name()
              + " alone has "
              + percent(rich)
              + ", which is the nearest; add a richer clay soil, not sand");
    }
    if (nearest(rich, lean) > band.greatest()) {
      return Optional.of(
          "clay of "
              + percent(band.least())
              + " to "
              + percent(band.greatest())
              + " cannot be met: "
              + sand.name()
              + " itself has "
              + percent(lean)
              + " of clay; the nearest is "
              + percent(nearest(rich, lean))
              + " at "
              + Numbers.plain(MOST_SAND)
              + " parts of sand per part of soil; use a cleaner sand");
    }
    return Optional.empty();
  }

  private static double volumeRatio(
      MixComponent soil, MixComponent sand, double ratio, Steps steps) {
    double soilDry = dryStep("q_s", soil, steps);
    double sandDry = dryStep("q_n", sand, steps);
    return steps
        .step("v", "buckets of sand per bucket of soil")
        .formula("r * q_s / q_n")
        .with("r", ratio, "")
        .with("q_s", soilDry, "kg/m3")
        .with("q_n", sandDry, "kg/m3")
        .gives(ratio * soilDry / sandDry, "");
  }

  private static double dryStep(String symbol, MixComponent component, Steps steps) {
    return steps
        .step(symbol, "dry mass in a loose cubic metre of " + component.name() + " as it lies")
        .formula("rho * (1 / (1 + B))")
        .with("rho", component.looseDryDensity().value(), "kg/m3")
        .with("B", component.bulkingRatio(), "")
        .note("rho: loose dry density, B: bulking")
        .gives(component.dryMassPerLooseVolume().value(), "kg/m3");
  }

  private static double roundedClay(
      MixComponent soil, MixComponent sand, double[] buckets, Steps steps) {
    double clay = recipe(soil, buckets[0], sand, buckets[1]).clayRatio().value();
    return steps
        .step("c_mix", "clay share of the dry mass of the rounded recipe")
        .formula("(b_s * q_s * c_s + b_n * q_n * c_n) / (b_s * q_s + b_n * q_n)")
        .with("b_s", buckets[0], "buckets")
        .with("q_s", soil.dryMassPerLooseVolume().value(), "kg/m3")
        .with("c_s", soil.clayRatio().value(), "")
        .with("b_n", buckets[1], "buckets")
        .with("q_n", sand.dryMassPerLooseVolume().value(), "kg/m3")
        .with("c_n", sand.clayRatio().value(), "")
        .from(MixSources.MASS_BALANCE)
        .gives(clay, "");
  }

  private static Recipe recipe(
      MixComponent soil, double soilVolume, MixComponent sand, double sandVolume) {
    return new Recipe(
        List.of(new Recipe.Portion(soil, soilVolume), new Recipe.Portion(sand, sandVolume)));
  }

  private static double perDryTonne(Recipe recipe) {
    return recipe.price().orElse(0.0) / recipe.dryMass() * 1000;
  }

  private static String percent(double ratio) {
    return Numbers.significant(ratio * 100, 3) + " %";
  }
}
