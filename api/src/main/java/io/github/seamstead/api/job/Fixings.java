package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * What holds seams and hem.
 *
 * @param method what holds a seam
 * @param spacing distance between fixings along a seam, in metres
 * @param rows rows of fixings in a seam
 * @param packSize fixings in a pack
 * @param adhesiveBead diameter of the bead of adhesive along each seam, in metres, if stated
 * @param cartridge volume of adhesive in a cartridge, in cubic metres
 * @param adhesive what the maker of the adhesive states, if stated
 * @param spare spare fixings and adhesive, as a part of one
 * @param through what a fixing goes through, if stated
 */
public record Fixings(
    FixingMethod method,
    double spacing,
    int rows,
    int packSize,
    Optional<Double> adhesiveBead,
    double cartridge,
    Optional<Adhesive> adhesive,
    double spare,
    Optional<SeamLayers> through) {

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
  public static final class Builder extends Draft<Fixings> {

    private Builder() {
      super(Fixings.class);
    }

    /**
     * States method.
     *
     * @param method what holds a seam; staples is assumed if left out
     * @return this builder
     */
    public Builder method(FixingMethod method) {
      state("method", method);
      return this;
    }

    /**
     * States spacing.
     *
     * @param spacing distance between fixings along a seam, in metres; 40 mm is assumed if left out
     * @return this builder
     */
    public Builder spacing(double spacing) {
      state("spacing", spacing);
      return this;
    }

    /**
     * States rows.
     *
     * @param rows rows of fixings in a seam; 1 is assumed if left out
     * @return this builder
     */
    public Builder rows(int rows) {
      state("rows", rows);
      return this;
    }

    /**
     * States packSize.
     *
     * @param packSize fixings in a pack; 1000 is assumed if left out
     * @return this builder
     */
    public Builder packSize(int packSize) {
      state("packSize", packSize);
      return this;
    }

    /**
     * States adhesiveBead.
     *
     * @param adhesiveBead diameter of the bead of adhesive along each seam, in metres
     * @return this builder
     */
    public Builder adhesiveBead(double adhesiveBead) {
      state("adhesiveBead", adhesiveBead);
      return this;
    }

    /**
     * States cartridge.
     *
     * @param cartridge volume of adhesive in a cartridge, in cubic metres; 310 ml is assumed if
     *     left out
     * @return this builder
     */
    public Builder cartridge(double cartridge) {
      state("cartridge", cartridge);
      return this;
    }

    /**
     * States adhesive.
     *
     * @param adhesive what the maker of the adhesive states
     * @return this builder
     */
    public Builder adhesive(Adhesive adhesive) {
      state("adhesive", adhesive);
      return this;
    }

    /**
     * States spare.
     *
     * @param spare spare fixings and adhesive, as a part of one; 10 % is assumed if left out
     * @return this builder
     */
    public Builder spare(double spare) {
      state("spare", spare);
      return this;
    }

    /**
     * States through.
     *
     * @param through what a fixing goes through
     * @return this builder
     */
    public Builder through(SeamLayers.Builder through) {
      state("through", through);
      return this;
    }
  }
}
