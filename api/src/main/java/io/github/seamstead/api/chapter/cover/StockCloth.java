package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.job.SheetEdge;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.api.job.StockFlaw;
import io.github.seamstead.api.job.StockRoll;
import io.github.seamstead.api.job.StockSheet;
import io.github.seamstead.geometry.layout.Grain;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.Objective;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Rotations;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The stock of a document as the cutting layout takes it, and what is asked of it. */
public final class StockCloth {

  private StockCloth() {}

  /**
   * Asks for shapes to be laid on the stock.
   *
   * @param shapes the shapes, each as often as there are pieces of it
   * @param stock the stock
   * @return the request
   */
  public static LayoutRequest request(List<CutShape> shapes, Stock stock) {
    List<Piece> pieces = shapes.stream().map(shape -> piece(shape, stock.keepGrain())).toList();
    List<StockItem> items = items(stock);
    // Cloth that costs money is bought only where there is no other.
    return LayoutRequest.of(pieces, items)
        .withSpacing(stock.spacing(), stock.edgeMargin())
        .withObjective(isPriced(items) ? Objective.LEAST_COST : Objective.FEWEST_ITEMS);
  }

  /**
   * Tells whether any cloth costs money, so that the layout of least cost is looked for and not
   * that of fewest items.
   *
   * @param stock the sheets and rolls
   * @return false if all of it is free
   */
  public static boolean isPriced(List<StockItem> stock) {
    return stock.stream().anyMatch(item -> item.costOf(item.outline().bounds().width()) > 0);
  }

  private static Piece piece(CutShape shape, boolean keepGrain) {
    PatternPiece pattern = shape.pattern();
    Piece piece = Piece.of(shape.id(), pattern.cut()).withCount(shape.pieces().size());
    piece =
        keepGrain
            ? piece.withRotations(Rotations.anyAngle()).withGrain(new Grain(pattern.grain(), false))
            : piece.withRotations(Rotations.of(0, Math.PI / 2, Math.PI, 3 * Math.PI / 2));
    return pattern.reinforcedCutEdge().isPresent()
        ? piece.withHem(pattern.reinforcedCutEdge().get(), true)
        : piece;
  }

  private static List<StockItem> items(Stock stock) {
    List<StockItem> items = new ArrayList<>();
    for (StockSheet kind : stock.sheets()) {
      for (StockSheet sheet : kind.named()) {
        items.add(
            Sheet.of(sheet.id(), outline(sheet))
                .withCount(sheet.count())
                .withPreference(sheet.preference())
                .withFlaws(flaws(sheet.flaws()))
                .withReinforcedEdges(bands(sheet))
                .withCost(sheet.cost().orElse(0.0)));
      }
    }
    for (StockRoll roll : stock.rolls()) {
      items.add(
          Roll.of(roll.id(), roll.width(), roll.length())
              .withCount(roll.count())
              .withPreference(roll.preference())
              .withFlaws(flaws(roll.flaws()))
              .withReinforcedEdges(edges(roll.reinforced()))
              .withCostPerMetre(roll.costPerMetre().orElse(0.0)));
    }
    return items;
  }

  /** The shape of a sheet, its lower left corner where its box begins. */
  static Outline outline(StockSheet sheet) {
    return sheet.outline().isEmpty()
        ? Outline.rectangle(sheet.length(), sheet.width())
        : new Outline(corners(sheet));
  }

  private static List<Vector2D> corners(StockSheet sheet) {
    return sheet.outline().stream().map(c -> Vector2D.of(c.x(), c.y())).toList();
  }

  /** The edges with a band, counted from 0 in the order of the outline. */
  static Integer[] bands(StockSheet sheet) {
    if (sheet.outline().isEmpty()) {
      return edges(sheet.reinforced());
    }
    int corners = sheet.outline().size();
    // A clockwise list is turned round, and its edges with it.
    boolean asWritten = outline(sheet).vertices().equals(corners(sheet));
    return sheet.bands().stream()
        .map(edge -> asWritten ? edge - 1 : Math.floorMod(corners - 1 - edge, corners))
        .toArray(Integer[]::new);
  }

  private static Outline[] flaws(List<StockFlaw> flaws) {
    return flaws.stream()
        .map(f -> Outline.rectangle(f.width(), f.height()).placed(0, Vector2D.of(f.x(), f.y())))
        .toArray(Outline[]::new);
  }

  /** The edges of a rectangle run counter-clockwise from the lower one. */
  private static Integer[] edges(List<SheetEdge> edges) {
    return edges.stream()
        .map(
            edge ->
                switch (edge) {
                  case BOTTOM -> 0;
                  case RIGHT -> 1;
                  case TOP -> 2;
                  case LEFT -> 3;
                })
        .toArray(Integer[]::new);
  }
}
