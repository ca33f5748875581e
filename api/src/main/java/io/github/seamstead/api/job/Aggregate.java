package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * Sand or gravel that is bought or screened.
 *
 * @param id its name, by which mixes and layers call it
 * @param kind sand or gravel
 * @param smallest smallest grain of a gravel, in metres, if stated
 * @param largest largest grain, in metres, if stated
 * @param moisture water over dry mass as it lies, as a part of one
 * @param deliveryStep mass in which it is sold, in kilograms
 * @param clay share of clay in its dry mass, as a part of one, if stated
 * @param clayUncertainty standard uncertainty of that share, as a part of one
 * @param bulkingTin the sand in a tin, damp and flooded, if made
 * @param dried a sample dried to tell its moisture, if made
 * @param weighed a weighed bucket of it, if made
 * @param pricePerTonne price of a tonne, in the money of the site, if stated
 */
public record Aggregate(
    String id,
    AggregateKind kind,
    Optional<Double> smallest,
    Optional<Double> largest,
    double moisture,
    double deliveryStep,
    Optional<Double> clay,
    double clayUncertainty,
    Optional<BulkingTin> bulkingTin,
    Optional<DriedSample> dried,
    Optional<WeighedBucket> weighed,
    Optional<Double> pricePerTonne) {

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
  public static final class Builder extends Draft<Aggregate> {

    private Builder() {
      super(Aggregate.class);
    }

    /**
     * States id.
     *
     * @param id its name, by which mixes and layers call it
     * @return this builder
     */
    public Builder id(String id) {
      state("id", id);
      return this;
    }

    /**
     * States kind.
     *
     * @param kind sand or gravel
     * @return this builder
     */
    public Builder kind(AggregateKind kind) {
      state("kind", kind);
      return this;
    }

    /**
     * States smallest.
     *
     * @param smallest smallest grain of a gravel, in metres
     * @return this builder
     */
    public Builder smallest(double smallest) {
      state("smallest", smallest);
      return this;
    }

    /**
     * States largest.
     *
     * @param largest largest grain, in metres
     * @return this builder
     */
    public Builder largest(double largest) {
      state("largest", largest);
      return this;
    }

    /**
     * States moisture.
     *
     * @param moisture water over dry mass as it lies, as a part of one; 4 % is assumed if left out
     * @return this builder
     */
    public Builder moisture(double moisture) {
      state("moisture", moisture);
      return this;
    }

    /**
     * States deliveryStep.
     *
     * @param deliveryStep mass in which it is sold, in kilograms; 100 kg is assumed if left out
     * @return this builder
     */
    public Builder deliveryStep(double deliveryStep) {
      state("deliveryStep", deliveryStep);
      return this;
    }

    /**
     * States clay.
     *
     * @param clay share of clay in its dry mass, as a part of one
     * @return this builder
     */
    public Builder clay(double clay) {
      state("clay", clay);
      return this;
    }

    /**
     * States clayUncertainty.
     *
     * @param clayUncertainty standard uncertainty of that share, as a part of one; 2 % is assumed
     *     if left out
     * @return this builder
     */
    public Builder clayUncertainty(double clayUncertainty) {
      state("clayUncertainty", clayUncertainty);
      return this;
    }

    /**
     * States bulkingTin.
     *
     * @param bulkingTin the sand in a tin, damp and flooded, if made
     * @return this builder
     */
    public Builder bulkingTin(BulkingTin bulkingTin) {
      state("bulkingTin", bulkingTin);
      return this;
    }

    /**
     * States dried.
     *
     * @param dried a sample dried to tell its moisture, if made
     * @return this builder
     */
    public Builder dried(DriedSample dried) {
      state("dried", dried);
      return this;
    }

    /**
     * States weighed.
     *
     * @param weighed a weighed bucket of it, if made
     * @return this builder
     */
    public Builder weighed(WeighedBucket weighed) {
      state("weighed", weighed);
      return this;
    }

    /**
     * States pricePerTonne.
     *
     * @param pricePerTonne price of a tonne, in the money of the site
     * @return this builder
     */
    public Builder pricePerTonne(double pricePerTonne) {
      state("pricePerTonne", pricePerTonne);
      return this;
    }
  }
}
