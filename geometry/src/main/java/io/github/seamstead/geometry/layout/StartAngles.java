package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.layout.internal.Turns;
import io.github.seamstead.shared.plane.Bounds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The angles from which a piece that may lie at any of them is tried, smallest box first. */
final class StartAngles {

  private static final int MOST = 8;

  private final List<Box> boxes = new ArrayList<>();
  private final Fits fits;

  /** Tells whether a box fits a stock copy. */
  interface Fits {
    boolean test(double width, double height, int bin);
  }

  private record Box(double angle, double width, double height) {}

  /**
   * Looks at every angle of {@link PieceTurns#of}.
   *
   * @param mirrored whether it is the piece turned over
   * @param corners of the piece so, rounded, so that the order is the same wherever it is drawn
   */
  StartAngles(Piece piece, boolean mirrored, double[] corners, Fits fits) {
    this.fits = fits;
    for (double angle : PieceTurns.of(piece, mirrored)) {
      Bounds size = Turns.box(corners, angle);
      boxes.add(new Box(angle, size.width(), size.height()));
    }
    boxes.sort(
        Comparator.comparingDouble((Box box) -> box.width() * box.height())
            .thenComparingDouble(Box::angle));
  }

  /** The first angle at which the piece fits a stock copy; empty if there is none. */
  Optional<Double> fitting(int bin) {
    return boxes.stream()
        .filter(box -> fits.test(box.width(), box.height(), bin))
        .findFirst()
        .map(Box::angle);
  }

  /** A few of the first, among them one that fits each stock copy if any does. */
  double[] few(int bins) {
    Set<Double> chosen = new LinkedHashSet<>();
    for (int b = 0; b < bins; b++) {
      fitting(b).ifPresent(chosen::add);
    }
    boxes.stream().limit(MOST).forEach(box -> chosen.add(box.angle()));
    return chosen.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
