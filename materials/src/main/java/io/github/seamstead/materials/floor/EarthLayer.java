package io.github.seamstead.materials.floor;

import io.github.seamstead.materials.water.Saturation;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.Optional;

/**
 * A layer of grain or earth.
 *
 * @param name the name on the section drawing; not blank
 * @param role what it does
 * @param thickness compacted, in metres; more than 0, at most 1 m, and no thinner than the largest
 *     grain
 * @param evenness how far the level of the surface below strays, ± in metres; it widens the range
 *     of the volume; 0 or more, less than the thickness
 * @param mix what it is made of
 * @param mixed true if it goes through the mixer, false if it is tipped as it comes
 */
public record EarthLayer(
    String name, LayerRole role, double thickness, double evenness, FloorMix mix, boolean mixed)
    implements Layer {

  /** Compacted thickness of a dry pack where nothing else is stated, in metres. */
  public static final double DRY_PACK_THICKNESS = 0.050;

  /** Greatest compacted thickness of one lift rammed by hand, in metres. */
  public static final double HAND_RAMMED_LIFT = 0.100;

  /** Source of {@link #HAND_RAMMED_LIFT}. */
  public static final Source LIFT_SOURCE =
      Source.found(
          "UK roads authorities",
          "Specification for the Reinstatement of Openings in Roads",
          "3rd ed., Scotland",
          "Table A8.1: hand rammer, no lift above 100 mm");

  private static final double COAT_TO_GRAIN = 3;

  public EarthLayer {
    Args.notBlank("layer", name);
    Args.positive(name + ": thickness", thickness, "m");
    Args.within(name + ": thickness", thickness, 0, 1, "m");
    Args.within(name + ": evenness", evenness, 0, 0.9 * thickness, "m");
    Args.require(
        thickness >= mix.largestGrain(),
        name,
        Numbers.plain(thickness * 1000)
            + " mm thick with grains of "
            + Numbers.plain(mix.largestGrain() * 1000)
            + " mm",
        "must be at least as thick as its largest grain",
        "screen the mix finer");
    if (mixed) {
      requireRoomForWater(name, role, mix);
    }
  }

  /** A coat shrinks into its density as it dries, so it may be as loose as the range allows. */
  private static void requireRoomForWater(String name, LayerRole role, FloorMix mix) {
    Range density = mix.compactedDryDensity();
    double loosest = role == LayerRole.EARTH_COAT ? density.low() : density.likely();
    double most = Saturation.moisture(Math.min(loosest, Saturation.GRAINS));
    Args.agree(
        mix.placingMoisture() <= most + 1e-9,
        name
            + ": placing moisture: given "
            + percent(mix.placingMoisture())
            + " of water at a dry density of "
            + Numbers.significant(density.likely(), 4)
            + " kg/m3",
        "must be at most "
            + percent(Math.floor(most * 1000) / 1000)
            + ", with which its pores are full"
            + (loosest < density.likely()
                ? " at the low end of its density, "
                    + Numbers.significant(loosest, 4)
                    + " kg/m3 (at the likely density they are full at "
                    + percent(Saturation.moisture(density.likely()))
                    + ")"
                : ""));
  }

  private static String percent(double share) {
    return Numbers.fixed(share * 100, 1) + " %";
  }

  /**
   * Says what comes of a mix that is laid wetter than its density can hold.
   *
   * @return the advice; empty if the water has room
   */
  public Optional<String> waterAdvice() {
    double density = mix.compactedDryDensity().likely();
    double full = Saturation.moisture(density);
    if (!mixed || mix.placingMoisture() <= full) {
      return Optional.empty();
    }
    double loss = 1 - Saturation.densestAt(mix.placingMoisture()) / density;
    return Optional.of(
        name
            + ": laid at "
            + percent(mix.placingMoisture())
            + " of water it is wetter than its density can hold ("
            + percent(full)
            + "): it loses at least "
            + percent(loss)
            + " of its volume as it dries, in thickness and in cracks; lay it stiffer, or lay it"
            + " that much thicker");
  }

  /**
   * Makes a dry pack of the usual 50 mm (common practice), mixed.
   *
   * @param mix what it is made of
   * @return the layer, with ± 5 mm of evenness below it
   * @throws IllegalArgumentException if the largest grain is above 50 mm
   */
  public static EarthLayer dryPack(FloorMix mix) {
    return new EarthLayer("dry pack", LayerRole.DRY_PACK, DRY_PACK_THICKNESS, 0.005, mix, true);
  }

  /**
   * Makes a wet earth coat, mixed.
   *
   * @param name the name, such as "first coat"
   * @param thickness in metres
   * @param mix what it is made of
   * @return the layer, with ± 2 mm of evenness below it or a tenth of a thin coat
   * @throws IllegalArgumentException if the coat is thinner than its largest grain
   */
  public static EarthLayer coat(String name, double thickness, FloorMix mix) {
    return new EarthLayer(
        name, LayerRole.EARTH_COAT, thickness, Math.min(0.002, thickness / 10), mix, true);
  }

  /**
   * Makes a capillary break tipped as it comes.
   *
   * @param thickness in metres
   * @param gravel clean coarse gravel
   * @return the layer, with ± 10 mm of evenness below it or a quarter of a thin layer
   * @throws IllegalArgumentException if the layer is thinner than its largest grain
   */
  public static EarthLayer capillaryBreak(double thickness, FloorMix gravel) {
    return new EarthLayer(
        "capillary break",
        LayerRole.CAPILLARY_BREAK,
        thickness,
        Math.min(0.010, thickness / 4),
        gravel,
        false);
  }

  /**
   * Makes a levelling layer tipped as it comes.
   *
   * @param thickness the mean thickness, in metres
   * @param sand sand or fine gravel
   * @return the layer, with half its thickness as evenness of the ground below
   * @throws IllegalArgumentException if the layer is thinner than its largest grain
   */
  public static EarthLayer levelling(double thickness, FloorMix sand) {
    return new EarthLayer("levelling", LayerRole.LEVELLING, thickness, thickness / 2, sand, false);
  }

  /**
   * Counts the lifts for ramming by hand.
   *
   * @return thickness over 100 mm, rounded up; 1 for a coat
   */
  public int lifts() {
    return role == LayerRole.EARTH_COAT
        ? 1
        : Math.max(1, (int) Math.ceil(thickness / HAND_RAMMED_LIFT - 1e-9));
  }

  /**
   * Warns where the coat is less than three times its largest grain, which drags grains under the
   * trowel (common practice).
   *
   * @return the advice, or empty if the grain is small enough
   */
  public Optional<String> grainAdvice() {
    double largest = thickness / COAT_TO_GRAIN;
    if (role != LayerRole.EARTH_COAT || mix.largestGrain() <= largest * (1 + 1e-12)) {
      return Optional.empty();
    }
    return Optional.of(
        name
            + ": "
            + Numbers.significant(thickness * 1000, 3)
            + " mm over grains of "
            + Numbers.significant(mix.largestGrain() * 1000, 3)
            + " mm will drag under the trowel; screen to "
            + Numbers.significant(largest * 1000, 2)
            + " mm or finer (common practice: a third of the coat)");
  }
}
