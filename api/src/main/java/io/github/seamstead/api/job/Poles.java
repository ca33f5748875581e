package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The members of the frame.
 *
 * @param section round pipe or rectangular section
 * @param diameter outside diameter of a round section, in metres, if stated
 * @param width width of a rectangular section, along the face, in metres, if stated
 * @param depth depth of a rectangular section, square to the face, in metres, if stated
 * @param massPerLength mass of the section per length, in kilograms per metre, if stated
 * @param setback how much a member stops short of each node, in metres
 * @param bars bars to cut the members from
 * @param kerf width of the saw cut, in metres
 */
public record Poles(
    PoleSection section,
    Optional<Double> diameter,
    Optional<Double> width,
    Optional<Double> depth,
    Optional<Double> massPerLength,
    double setback,
    List<BarStock> bars,
    double kerf) {

  public Poles {
    bars = List.copyOf(bars);
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
  public static final class Builder extends Draft<Poles> {

    private Builder() {
      super(Poles.class);
    }

    /**
     * States section.
     *
     * @param section round pipe or rectangular section; round is assumed if left out
     * @return this builder
     */
    public Builder section(PoleSection section) {
      state("section", section);
      return this;
    }

    /**
     * States diameter.
     *
     * @param diameter outside diameter of a round section, in metres
     * @return this builder
     */
    public Builder diameter(double diameter) {
      state("diameter", diameter);
      return this;
    }

    /**
     * States width.
     *
     * @param width width of a rectangular section, along the face, in metres
     * @return this builder
     */
    public Builder width(double width) {
      state("width", width);
      return this;
    }

    /**
     * States depth.
     *
     * @param depth depth of a rectangular section, square to the face, in metres
     * @return this builder
     */
    public Builder depth(double depth) {
      state("depth", depth);
      return this;
    }

    /**
     * States massPerLength.
     *
     * @param massPerLength mass of the section per length, in kilograms per metre
     * @return this builder
     */
    public Builder massPerLength(double massPerLength) {
      state("massPerLength", massPerLength);
      return this;
    }

    /**
     * States setback.
     *
     * @param setback how much a member stops short of each node, in metres; 0 mm is assumed if left
     *     out
     * @return this builder
     */
    public Builder setback(double setback) {
      state("setback", setback);
      return this;
    }

    /**
     * States bars.
     *
     * @param bars bars to cut the members from
     * @return this builder
     */
    public Builder bars(List<BarStock.Builder> bars) {
      state("bars", bars);
      return this;
    }

    /**
     * States kerf.
     *
     * @param kerf width of the saw cut, in metres; 3 mm is assumed if left out
     * @return this builder
     */
    public Builder kerf(double kerf) {
      state("kerf", kerf);
      return this;
    }
  }
}
