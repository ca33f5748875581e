package io.github.seamstead.api.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The frame that carries the cover, by ideal measures or as surveyed.
 *
 * @param sides how many sides the frame has
 * @param measures ideal measures; two that suffice, if stated
 * @param opening the opening at the top; a whole pyramid if left out, if stated
 * @param poles the members of the frame, if stated
 * @param purlins heights of rings of purlins over the base, in metres
 * @param survey the frame as it was taped, if stated
 */
public record Frame(
    int sides,
    Optional<Map<FrameMeasure, Double>> measures,
    Optional<FrameOpening> opening,
    Optional<Poles> poles,
    List<Double> purlins,
    Optional<SurveyReadings> survey) {

  public Frame {
    measures = measures.map(Map::copyOf);
    purlins = List.copyOf(purlins);
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
  public static final class Builder extends Draft<Frame> {

    private Builder() {
      super(Frame.class);
    }

    /**
     * States sides.
     *
     * @param sides how many sides the frame has
     * @return this builder
     */
    public Builder sides(int sides) {
      state("sides", sides);
      return this;
    }

    /**
     * States measures.
     *
     * @param measures ideal measures; two that suffice
     * @return this builder
     */
    public Builder measures(Map<FrameMeasure, Double> measures) {
      state("measures", measures);
      return this;
    }

    /**
     * States opening.
     *
     * @param opening the opening at the top; a whole pyramid if left out
     * @return this builder
     */
    public Builder opening(FrameOpening.Builder opening) {
      state("opening", opening);
      return this;
    }

    /**
     * States poles.
     *
     * @param poles the members of the frame
     * @return this builder
     */
    public Builder poles(Poles.Builder poles) {
      state("poles", poles);
      return this;
    }

    /**
     * States purlins.
     *
     * @param purlins heights of rings of purlins over the base, in metres
     * @return this builder
     */
    public Builder purlins(List<Double> purlins) {
      state("purlins", purlins);
      return this;
    }

    /**
     * States survey.
     *
     * @param survey the frame as it was taped
     * @return this builder
     */
    public Builder survey(SurveyReadings.Builder survey) {
      state("survey", survey);
      return this;
    }
  }
}
