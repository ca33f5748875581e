package io.github.seamstead.geometry.bars;

import java.util.List;

/**
 * How pieces are cut from bars.
 *
 * @param bars the cutting patterns, each with how many bars are cut so
 * @param kerf width of a saw cut, in metres
 * @param usedLength total length of the bars used, in metres
 * @param pieceLength total length of the pieces cut, in metres
 * @param lowerBound no plan can use less bar length than this, in metres; 0 where pieces are
 *     missing
 * @param proven true if no plan uses less bar length; where pieces are missing, if none would need
 *     fewer further bars of the longest length for them
 * @param missing pieces for which the bars on hand do not suffice; empty if all are cut
 */
public record BarPlan(
    List<CutBar> bars,
    double kerf,
    double usedLength,
    double pieceLength,
    double lowerBound,
    boolean proven,
    List<BarPiece> missing) {

  /**
   * A cutting pattern.
   *
   * @param stock the bar it is cut from
   * @param times how many bars are cut so
   * @param pieces what is cut from one of them, longest first
   * @param offcut what is left of one of them after the last saw cut, in metres, 0 or more
   */
  public record CutBar(BarStock stock, int times, List<BarPiece> pieces, double offcut) {

    public CutBar {
      pieces = List.copyOf(pieces);
    }
  }

  public BarPlan {
    bars = List.copyOf(bars);
    missing = List.copyOf(missing);
  }

  /**
   * Counts the bars.
   *
   * @return the number of bars used
   */
  public int barCount() {
    return bars.stream().mapToInt(CutBar::times).sum();
  }

  /**
   * Gives how much more than the bound is used at most, {@code usedLength / lowerBound - 1}.
   *
   * @return the gap as a ratio, 0 or more; 0 for a plan proven best, and where pieces are missing
   */
  public double gapRatio() {
    return proven || lowerBound == 0 ? 0 : Math.max(0, usedLength / lowerBound - 1);
  }

  /**
   * Gives the part of the bars that becomes saw dust and offcuts, {@code 1 - pieceLength /
   * usedLength}.
   *
   * @return the waste as a ratio, 0 to 1
   */
  public double wasteRatio() {
    return usedLength > 0 ? 1 - pieceLength / usedLength : 0;
  }
}
