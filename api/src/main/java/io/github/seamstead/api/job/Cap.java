package io.github.seamstead.api.job;

import java.util.Set;

/**
 * The cone cap over the opening at the top.
 *
 * @param overlap how far the cap comes down over the cover, in metres
 * @param lap lap of the joints of the cap, in metres
 */
public record Cap(double overlap, double lap) {

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
  public static final class Builder extends Draft<Cap> {

    private Builder() {
      super(Cap.class);
    }

    /**
     * States overlap.
     *
     * @param overlap how far the cap comes down over the cover, in metres; 300 mm is assumed if
     *     left out
     * @return this builder
     */
    public Builder overlap(double overlap) {
      state("overlap", overlap);
      return this;
    }

    /**
     * States lap.
     *
     * @param lap lap of the joints of the cap, in metres; 60 mm is assumed if left out
     * @return this builder
     */
    public Builder lap(double lap) {
      state("lap", lap);
      return this;
    }
  }
}
