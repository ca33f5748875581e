package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * The tape of a survey and how it was held, for the corrections of its readings.
 *
 * @param markedLength what the tape shows over the length that it was compared with, in metres
 * @param trueLength what that length is, in metres
 * @param expansion thermal expansion, per kelvin
 * @param referenceTemperature at which the comparison holds, in degrees Celsius
 * @param stiffness cross-section times modulus of elasticity, in newtons, if stated
 * @param referencePull at which the comparison holds, in newtons
 * @param massPerLength of the tape, in kilograms per metre, if stated
 * @param temperature of the tape on the day, in degrees Celsius, if stated
 * @param pull with which it was held, in newtons, if stated
 * @param hung whether it hung free between its ends
 */
public record SurveyTape(
    double markedLength,
    double trueLength,
    double expansion,
    double referenceTemperature,
    Optional<Double> stiffness,
    double referencePull,
    Optional<Double> massPerLength,
    Optional<Double> temperature,
    Optional<Double> pull,
    boolean hung) {

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
  public static final class Builder extends Draft<SurveyTape> {

    private Builder() {
      super(SurveyTape.class);
    }

    /**
     * States markedLength.
     *
     * @param markedLength what the tape shows over the length that it was compared with, in metres
     * @return this builder
     */
    public Builder markedLength(double markedLength) {
      state("markedLength", markedLength);
      return this;
    }

    /**
     * States trueLength.
     *
     * @param trueLength what that length is, in metres
     * @return this builder
     */
    public Builder trueLength(double trueLength) {
      state("trueLength", trueLength);
      return this;
    }

    /**
     * States expansion.
     *
     * @param expansion thermal expansion, per kelvin; 0.0000116 per kelvin is assumed if left out
     * @return this builder
     */
    public Builder expansion(double expansion) {
      state("expansion", expansion);
      return this;
    }

    /**
     * States referenceTemperature.
     *
     * @param referenceTemperature at which the comparison holds, in degrees Celsius; 20 degC is
     *     assumed if left out
     * @return this builder
     */
    public Builder referenceTemperature(double referenceTemperature) {
      state("referenceTemperature", referenceTemperature);
      return this;
    }

    /**
     * States stiffness.
     *
     * @param stiffness cross-section times modulus of elasticity, in newtons
     * @return this builder
     */
    public Builder stiffness(double stiffness) {
      state("stiffness", stiffness);
      return this;
    }

    /**
     * States referencePull.
     *
     * @param referencePull at which the comparison holds, in newtons; 50 N is assumed if left out
     * @return this builder
     */
    public Builder referencePull(double referencePull) {
      state("referencePull", referencePull);
      return this;
    }

    /**
     * States massPerLength.
     *
     * @param massPerLength of the tape, in kilograms per metre
     * @return this builder
     */
    public Builder massPerLength(double massPerLength) {
      state("massPerLength", massPerLength);
      return this;
    }

    /**
     * States temperature.
     *
     * @param temperature of the tape on the day, in degrees Celsius
     * @return this builder
     */
    public Builder temperature(double temperature) {
      state("temperature", temperature);
      return this;
    }

    /**
     * States pull.
     *
     * @param pull with which it was held, in newtons
     * @return this builder
     */
    public Builder pull(double pull) {
      state("pull", pull);
      return this;
    }

    /**
     * States hung.
     *
     * @param hung whether it hung free between its ends
     * @return this builder
     */
    public Builder hung(boolean hung) {
      state("hung", hung);
      return this;
    }
  }
}
