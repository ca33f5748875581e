package io.github.seamstead.api.job;

import io.github.seamstead.assembly.anchor.Ground;
import java.util.List;
import java.util.Set;

/**
 * Pegs tested by pulling them on this ground, along the rope.
 *
 * @param pulls pull at which each peg began to move, in newtons
 * @param ground the ground on the day that counts, beside the day of the test
 * @param factor tested over allowed pull
 */
public record PegPulls(List<Double> pulls, Ground ground, double factor) {

  public PegPulls {
    pulls = List.copyOf(pulls);
  }

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
  public static final class Builder extends Draft<PegPulls> {

    private Builder() {
      super(PegPulls.class);
    }

    /**
     * States pulls.
     *
     * @param pulls pull at which each peg began to move, in newtons
     * @return this builder
     */
    public Builder pulls(List<Double> pulls) {
      state("pulls", pulls);
      return this;
    }

    /**
     * States ground.
     *
     * @param ground the ground on the day that counts, beside the day of the test; wetOrThawing is
     *     assumed if left out
     * @return this builder
     */
    public Builder ground(Ground ground) {
      state("ground", ground);
      return this;
    }

    /**
     * States factor.
     *
     * @param factor tested over allowed pull; 2 is assumed if left out
     * @return this builder
     */
    public Builder factor(double factor) {
      state("factor", factor);
      return this;
    }
  }
}
