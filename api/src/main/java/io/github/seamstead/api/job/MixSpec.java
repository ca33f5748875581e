package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * A mix of a soil with sand.
 *
 * @param id its name, by which layers call it
 * @param soil the soil, by its id
 * @param sand the sand, by its id
 * @param use what the mix is for
 * @param leastClay least share of clay aimed at; instead of the usual one for the use, as a part of
 *     one, if stated
 * @param greatestClay greatest share of clay aimed at, as a part of one, if stated
 * @param sandParts parts of sand to one part of soil by the bucket, as a part of one, if fixed by
 *     hand
 * @param placingMoisture water over dry mass as the mix goes into the floor, as a part of one
 * @param largestGrain largest grain after screening, in metres
 * @param fibre whether chopped straw is mixed in
 * @param straw chopped straw over dry mass, as a part of one, if stated
 * @param plasticLimit plastic limit of the mix, as a part of one, if stated
 * @param design a mix with other aggregates as well, if asked for
 * @param density dry mass over compacted volume, in kilograms per cubic metre
 * @param densitySpread half width of the range of that density, as a part of one
 */
public record MixSpec(
    String id,
    String soil,
    String sand,
    MixUse use,
    Optional<Double> leastClay,
    Optional<Double> greatestClay,
    Optional<Double> sandParts,
    double placingMoisture,
    double largestGrain,
    boolean fibre,
    Optional<Double> straw,
    Optional<Double> plasticLimit,
    Optional<MixDesignSpec> design,
    double density,
    double densitySpread) {

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
  public static final class Builder extends Draft<MixSpec> {

    private Builder() {
      super(MixSpec.class);
    }

    /**
     * States id.
     *
     * @param id its name, by which layers call it
     * @return this builder
     */
    public Builder id(String id) {
      state("id", id);
      return this;
    }

    /**
     * States soil.
     *
     * @param soil the soil, by its id
     * @return this builder
     */
    public Builder soil(String soil) {
      state("soil", soil);
      return this;
    }

    /**
     * States sand.
     *
     * @param sand the sand, by its id
     * @return this builder
     */
    public Builder sand(String sand) {
      state("sand", sand);
      return this;
    }

    /**
     * States use.
     *
     * @param use what the mix is for; floor is assumed if left out
     * @return this builder
     */
    public Builder use(MixUse use) {
      state("use", use);
      return this;
    }

    /**
     * States leastClay.
     *
     * @param leastClay least share of clay aimed at; instead of the usual one for the use, as a
     *     part of one
     * @return this builder
     */
    public Builder leastClay(double leastClay) {
      state("leastClay", leastClay);
      return this;
    }

    /**
     * States greatestClay.
     *
     * @param greatestClay greatest share of clay aimed at, as a part of one
     * @return this builder
     */
    public Builder greatestClay(double greatestClay) {
      state("greatestClay", greatestClay);
      return this;
    }

    /**
     * States sandParts.
     *
     * @param sandParts parts of sand to one part of soil by the bucket, as a part of one, if fixed
     *     by hand
     * @return this builder
     */
    public Builder sandParts(double sandParts) {
      state("sandParts", sandParts);
      return this;
    }

    /**
     * States placingMoisture.
     *
     * @param placingMoisture water over dry mass as the mix goes into the floor, as a part of one
     * @return this builder
     */
    public Builder placingMoisture(double placingMoisture) {
      state("placingMoisture", placingMoisture);
      return this;
    }

    /**
     * States largestGrain.
     *
     * @param largestGrain largest grain after screening, in metres
     * @return this builder
     */
    public Builder largestGrain(double largestGrain) {
      state("largestGrain", largestGrain);
      return this;
    }

    /**
     * States fibre.
     *
     * @param fibre whether chopped straw is mixed in
     * @return this builder
     */
    public Builder fibre(boolean fibre) {
      state("fibre", fibre);
      return this;
    }

    /**
     * States straw.
     *
     * @param straw chopped straw over dry mass, as a part of one
     * @return this builder
     */
    public Builder straw(double straw) {
      state("straw", straw);
      return this;
    }

    /**
     * States plasticLimit.
     *
     * @param plasticLimit plastic limit of the mix, as a part of one
     * @return this builder
     */
    public Builder plasticLimit(double plasticLimit) {
      state("plasticLimit", plasticLimit);
      return this;
    }

    /**
     * States design.
     *
     * @param design a mix with other aggregates as well, if asked for
     * @return this builder
     */
    public Builder design(MixDesignSpec.Builder design) {
      state("design", design);
      return this;
    }

    /**
     * States density.
     *
     * @param density dry mass over compacted volume, in kilograms per cubic metre; 1800 kg/m3 is
     *     assumed if left out
     * @return this builder
     */
    public Builder density(double density) {
      state("density", density);
      return this;
    }

    /**
     * States densitySpread.
     *
     * @param densitySpread half width of the range of that density, as a part of one; 6 % is
     *     assumed if left out
     * @return this builder
     */
    public Builder densitySpread(double densitySpread) {
      state("densitySpread", densitySpread);
      return this;
    }
  }
}
