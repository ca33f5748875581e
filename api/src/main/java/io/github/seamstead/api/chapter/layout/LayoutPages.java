package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.cover.StockCloth;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Corners;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.chapter.pieces.PieceNames;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Labels;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.StockUse;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Where each piece is cut: a drawing of each sheet and roll, and how good the layout is. */
final class LayoutPages {

  private LayoutPages() {}

  static void write(BookContext book, LayoutPart part, List<CutShape> cuts) {
    Words w = book.words();
    PieceNames names = PieceNames.of(cuts);
    LayoutResult result = part.result();
    Table summary = new Table("The layout", "what", "#value");
    boolean priced = StockCloth.isPriced(part.stock());
    summary.row("sheets and rolls used", Integer.toString(result.used().size()));
    if (!priced) {
      summary.row("no layout does with fewer than", BookContext.number(result.lowerBound(), 0));
    }
    summary.row("cloth in pieces, of the cloth used", w.percent(result.density()));
    summary.row("length used, all together", w.length(result.usedLength()));
    if (result.used().size() == 1) {
      // On several the bound counts their area alone, and says next to nothing.
      summary.row("no layout on it is shorter than", w.lengthAtMost(result.lengthBound()));
    }
    if (priced) {
      summary.row("cost of the cloth used", BookContext.number(result.cost(), 2));
      if (result.cost() > 0) {
        summary.row("no layout costs less than", Numbers.fixedAtMost(result.lowerBound(), 2));
      }
    }
    summary.row(
        "how it was found",
        result.method() == LayoutResult.Method.ROWS ? "rows, in closed form" : "search");
    summary.row("placements tried", Long.toString(result.workUsed()));
    book.table(summary);
    result
        .stopped()
        .ifPresent(
            why ->
                book.note(
                    "The search was stopped ("
                        + why.name().toLowerCase(Locale.ROOT).replace("_", " ")
                        + "): best so far."));
    new ShortPages(book, part, cuts).write();
    List<List<String>> csv = new ArrayList<>();
    csv.add(List.of("stock", "copy", "piece", "x_m", "y_m", "turn_degrees", "on_reinforced_edge"));
    for (StockUse use : result.used()) {
      StockItem item =
          part.stock().stream().filter(i -> i.id().equals(use.stockId())).findFirst().orElseThrow();
      book.figure(drawing(book, part, names, use, item));
      for (Placement p : use.placements()) {
        csv.add(
            List.of(
                use.stockId(),
                Integer.toString(use.copy()),
                names.name(p.pieceId(), p.copy()),
                BookContext.number(p.shift().getX(), 4),
                BookContext.number(p.shift().getY(), 4),
                BookContext.number(Math.toDegrees(p.rotation()), 2),
                p.onReinforcedEdge() ? "yes" : "no"));
      }
    }
    book.list("cutting-layout.csv", csv);
    book.end(Chapter.LAYOUT);
  }

  private static Drawing drawing(
      BookContext book, LayoutPart part, PieceNames names, StockUse use, StockItem item) {
    Words w = book.words();
    Outline whole = item.outline();
    Bounds b = whole.bounds();
    double right = item instanceof Roll ? Math.min(b.maxX(), use.usedLength() * 1.03) : b.maxX();
    Canvas canvas = Canvas.fit(b.minX(), b.minY(), right, b.maxY(), 24, 420);
    if (item instanceof Roll) {
      canvas.path(
          List.of(
              new double[] {right, b.minY()},
              new double[] {b.minX(), b.minY()},
              new double[] {b.minX(), b.maxY()},
              new double[] {right, b.maxY()}),
          false,
          Ink.CUT,
          Shade.NONE);
    } else {
      canvas.path(Corners.drawn(whole), true, Ink.CUT, Shade.NONE);
    }
    for (Outline remnant : use.remnants()) {
      canvas.path(clip(Corners.drawn(remnant), right), true, Ink.DOTTED, Shade.NONE);
    }
    for (int edge : item.reinforcedEdges()) {
      Vector2D from = whole.vertex(edge);
      Vector2D to = whole.vertex(edge + 1);
      canvas.line(
          Math.min(from.getX(), right),
          from.getY(),
          Math.min(to.getX(), right),
          to.getY(),
          Ink.HEAVY);
    }
    for (Outline flaw : item.flaws()) {
      canvas.path(Corners.drawn(flaw), true, Ink.CUT, Shade.HATCH);
    }
    for (Placement p : use.placements()) {
      Outline placed = part.placed(p);
      canvas.path(Corners.drawn(placed), true, Ink.CUT, Shade.LIGHT);
    }
    Labels labels = new Labels(canvas);
    for (Placement p : use.placements()) {
      Outline placed = part.placed(p);
      Vector2D at = placed.centroid();
      labels.fit(
          at.getX(),
          at.getY(),
          names.name(p.pieceId(), p.copy()),
          (x, y) -> placed.contains(Vector2D.of(x, y)));
    }
    canvas.scaleBar(w.scaleUnit(), w::scale);
    String name = use.stockId() + (item.count() > 1 ? " no. " + use.copy() : "");
    return canvas.drawing(
        "layout-" + Markup.anchor(use.stockId() + "-" + use.copy()),
        "Cut from " + name,
        w.length(b.width())
            + " by "
            + w.length(b.height())
            + ", seen on the good side; used to "
            + w.length(use.usedLength())
            + ". "
            + use.placements().size()
            + (use.placements().size() == 1 ? " piece" : " pieces")
            + ", grey. Heavy line: reinforced edge. Hatched: flaw. Dotted: remnants worth"
            + " keeping.");
  }

  private static List<double[]> clip(List<double[]> points, double right) {
    return points.stream().map(p -> new double[] {Math.min(p[0], right), p[1]}).toList();
  }
}
