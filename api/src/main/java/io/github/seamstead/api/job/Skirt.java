package io.github.seamstead.api.job;

import java.util.Set;

/**
 * A strip on the ground round the base.
 *
 * @param drop how far the skirt hangs below the base edge, in metres
 * @param overlap how far the skirt goes up under the cover, in metres
 */
public record Skirt(double drop, double overlap) {

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
  public static final class Builder extends Draft<Skirt> {

    private Builder() {
      super(Skirt.class);
    }

    /**
     * States drop.
     *
     * @param drop how far the skirt hangs below the base edge, in metres
     * @return this builder
     */
    public Builder drop(double drop) {
      state("drop", drop);
      return this;
    }

    /**
     * States overlap.
     *
     * @param overlap how far the skirt goes up under the cover, in metres; 150 mm is assumed if
     *     left out
     * @return this builder
     */
    public Builder overlap(double overlap) {
      state("overlap", overlap);
      return this;
    }
  }
}
