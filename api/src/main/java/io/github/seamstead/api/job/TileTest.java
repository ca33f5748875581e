package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A tile of a mix in a tray, weighed as it dries.
 *
 * @param mix the mix, by its id under floor
 * @param thickness thickness of the tile, in metres
 * @param area its open face, in square metres
 * @param moisture water over dry mass when it was filled, as a part of one
 * @param weighings in the order of time
 * @param scale standard uncertainty of a weighing, in kilograms
 * @param temperature temperature where it stood, in degrees Celsius
 * @param humidity relative humidity there, as a part of one, if stated
 * @param wetBulb temperature of a wet bulb there, in degrees Celsius, if stated
 * @param airSpeed air speed there, in metres per second
 */
public record TileTest(
    String mix,
    double thickness,
    double area,
    double moisture,
    List<TileWeighing> weighings,
    double scale,
    double temperature,
    Optional<Double> humidity,
    Optional<Double> wetBulb,
    double airSpeed) {

  public TileTest {
    weighings = List.copyOf(weighings);
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
  public static final class Builder extends Draft<TileTest> {

    private Builder() {
      super(TileTest.class);
    }

    /**
     * States mix.
     *
     * @param mix the mix, by its id under floor
     * @return this builder
     */
    public Builder mix(String mix) {
      state("mix", mix);
      return this;
    }

    /**
     * States thickness.
     *
     * @param thickness thickness of the tile, in metres
     * @return this builder
     */
    public Builder thickness(double thickness) {
      state("thickness", thickness);
      return this;
    }

    /**
     * States area.
     *
     * @param area its open face, in square metres
     * @return this builder
     */
    public Builder area(double area) {
      state("area", area);
      return this;
    }

    /**
     * States moisture.
     *
     * @param moisture water over dry mass when it was filled, as a part of one
     * @return this builder
     */
    public Builder moisture(double moisture) {
      state("moisture", moisture);
      return this;
    }

    /**
     * States weighings.
     *
     * @param weighings in the order of time
     * @return this builder
     */
    public Builder weighings(List<TileWeighing> weighings) {
      state("weighings", weighings);
      return this;
    }

    /**
     * States scale.
     *
     * @param scale standard uncertainty of a weighing, in kilograms; 2 g is assumed if left out
     * @return this builder
     */
    public Builder scale(double scale) {
      state("scale", scale);
      return this;
    }

    /**
     * States temperature.
     *
     * @param temperature temperature where it stood, in degrees Celsius
     * @return this builder
     */
    public Builder temperature(double temperature) {
      state("temperature", temperature);
      return this;
    }

    /**
     * States humidity.
     *
     * @param humidity relative humidity there, as a part of one
     * @return this builder
     */
    public Builder humidity(double humidity) {
      state("humidity", humidity);
      return this;
    }

    /**
     * States wetBulb.
     *
     * @param wetBulb temperature of a wet bulb there, in degrees Celsius
     * @return this builder
     */
    public Builder wetBulb(double wetBulb) {
      state("wetBulb", wetBulb);
      return this;
    }

    /**
     * States airSpeed.
     *
     * @param airSpeed air speed there, in metres per second
     * @return this builder
     */
    public Builder airSpeed(double airSpeed) {
      state("airSpeed", airSpeed);
      return this;
    }
  }
}
