package io.github.seamstead.api.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Sheets of one size, measured as they are.
 *
 * @param id its name, written on the sheet
 * @param length measured length, along x, in metres
 * @param width measured width, along y, in metres
 * @param count how many there are
 * @param reinforced edges with a reinforced border worth keeping for the hem
 * @param flaws parts that must not be used
 * @param cost price of one sheet, in the money of the site, if stated
 * @param preference order of use, lowest first
 */
public record StockSheet(
    String id,
    double length,
    double width,
    int count,
    List<SheetEdge> reinforced,
    List<StockFlaw> flaws,
    Optional<Double> cost,
    int preference) {

  public StockSheet {
    reinforced = List.copyOf(reinforced);
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
  public static final class Builder extends Draft<StockSheet> {

    private Builder() {
      super(StockSheet.class);
    }

    /**
     * States id.
     *
     * @param id its name, written on the sheet
     * @return this builder
     */
    public Builder id(String id) {
      state("id", id);
      return this;
    }

    /**
     * States length.
     *
     * @param length measured length, along x, in metres
     * @return this builder
     */
    public Builder length(double length) {
      state("length", length);
      return this;
    }

    /**
     * States width.
     *
     * @param width measured width, along y, in metres
     * @return this builder
     */
    public Builder width(double width) {
      state("width", width);
      return this;
    }

    /**
     * States count.
     *
     * @param count how many there are; 1 is assumed if left out
     * @return this builder
     */
    public Builder count(int count) {
      state("count", count);
      return this;
    }

    /**
     * States reinforced.
     *
     * @param reinforced edges with a reinforced border worth keeping for the hem
     * @return this builder
     */
    public Builder reinforced(List<SheetEdge> reinforced) {
      state("reinforced", reinforced);
      return this;
    }

    /**
     * States flaws.
     *
     * @param flaws parts that must not be used
     * @return this builder
     */
    public Builder flaws(List<StockFlaw.Builder> flaws) {
      state("flaws", flaws);
      return this;
    }

    /**
     * States cost.
     *
     * @param cost price of one sheet, in the money of the site
     * @return this builder
     */
    public Builder cost(double cost) {
      state("cost", cost);
      return this;
    }

    /**
     * States preference.
     *
     * @param preference order of use, lowest first
     * @return this builder
     */
    public Builder preference(int preference) {
      state("preference", preference);
      return this;
    }
  }
}
