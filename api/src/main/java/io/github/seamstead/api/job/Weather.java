package io.github.seamstead.api.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The weather while the floor dries: one mean, or week after week.
 *
 * @param temperature mean air temperature, in degrees Celsius, if stated
 * @param humidity mean relative humidity of the air, as a part of one, if stated
 * @param wetBulb temperature of the wet bulb, in degrees Celsius, if stated
 * @param airSpeed mean air speed over the floor, in metres per second, if stated
 * @param weeks week after week; empty if a mean is stated
 * @param laid the day on which the lowest mixed layer is laid, if stated
 * @param tiles test tiles of the mixes
 * @param horizon how far the forecast looks, in seconds
 * @param airChanges how often the air under the cover is renewed in a day, if stated
 * @param roomVolume volume of the air under the cover, in cubic metres, if stated
 */
public record Weather(
    Optional<Double> temperature,
    Optional<Double> humidity,
    Optional<Double> wetBulb,
    Optional<Double> airSpeed,
    List<WeatherWeek> weeks,
    Optional<LocalDate> laid,
    List<TileTest> tiles,
    double horizon,
    Optional<Integer> airChanges,
    Optional<Double> roomVolume) {

  public Weather {
    weeks = List.copyOf(weeks);
    tiles = List.copyOf(tiles);
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
     * States wetBulb.
     *
     * @param wetBulb temperature of the wet bulb, in degrees Celsius
     * @return this builder
     */
    public Builder wetBulb(double wetBulb) {
      state("wetBulb", wetBulb);
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
     * States weeks.
     *
     * @param weeks week after week; empty if a mean is stated
     * @return this builder
     */
    public Builder weeks(List<WeatherWeek.Builder> weeks) {
      state("weeks", weeks);
      return this;
    }

    /**
     * States laid.
     *
     * @param laid the day on which the lowest mixed layer is laid
     * @return this builder
     */
    public Builder laid(LocalDate laid) {
      state("laid", laid);
      return this;
    }

    /**
     * States tiles.
     *
     * @param tiles test tiles of the mixes
     * @return this builder
     */
    public Builder tiles(List<TileTest.Builder> tiles) {
      state("tiles", tiles);
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
     * @param airChanges how often the air under the cover is renewed in a day
     * @return this builder
     */
    public Builder airChanges(int airChanges) {
      state("airChanges", airChanges);
      return this;
    }

    /**
     * States roomVolume.
     *
     * @param roomVolume volume of the air under the cover, in cubic metres
     * @return this builder
     */
    public Builder roomVolume(double roomVolume) {
      state("roomVolume", roomVolume);
      return this;
    }
  }
}
