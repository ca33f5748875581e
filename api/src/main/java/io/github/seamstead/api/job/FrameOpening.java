package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * The opening at the top of a truncated frame, by one measure.
 *
 * @param side length of one edge of the opening, in metres, if stated
 * @param radius from the axis to a corner of the opening, in metres, if stated
 * @param cutHeight height of the opening over the base, in metres, if stated
 */
public record FrameOpening(
    Optional<Double> side, Optional<Double> radius, Optional<Double> cutHeight) {

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
  public static final class Builder extends Draft<FrameOpening> {

    private Builder() {
      super(FrameOpening.class);
    }

    /**
     * States side.
     *
     * @param side length of one edge of the opening, in metres
     * @return this builder
     */
    public Builder side(double side) {
      state("side", side);
      return this;
    }

    /**
     * States radius.
     *
     * @param radius from the axis to a corner of the opening, in metres
     * @return this builder
     */
    public Builder radius(double radius) {
      state("radius", radius);
      return this;
    }

    /**
     * States cutHeight.
     *
     * @param cutHeight height of the opening over the base, in metres
     * @return this builder
     */
    public Builder cutHeight(double cutHeight) {
      state("cutHeight", cutHeight);
      return this;
    }
  }
}
