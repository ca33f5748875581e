package io.github.seamstead.api.job;

import java.util.List;
import java.util.Set;

/**
 * One of several sheets of the same shape.
 *
 * @param id its own name, written on it
 * @param flaws parts of it that must not be used
 */
public record SheetCopy(String id, List<StockFlaw> flaws) {

  public SheetCopy {
    flaws = List.copyOf(flaws);
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
  public static final class Builder extends Draft<SheetCopy> {

    private Builder() {
      super(SheetCopy.class);
    }

    /**
     * States id.
     *
     * @param id its own name, written on it
     * @return this builder
     */
    public Builder id(String id) {
      state("id", id);
      return this;
    }

    /**
     * States flaws.
     *
     * @param flaws parts of it that must not be used
     * @return this builder
     */
    public Builder flaws(List<StockFlaw.Builder> flaws) {
      state("flaws", flaws);
      return this;
    }
  }
}
