package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * How far a value of the job may be off, as whoever measured it says: a standard uncertainty, or
 * the ends between which it lies.
 *
 * @param of where the value stands in the job document, such as site.designWind or
 *     floor.layers[3].thickness
 * @param standard its standard uncertainty, with a unit, if stated
 * @param low the least that it may be, with a unit, if ends are stated
 * @param high the most that it may be, with a unit, if ends are stated
 */
public record ValueDoubt(
    String of, Optional<String> standard, Optional<String> low, Optional<String> high) {

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
  public static final class Builder extends Draft<ValueDoubt> {

    private Builder() {
      super(ValueDoubt.class);
    }

    /**
     * States of.
     *
     * @param of where the value stands in the job document, such as site.designWind or
     *     floor.layers[3].thickness
     * @return this builder
     */
    public Builder of(String of) {
      state("of", of);
      return this;
    }

    /**
     * States standard.
     *
     * @param standard its standard uncertainty, with a unit
     * @return this builder
     */
    public Builder standard(String standard) {
      state("standard", standard);
      return this;
    }

    /**
     * States low.
     *
     * @param low the least that it may be, with a unit, if ends are stated
     * @return this builder
     */
    public Builder low(String low) {
      state("low", low);
      return this;
    }

    /**
     * States high.
     *
     * @param high the most that it may be, with a unit, if ends are stated
     * @return this builder
     */
    public Builder high(String high) {
      state("high", high);
      return this;
    }
  }
}
