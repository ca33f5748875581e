package io.github.seamstead.api.job;

import java.util.Set;

/**
 * A coated fabric.
 *
 * @param name what it is
 * @param massPerArea mass of the fabric per area, in kilograms per square metre
 * @param thickness thickness of the fabric, in metres
 */
public record Fabric(String name, double massPerArea, double thickness) {

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
  public static final class Builder extends Draft<Fabric> {

    private Builder() {
      super(Fabric.class);
    }

    /**
     * States name.
     *
     * @param name what it is; coated fabric is assumed if left out
     * @return this builder
     */
    public Builder name(String name) {
      state("name", name);
      return this;
    }

    /**
     * States massPerArea.
     *
     * @param massPerArea mass of the fabric per area, in kilograms per square metre
     * @return this builder
     */
    public Builder massPerArea(double massPerArea) {
      state("massPerArea", massPerArea);
      return this;
    }

    /**
     * States thickness.
     *
     * @param thickness thickness of the fabric, in metres; 0.6 mm is assumed if left out
     * @return this builder
     */
    public Builder thickness(double thickness) {
      state("thickness", thickness);
      return this;
    }
  }
}
