package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * The weather while the floor dries.
 *
 * @param temperature mean air temperature, in degrees Celsius
 * @param humidity mean relative humidity of the air, as a part of one
 * @param airSpeed mean air speed over the floor, in metres per second
 * @param horizon how far the forecast looks, in seconds
 * @param airChanges how often the air under the cover is renewed in a day; as often as keeps it at
 *     that humidity if left out, if stated
 * @param roomVolume volume of the air under the cover, in cubic metres; that of the frame if left
 *     out, if stated
 */
public record Weather(
    double temperature,
    double humidity,
    double airSpeed,
    double horizon,
    Optional<Integer> airChanges,
    Optional<Double> roomVolume) {

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
  public static final class Builder extends Draft<Weather> {

    private Builder() {
      super(Weather.class);
    }

    /**
     * States temperature.
     *
     * @param temperature mean air temperature, in degrees Celsius
     * @return this builder
     */
    public Builder temperature(double temperature) {
      state("temperature", temperature);
      return this;
    }

    /**
     * States humidity.
     *
     * @param humidity mean relative humidity of the air, as a part of one
     * @return this builder
     */
    public Builder humidity(double humidity) {
      state("humidity", humidity);
      return this;
    }

    /**
     * States airSpeed.
     *
     * @param airSpeed mean air speed over the floor, in metres per second
     * @return this builder
     */
    public Builder airSpeed(double airSpeed) {
      state("airSpeed", airSpeed);
      return this;
    }

    /**
     * States horizon.
     *
     * @param horizon how far the forecast looks, in seconds; 180 d is assumed if left out
     * @return this builder
     */
    public Builder horizon(double horizon) {
      state("horizon", horizon);
      return this;
    }

    /**
     * States airChanges.
     *
     * @param airChanges how often the air under the cover is renewed in a day; as often as keeps it at that humidity if left out
     * @return this builder
     */
    public Builder airChanges(int airChanges) {
      state("airChanges", airChanges);
      return this;
    }

    /**
     * States roomVolume.
     *
     * @param roomVolume volume of the air under the cover, in cubic metres; that of the frame if left out
     * @return this builder
     */
    public Builder roomVolume(double roomVolume) {
      state("roomVolume", roomVolume);
      return this;
    }
  }
}
