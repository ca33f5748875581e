package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The earthen floor.
 *
 * @param edging how far the floor stays inside the base line, in metres
 * @param gaps places without floor
 * @param doorFace the face with the door, towards which the floor is laid; that of cover.door if
 *     left out, if stated
 * @param layers layers from the bottom to the top
 * @param mixes the mixes of the layers
 * @param shortestOpenTime shortest time in which a wet edge still joins, in seconds, if stated
 * @param longestOpenTime longest time in which a wet edge still joins, in seconds, if stated
 * @param reserve material ordered over the need, as a part of one
 * @param softBase thickness of turf and topsoil left under the floor, in metres, if stated
 * @param outline the floor's outline, instead of the base of the frame, if stated
 */
public record Floor(
    double edging,
    List<RoundGap> gaps,
    Optional<Integer> doorFace,
    List<FloorLayer> layers,
    List<MixSpec> mixes,
    Optional<Double> shortestOpenTime,
    Optional<Double> longestOpenTime,
    double reserve,
    Optional<Double> softBase,
    Optional<FloorOutline> outline) {

  public Floor {
    gaps = List.copyOf(gaps);
    layers = List.copyOf(layers);
    mixes = List.copyOf(mixes);
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
  public static final class Builder extends Draft<Floor> {

    private Builder() {
      super(Floor.class);
    }

    /**
     * States edging.
     *
     * @param edging how far the floor stays inside the base line, in metres; 0 mm is assumed if
     *     left out
     * @return this builder
     */
    public Builder edging(double edging) {
      state("edging", edging);
      return this;
    }

    /**
     * States gaps.
     *
     * @param gaps places without floor
     * @return this builder
     */
    public Builder gaps(List<RoundGap> gaps) {
      state("gaps", gaps);
      return this;
    }

    /**
     * States doorFace.
     *
     * @param doorFace the face with the door, towards which the floor is laid; that of cover.door
     *     if left out
     * @return this builder
     */
    public Builder doorFace(int doorFace) {
      state("doorFace", doorFace);
      return this;
    }

    /**
     * States layers.
     *
     * @param layers layers from the bottom to the top
     * @return this builder
     */
    public Builder layers(List<FloorLayer.Builder> layers) {
      state("layers", layers);
      return this;
    }

    /**
     * States mixes.
     *
     * @param mixes the mixes of the layers
     * @return this builder
     */
    public Builder mixes(List<MixSpec.Builder> mixes) {
      state("mixes", mixes);
      return this;
    }

    /**
     * States shortestOpenTime.
     *
     * @param shortestOpenTime shortest time in which a wet edge still joins, in seconds
     * @return this builder
     */
    public Builder shortestOpenTime(double shortestOpenTime) {
      state("shortestOpenTime", shortestOpenTime);
      return this;
    }

    /**
     * States longestOpenTime.
     *
     * @param longestOpenTime longest time in which a wet edge still joins, in seconds
     * @return this builder
     */
    public Builder longestOpenTime(double longestOpenTime) {
      state("longestOpenTime", longestOpenTime);
      return this;
    }

    /**
     * States reserve.
     *
     * @param reserve material ordered over the need, as a part of one; 10 % is assumed if left out
     * @return this builder
     */
    public Builder reserve(double reserve) {
      state("reserve", reserve);
      return this;
    }

    /**
     * States softBase.
     *
     * @param softBase thickness of turf and topsoil left under the floor, in metres
     * @return this builder
     */
    public Builder softBase(double softBase) {
      state("softBase", softBase);
      return this;
    }

    /**
     * States outline.
     *
     * @param outline the floor's outline, instead of the base of the frame
     * @return this builder
     */
    public Builder outline(FloorOutline.Builder outline) {
      state("outline", outline);
      return this;
    }
  }
}
