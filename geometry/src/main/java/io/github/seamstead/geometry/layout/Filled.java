package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Nest;
import io.github.seamstead.geometry.layout.internal.Poses;
import io.github.seamstead.geometry.stock.StockItem;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Pieces filled onto empty stock, the largest first, without a search. */
final class Filled {

  private Filled() {}

  /** Where each piece of a setup lies; parked if it found no place. */
  static Poses poses(NestSetup some, BooleanSupplier ended) {
    Nest nest = some.nest();
    int[] pieces =
        IntStream.range(0, nest.pieces)
            .boxed()
            .sorted(
                Comparator.comparingDouble(i -> -some.pieces.get(some.kind[i]).outline().area()))
            .mapToInt(Integer::intValue)
            .toArray();
    new Filler(some, nest).fill(pieces, IntStream.range(0, some.bins.size()).toArray(), ended);
    Poses poses = new Poses(nest.pieces);
    nest.save(poses);
    return poses;
  }

  /** Whether no piece is parked. */
  static boolean isComplete(Poses poses) {
    return IntStream.of(poses.region).noneMatch(r -> r == Poses.PARKED);
  }

  /** Whether one copy finds a place when nothing else lies on the stock. */
  static boolean fitsEmpty(
      Piece piece, List<StockItem> stock, double spacing, double margin, BooleanSupplier ended) {
    NestSetup alone =
        new NestSetup(List.of(piece.withCount(1)), StockOrder.bins(stock, 1), spacing, margin);
    return isComplete(poses(alone, ended));
  }
}
