package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * The tools that move and mix material.
 *
 * @param mixer the mixer, if stated
 * @param bucket volume of the bucket that parts are measured with, in cubic metres
 * @param barrow the barrow, if stated
 * @param trailer the trailer that brings material, if stated
 */
public record Plant(
    Optional<PlantMixer> mixer,
    double bucket,
    Optional<PlantBarrow> barrow,
    Optional<PlantTrailer> trailer) {

  /**
   * Starts a builder, for {@link Job#builder()}.
   *
   * @return a builder that states nothing yet
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Starts a builder from this record.
   *
   * @return a builder that states all that this record holds
   */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.stateAll(this, Set.of());
    return builder;
  }

  /** Builds this section of a job. Belongs to one thread. */
  public static final class Builder extends Draft<Plant> {

    private Builder() {
      super(Plant.class);
    }

    /**
     * States mixer.
     *
     * @param mixer the mixer
     * @return this builder
     */
    public Builder mixer(PlantMixer.Builder mixer) {
      state("mixer", mixer);
      return this;
    }

    /**
     * States bucket.
     *
     * @param bucket volume of the bucket that parts are measured with, in cubic metres; 12 l is
     *     assumed if left out
     * @return this builder
     */
    public Builder bucket(double bucket) {
      state("bucket", bucket);
      return this;
    }

    /**
     * States barrow.
     *
     * @param barrow the barrow
     * @return this builder
     */
    public Builder barrow(PlantBarrow.Builder barrow) {
      state("barrow", barrow);
      return this;
    }

    /**
     * States trailer.
     *
     * @param trailer the trailer that brings material
     * @return this builder
     */
    public Builder trailer(PlantTrailer trailer) {
      state("trailer", trailer);
      return this;
    }
  }
}
