package io.github.seamstead.api.job;

import io.github.seamstead.assembly.fixings.Fibre;
import java.util.Optional;
import java.util.Set;

/**
 * The rope that raises the cover.
 *
 * @param fibre what it is made of
 * @param diameter in metres
 * @param factor breaking load over working load
 * @param coil length of the coils it is cut from, in metres, if stated
 */
public record SiteRope(Fibre fibre, double diameter, double factor, Optional<Double> coil) {

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
  public static final class Builder extends Draft<SiteRope> {

    private Builder() {
      super(SiteRope.class);
    }

    /**
     * States fibre.
     *
     * @param fibre what it is made of
     * @return this builder
     */
    public Builder fibre(Fibre fibre) {
      state("fibre", fibre);
      return this;
    }

    /**
     * States diameter.
     *
     * @param diameter in metres
     * @return this builder
     */
    public Builder diameter(double diameter) {
      state("diameter", diameter);
      return this;
    }

    /**
     * States factor.
     *
     * @param factor breaking load over working load; 12 is assumed if left out
     * @return this builder
     */
    public Builder factor(double factor) {
      state("factor", factor);
      return this;
    }

    /**
     * States coil.
     *
     * @param coil length of the coils it is cut from, in metres
     * @return this builder
     */
    public Builder coil(double coil) {
      state("coil", coil);
      return this;
    }
  }
}
