package io.github.seamstead.api.job;

import java.util.Set;

/**
 * The lower edge of the panel of one face, where it differs from the others.
 *
 * @param face the face, counted counter-clockwise seen from above
 * @param kind turned, reinforced or raw
 * @param allowance fabric added along the lower edge, in metres
 */
public record FaceHem(int face, HemKind kind, double allowance) {

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
  public static final class Builder extends Draft<FaceHem> {

    private Builder() {
      super(FaceHem.class);
    }

    /**
     * States face.
     *
     * @param face the face, counted counter-clockwise seen from above
     * @return this builder
     */
    public Builder face(int face) {
      state("face", face);
      return this;
    }

    /**
     * States kind.
     *
     * @param kind turned, reinforced or raw
     * @return this builder
     */
    public Builder kind(HemKind kind) {
      state("kind", kind);
      return this;
    }

    /**
     * States allowance.
     *
     * @param allowance fabric added along the lower edge, in metres; 0 mm is assumed if left out
     * @return this builder
     */
    public Builder allowance(double allowance) {
      state("allowance", allowance);
      return this;
    }
  }
}
