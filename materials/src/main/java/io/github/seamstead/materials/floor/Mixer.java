package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;

/**
 * The mixer and the bucket it is fed with. A tarpaulin or a trough has a working volume too.
 *
 * @param workingVolume loose volume that it mixes at once, not the drum's brim, in m³; more than 0,
 *     at most 10 m³, at least one bucket
 * @param massLimit greatest mass of a load, water included, in kg; greater than 0, at most 20 000
 *     kg
 * @param bucketVolume struck volume of the bucket, in m³; more than 0, at most 0.1 m³
 * @param bucketStep smallest part of a bucket that the crew measures, such as 0.25 or 0.5; 0.05 to
 *     1
 */
public record Mixer(
    double workingVolume, double massLimit, double bucketVolume, double bucketStep) {

  /** Mass of the densest wet mix over its volume, in kg/m³ (common practice). */
  public static final double DENSEST_WET_MIX = 2200;

  /**
   * Loose volume of a heap that two people mix with their feet on a tarpaulin, in m³: heaps of 21
   * to 28 L when mixed ({@link #TARPAULIN}), about 40 L as they are tipped.
   */
  public static final double TARPAULIN_VOLUME = 0.040;

  /** Volume of a builder's bucket where none is stated, in m³ (common practice). */
  public static final double USUAL_BUCKET = 0.010;

  /** Source of {@link #TARPAULIN_VOLUME}. */
  public static final Source TARPAULIN =
      Source.found("", "Builders' letters on cob, January 2002", "", "batches of 21 to 28 L");

  public Mixer {
    Args.positive("mixer working volume", workingVolume, "m3");
    Args.within("mixer working volume", workingVolume, 0, 10, "m3");
    Args.positive("mixer mass limit", massLimit, "kg");
    Args.within("mixer mass limit", massLimit, 0, 20_000, "kg");
    Args.positive("bucket volume", bucketVolume, "m3");
    Args.within("bucket volume", bucketVolume, 0, 0.1, "m3");
    Args.within("bucket step", bucketStep, 0.05, 1, "");
    Args.require(
        workingVolume >= bucketVolume,
        "mixer working volume",
        Numbers.plain(workingVolume)
            + " m3 with a bucket of "
            + Numbers.plain(bucketVolume)
            + " m3",
        "must take at least one bucket");
  }

  /**
   * Makes a mixer fed in half buckets.
   *
   * @param workingVolume in m³
   * @param massLimit in kg
   * @param bucketVolume in m³
   * @return the mixer
   * @throws IllegalArgumentException as the constructor does
   */
  public static Mixer of(double workingVolume, double massLimit, double bucketVolume) {
    return new Mixer(workingVolume, massLimit, bucketVolume, 0.5);
  }

  /**
   * Makes a tarpaulin on which heaps are turned and trodden by foot, measured in half buckets.
   *
   * @param bucketVolume in m³, at most 40 L
   * @return the tarpaulin as a mixer
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Mixer tarpaulin(double bucketVolume) {
    return of(TARPAULIN_VOLUME, TARPAULIN_VOLUME * DENSEST_WET_MIX, bucketVolume);
  }

  /**
   * The same measured in another part of a bucket.
   *
   * @param step smallest part of a bucket, 0.05 to 1
   * @return the changed mixer
   * @throws IllegalArgumentException if the step is out of range
   */
  public Mixer measuredIn(double step) {
    return new Mixer(workingVolume, massLimit, bucketVolume, step);
  }

  /**
   * The same fed with another bucket.
   *
   * @param volume struck volume of the bucket, in m³
   * @return the changed mixer
   * @throws IllegalArgumentException as the constructor does
   */
  public Mixer fedWith(double volume) {
    return new Mixer(workingVolume, massLimit, volume, bucketStep);
  }
}
