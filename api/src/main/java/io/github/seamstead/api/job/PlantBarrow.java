package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * The barrow.
 *
 * @param volume volume that the barrow carries, in cubic metres
 * @param payload the most that it may carry, in kilograms, if stated
 */
public record PlantBarrow(double volume, Optional<Double> payload) {

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
  public static final class Builder extends Draft<PlantBarrow> {

    private Builder() {
      super(PlantBarrow.class);
    }

    /**
     * States volume.
     *
     * @param volume volume that the barrow carries, in cubic metres
     * @return this builder
     */
    public Builder volume(double volume) {
      state("volume", volume);
      return this;
    }

    /**
     * States payload.
     *
     * @param payload the most that it may carry, in kilograms
     * @return this builder
     */
    public Builder payload(double payload) {
      state("payload", payload);
      return this;
    }
  }
}
