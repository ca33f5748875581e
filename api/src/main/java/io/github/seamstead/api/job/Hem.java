package io.github.seamstead.api.job;

import java.util.List;
import java.util.Set;

/**
 * The lower edge.
 *
 * @param kind turned, reinforced or raw
 * @param allowance fabric added along the lower edge, in metres
 * @param faces faces whose lower edge differs
 */
public record Hem(HemKind kind, double allowance, List<FaceHem> faces) {

  public Hem {
    faces = List.copyOf(faces);
  }

  /**
   * Gives the lower edge of one face.
   *
   * @param face the face, counted from 1
   * @return its own edge if one is stated, else that of all
   */
  public FaceHem of(int face) {
    return faces.stream()
        .filter(own -> own.face() == face)
        .findFirst()
        .orElseGet(() -> new FaceHem(face, kind, allowance));
  }

  /**
   * Tells whether some face may have a kind of edge.
   *
   * @param sought the kind
   * @return whether it is stated for all faces or for one
   */
  public boolean isAnywhere(HemKind sought) {
    return kind == sought || faces.stream().anyMatch(own -> own.kind() == sought);
  }

  /**
   * Gives the greatest allowance.
   *
   * @return of all faces, in metres
   */
  public double largestAllowance() {
    return Math.max(allowance, faces.stream().mapToDouble(FaceHem::allowance).max().orElse(0));
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
  public static final class Builder extends Draft<Hem> {

    private Builder() {
      super(Hem.class);
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

    /**
     * States faces.
     *
     * @param faces faces whose lower edge differs
     * @return this builder
     */
    public Builder faces(List<FaceHem.Builder> faces) {
      state("faces", faces);
      return this;
    }
  }
}
