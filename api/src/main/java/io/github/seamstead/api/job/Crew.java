package io.github.seamstead.api.job;

import java.util.Set;

/**
 * The people who do the work.
 *
 * @param people how many people work
 * @param teams how many teams join seams at the same time
 * @param hoursPerDay working time in a day, in seconds
 */
public record Crew(int people, int teams, double hoursPerDay) {

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
  public static final class Builder extends Draft<Crew> {

    private Builder() {
      super(Crew.class);
    }

    /**
     * States people.
     *
     * @param people how many people work
     * @return this builder
     */
    public Builder people(int people) {
      state("people", people);
      return this;
    }

    /**
     * States teams.
     *
     * @param teams how many teams join seams at the same time; 1 is assumed if left out
     * @return this builder
     */
    public Builder teams(int teams) {
      state("teams", teams);
      return this;
    }

    /**
     * States hoursPerDay.
     *
     * @param hoursPerDay working time in a day, in seconds; 8 h is assumed if left out
     * @return this builder
     */
    public Builder hoursPerDay(double hoursPerDay) {
      state("hoursPerDay", hoursPerDay);
      return this;
    }
  }
}
