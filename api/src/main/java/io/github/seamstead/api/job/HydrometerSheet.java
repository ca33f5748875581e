package io.github.seamstead.api.job;

import java.util.List;
import java.util.Set;

/**
 * A hydrometer analysis.
 *
 * @param readings readings in the order of time
 * @param soilPerVolume dry soil over volume of the suspension; g/l is kg/m3, in kilograms per cubic
 *     metre
 * @param temperature temperature of the suspension, in degrees Celsius
 * @param blank reading in water with dispersant alone, in kilograms per cubic metre
 * @param particleDensity density of the grains, in kilograms per cubic metre
 */
public record HydrometerSheet(
    List<HydrometerReading> readings,
    double soilPerVolume,
    double temperature,
    double blank,
    double particleDensity) {

  public HydrometerSheet {
    readings = List.copyOf(readings);
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
  public static final class Builder extends Draft<HydrometerSheet> {

    private Builder() {
      super(HydrometerSheet.class);
    }

    /**
     * States readings.
     *
     * @param readings readings in the order of time
     * @return this builder
     */
    public Builder readings(List<HydrometerReading> readings) {
      state("readings", readings);
      return this;
    }

    /**
     * States soilPerVolume.
     *
     * @param soilPerVolume dry soil over volume of the suspension; g/l is kg/m3, in kilograms per
     *     cubic metre
     * @return this builder
     */
    public Builder soilPerVolume(double soilPerVolume) {
      state("soilPerVolume", soilPerVolume);
      return this;
    }

    /**
     * States temperature.
     *
     * @param temperature temperature of the suspension, in degrees Celsius; 20 degC is assumed if
     *     left out
     * @return this builder
     */
    public Builder temperature(double temperature) {
      state("temperature", temperature);
      return this;
    }

    /**
     * States blank.
     *
     * @param blank reading in water with dispersant alone, in kilograms per cubic metre; 0 kg/m3 is
     *     assumed if left out
     * @return this builder
     */
    public Builder blank(double blank) {
      state("blank", blank);
      return this;
    }

    /**
     * States particleDensity.
     *
     * @param particleDensity density of the grains, in kilograms per cubic metre; 2650 kg/m3 is
     *     assumed if left out
     * @return this builder
     */
    public Builder particleDensity(double particleDensity) {
      state("particleDensity", particleDensity);
      return this;
    }
  }
}
