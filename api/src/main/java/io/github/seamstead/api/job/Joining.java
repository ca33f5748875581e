package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * How the crew joins.
 *
 * @param quickestSeam shortest time to join one seam, in seconds
 * @param usualSeam usual time to join one seam, in seconds; of the first seam if the crew learns
 * @param slowestSeam longest time to join one seam, in seconds
 * @param liftLimit the most that one person may handle, in kilograms
 * @param learning what each doubling of the seams leaves of the time of one, if stated
 */
public record Joining(
    double quickestSeam,
    double usualSeam,
    double slowestSeam,
    double liftLimit,
    Optional<Double> learning) {

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
  public static final class Builder extends Draft<Joining> {

    private Builder() {
      super(Joining.class);
    }

    /**
     * States quickestSeam.
     *
     * @param quickestSeam shortest time to join one seam, in seconds; 7 min is assumed if left out
     * @return this builder
     */
    public Builder quickestSeam(double quickestSeam) {
      state("quickestSeam", quickestSeam);
      return this;
    }

    /**
     * States usualSeam.
     *
     * @param usualSeam usual time to join one seam, in seconds; of the first seam if the crew
     *     learns; 9 min is assumed if left out
     * @return this builder
     */
    public Builder usualSeam(double usualSeam) {
      state("usualSeam", usualSeam);
      return this;
    }

    /**
     * States slowestSeam.
     *
     * @param slowestSeam longest time to join one seam, in seconds; 15 min is assumed if left out
     * @return this builder
     */
    public Builder slowestSeam(double slowestSeam) {
      state("slowestSeam", slowestSeam);
      return this;
    }

    /**
     * States liftLimit.
     *
     * @param liftLimit the most that one person may handle, in kilograms; 23 kg is assumed if left
     *     out
     * @return this builder
     */
    public Builder liftLimit(double liftLimit) {
      state("liftLimit", liftLimit);
      return this;
    }

    /**
     * States learning.
     *
     * @param learning what each doubling of the seams leaves of the time of one
     * @return this builder
     */
    public Builder learning(double learning) {
      state("learning", learning);
      return this;
    }
  }
}
