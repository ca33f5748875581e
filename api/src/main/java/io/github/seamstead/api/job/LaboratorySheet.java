package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * Shares of clay, silt and sand from a laboratory.
 *
 * @param clay share of clay in dry mass, as a part of one
 * @param silt share of silt in dry mass, as a part of one
 * @param sand share of sand in dry mass, as a part of one
 * @param limits the limits between clay, silt and sand
 * @param uncertainty standard uncertainty of each share, as a part of one
 * @param organicMatter organic matter as a share of dry mass, as a part of one; empty if it was not
 *     looked for
 * @param solubleSalts salts that dissolve in water as a share of dry mass, as a part of one; empty
 *     if they were not looked for
 */
public record LaboratorySheet(
    double clay,
    double silt,
    double sand,
    SizeSystem limits,
    double uncertainty,
    Optional<Double> organicMatter,
    Optional<Double> solubleSalts) {

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
  public static final class Builder extends Draft<LaboratorySheet> {

    private Builder() {
      super(LaboratorySheet.class);
    }

    /**
     * States clay.
     *
     * @param clay share of clay in dry mass, as a part of one
     * @return this builder
     */
    public Builder clay(double clay) {
      state("clay", clay);
      return this;
    }

    /**
     * States silt.
     *
     * @param silt share of silt in dry mass, as a part of one
     * @return this builder
     */
    public Builder silt(double silt) {
      state("silt", silt);
      return this;
    }

    /**
     * States sand.
     *
     * @param sand share of sand in dry mass, as a part of one
     * @return this builder
     */
    public Builder sand(double sand) {
      state("sand", sand);
      return this;
    }

    /**
     * States limits.
     *
     * @param limits the limits between clay, silt and sand; usda is assumed if left out
     * @return this builder
     */
    public Builder limits(SizeSystem limits) {
      state("limits", limits);
      return this;
    }

    /**
     * States uncertainty.
     *
     * @param uncertainty standard uncertainty of each share, as a part of one; 2 % is assumed if
     *     left out
     * @return this builder
     */
    public Builder uncertainty(double uncertainty) {
      state("uncertainty", uncertainty);
      return this;
    }

    /**
     * States organicMatter.
     *
     * @param organicMatter organic matter as a share of dry mass, as a part of one; empty if it was
     *     not looked for
     * @return this builder
     */
    public Builder organicMatter(double organicMatter) {
      state("organicMatter", organicMatter);
      return this;
    }

    /**
     * States solubleSalts.
     *
     * @param solubleSalts salts that dissolve in water as a share of dry mass, as a part of one;
     *     empty if they were not looked for
     * @return this builder
     */
    public Builder solubleSalts(double solubleSalts) {
      state("solubleSalts", solubleSalts);
      return this;
    }
  }
}
