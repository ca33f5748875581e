package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;

/**
 * One mixer load in buckets: the fullest load within the drum's volume and mass whose rounded
 * buckets stay nearest to the recipe.
 *
 * @param mix the recipe
 * @param parts buckets and masses, in the order of the recipe
 * @param water water to add, in kg (1 kg = 1 L); 0 where the parts are wetter than the target
 * @param excessWater water that the parts hold above the target and that must dry off first, in kg
 * @param worstError greatest relative error of a part's share of the grain by rounding to buckets
 */
public record Batch(
    FloorMix mix, List<BatchPart> parts, double water, double excessWater, double worstError) {

  private static final Source WATER_BALANCE = Source.derived("mass balance of water");

  /** A recipe error by rounding that the crew will not notice: 2.5 %. */
  private static final double UNNOTICED = 0.025;

  private static final double LEAST_FILL = 0.6;

  public Batch {
    parts = List.copyOf(parts);
  }

  /**
   * Plans the load. Costs O(s p) for s steps of the largest part and p parts.
   *
   * @param mix the recipe
   * @param mixer the mixer and the bucket
   * @return the load
   * @throws IllegalArgumentException if one step of each part is already too much for the mixer
   */
  public static Batch of(FloorMix mix, Mixer mixer) {
    // Fibre goes in last, into a mix that has settled, and takes no room of the drum.
    double perMass = 0;
    for (MixPart part : mix.parts()) {
      perMass += part.isFibre() ? 0 : volume(part);
    }
    double placed = 1 + Math.max(mix.placingMoisture(), mix.moistureOfParts());
    double most = Math.min(mixer.workingVolume() / perMass, mixer.massLimit() / placed);
    double step = mixer.bucketStep() * mixer.bucketVolume();
    MixPart largest = mix.parts().get(0);
    for (MixPart part : mix.parts()) {
      if (!part.isFibre() && (largest.isFibre() || volume(part) > volume(largest))) {
        largest = part;
      }
    }
    int top = (int) Math.floor(most * volume(largest) / step + 1e-9);
    List<Integer> best = List.of();
    double bestScore = Double.POSITIVE_INFINITY;
    for (int count = top; count >= 1; count--) {
      List<Integer> counts = counts(mix, largest, count);
      if (!filled(mix, counts, mixer).fits(mixer)) {
        continue;
      }
      double fill = (double) count / top;
      if (!best.isEmpty() && fill < LEAST_FILL) {
        break;
      }
      double score = Math.max(error(mix, counts), UNNOTICED) + 0.01 * (1 - fill);
      if (score < bestScore - 1e-12) {
        best = counts;
        bestScore = score;
      }
    }
    Args.agree(
        !best.isEmpty(),
        mix.name()
            + ": the mixer takes "
            + Numbers.significant(mixer.workingVolume() * 1000, 3)
            + " L and "
            + Numbers.significant(mixer.massLimit(), 3)
            + " kg, less than one measure of "
            + Numbers.significant(step * 1000, 3)
            + " L of each part",
        "use a smaller bucket or a larger mixer");
    return filled(mix, best, mixer);
  }

  private static double volume(MixPart part) {
    return part.dryMassShare() / part.looseDryDensity();
  }

  private static List<Integer> counts(FloorMix mix, MixPart largest, int count) {
    List<Integer> counts = new ArrayList<>();
    for (MixPart part : mix.parts()) {
      counts.add(Math.max(1, (int) Math.round(count * volume(part) / volume(largest))));
    }
    return counts;
  }

  /** Measures given buckets of each part, in the order of the recipe. */
  static Batch of(FloorMix mix, Mixer mixer, List<Double> buckets) {
    List<Integer> counts = new ArrayList<>();
    for (double count : buckets) {
      counts.add((int) Math.round(count / mixer.bucketStep()));
    }
    return filled(mix, counts, mixer);
  }

  /** Tells whether a mixer takes the load by volume and by mass. */
  boolean fits(Mixer mixer) {
    double measured =
        parts.stream()
            .filter(part -> !part.part().isFibre())
            .mapToDouble(BatchPart::looseVolume)
            .sum();
    return measured <= mixer.workingVolume() * (1 + 1e-9)
        && mass() <= mixer.massLimit() * (1 + 1e-9);
  }

  private static double error(FloorMix mix, List<Integer> counts) {
    double total = 0;
    double grain = 0;
    for (int i = 0; i < counts.size(); i++) {
      MixPart part = mix.parts().get(i);
      if (!part.isFibre()) {
        total += counts.get(i) * part.looseDryDensity();
        grain += part.dryMassShare();
      }
    }
    double worst = 0;
    for (int i = 0; i < counts.size(); i++) {
      MixPart part = mix.parts().get(i);
      // A handful of straw more or less is nothing beside a half bucket of soil.
      if (!part.isFibre()) {
        double share = counts.get(i) * part.looseDryDensity() / total;
        worst = Math.max(worst, Math.abs(share * grain / part.dryMassShare() - 1));
      }
    }
    return worst;
  }

  private static double grain(FloorMix mix, List<Integer> counts, Mixer mixer) {
    double dry = 0;
    for (int i = 0; i < counts.size(); i++) {
      MixPart part = mix.parts().get(i);
      if (!part.isFibre()) {
        dry += counts.get(i) * mixer.bucketStep() * mixer.bucketVolume() * part.looseDryDensity();
      }
    }
    return dry;
  }

  private static Batch filled(FloorMix mix, List<Integer> counts, Mixer mixer) {
    List<BatchPart> parts = new ArrayList<>();
    double balance = 0;
    double grain = grain(mix, counts, mixer) / (1 - mix.fibreShare());
    for (int i = 0; i < counts.size(); i++) {
      MixPart measured = mix.parts().get(i);
      double volume = mixer.bucketVolume();
      // Handfuls are not counted in parts of a bucket.
      double buckets =
          measured.isFibre()
              ? grain * measured.dryMassShare() / measured.looseDryDensity() / volume
              : counts.get(i) * mixer.bucketStep();
      BatchPart part = BatchPart.of(measured, buckets, volume);
      parts.add(part);
      balance += part.dryMass() * (mix.placingMoisture() - part.part().moisture());
    }
    return new Batch(mix, parts, Math.max(0, balance), Math.max(0, -balance), error(mix, counts));
  }

  /**
   * Gives the moisture of the load as it leaves the mixer.
   *
   * @return water over dry mass; above the placing moisture where the parts are too wet
   */
  public double moisture() {
    return (mass() - dryMass()) / dryMass();
  }

  /**
   * Gives the dry mass of the load.
   *
   * @return in kg
   */
  public double dryMass() {
    return parts.stream().mapToDouble(BatchPart::dryMass).sum();
  }

  /**
   * Gives the mass of the load with all its water.
   *
   * @return in kg
   */
  public double mass() {
    return parts.stream().mapToDouble(BatchPart::moistMass).sum() + water;
  }

  /**
   * Gives the loose volume of the parts before they are mixed.
   *
   * @return in m³
   */
  public double looseVolume() {
    return parts.stream().mapToDouble(BatchPart::looseVolume).sum();
  }

  /**
   * Gives the compacted volume that the load fills.
   *
   * @return dry mass over compacted density, in m³: low, likely, high
   */
  public Range compactedVolume() {
    Range density = mix.compactedDryDensity();
    double dry = dryMass();
    return new Range(dry / density.high(), dry / density.likely(), dry / density.low());
  }

  /**
   * Computes the water that brings the load to its placing moisture: for each part dry mass ×
   * (target − moisture), added up.
   *
   * @param steps receives one running sum for each part
   * @return water to add, in kg; negative where the parts are too wet
   */
  @Calculation("materials.floor.batch-water")
  public double waterBalance(Steps steps) {
    double sum = 0;
    for (BatchPart part : parts) {
      double before = sum;
      double added = part.dryMass() * (mix.placingMoisture() - part.part().moisture());
      sum =
          steps
              .step("W", "water to add, " + part.part().name() + " counted in")
              .formula("W_0 + m_d * (w_p - w)")
              .with("W_0", before, "kg")
              .with("m_d", part.dryMass(), "kg")
              .with("w_p", mix.placingMoisture(), "")
              .with("w", part.part().moisture(), "")
              .from(WATER_BALANCE)
              .gives(before + added, "kg");
    }
    return sum;
  }
}
