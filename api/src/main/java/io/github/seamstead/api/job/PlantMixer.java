package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * The mixer.
 *
 * @param workingVolume volume that the drum mixes in one batch, in cubic metres
 * @param massLimit the most that the drum may hold, in kilograms, if stated
 * @param cycle time for one batch: fill, mix, empty, in seconds
 */
public record PlantMixer(double workingVolume, Optional<Double> massLimit, double cycle) {

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
  public static final class Builder extends Draft<PlantMixer> {

    private Builder() {
      super(PlantMixer.class);
    }

    /**
     * States workingVolume.
     *
     * @param workingVolume volume that the drum mixes in one batch, in cubic metres
     * @return this builder
     */
    public Builder workingVolume(double workingVolume) {
      state("workingVolume", workingVolume);
      return this;
    }

    /**
     * States massLimit.
     *
     * @param massLimit the most that the drum may hold, in kilograms
     * @return this builder
     */
    public Builder massLimit(double massLimit) {
      state("massLimit", massLimit);
      return this;
    }

    /**
     * States cycle.
     *
     * @param cycle time for one batch: fill, mix, empty, in seconds; 12 min is assumed if left out
     * @return this builder
     */
    public Builder cycle(double cycle) {
      state("cycle", cycle);
      return this;
    }
  }
}
