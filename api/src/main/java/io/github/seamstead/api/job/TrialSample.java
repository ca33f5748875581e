package io.github.seamstead.api.job;

import io.github.seamstead.materials.mix.TrialOutcome;
import java.util.Optional;
import java.util.Set;

/**
 * One sample of a trial mix and what became of it.
 *
 * @param sandParts parts of sand to one part of soil, by the bucket, as a part of one
 * @param crack width of all cracks along the mould together, in metres
 * @param mould length of the mould, in metres
 * @param dusting how it dusts when rubbed dry
 * @param scratch what a nail does
 * @param drop what a fall of 1 m does
 * @param sticky whether it stuck to the trowel when wet
 * @param straw chopped straw over its dry mass, as a part of one, if stated
 */
public record TrialSample(
    double sandParts,
    double crack,
    double mould,
    TrialOutcome.Dusting dusting,
    TrialOutcome.Scratch scratch,
    TrialOutcome.Drop drop,
    boolean sticky,
    Optional<Double> straw) {

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
  public static final class Builder extends Draft<TrialSample> {

    private Builder() {
      super(TrialSample.class);
    }

    /**
     * States sandParts.
     *
     * @param sandParts parts of sand to one part of soil, by the bucket, as a part of one
     * @return this builder
     */
    public Builder sandParts(double sandParts) {
      state("sandParts", sandParts);
      return this;
    }

    /**
     * States crack.
     *
     * @param crack width of all cracks along the mould together, in metres
     * @return this builder
     */
    public Builder crack(double crack) {
      state("crack", crack);
      return this;
    }

    /**
     * States mould.
     *
     * @param mould length of the mould, in metres; 300 mm is assumed if left out
     * @return this builder
     */
    public Builder mould(double mould) {
      state("mould", mould);
      return this;
    }

    /**
     * States dusting.
     *
     * @param dusting how it dusts when rubbed dry
     * @return this builder
     */
    public Builder dusting(TrialOutcome.Dusting dusting) {
      state("dusting", dusting);
      return this;
    }

    /**
     * States scratch.
     *
     * @param scratch what a nail does; marked is assumed if left out
     * @return this builder
     */
    public Builder scratch(TrialOutcome.Scratch scratch) {
      state("scratch", scratch);
      return this;
    }

    /**
     * States drop.
     *
     * @param drop what a fall of 1 m does; chips is assumed if left out
     * @return this builder
     */
    public Builder drop(TrialOutcome.Drop drop) {
      state("drop", drop);
      return this;
    }

    /**
     * States sticky.
     *
     * @param sticky whether it stuck to the trowel when wet
     * @return this builder
     */
    public Builder sticky(boolean sticky) {
      state("sticky", sticky);
      return this;
    }

    /**
     * States straw.
     *
     * @param straw chopped straw over its dry mass, as a part of one
     * @return this builder
     */
    public Builder straw(double straw) {
      state("straw", straw);
      return this;
    }
  }
}
