package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;

/**
 * The mixer and the bucket it is fed with. A tarpaulin or a trough has a working volume too.
 *
 * @param workingVolume loose volume that it mixes at once, not the drum's brim, in m³
 * @param massLimit greatest mass of a load, water included, in kg
 * @param bucketVolume struck volume of the bucket, in m³
 * @param bucketStep smallest part of a bucket that the crew measures, such as 0.25 or 0.5
 */
public record Mixer(
    double workingVolume, double massLimit, double bucketVolume, double bucketStep) {

  /**
   * Checks the numbers.
   *
   * @param workingVolume more than 0, at most 10 m³, at least one bucket
   * @param massLimit greater than 0, at most 20 000 kg
   * @param bucketVolume more than 0, at most 0.1 m³
   * @param bucketStep 0.05 to 1
   * @throws IllegalArgumentException if a value is out of range or the mixer is smaller than a
   *     bucket
   */
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
        "mixer working volume: given "
            + workingVolume
            + " m3 with a bucket of "
            + bucketVolume
            + " m3, must take at least one bucket");
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
}
