package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * One layer of the floor.
 *
 * @param kind what the layer is
 * @param name what the crew calls it; its kind if left out, if stated
 * @param thickness compacted thickness, in metres, if stated
 * @param material the aggregate of a levelling layer or capillary break, by its id, if stated
 * @param mix the mix of a dry pack or an earth coat, by its id, if stated
 * @param rollWidth width of the membrane on the roll, in metres, if stated
 * @param rollLength length of the membrane on the roll, in metres, if stated
 * @param lap lap of the membrane, in metres
 * @param upstand height of the membrane at the edge, in metres
 * @param compaction how a dry pack compacts, and how dense it was rammed, if tested
 */
public record FloorLayer(
    LayerKind kind,
    Optional<String> name,
    Optional<Double> thickness,
    Optional<String> material,
    Optional<String> mix,
    Optional<Double> rollWidth,
    Optional<Double> rollLength,
    double lap,
    double upstand,
    Optional<CompactionTest> compaction) {

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
  public static final class Builder extends Draft<FloorLayer> {

    private Builder() {
      super(FloorLayer.class);
    }

    /**
     * States kind.
     *
     * @param kind what the layer is
     * @return this builder
     */
    public Builder kind(LayerKind kind) {
      state("kind", kind);
      return this;
    }

    /**
     * States name.
     *
     * @param name what the crew calls it; its kind if left out
     * @return this builder
     */
    public Builder name(String name) {
      state("name", name);
      return this;
    }

    /**
     * States thickness.
     *
     * @param thickness compacted thickness, in metres
     * @return this builder
     */
    public Builder thickness(double thickness) {
      state("thickness", thickness);
      return this;
    }

    /**
     * States material.
     *
     * @param material the aggregate of a levelling layer or capillary break, by its id
     * @return this builder
     */
    public Builder material(String material) {
      state("material", material);
      return this;
    }

    /**
     * States mix.
     *
     * @param mix the mix of a dry pack or an earth coat, by its id
     * @return this builder
     */
    public Builder mix(String mix) {
      state("mix", mix);
      return this;
    }

    /**
     * States rollWidth.
     *
     * @param rollWidth width of the membrane on the roll, in metres
     * @return this builder
     */
    public Builder rollWidth(double rollWidth) {
      state("rollWidth", rollWidth);
      return this;
    }

    /**
     * States rollLength.
     *
     * @param rollLength length of the membrane on the roll, in metres
     * @return this builder
     */
    public Builder rollLength(double rollLength) {
      state("rollLength", rollLength);
      return this;
    }

    /**
     * States lap.
     *
     * @param lap lap of the membrane, in metres; 200 mm is assumed if left out
     * @return this builder
     */
    public Builder lap(double lap) {
      state("lap", lap);
      return this;
    }

    /**
     * States upstand.
     *
     * @param upstand height of the membrane at the edge, in metres; 100 mm is assumed if left out
     * @return this builder
     */
    public Builder upstand(double upstand) {
      state("upstand", upstand);
      return this;
    }

    /**
     * States compaction.
     *
     * @param compaction how a dry pack compacts, and how dense it was rammed, if tested
     * @return this builder
     */
    public Builder compaction(CompactionTest.Builder compaction) {
      state("compaction", compaction);
      return this;
    }
  }
}
