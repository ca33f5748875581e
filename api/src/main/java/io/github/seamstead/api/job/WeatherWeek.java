package io.github.seamstead.api.job;

import java.util.Set;

/**
 * Weeks of like weather.
 *
 * @param weeks how many weeks it lasts
 * @param lowest temperature of the night, in degrees Celsius
 * @param highest temperature of the afternoon, in degrees Celsius
 * @param humidity mean relative humidity, as a part of one
 * @param airSpeed mean air speed over the floor, in metres per second
 */
public record WeatherWeek(
    int weeks, double lowest, double highest, double humidity, double airSpeed) {

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
  public static final class Builder extends Draft<WeatherWeek> {

    private Builder() {
      super(WeatherWeek.class);
    }

    /**
     * States weeks.
     *
     * @param weeks how many weeks it lasts
     * @return this builder
     */
    public Builder weeks(int weeks) {
      state("weeks", weeks);
      return this;
    }

    /**
     * States lowest.
     *
     * @param lowest temperature of the night, in degrees Celsius
     * @return this builder
     */
    public Builder lowest(double lowest) {
      state("lowest", lowest);
      return this;
    }

    /**
     * States highest.
     *
     * @param highest temperature of the afternoon, in degrees Celsius
     * @return this builder
     */
    public Builder highest(double highest) {
      state("highest", highest);
      return this;
    }

    /**
     * States humidity.
     *
     * @param humidity mean relative humidity, as a part of one
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
  }
}
