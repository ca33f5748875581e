package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.Set;

/**
 * A part of a sheet or roll that must not be used.
 *
 * @param x left edge of the flaw from the left edge of the piece, in metres
 * @param y lower edge of the flaw from the lower edge of the piece, in metres
 * @param width width of the flaw along x, in metres
 * @param height height of the flaw along y, in metres
 * @param note what is wrong there, if stated
 */
public record StockFlaw(double x, double y, double width, double height, Optional<String> note) {

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
  public static final class Builder extends Draft<StockFlaw> {

    private Builder() {
      super(StockFlaw.class);
    }

    /**
     * States x.
     *
     * @param x left edge of the flaw from the left edge of the piece, in metres
     * @return this builder
     */
    public Builder x(double x) {
      state("x", x);
      return this;
    }

    /**
     * States y.
     *
     * @param y lower edge of the flaw from the lower edge of the piece, in metres
     * @return this builder
     */
    public Builder y(double y) {
      state("y", y);
      return this;
    }

    /**
     * States width.
     *
     * @param width width of the flaw along x, in metres
     * @return this builder
     */
    public Builder width(double width) {
      state("width", width);
      return this;
    }

    /**
     * States height.
     *
     * @param height height of the flaw along y, in metres
     * @return this builder
     */
    public Builder height(double height) {
      state("height", height);
      return this;
    }

    /**
     * States note.
     *
     * @param note what is wrong there
     * @return this builder
     */
    public Builder note(String note) {
      state("note", note);
      return this;
    }
  }
}
