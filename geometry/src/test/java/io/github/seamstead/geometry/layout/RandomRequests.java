package io.github.seamstead.geometry.layout;

import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Requests with bands, flaws, odd outlines, margins, grains and hems, drawn at random. */
final class RandomRequests {

  private final RandomGenerator random;

  private RandomRequests(long seed) {
    random = Seeds.stream(seed, "requests", 0);
  }

  static LayoutRequest of(long seed) {
    return new RandomRequests(seed).request();
  }

  /** One or a few pieces with a hem on each kind of stock with bands. */
  static LayoutRequest hemmed(long seed) {
    return new RandomRequests(seed).hemmedRequest();
  }

  private LayoutRequest request() {
    List<Piece> pieces = new ArrayList<>();
    for (int k = random.nextInt(3); k >= 0; k--) {
      pieces.add(piece("p" + k));
    }
    List<StockItem> stock = new ArrayList<>();
    for (int k = random.nextInt(2); k >= 0; k--) {
      stock.add(item("s" + k));
    }
    return new LayoutRequest(
        pieces, stock, some(0.05), some(0.08), Objective.values()[random.nextInt(3)]);
  }

  private LayoutRequest hemmedRequest() {
    Piece piece =
        Piece.of("p", shape())
            .withCount(1 + random.nextInt(3))
            .withRotations(random.nextBoolean() ? Rotations.anyAngle() : Rotations.halfTurn());
    piece = piece.withHem(random.nextInt(piece.outline().size()), random.nextInt(4) > 0);
    Piece turned = random.nextBoolean() ? piece.withMirroring() : piece;
    return LayoutRequest.of(List.of(turned), List.of(item("s")))
        .withSpacing(some(0.02), some(0.05));
  }

  private double some(double most) {
    return random.nextInt(3) == 0 ? 0 : most * random.nextDouble();
  }

  private double size(double least, double most) {
    // Round sizes now and then, so that edges meet exactly.
    double size = least + (most - least) * random.nextDouble();
    return random.nextBoolean() ? size : Math.max(0.1, Math.rint(size * 10) / 10);
  }

  private Outline shape() {
    double b = size(0.3, 1.2);
    double h = size(0.3, 1.2);
    return switch (random.nextInt(4)) {
      case 0 -> CuttingLayoutTest.outline(0, 0, b, 0, b * random.nextDouble(), h);
      case 1 -> CuttingLayoutTest.outline(0, 0, b, 0, 0.8 * b, h, 0.1 * b, h);
      case 2 -> Outline.rectangle(b, h);
      default -> StripLayoutProperties.star(random, 4 + random.nextInt(4), 0.2, 0.6);
    };
  }

  private Piece piece(String id) {
    Piece piece = Piece.of(id, shape()).withCount(1 + random.nextInt(4));
    piece =
        switch (random.nextInt(3)) {
          case 0 -> piece.withRotations(Rotations.anyAngle());
          case 1 -> piece.withRotations(Rotations.of(0, Math.PI / 2, Math.PI, 1.5 * Math.PI));
          default -> piece;
        };
    if (random.nextBoolean()) {
      piece = piece.withMirroring();
    }
    if (piece.rotations().any() && random.nextBoolean()) {
      piece = piece.withGrain(new Grain(7 * random.nextDouble(), random.nextBoolean()));
    }
    return random.nextInt(3) == 0
        ? piece
        : piece.withHem(random.nextInt(piece.outline().size()), random.nextBoolean());
  }

  private StockItem item(String id) {
    int count = 1 + random.nextInt(3);
    if (random.nextInt(3) == 0) {
      Roll roll = Roll.of(id, size(0.8, 2), size(2, 6)).withCount(count);
      roll = roll.withFlaws(flaws(roll.length(), roll.width()));
      roll = roll.withReinforcedEdges(edges(4));
      return random.nextInt(4) == 0 ? roll.withBothSidesGood() : roll;
    }
    double w = size(1, 3);
    double h = size(1, 2.5);
    double d = 0.4 * random.nextDouble();
    Outline outline =
        switch (random.nextInt(6)) {
          case 0 -> CuttingLayoutTest.outline(0, 0, w, 0, w, h / 2, w / 2, h / 2, w / 2, h, 0, h);
          case 1 -> CuttingLayoutTest.outline(0, 0, 1.5 * w, 0, w * d, 1.5 * h);
          case 2 -> CuttingLayoutTest.outline(0, 0, w, 0, w - d, h, d / 2, h);
          case 3 -> CuttingLayoutTest.outline(0, 0, w, 0.01, w - 0.01, h, d, h + 0.2);
          default -> Outline.rectangle(w, h);
        };
    if (random.nextInt(3) == 0) {
      outline = outline.placed(7 * random.nextDouble(), Vector2D.of(random.nextDouble(), -3));
    }
    Sheet sheet = Sheet.of(id, outline).withCount(count).withFlaws(flaws(w, h));
    sheet = sheet.withReinforcedEdges(edges(outline.size()));
    return random.nextInt(4) == 0 ? sheet.withBothSidesGood() : sheet;
  }

  private Outline[] flaws(double length, double width) {
    Outline[] flaws = new Outline[random.nextInt(4) / 2];
    for (int i = 0; i < flaws.length; i++) {
      double x = length * random.nextDouble();
      double y = width * random.nextDouble();
      double a = 0.05 + 0.3 * random.nextDouble();
      flaws[i] = CuttingLayoutTest.outline(x, y, x + a, y, x + a / 2, y + a);
    }
    return flaws;
  }

  private Integer[] edges(int of) {
    List<Integer> edges = new ArrayList<>();
    for (int e = 0; e < of; e++) {
      if (random.nextInt(3) > 0) {
        edges.add(e);
      }
    }
    return edges.toArray(Integer[]::new);
  }
}
