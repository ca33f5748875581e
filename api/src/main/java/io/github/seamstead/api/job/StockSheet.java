package io.github.seamstead.api.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Sheets of one shape, measured as they are.
 *
 * @param id its name, written on the sheet
 * @param length measured length, along x, in metres; of the rectangle that an odd sheet lies in
 * @param width measured width, along y, in metres; of the rectangle that an odd sheet lies in
 * @param outline corners in order along the edge; empty for a rectangle
 * @param count how many there are, if the copies are not named
 * @param copies the copies by name, each with its own flaws; empty if all are alike
 * @param reinforced edges of a rectangle with a reinforced border worth keeping for the hem
 * @param bands edges of an outline with a reinforced border, counted from 1: edge 1 runs from the
 *     first corner to the second
 * @param flaws parts that must not be used, on every copy
 * @param cost price of one sheet, in the money of the site, if stated
 * @param preference order of use, lowest first
 */
public record StockSheet(
    String id,
    double length,
    double width,
    List<SheetCorner> outline,
    int count,
    List<SheetCopy> copies,
    List<SheetEdge> reinforced,
    List<Integer> bands,
    List<StockFlaw> flaws,
    Optional<Double> cost,
    int preference) {

  public StockSheet {
    outline = List.copyOf(outline);
    copies = List.copyOf(copies);
    reinforced = List.copyOf(reinforced);
    bands = List.copyOf(bands);
    flaws = List.copyOf(flaws);
  }

  /**
   * Gives the sheets under the names that are written on them.
   *
   * @return this, if all copies are alike; else one for each copy, with its own flaws
   */
  public List<StockSheet> named() {
    return copies.isEmpty() ? List.of(this) : copies.stream().map(this::copy).toList();
  }

  private StockSheet copy(SheetCopy copy) {
    List<StockFlaw> all = new ArrayList<>(flaws);
    all.addAll(copy.flaws());
    return new StockSheet(
        copy.id(), length, width, outline, 1, List.of(), reinforced, bands, all, cost, preference);
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
     * @param length measured length, along x, in metres; of the rectangle that an odd sheet lies in
     * @return this builder
     */
    public Builder length(double length) {
      state("length", length);
      return this;
    }

    /**
     * States width.
     *
     * @param width measured width, along y, in metres; of the rectangle that an odd sheet lies in
     * @return this builder
     */
    public Builder width(double width) {
      state("width", width);
      return this;
    }

    /**
     * States outline.
     *
     * @param outline corners in order along the edge; empty for a rectangle
     * @return this builder
     */
    public Builder outline(List<SheetCorner> outline) {
      state("outline", outline);
      return this;
    }

    /**
     * States count.
     *
     * @param count how many there are, if the copies are not named; 1 is assumed if left out
     * @return this builder
     */
    public Builder count(int count) {
      state("count", count);
      return this;
    }

    /**
     * States copies.
     *
     * @param copies the copies by name, each with its own flaws; empty if all are alike
     * @return this builder
     */
    public Builder copies(List<SheetCopy.Builder> copies) {
      state("copies", copies);
      return this;
    }

    /**
     * States reinforced.
     *
     * @param reinforced edges of a rectangle with a reinforced border worth keeping for the hem
     * @return this builder
     */
    public Builder reinforced(List<SheetEdge> reinforced) {
      state("reinforced", reinforced);
      return this;
    }

    /**
     * States bands.
     *
     * @param bands edges of an outline with a reinforced border, counted from 1: edge 1 runs from
     *     the first corner to the second
     * @return this builder
     */
    public Builder bands(List<Integer> bands) {
      state("bands", bands);
      return this;
    }

    /**
     * States flaws.
     *
     * @param flaws parts that must not be used, on every copy
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
