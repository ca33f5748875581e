package io.github.seamstead.materials.floor;

import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * What rounding to buckets does to the clay of a load, and the loads that would be right where it
 * leaves the band.
 *
 * @param batch the load as it is measured
 * @param band the clay shares allowed
 * @param wanted clay share of the recipe, of the grain's dry mass
 * @param batched clay share of the load as it is measured
 * @param remedies other ways to measure, whose loads keep the band; empty where the load is right
 */
public record BatchClay(
    Batch batch, ClayBand band, double wanted, double batched, List<Remedy> remedies) {

  private static final Source CLAY_BALANCE = Source.derived("mass balance of clay");

  /** A load may stray further outside than its recipe by half a percent of clay. */
  private static final double BEYOND = 0.005;

  private static final double QUARTER = 0.25;
  private static final int LEAST_LITRES = 3;
  private static final double DRUM_STEP = 0.005;
  private static final int DRUM_STEPS = 60;

  public BatchClay {
    remedies = List.copyOf(remedies);
  }

  /** How else a load can be measured. */
  public enum Way {
    /** In quarters of the same bucket. */
    QUARTER_BUCKETS,
    /** With a smaller bucket. */
    SMALLER_BUCKET,
    /** In a larger mixer. */
    LARGER_MIXER,
    /** Two unlike loads, tipped on one board and turned together. */
    TWO_LOADS
  }

  /**
   * Another way to measure, with what it gives.
   *
   * @param way what is changed
   * @param size volume of the bucket or of the mixer that it takes, in m³
   * @param loads the load, or the two loads that belong together
   * @param clay clay share of the load or loads together
   */
  public record Remedy(Way way, double size, List<Batch> loads, double clay) {

    public Remedy {
      loads = List.copyOf(loads);
    }

    /**
     * Says what to do.
     *
     * @param volume writes a volume in m³ as the crew reads it
     * @return for example {@code with a bucket of 7 L: 1 bucket soil, 2½ buckets sand}
     */
    public String text(DoubleFunction<String> volume) {
      String what =
          switch (way) {
            case QUARTER_BUCKETS -> "in quarter buckets";
            case SMALLER_BUCKET -> "with a bucket of " + volume.apply(size);
            case LARGER_MIXER -> "in a mixer that takes " + volume.apply(size);
            case TWO_LOADS -> "two loads tipped on one board and turned together";
          };
      List<String> texts = new ArrayList<>();
      for (Batch load : loads) {
        List<String> parts = new ArrayList<>();
        for (BatchPart part : load.parts()) {
          if (part.part().isFibre()) {
            continue;
          }
          parts.add(
              BatchCard.buckets(part.buckets())
                  + (part.buckets() > 1 ? " buckets " : " bucket ")
                  + part.part().name());
        }
        texts.add(String.join(", ", parts));
      }
      return what + ": " + String.join("; then ", texts) + " (" + percent(clay) + " clay)";
    }
  }

  /**
   * Checks a load. Costs O(r b) for r other ways tried and b the search for one load.
   *
   * @param batch the load
   * @param mixer the mixer and bucket it was planned for
   * @param clayByPart clay share of each part's dry mass by the part's name, 0 to 1; fibre may be
   *     left out
   * @param band the clay shares allowed
   * @return the clay of the load, and how else to measure it where it leaves the band
   * @throws IllegalArgumentException if the clay of a part is not given or out of range
   */
  public static BatchClay of(
      Batch batch, Mixer mixer, Map<String, Double> clayByPart, ClayBand band) {
    double wanted = recipeClay(batch.mix(), clayByPart);
    double batched = clay(List.of(batch), clayByPart, Steps.none());
    List<Remedy> remedies = new ArrayList<>();
    if (strays(batched, wanted, band)) {
      new Search(batch.mix(), mixer, clayByPart, band, wanted).into(remedies);
    }
    return new BatchClay(batch, band, wanted, batched, remedies);
  }

  /**
   * Tells whether the load is outside the band and further outside than its recipe.
   *
   * @return true if it must not be mixed so
   */
  public boolean strays() {
    return strays(batched, wanted, band);
  }

  /**
   * Gives the error that rounding makes.
   *
   * @return clay share as measured less that wanted
   */
  public double error() {
    return batched - wanted;
  }

  /**
   * Says what is wrong with the load and what would be right.
   *
   * @param volume writes a volume in m³ as the crew reads it
   * @return the refusal; empty where the load keeps the band
   */
  public Optional<String> refusal(DoubleFunction<String> volume) {
    if (!strays()) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder();
    text.append("the load rounded to buckets has ")
        .append(percent(batched))
        .append(" clay instead of ")
        .append(percent(wanted))
        .append(", outside ")
        .append(percent(band.least()))
        .append(" to ")
        .append(percent(band.greatest()));
    if (remedies.isEmpty()) {
      text.append("; weigh the parts instead of measuring them in buckets");
    }
    for (int i = 0; i < remedies.size(); i++) {
      text.append(i == 0 ? "; measure " : "; or ").append(remedies.get(i).text(volume));
    }
    return Optional.of(text.toString());
  }

  /**
   * Computes the clay share of loads together: Σ m c / Σ m over the parts without fibre.
   *
   * @param loads one or more loads
   * @param clayByPart clay share of each part by its name, 0 to 1
   * @param steps receives one running sum of clay and of mass for each part, and the quotient
   * @return clay over dry mass of the grain
   * @throws IllegalArgumentException if the clay of a part is not given or out of range
   */
  @Calculation("materials.floor.batch-clay")
  public static double clay(List<Batch> loads, Map<String, Double> clayByPart, Steps steps) {
    double clay = 0;
    double mass = 0;
    for (Batch load : loads) {
      for (BatchPart part : load.parts()) {
        if (!part.part().isFibre()) {
          double share = clayOf(part.part(), clayByPart);
          clay =
              steps
                  .step("m_c", "clay, " + part.part().name() + " counted in")
                  .formula("m_0 + m_d * c")
                  .with("m_0", clay, "kg")
                  .with("m_d", part.dryMass(), "kg")
                  .with("c", share, "")
                  .from(CLAY_BALANCE)
                  .gives(clay + part.dryMass() * share, "kg");
          mass += part.dryMass();
        }
      }
    }
    return steps
        .step("c_b", "clay share of the load")
        .formula("m_c / m")
        .with("m_c", clay, "kg")
        .with("m", mass, "kg")
        .from(CLAY_BALANCE)
        .gives(clay / mass, "");
  }

  private static double recipeClay(FloorMix mix, Map<String, Double> clayByPart) {
    double clay = 0;
    double grain = 0;
    for (MixPart part : mix.parts()) {
      if (!part.isFibre()) {
        clay += part.dryMassShare() * clayOf(part, clayByPart);
        grain += part.dryMassShare();
      }
    }
    return clay / grain;
  }

  private static double clayOf(MixPart part, Map<String, Double> clayByPart) {
    Double share = clayByPart.get(part.name());
    if (share == null) {
      throw ArgumentFault.of(
          "clay of " + part.name(), "nothing", "must be given for each part of the mix", "", "");
    }
    return Args.within("clay of " + part.name(), share, 0, 1, "");
  }

  private static boolean strays(double clay, double wanted, ClayBand band) {
    return !band.holds(clay) && outside(clay, band) > outside(wanted, band) + BEYOND;
  }

  private static double outside(double clay, ClayBand band) {
    return Math.max(0, Math.max(band.least() - clay, clay - band.greatest()));
  }

  private static String percent(double share) {
    return Numbers.fixed(share * 100, 1) + " %";
  }

  /** Looks for loads that keep the band. */
  private record Search(
      FloorMix mix, Mixer mixer, Map<String, Double> clayByPart, ClayBand band, double wanted) {

    void into(List<Remedy> remedies) {
      if (mixer.bucketStep() > QUARTER) {
        one(Way.QUARTER_BUCKETS, mixer.measuredIn(QUARTER), mixer.bucketVolume())
            .ifPresent(remedies::add);
      }
      smaller().ifPresent(remedies::add);
      twoLoads().ifPresent(remedies::add);
      larger().ifPresent(remedies::add);
    }

    private Optional<Remedy> one(Way way, Mixer other, double size) {
      Batch load;
      try {
        load = Batch.of(mix, other);
      } catch (IllegalArgumentException tooSmall) {
        return Optional.empty();
      }
      double clay = clay(List.of(load), clayByPart, Steps.none());
      return strays(clay, wanted, band)
          ? Optional.empty()
          : Optional.of(new Remedy(way, size, List.of(load), clay));
    }

    private Optional<Remedy> smaller() {
      int litres = (int) Math.ceil(mixer.bucketVolume() * 1000 - 1e-9) - 1;
      for (int l = litres; l >= LEAST_LITRES; l--) {
        Optional<Remedy> found = one(Way.SMALLER_BUCKET, mixer.fedWith(l / 1000.0), l / 1000.0);
        if (found.isPresent()) {
          return found;
        }
      }
      return Optional.empty();
    }

    private Optional<Remedy> larger() {
      for (int i = 1; i <= DRUM_STEPS; i++) {
        double volume = Math.min(10, mixer.workingVolume() + i * DRUM_STEP);
        double limit = mixer.massLimit() * volume / mixer.workingVolume();
        Mixer drum = new Mixer(volume, limit, mixer.bucketVolume(), mixer.bucketStep());
        Optional<Remedy> found = one(Way.LARGER_MIXER, drum, volume);
        if (found.isPresent()) {
          return found;
        }
      }
      return Optional.empty();
    }

    /** The mean of two loads is a load in half the step; one takes the odd steps more. */
    private Optional<Remedy> twoLoads() {
      double step = mixer.bucketStep();
      if (step / 2 < 0.05) {
        return Optional.empty();
      }
      Optional<Remedy> mean = one(Way.TWO_LOADS, mixer.measuredIn(step / 2), 0);
      if (mean.isEmpty()) {
        return Optional.empty();
      }
      List<Double> first = new ArrayList<>();
      List<Double> second = new ArrayList<>();
      boolean more = true;
      for (BatchPart part : mean.get().loads().get(0).parts()) {
        double low = Math.floor(part.buckets() / step + 1e-9) * step;
        double high = Math.ceil(part.buckets() / step - 1e-9) * step;
        first.add(more ? high : low);
        second.add(more ? low : high);
        more = high > low ? !more : more;
      }
      List<Batch> loads = List.of(Batch.of(mix, mixer, first), Batch.of(mix, mixer, second));
      boolean fit =
          loads.stream()
              .allMatch(
                  load -> load.fits(mixer) && load.parts().stream().allMatch(p -> p.buckets() > 0));
      double clay = clay(loads, clayByPart, Steps.none());
      return fit && !strays(clay, wanted, band)
          ? Optional.of(new Remedy(Way.TWO_LOADS, mixer.bucketVolume(), loads, clay))
          : Optional.empty();
    }
  }
}
