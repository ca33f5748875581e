package io.github.seamstead.api.job;

import java.util.List;
import java.util.Set;

/**
 * The sheets and rolls that panels are cut from.
 *
 * @param sheets sheets
 * @param rolls rolls
 * @param spacing clear gap between two pieces on the stock, in metres
 * @param edgeMargin clear gap between a piece and the edge of the stock, in metres
 * @param keepGrain whether panels keep their upward direction along or against the width of the
 *     stock
 */
public record Stock(
    List<StockSheet> sheets,
    List<StockRoll> rolls,
    double spacing,
    double edgeMargin,
    boolean keepGrain) {

  public Stock {
    sheets = List.copyOf(sheets);
    rolls = List.copyOf(rolls);
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
  public static final class Builder extends Draft<Stock> {

    private Builder() {
      super(Stock.class);
    }

    /**
     * States sheets.
     *
     * @param sheets sheets
     * @return this builder
     */
    public Builder sheets(List<StockSheet.Builder> sheets) {
      state("sheets", sheets);
      return this;
    }

    /**
     * States rolls.
     *
     * @param rolls rolls
     * @return this builder
     */
    public Builder rolls(List<StockRoll.Builder> rolls) {
      state("rolls", rolls);
      return this;
    }

    /**
     * States spacing.
     *
     * @param spacing clear gap between two pieces on the stock, in metres; 0 mm is assumed if left
     *     out
     * @return this builder
     */
    public Builder spacing(double spacing) {
      state("spacing", spacing);
      return this;
    }

    /**
     * States edgeMargin.
     *
     * @param edgeMargin clear gap between a piece and the edge of the stock, in metres; 0 mm is
     *     assumed if left out
     * @return this builder
     */
    public Builder edgeMargin(double edgeMargin) {
      state("edgeMargin", edgeMargin);
      return this;
    }

    /**
     * States keepGrain.
     *
     * @param keepGrain whether panels keep their upward direction along or against the width of the
     *     stock; false is assumed if left out
     * @return this builder
     */
    public Builder keepGrain(boolean keepGrain) {
      state("keepGrain", keepGrain);
      return this;
    }
  }
}
