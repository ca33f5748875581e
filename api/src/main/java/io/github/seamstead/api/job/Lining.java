package io.github.seamstead.api.job;

import java.util.Set;

/**
 * The lining inside the frame.
 *
 * @param fabric what the lining is made of
 * @param airGap clear gap between cover and lining, in metres
 * @param allowance fabric added along each side edge, in metres
 */
public record Lining(Fabric fabric, double airGap, double allowance) {

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
  public static final class Builder extends Draft<Lining> {

    private Builder() {
      super(Lining.class);
    }

    /**
     * States fabric.
     *
     * @param fabric what the lining is made of
     * @return this builder
     */
    public Builder fabric(Fabric.Builder fabric) {
      state("fabric", fabric);
      return this;
    }

    /**
     * States airGap.
     *
     * @param airGap clear gap between cover and lining, in metres
     * @return this builder
     */
    public Builder airGap(double airGap) {
      state("airGap", airGap);
      return this;
    }

    /**
     * States allowance.
     *
     * @param allowance fabric added along each side edge, in metres; 40 mm is assumed if left out
     * @return this builder
     */
    public Builder allowance(double allowance) {
      state("allowance", allowance);
      return this;
    }
  }
}
