package io.github.seamstead.api.job;

import java.util.List;
import java.util.Set;

/**
 * A sieve analysis.
 *
 * @param sieves sieves, the coarsest first
 * @param pan dry mass in the pan, in kilograms
 * @param washed whether the fines were washed through
 */
public record SieveSheet(List<SieveReading> sieves, double pan, boolean washed) {

  public SieveSheet {
    sieves = List.copyOf(sieves);
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
  public static final class Builder extends Draft<SieveSheet> {

    private Builder() {
      super(SieveSheet.class);
    }

    /**
     * States sieves.
     *
     * @param sieves sieves, the coarsest first
     * @return this builder
     */
    public Builder sieves(List<SieveReading> sieves) {
      state("sieves", sieves);
      return this;
    }

    /**
     * States pan.
     *
     * @param pan dry mass in the pan, in kilograms
     * @return this builder
     */
    public Builder pan(double pan) {
      state("pan", pan);
      return this;
    }

    /**
     * States washed.
     *
     * @param washed whether the fines were washed through; false is assumed if left out
     * @return this builder
     */
    public Builder washed(boolean washed) {
      state("washed", washed);
      return this;
    }
  }
}
