package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.UnitSystem;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * The site and who works there.
 *
 * @param name what the job is called
 * @param note a remark for the first page, if stated
 * @param units the units that the book shows first
 * @param crew the people who do the work, if stated
 * @param basicWind the basic wind speed of a code that prints means, if stated; never beside a gust
 * @param designWind gust speed at the height of the cover by the local code, in metres per second,
 *     if stated
 * @param windFigures wind coefficients of the builder's own, if stated
 * @param pegs pegs tested by pulling them, if stated
 * @param rope the rope that raises the cover, if stated
 * @param start the day on which joining starts, if stated
 * @param paper the paper that the book is made for, if stated
 */
public record Site(
    String name,
    Optional<String> note,
    UnitSystem units,
    Optional<Crew> crew,
    Optional<BasicWind> basicWind,
    Optional<Double> designWind,
    Optional<WindFigures> windFigures,
    Optional<PegPulls> pegs,
    Optional<SiteRope> rope,
    Optional<LocalDate> start,
    Optional<Paper> paper) {

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
  public static final class Builder extends Draft<Site> {

    private Builder() {
      super(Site.class);
    }

    /**
     * States name.
     *
     * @param name what the job is called
     * @return this builder
     */
    public Builder name(String name) {
      state("name", name);
      return this;
    }

    /**
     * States note.
     *
     * @param note a remark for the first page
     * @return this builder
     */
    public Builder note(String note) {
      state("note", note);
      return this;
    }

    /**
     * States units.
     *
     * @param units the units that the book shows first; metric is assumed if left out
     * @return this builder
     */
    public Builder units(UnitSystem units) {
      state("units", units);
      return this;
    }

    /**
     * States crew.
     *
     * @param crew the people who do the work
     * @return this builder
     */
    public Builder crew(Crew.Builder crew) {
      state("crew", crew);
      return this;
    }

    /**
     * States basicWind.
     *
     * @param basicWind the basic wind speed of a code that prints means; never beside a gust
     * @return this builder
     */
    public Builder basicWind(BasicWind.Builder basicWind) {
      state("basicWind", basicWind);
      return this;
    }

    /**
     * States designWind.
     *
     * @param designWind gust speed at the height of the cover by the local code, in metres per
     *     second
     * @return this builder
     */
    public Builder designWind(double designWind) {
      state("designWind", designWind);
      return this;
    }

    /**
     * States windFigures.
     *
     * @param windFigures wind coefficients of the builder's own
     * @return this builder
     */
    public Builder windFigures(WindFigures windFigures) {
      state("windFigures", windFigures);
      return this;
    }

    /**
     * States pegs.
     *
     * @param pegs pegs tested by pulling them
     * @return this builder
     */
    public Builder pegs(PegPulls.Builder pegs) {
      state("pegs", pegs);
      return this;
    }

    /**
     * States rope.
     *
     * @param rope the rope that raises the cover
     * @return this builder
     */
    public Builder rope(SiteRope.Builder rope) {
      state("rope", rope);
      return this;
    }

    /**
     * States start.
     *
     * @param start the day on which joining starts
     * @return this builder
     */
    public Builder start(LocalDate start) {
      state("start", start);
      return this;
    }

    /**
     * States paper.
     *
     * @param paper the paper that the book is made for
     * @return this builder
     */
    public Builder paper(Paper paper) {
      state("paper", paper);
      return this;
    }
  }
}
