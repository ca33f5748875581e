package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * Bars of one length that frame members are cut from.
 *
 * @param length length of a bar, in metres
 * @param count how many there are; no limit if left out, if stated
 * @param cost price of one bar, in the money of the site, if stated
 */
public record BarStock(double length, Optional<Integer> count, Optional<Double> cost) {

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
  public static final class Builder extends Draft<BarStock> {

    private Builder() {
      super(BarStock.class);
    }

    /**
     * States length.
     *
     * @param length length of a bar, in metres
     * @return this builder
     */
    public Builder length(double length) {
      state("length", length);
      return this;
    }

    /**
     * States count.
     *
     * @param count how many there are; no limit if left out
     * @return this builder
     */
    public Builder count(int count) {
      state("count", count);
      return this;
    }

    /**
     * States cost.
     *
     * @param cost price of one bar, in the money of the site
     * @return this builder
     */
    public Builder cost(double cost) {
      state("cost", cost);
      return this;
    }
  }
}
