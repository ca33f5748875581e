package io.github.seamstead.geometry.layout.internal;

/**
 * The numbers of the strip search that no formula gives. They were chosen on strips drawn from a
 * seed, bias and spread on three published ones besides; the tables stand in {@code
 * examples/benchmarks/LAYOUT.md}; one of them is printed anew by {@code TuningTable} of the
 * benchmarks.
 *
 * @param wide places drawn over all that a piece may choose from, for each look
 * @param near places drawn within the piece's own size of where it lies
 * @param touch places drawn at which it touches another piece corner to corner
 * @param kept best of those places from which the piece slides on
 * @param grace work units for each piece that a parting may take before its first record counts
 * @param record the part of the least overlap so far that counts as a record; nearer to 1 a try
 *     never ends, since weights shift some overlap for ever
 * @param growth by what part of its weight, at most, that of an overlapping pair grows in a pass
 * @param fade what part of its weight a pair keeps in each pass in which it does not overlap
 * @param bias the power of a piece's area that is its part in the first weights of its pairs: to
 *     part two large pieces takes longer, so that their overlaps are to count more from the start
 * @param spread how much longer than the best, as a part of it, a state may be when its overlaps
 *     are first parted by pressing
 * @param reach how far a joint press moves a piece along each axis, in widths of the strip
 * @param leastStride the lowest step by which the strip is shortened, as a part of its length
 * @param rungs steps of the ladder, each twice the one below
 * @param reserve states kept to begin anew from
 * @param widest widest slice exchanged or turned, as a part of the strip
 * @param patience work units of one worker, at least, without a gain before one begins anew
 */
public record Tuning(
    int wide,
    int near,
    int touch,
    int kept,
    long grace,
    double record,
    double growth,
    double fade,
    double bias,
    double spread,
    double reach,
    double leastStride,
    int rungs,
    int reserve,
    double widest,
    long patience) {

  /** What the search uses. */
  public static final Tuning CHOSEN =
      new Tuning(
          24, 12, 24, 3, 2_000, 0.97, 1, 0.9, 0.25, 0.01, 0.03, 0.001, 6, 16, 0.3, 10_000_000);
}
