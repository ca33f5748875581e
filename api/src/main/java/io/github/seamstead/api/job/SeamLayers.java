package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * What a fixing of a seam goes through.
 *
 * @param layers layers of cloth
 * @param extra tape, washers or a batten in the way, in metres
 * @param beyond what turns over or bites on the far side, in metres, if stated
 * @param reel thread on a reel, in metres, if stated
 */
public record SeamLayers(int layers, double extra, Optional<Double> beyond, Optional<Double> reel) {

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
  public static final class Builder extends Draft<SeamLayers> {

    private Builder() {
      super(SeamLayers.class);
    }

    /**
     * States layers.
     *
     * @param layers layers of cloth
     * @return this builder
     */
    public Builder layers(int layers) {
      state("layers", layers);
      return this;
    }

    /**
     * States extra.
     *
     * @param extra tape, washers or a batten in the way, in metres
     * @return this builder
     */
    public Builder extra(double extra) {
      state("extra", extra);
      return this;
    }

    /**
     * States beyond.
     *
     * @param beyond what turns over or bites on the far side, in metres
     * @return this builder
     */
    public Builder beyond(double beyond) {
      state("beyond", beyond);
      return this;
    }

    /**
     * States reel.
     *
     * @param reel thread on a reel, in metres
     * @return this builder
     */
    public Builder reel(double reel) {
      state("reel", reel);
      return this;
    }
  }
}
