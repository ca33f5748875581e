package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * A jar of soil shaken with water and left to settle: heights of the marks over the bottom.
 *
 * @param sandTop top of the sand, in metres
 * @param siltTop top of the silt, in metres
 * @param total top of all that settled, in metres
 * @param waterDepth depth of the water over the bottom, in metres
 * @param temperature temperature of the water, in degrees Celsius
 * @param dispersed whether salt, dish soap or another dispersant was used
 * @param sandTime when the sand was marked, in seconds, if stated
 * @param siltTime when the silt was marked, in seconds, if stated
 * @param totalTime when all was marked, in seconds, if stated
 */
public record JarReading(
    double sandTop,
    double siltTop,
    double total,
    double waterDepth,
    double temperature,
    boolean dispersed,
    Optional<Double> sandTime,
    Optional<Double> siltTime,
    Optional<Double> totalTime) {

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
  public static final class Builder extends Draft<JarReading> {

    private Builder() {
      super(JarReading.class);
    }

    /**
     * States sandTop.
     *
     * @param sandTop top of the sand, in metres
     * @return this builder
     */
    public Builder sandTop(double sandTop) {
      state("sandTop", sandTop);
      return this;
    }

    /**
     * States siltTop.
     *
     * @param siltTop top of the silt, in metres
     * @return this builder
     */
    public Builder siltTop(double siltTop) {
      state("siltTop", siltTop);
      return this;
    }

    /**
     * States total.
     *
     * @param total top of all that settled, in metres
     * @return this builder
     */
    public Builder total(double total) {
      state("total", total);
      return this;
    }

    /**
     * States waterDepth.
     *
     * @param waterDepth depth of the water over the bottom, in metres
     * @return this builder
     */
    public Builder waterDepth(double waterDepth) {
      state("waterDepth", waterDepth);
      return this;
    }

    /**
     * States temperature.
     *
     * @param temperature temperature of the water, in degrees Celsius; 20 degC is assumed if left
     *     out
     * @return this builder
     */
    public Builder temperature(double temperature) {
      state("temperature", temperature);
      return this;
    }

    /**
     * States dispersed.
     *
     * @param dispersed whether salt, dish soap or another dispersant was used; false is assumed if
     *     left out
     * @return this builder
     */
    public Builder dispersed(boolean dispersed) {
      state("dispersed", dispersed);
      return this;
    }

    /**
     * States sandTime.
     *
     * @param sandTime when the sand was marked, in seconds
     * @return this builder
     */
    public Builder sandTime(double sandTime) {
      state("sandTime", sandTime);
      return this;
    }

    /**
     * States siltTime.
     *
     * @param siltTime when the silt was marked, in seconds
     * @return this builder
     */
    public Builder siltTime(double siltTime) {
      state("siltTime", siltTime);
      return this;
    }

    /**
     * States totalTime.
     *
     * @param totalTime when all was marked, in seconds
     * @return this builder
     */
    public Builder totalTime(double totalTime) {
      state("totalTime", totalTime);
      return this;
    }
  }
}
