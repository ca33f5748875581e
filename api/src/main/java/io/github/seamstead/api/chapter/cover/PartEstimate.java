package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.stream.Stream;

/**
 * How many parts panels would come to, estimated before any is drawn: splicing and layout take time
 * with the square of their number and more, and a cover of a thousand parts is a slip of the pen.
 */
final class PartEstimate {

  /** Beyond any cover that a crew joins by hand, and planned within seconds. */
  static final double MOST_PARTS = 150;

  private PartEstimate() {}

  /**
   * Notes a cover of too many parts. The estimate is a lower bound: the area of the faces over the
   * area that the largest piece of the stock covers between its margins, less one lap each way.
   */
  static boolean isTooMany(Run run, Stock stock, Cover cover, List<Outline> faces) {
    double area = faces.stream().mapToDouble(Outline::area).sum();
    double largest =
        Stream.concat(
                stock.sheets().stream().map(s -> covers(s.length(), s.width(), stock, cover)),
                stock.rolls().stream().map(r -> covers(r.length(), r.width(), stock, cover)))
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(0);
    double parts = area / largest;
    if (!(parts > MOST_PARTS)) {
      return false;
    }
    run.fault(
        "$.stock",
        "pieces of cloth that cover at most "
            + Numbers.significant(largest, 2)
            + " m2 each, for faces of "
            + Numbers.significant(area, 3)
            + " m2",
        "must cover the faces in at most "
            + Numbers.fixed(MOST_PARTS, 0)
            + " parts, not in "
            + Numbers.fixed(Math.ceil(parts), 0)
            + " or more; look at the units: a bare length is in m");
    return true;
  }

  private static double covers(double length, double width, Stock stock, Cover cover) {
    double lost = 2 * stock.edgeMargin() + cover.spliceLap();
    return Math.max(length - lost, 0) * Math.max(width - lost, 0);
  }
}
