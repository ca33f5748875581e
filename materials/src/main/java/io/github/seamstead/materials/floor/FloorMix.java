package io.github.seamstead.materials.floor;

import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.mix.Recipe;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a layer is made of, as plain numbers.
 *
 * <p>Invariant: the parts' dry mass shares add to 1 within 1e-6.
 *
 * @param name the mix in the crew's words; not blank
 * @param parts the parts, each named once; at least one, shares that add to 1 within 1e-6
 * @param compactedDryDensity dry mass over compacted volume, in kg/m³: low, likely, high; 300 to
 *     2600 kg/m³
 * @param placingMoisture water over dry mass as it goes into the floor, 0 to 1
 * @param largestGrain the largest grain after screening, in metres; greater than 0, at most 0.2 m
 */
public record FloorMix(
    String name,
    List<MixPart> parts,
    Range compactedDryDensity,
    double placingMoisture,
    double largestGrain) {

  /** Water above that wanted which the crew's feel does not forgive (common practice). */
  public static final double WET_BEYOND = 0.02;

  public FloorMix {
    Args.notBlank("mix", name);
    parts = Args.notEmpty(name + ": parts", parts);
    Set<String> names = new HashSet<>();
    double sum = 0;
    for (MixPart part : parts) {
      Args.agree(
          names.add(part.name()),
          name + ": part " + part.name() + " is given twice",
          "must be once");
      sum += part.dryMassShare();
    }
    Args.agree(
        Math.abs(sum - 1) <= 1e-6,
        name + ": the dry mass shares add to " + Numbers.plain(sum),
        "must add to 1");
    Args.within(
        name + ": compacted dry density (low)", compactedDryDensity.low(), 300, 2600, "kg/m3");
    Args.within(
        name + ": compacted dry density (high)", compactedDryDensity.high(), 300, 2600, "kg/m3");
    Args.within(name + ": placing moisture", placingMoisture, 0, 1, "");
    Args.positive(name + ": largest grain", largestGrain, "m");
    Args.within(name + ": largest grain", largestGrain, 0, 0.2, "m");
  }

  /**
   * Makes a mix of one material that is laid as it comes, such as gravel.
   *
   * @param name the material
   * @param compactedDryDensity dry mass over compacted volume, in kg/m³
   * @param looseDryDensity dry mass over loose volume, in kg/m³
   * @param moisture water over dry mass, as it comes and as it is placed
   * @param largestGrain in metres
   * @return the mix with ± 5 % of doubt in the compacted density (common practice)
   * @throws IllegalArgumentException as the constructor does
   */
  public static FloorMix single(
      String name,
      double compactedDryDensity,
      double looseDryDensity,
      double moisture,
      double largestGrain) {
    return new FloorMix(
        name,
        List.of(MixPart.of(name, 1, looseDryDensity, moisture)),
        new Range(compactedDryDensity * 0.95, compactedDryDensity, compactedDryDensity * 1.05),
        moisture,
        largestGrain);
  }

  /**
   * Takes over a recipe: its shares, loose densities, moistures and the range of its compacted
   * volume.
   *
   * @param name the mix in the crew's words
   * @param recipe the mix by its portions; portions of nothing are left out
   * @param placingMoisture water over dry mass as it goes into the floor, 0 to 1
   * @param largestGrain the largest grain after screening, in metres
   * @return the mix
   * @throws IllegalArgumentException as the constructor does
   */
  public static FloorMix of(
      String name, Recipe recipe, double placingMoisture, double largestGrain) {
    double dry = recipe.dryMass();
    List<MixPart> parts = new ArrayList<>();
    for (Recipe.Portion portion : recipe.portions()) {
      if (portion.looseVolume() > 0) {
        MixComponent component = portion.component();
        parts.add(
            MixPart.of(
                component.name(),
                portion.dryMass() / dry,
                component.dryMassPerLooseVolume().value(),
                component.moistureRatio()));
      }
    }
    Range volume = recipe.compactedVolume();
    Range density = new Range(dry / volume.high(), dry / volume.likely(), dry / volume.low());
    return new FloorMix(name, parts, density, placingMoisture, largestGrain);
  }

  /**
   * Adds a part, such as chopped straw, and scales the others down. The compacted density stays,
   * since fibre of a percent or two lies in the voids of the wet mix (common practice).
   *
   * @param part the part with its share of the whole new mix, less than 0.5
   * @return the mix with one part more
   * @throws IllegalArgumentException if the share is 0.5 or more, or as the constructor does
   */
  public FloorMix plus(MixPart part) {
    Args.between(part.name() + ": dry mass share", part.dryMassShare(), 0, 0.5, "");
    List<MixPart> more = new ArrayList<>();
    for (MixPart old : parts) {
      more.add(
          new MixPart(
              old.name(),
              old.dryMassShare() * (1 - part.dryMassShare()),
              old.looseDryDensity(),
              old.moisture(),
              old.screenedOut()));
    }
    more.add(part);
    return new FloorMix(name, more, compactedDryDensity, placingMoisture, largestGrain);
  }

  /**
   * Gives the loose volume of the parts, measured one by one, over their dry mass: Σ share / loose
   * density. Fines later fall into the voids of the sand, so a drum that takes this volume is never
   * too small.
   *
   * @return in m³ per kg of dry mix
   */
  public double loosePartsVolumePerDryMass() {
    double volume = 0;
    for (MixPart part : parts) {
      volume += part.dryMassShare() / part.looseDryDensity();
    }
    return volume;
  }

  /**
   * Gives the loose volume of the parts over the compacted volume they fill.
   *
   * @return compacted density × loose volume per dry mass: low, likely, high
   */
  public Range compactedToLoose() {
    return compactedDryDensity.times(loosePartsVolumePerDryMass());
  }

  /**
   * Gives the moisture that the parts bring along.
   *
   * @return Σ share × moisture, water over dry mass
   */
  public double moistureOfParts() {
    double water = 0;
    for (MixPart part : parts) {
      water += part.dryMassShare() * part.moisture();
    }
    return water;
  }

  /**
   * Gives the moisture that the mix really has: the one aimed at, or that of the parts where they
   * are wetter, since water cannot be taken out at the mixer.
   *
   * @return the greater of placing moisture and {@link #moistureOfParts}
   */
  public double moistureAsMixed() {
    return Math.max(placingMoisture, moistureOfParts());
  }

  /**
   * Gives the fibre by its share of the dry mass.
   *
   * @return 0 where there is none
   */
  public double fibreShare() {
    return parts.stream().filter(MixPart::isFibre).mapToDouble(MixPart::dryMassShare).sum();
  }

  /**
   * A part that must dry before the mix can be made.
   *
   * @param part the part
   * @param moisture to which it must fall, water over dry mass
   */
  public record DryFirst(MixPart part, double moisture) {}

  /**
   * Finds the part to dry first where the parts bring too much water: the one that brings most of
   * it, if drying it alone is enough.
   *
   * @return the part and its moisture; empty if the parts are not too wet or one part is not enough
   */
  public Optional<DryFirst> dryFirst() {
    double excess = moistureOfParts() - placingMoisture;
    if (excess <= 0) {
      return Optional.empty();
    }
    MixPart wettest = parts.get(0);
    for (MixPart part : parts) {
      if (part.dryMassShare() * part.moisture() > wettest.dryMassShare() * wettest.moisture()) {
        wettest = part;
      }
    }
    double target = wettest.moisture() - excess / wettest.dryMassShare();
    return target < 0 ? Optional.empty() : Optional.of(new DryFirst(wettest, target));
  }
}
