package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A mix of more than one soil and one sand, found by calculation.
 *
 * @param with the other aggregates that it may take, by their ids
 * @param aim what decides among the mixes within the band of clay
 * @param exponent exponent of the grading curve that is aimed at
 * @param greatestShrinkage greatest linear shrinkage, as a part of one, if limited
 */
public record MixDesignSpec(
    List<String> with, DesignAim aim, double exponent, Optional<Double> greatestShrinkage) {

  public MixDesignSpec {
    with = List.copyOf(with);
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
  public static final class Builder extends Draft<MixDesignSpec> {

    private Builder() {
      super(MixDesignSpec.class);
    }

    /**
     * States with.
     *
     * @param with the other aggregates that it may take, by their ids
     * @return this builder
     */
    public Builder with(List<String> with) {
      state("with", with);
      return this;
    }

    /**
     * States aim.
     *
     * @param aim what decides among the mixes within the band of clay; grading is assumed if left
     *     out
     * @return this builder
     */
    public Builder aim(DesignAim aim) {
      state("aim", aim);
      return this;
    }

    /**
     * States exponent.
     *
     * @param exponent exponent of the grading curve that is aimed at; 0.5 is assumed if left out
     * @return this builder
     */
    public Builder exponent(double exponent) {
      state("exponent", exponent);
      return this;
    }

    /**
     * States greatestShrinkage.
     *
     * @param greatestShrinkage greatest linear shrinkage, as a part of one, if limited
     * @return this builder
     */
    public Builder greatestShrinkage(double greatestShrinkage) {
      state("greatestShrinkage", greatestShrinkage);
      return this;
    }
  }
}
