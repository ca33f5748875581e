package io.github.seamstead.benchmarks;

import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Rotations;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Heaps as a builder's yard may hold: 3 to 15 odd sheets, some with flaws, cut corners or a band
 * along an edge, and one roll; with panels and small parts to cut from them. Sizes are invented.
 */
public final class InventedHeaps {

  private static final double SPACING = 0.005;
  private static final double MARGIN = 0.01;

  private InventedHeaps() {}

  /**
   * The heaps.
   *
   * @param count how many
   * @param seed of all of them
   * @return what to cut from each heap
   */
  public static List<LayoutRequest> of(int count, long seed) {
    List<LayoutRequest> out = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      out.add(heap(new SplittableRandom(seed + k)));
    }
    return out;
  }

  private static LayoutRequest heap(SplittableRandom random) {
    int sheets = 3 + random.nextInt(13);
    List<StockItem> stock = new ArrayList<>();
    double area = 0;
    for (int s = 0; s < sheets; s++) {
      Sheet sheet = sheet("sheet-" + s, random);
      stock.add(sheet);
      area += sheet.outline().area();
    }
    double width = 1.2 + 0.6 * random.nextDouble();
    stock.add(Roll.of("roll", width, 2 + 3 * random.nextDouble()));
    List<Piece> pieces = pieces(area * (0.45 + 0.3 * random.nextDouble()), random);
    return LayoutRequest.of(pieces, stock).withSpacing(SPACING, MARGIN);
  }

  private static Sheet sheet(String id, SplittableRandom random) {
    double length = 1.6 + 2.4 * random.nextDouble();
    double width = 1.2 + 1.2 * random.nextDouble();
    Sheet sheet = Sheet.rectangle(id, length, width);
    int odd = random.nextInt(4);
    if (odd == 0) {
      double cut = 0.2 + 0.3 * random.nextDouble();
      sheet =
          Sheet.of(
              id,
              new Outline(
                  List.of(
                      Vector2D.of(0, 0),
                      Vector2D.of(length, 0),
                      Vector2D.of(length, width - cut),
                      Vector2D.of(length - cut, width),
                      Vector2D.of(0, width))));
    } else if (odd == 1) {
      double x = (length - 0.3) * random.nextDouble();
      double y = (width - 0.3) * random.nextDouble();
      Outline flaw = Outline.rectangle(0.1 + 0.2 * random.nextDouble(), 0.15);
      sheet = sheet.withFlaws(flaw.placed(0, Vector2D.of(x, y)));
    } else if (odd == 2) {
      sheet = sheet.withReinforcedEdges(0);
    }
    return sheet;
  }

  /** Panels and small parts of about an area in all. */
  private static List<Piece> pieces(double area, SplittableRandom random) {
    List<Piece> pieces = new ArrayList<>();
    double left = area;
    int kinds = 2 + random.nextInt(3);
    for (int k = 0; k < kinds; k++) {
      double base = k == 0 ? 0.9 + 0.5 * random.nextDouble() : 0.3 + 0.6 * random.nextDouble();
      double height = k == 0 ? 0.9 + 0.3 * random.nextDouble() : 0.3 + 0.7 * random.nextDouble();
      double top = base * 0.8 * random.nextDouble();
      Outline panel =
          new Outline(
              top < 0.1 * base
                  ? List.of(Vector2D.of(0, 0), Vector2D.of(base, 0), Vector2D.of(base / 2, height))
                  : List.of(
                      Vector2D.of(0, 0),
                      Vector2D.of(base, 0),
                      Vector2D.of((base + top) / 2, height),
                      Vector2D.of((base - top) / 2, height)));
      double share = k + 1 == kinds ? left : left * (0.5 + 0.3 * random.nextDouble());
      int count = (int) Math.max(1, Math.floor(share / panel.area()));
      left = Math.max(0, left - count * panel.area());
      Piece piece =
          Piece.of("panel-" + k, panel).withCount(count).withRotations(turns(random.nextInt(3)));
      pieces.add(k == 1 ? piece.withHem(0, false) : piece);
    }
    return pieces;
  }

  /** Along the weave, or across it too. */
  private static Rotations turns(int choice) {
    return choice == 0
        ? Rotations.of(0, Math.PI / 2, Math.PI, 1.5 * Math.PI)
        : Rotations.of(0, Math.PI);
  }
}
