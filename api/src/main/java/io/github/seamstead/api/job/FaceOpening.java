package io.github.seamstead.api.job;

import java.util.List;
import java.util.Set;

/**
 * A door or a vent in one face.
 *
 * @param id its name
 * @param face the face it is in, counted counter-clockwise seen from above
 * @param outline its corners in the plane of the face
 * @param flap how much the flap laps over the opening all round, in metres
 * @param patch width of the reinforcement round the opening, in metres
 */
public record FaceOpening(String id, int face, List<Point> outline, double flap, double patch) {

  public FaceOpening {
    outline = List.copyOf(outline);
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
  public static final class Builder extends Draft<FaceOpening> {

    private Builder() {
      super(FaceOpening.class);
    }

    /**
     * States id.
     *
     * @param id its name
     * @return this builder
     */
    public Builder id(String id) {
      state("id", id);
      return this;
    }

    /**
     * States face.
     *
     * @param face the face it is in, counted counter-clockwise seen from above
     * @return this builder
     */
    public Builder face(int face) {
      state("face", face);
      return this;
    }

    /**
     * States outline.
     *
     * @param outline its corners in the plane of the face
     * @return this builder
     */
    public Builder outline(List<Point> outline) {
      state("outline", outline);
      return this;
    }

    /**
     * States flap.
     *
     * @param flap how much the flap laps over the opening all round, in metres; 150 mm is assumed
     *     if left out
     * @return this builder
     */
    public Builder flap(double flap) {
      state("flap", flap);
      return this;
    }

    /**
     * States patch.
     *
     * @param patch width of the reinforcement round the opening, in metres; 50 mm is assumed if
     *     left out
     * @return this builder
     */
    public Builder patch(double patch) {
      state("patch", patch);
      return this;
    }
  }
}
