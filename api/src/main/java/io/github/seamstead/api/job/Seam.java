package io.github.seamstead.api.job;

import java.util.Set;

/**
 * The joint between neighbouring panels.
 *
 * @param kind how the panels are joined
 * @param allowance fabric added along each side edge, in metres
 */
public record Seam(SeamKind kind, double allowance) {

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
  public static final class Builder extends Draft<Seam> {

    private Builder() {
      super(Seam.class);
    }

    /**
     * States kind.
     *
     * @param kind how the panels are joined; fin is assumed if left out
     * @return this builder
     */
    public Builder kind(SeamKind kind) {
      state("kind", kind);
      return this;
    }

    /**
     * States allowance.
     *
     * @param allowance fabric added along each side edge, in metres
     * @return this builder
     */
    public Builder allowance(double allowance) {
      state("allowance", allowance);
      return this;
    }
  }
}
