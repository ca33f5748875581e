package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The frame as it was taped.
 *
 * @param distances taped distances; a distance may be read more than once
 * @param heights differences of height
 * @param plumbs plumb lines
 * @param uncertainty standard uncertainty of a taped distance that states none, in metres
 * @param heightUncertainty standard uncertainty of a height or plumb offset that states none, in
 *     metres
 * @param tolerance the worst misfit that a template may have on a face, in metres
 * @param tape the tape and how it was held, if stated
 */
public record SurveyReadings(
    List<TapedDistance> distances,
    List<HeightReading> heights,
    List<PlumbReading> plumbs,
    double uncertainty,
    double heightUncertainty,
    double tolerance,
    Optional<SurveyTape> tape) {

  public SurveyReadings {
    distances = List.copyOf(distances);
    heights = List.copyOf(heights);
    plumbs = List.copyOf(plumbs);
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
  public static final class Builder extends Draft<SurveyReadings> {

    private Builder() {
      super(SurveyReadings.class);
    }

    /**
     * States distances.
     *
     * @param distances taped distances; a distance may be read more than once
     * @return this builder
     */
    public Builder distances(List<TapedDistance.Builder> distances) {
      state("distances", distances);
      return this;
    }

    /**
     * States heights.
     *
     * @param heights differences of height
     * @return this builder
     */
    public Builder heights(List<HeightReading> heights) {
      state("heights", heights);
      return this;
    }

    /**
     * States plumbs.
     *
     * @param plumbs plumb lines
     * @return this builder
     */
    public Builder plumbs(List<PlumbReading> plumbs) {
      state("plumbs", plumbs);
      return this;
    }

    /**
     * States uncertainty.
     *
     * @param uncertainty standard uncertainty of a taped distance that states none, in metres; 3 mm
     *     is assumed if left out
     * @return this builder
     */
    public Builder uncertainty(double uncertainty) {
      state("uncertainty", uncertainty);
      return this;
    }

    /**
     * States heightUncertainty.
     *
     * @param heightUncertainty standard uncertainty of a height or plumb offset that states none,
     *     in metres; 3 mm is assumed if left out
     * @return this builder
     */
    public Builder heightUncertainty(double heightUncertainty) {
      state("heightUncertainty", heightUncertainty);
      return this;
    }

    /**
     * States tolerance.
     *
     * @param tolerance the worst misfit that a template may have on a face, in metres; 20 mm is
     *     assumed if left out
     * @return this builder
     */
    public Builder tolerance(double tolerance) {
      state("tolerance", tolerance);
      return this;
    }

    /**
     * States tape.
     *
     * @param tape the tape and how it was held
     * @return this builder
     */
    public Builder tape(SurveyTape.Builder tape) {
      state("tape", tape);
      return this;
    }
  }
}
