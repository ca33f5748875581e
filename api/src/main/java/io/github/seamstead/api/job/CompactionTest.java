package io.github.seamstead.api.job;

import java.util.List;
import java.util.Set;

/**
 * How a pack compacts, and how dense it was rammed.
 *
 * @param mould volume of the mould, in cubic metres
 * @param points cylinders at different moistures
 * @param particleDensity density of the grains, in kilograms per cubic metre
 * @param cones places of the laid pack
 */
public record CompactionTest(
    double mould, List<CompactionPoint> points, double particleDensity, List<SandCone> cones) {

  public CompactionTest {
    points = List.copyOf(points);
    cones = List.copyOf(cones);
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
  public static final class Builder extends Draft<CompactionTest> {

    private Builder() {
      super(CompactionTest.class);
    }

    /**
     * States mould.
     *
     * @param mould volume of the mould, in cubic metres; 944 ml is assumed if left out
     * @return this builder
     */
    public Builder mould(double mould) {
      state("mould", mould);
      return this;
    }

    /**
     * States points.
     *
     * @param points cylinders at different moistures
     * @return this builder
     */
    public Builder points(List<CompactionPoint> points) {
      state("points", points);
      return this;
    }

    /**
     * States particleDensity.
     *
     * @param particleDensity density of the grains, in kilograms per cubic metre; 2650 kg/m3 is
     *     assumed if left out
     * @return this builder
     */
    public Builder particleDensity(double particleDensity) {
      state("particleDensity", particleDensity);
      return this;
    }

    /**
     * States cones.
     *
     * @param cones places of the laid pack
     * @return this builder
     */
    public Builder cones(List<SandCone> cones) {
      state("cones", cones);
      return this;
    }
  }
}
