package io.github.seamstead.api.job;

import java.util.Set;

/**
 * One taped distance between two nodes.
 *
 * @param from the node where the tape starts: B1 for base corner 1, T1 for the corner of the
 *     opening above it, A for the apex, C for the ground centre
 * @param to the node where it is read
 * @param distance the reading, with its standard uncertainty if known, in metres
 * @param level whether the tape was held level between plumb lines
 */
public record TapedDistance(String from, String to, WrittenQuantity distance, boolean level) {

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
  public static final class Builder extends Draft<TapedDistance> {

    private Builder() {
      super(TapedDistance.class);
    }

    /**
     * States from.
     *
     * @param from the node where the tape starts: B1 for base corner 1, T1 for the corner of the
     *     opening above it, A for the apex, C for the ground centre
     * @return this builder
     */
    public Builder from(String from) {
      state("from", from);
      return this;
    }

    /**
     * States to.
     *
     * @param to the node where it is read
     * @return this builder
     */
    public Builder to(String to) {
      state("to", to);
      return this;
    }

    /**
     * States distance.
     *
     * @param distance the reading, with its standard uncertainty if known, in metres
     * @return this builder
     */
    public Builder distance(WrittenQuantity distance) {
      state("distance", distance);
      return this;
    }

    /**
     * States level.
     *
     * @param level whether the tape was held level between plumb lines
     * @return this builder
     */
    public Builder level(boolean level) {
      state("level", level);
      return this;
    }
  }
}
