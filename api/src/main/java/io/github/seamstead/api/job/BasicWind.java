package io.github.seamstead.api.job;

import io.github.seamstead.assembly.anchor.Terrain;
import java.util.Set;

/**
 * A basic wind speed of a code that prints means and not gusts.
 *
 * @param speed ten-minute mean at 10 m over open country, in metres per second
 * @param terrain what the country upwind looks like
 */
public record BasicWind(double speed, Terrain terrain) {

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
  public static final class Builder extends Draft<BasicWind> {

    private Builder() {
      super(BasicWind.class);
    }

    /**
     * States speed.
     *
     * @param speed ten-minute mean at 10 m over open country, in metres per second
     * @return this builder
     */
    public Builder speed(double speed) {
      state("speed", speed);
      return this;
    }

    /**
     * States terrain.
     *
     * @param terrain what the country upwind looks like; open is assumed if left out
     * @return this builder
     */
    public Builder terrain(Terrain terrain) {
      state("terrain", terrain);
      return this;
    }
  }
}
