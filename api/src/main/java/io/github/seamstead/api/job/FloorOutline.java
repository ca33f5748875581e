package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The outline of a floor that no frame gives: round, regular, or by its corners; one of the three.
 *
 * @param diameter of a round room, in metres, if stated
 * @param sides of a regular room, if stated
 * @param side length of each of them, in metres, if stated
 * @param corners of any other room, in order along the edge; empty if not stated
 */
public record FloorOutline(
    Optional<Double> diameter,
    Optional<Integer> sides,
    Optional<Double> side,
    List<OutlineCorner> corners) {

  public FloorOutline {
    corners = List.copyOf(corners);
  }

  /**
   * Counts the sides by which the door is named.
   *
   * @return 16 of a round room, numbered from the side nearest the reader of the plan
   */
  public int doorSides() {
    return diameter.isPresent() ? 16 : sides.orElse(corners.size());
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
  public static final class Builder extends Draft<FloorOutline> {

    private Builder() {
      super(FloorOutline.class);
    }

    /**
     * States diameter.
     *
     * @param diameter of a round room, in metres
     * @return this builder
     */
    public Builder diameter(double diameter) {
      state("diameter", diameter);
      return this;
    }

    /**
     * States sides.
     *
     * @param sides of a regular room
     * @return this builder
     */
    public Builder sides(int sides) {
      state("sides", sides);
      return this;
    }

    /**
     * States side.
     *
     * @param side length of each of them, in metres
     * @return this builder
     */
    public Builder side(double side) {
      state("side", side);
      return this;
    }

    /**
     * States corners.
     *
     * @param corners of any other room, in order along the edge; empty if not stated
     * @return this builder
     */
    public Builder corners(List<OutlineCorner> corners) {
      state("corners", corners);
      return this;
    }
  }
}
