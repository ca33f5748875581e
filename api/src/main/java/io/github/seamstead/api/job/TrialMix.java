package io.github.seamstead.api.job;

import java.util.List;
import java.util.Set;

/**
 * Trial samples of one mix.
 *
 * @param mix the mix, by its id under floor
 * @param samples the samples
 * @param crackLimit crack width over length that is accepted, as a part of one
 * @param step the step in which parts of sand are chosen, as a part of one
 */
public record TrialMix(String mix, List<TrialSample> samples, double crackLimit, double step) {

  public TrialMix {
    samples = List.copyOf(samples);
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
  public static final class Builder extends Draft<TrialMix> {

    private Builder() {
      super(TrialMix.class);
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
     * States samples.
     *
     * @param samples the samples
     * @return this builder
     */
    public Builder samples(List<TrialSample.Builder> samples) {
      state("samples", samples);
      return this;
    }

    /**
     * States crackLimit.
     *
     * @param crackLimit crack width over length that is accepted, as a part of one; 0.4 % is
     *     assumed if left out
     * @return this builder
     */
    public Builder crackLimit(double crackLimit) {
      state("crackLimit", crackLimit);
      return this;
    }

    /**
     * States step.
     *
     * @param step the step in which parts of sand are chosen, as a part of one; 0.5 is assumed if
     *     left out
     * @return this builder
     */
    public Builder step(double step) {
      state("step", step);
      return this;
    }
  }
}
