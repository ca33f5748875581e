package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.chapter.pieces.PieceNames;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.StockUse;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.stock.StockItem;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** A card for each sheet of cloth: a ruler along its edge, and where each piece starts on it. */
final class CutCards {

  private static final double WIDTH = 178;
  private static final double[] SCALES = {
    2, 4, 5, 8, 10, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200
  };
  private static final double TALLEST = 62;

  /** A longer table stands in two parts side by side. */
  private static final int MOST_ROWS = 7;

  private static final double ROLL_REST = 0.5;

  /** One piece where it lies. */
  private record Laid(
      String label,
      String name,
      Outline outline,
      Vector2D a,
      Vector2D b,
      boolean turned,
      List<PlacedFold> folds) {}

  /** A hip within a piece where it lies on the sheet. */
  private record PlacedFold(String name, Vector2D lower, Vector2D upper) {}

  private CutCards() {}

  static void write(Desk desk) {
    if (desk.plan().cover().isEmpty() || desk.plan().layout().isEmpty()) {
      return;
    }
    LayoutPart layout = desk.plan().layout().get();
    List<CutShape> cuts = desk.plan().cover().get().cuts();
    PieceNames names = PieceNames.of(cuts);
    Map<String, CutShape> shapes =
        cuts.stream().collect(Collectors.toMap(CutShape::id, Function.identity()));
    double scale = scale(layout);
    for (StockUse use : layout.result().used()) {
      StockItem item =
          layout.stock().stream()
              .filter(s -> s.id().equals(use.stockId()))
              .findFirst()
              .orElseThrow();
      List<Laid> laid = laid(layout, use, shapes, names);
      String name = use.stockId() + (item.count() > 1 ? " " + use.copy() : "");
      desk.add(
          "Cut card: " + name,
          "Cut card",
          Sheet.Kind.CARD,
          card(desk, item, use, laid, scale, name));
    }
  }

  private static double scale(LayoutPart layout) {
    double longest =
        layout.result().used().stream().mapToDouble(u -> shown(layout, u)).max().orElse(1);
    double tallest =
        layout.stock().stream().mapToDouble(i -> i.outline().bounds().height()).max().orElse(1);
    for (double s : SCALES) {
      if (longest * 1000 / s <= WIDTH - 14 && tallest * 1000 / s <= TALLEST) {
        return s;
      }
    }
    return SCALES[SCALES.length - 1];
  }

  /** A sheet is shown whole, a roll only as far as it is used. */
  private static double shown(LayoutPart layout, StockUse use) {
    StockItem item =
        layout.stock().stream().filter(s -> s.id().equals(use.stockId())).findFirst().orElseThrow();
    double length = item.outline().bounds().width();
    return item instanceof io.github.seamstead.geometry.stock.Roll
        ? Math.min(length, use.usedLength() + ROLL_REST)
        : length;
  }

  private static List<Laid> laid(
      LayoutPart layout, StockUse use, Map<String, CutShape> shapes, PieceNames names) {
    List<Laid> laid = new ArrayList<>();
    for (Placement p : use.placements()) {
      CutShape shape = shapes.get(p.pieceId());
      if (shape == null) {
        continue;
      }
      Outline outline = layout.placed(p);
      BaseLine base = BaseLine.of(shape.pattern());
      List<Integer> corners = base.corners();
      Vector2D a = placed(p, outline, base.index(corners.get(0)));
      Vector2D b = placed(p, outline, base.index(corners.get(1)));
      String label = names.name(p.pieceId(), p.copy());
      laid.add(
          new Laid(
              label,
              DiaryLines.name(shape, p.copy()),
              outline,
              a,
              b,
              p.mirrored(),
              folds(shape.pieces().get(p.copy() - 1), p)));
    }
    laid.sort(Comparator.comparingDouble(l -> l.outline().bounds().minX()));
    return laid;
  }

  private static List<PlacedFold> folds(PatternPiece piece, Placement p) {
    return piece.folds().stream()
        .map(fold -> new PlacedFold(fold.name(), p.place(fold.lower()), p.place(fold.upper())))
        .toList();
  }

  /** A mirrored outline runs the other way round. */
  private static Vector2D placed(Placement p, Outline outline, int corner) {
    return outline.vertex(p.mirrored() ? outline.size() - 1 - corner : corner);
  }

  private static Markup card(
      Desk desk, StockItem item, StockUse use, List<Laid> laid, double scale, String name) {
    Markup m = new Markup();
    Sizes w = desk.sizes();
    Bounds b = item.outline().bounds();
    m.element(
        "p",
        w.length(b.width())
            + " by "
            + w.length(b.height())
            + ", good side up. Along: from the left. Off: from the lower edge."
            + (item.flaws().isEmpty() ? "" : " Ringed: a flaw."),
        "class",
        "lead");
    desk.figure(
        m, drawing(desk.plan().layout().orElseThrow(), item, use, laid, scale, name, w), true);
    // Feet and inches take too much room for two tables beside each other.
    boolean pair = laid.size() > MOST_ROWS && !w.words().isImperial();
    m.open("div", "class", pair ? "pair" : "");
    int half = pair ? (laid.size() + 1) / 2 : laid.size();
    rows(desk, m, name, laid, 0, half);
    if (half < laid.size()) {
      rows(desk, m, name + ", further", laid, half, laid.size());
    }
    m.closeLine();
    return m;
  }

  private static void rows(Desk desk, Markup m, String name, List<Laid> laid, int from, int to) {
    Sizes w = desk.sizes();
    String unit = w.tapeUnit();
    String in = unit.isEmpty() ? "" : ", " + unit;
    Ticks.table(
        m, "Pieces of " + name, "piece", "#a along" + in, "#a off", "#b along", "#b off", "done");
    for (int i = from; i < to; i++) {
      Laid l = laid.get(i);
      m.open("tr").open("td").text((i + 1) + ": ").element("b", l.label());
      m.text(l.turned() ? " (plain side up)" : "").close();
      Ticks.cells(
          m,
          "#" + w.tape(l.a().getX()),
          "#" + off(w, l.a()),
          "#" + w.tape(l.b().getX()),
          "#" + off(w, l.b()));
      m.open("td");
      if (desk.plan().done().cut().containsKey(l.label())) {
        m.text("cut");
      } else {
        Ticks.dated(
            m,
            "cut-" + desk.sheets().size() + "-" + (i + 1),
            l.label() + " cut",
            DiaryLines.cut(l.name()));
      }
      m.close().closeLine();
    }
    Ticks.endTable(m);
  }

  private static String off(Sizes w, Vector2D p) {
    return w.tape(Math.max(0, p.getY()));
  }

  private static Drawing drawing(
      LayoutPart layout,
      StockItem item,
      StockUse use,
      List<Laid> laid,
      double scale,
      String name,
      Sizes w) {
    Bounds b = item.outline().bounds();
    double perMetre = 1000 / scale;
    double length = shown(layout, use);
    double tall = b.height() * perMetre;
    Sketch s = new Sketch(WIDTH, tall + 10);
    s.map(5 - b.minX() * perMetre, 2 + b.maxY() * perMetre, perMetre);
    s.shape(
        s.at(
            List.of(
                Vector2D.of(b.minX(), b.minY()),
                Vector2D.of(b.minX() + length, b.minY()),
                Vector2D.of(b.minX() + length, b.maxY()),
                Vector2D.of(b.minX(), b.maxY()))),
        Sketch.OUTLINE,
        "",
        "#fff");
    for (Laid l : laid) {
      s.shape(s.at(l.outline().vertices()), Sketch.OUTLINE, "", Sketch.PALE);
    }
    for (Outline flaw : item.flaws()) {
      s.shape(s.at(flaw.vertices()), Sketch.THIN, "", Sketch.HATCH);
      s.circle(
          s.at(flaw.centroid()),
          Math.max(
              2,
              StrictMath.hypot(flaw.bounds().width(), flaw.bounds().height()) / 2 * perMetre + 1),
          Sketch.HEAVY,
          "none");
    }
    folds(s, laid);
    kept(s, item, b, length);
    ruler(s, b, length, perMetre, w);
    numbers(s, laid);
    foldNames(s, laid);
    return s.drawing(
        "cut-" + Markup.anchor(name),
        "Cut card " + name,
        "The sheet with its good side up, scale 1 to "
            + Sizes.number(scale)
            + ". Numbers in the order of cutting; heavy: kept edge; rings: flaws"
            + (laid.stream().allMatch(l -> l.folds().isEmpty())
                ? "."
                : "; dashed across a piece: a hip, bent and not cut."));
  }

  private static void folds(Sketch s, List<Laid> laid) {
    for (Laid piece : laid) {
      for (PlacedFold fold : piece.folds()) {
        s.line(s.at(fold.lower()), s.at(fold.upper()), Sketch.THIN, Sketch.DASHED);
      }
    }
  }

  /** Beside the number and the label of the piece, where there is room. */
  private static void foldNames(Sketch s, List<Laid> laid) {
    for (Laid piece : laid) {
      for (PlacedFold fold : piece.folds()) {
        Vector2D low = s.at(fold.lower());
        Vector2D way = s.at(fold.upper()).subtract(low);
        s.textWhereFree(
            Stream.of(0.25, 0.35, 0.5, 0.15, 0.65)
                .map(part -> low.add(way.multiply(part)))
                .toList(),
            fold.name(),
            false);
      }
    }
  }

  private static void kept(Sketch s, StockItem item, Bounds b, double length) {
    double right = b.minX() + length;
    if (item.reinforcedEdges().contains(0)) {
      s.line(s.at(Vector2D.of(b.minX(), b.minY())), s.at(Vector2D.of(right, b.minY())), 1.4, "");
    }
    if (item.reinforcedEdges().contains(2)) {
      s.line(s.at(Vector2D.of(b.minX(), b.maxY())), s.at(Vector2D.of(right, b.maxY())), 1.4, "");
    }
  }

  private static void ruler(Sketch s, Bounds b, double length, double perMetre, Sizes w) {
    boolean imperial = w.words().isImperial();
    double unit = imperial ? 0.3048 : perMetre > 60 ? 0.1 : 1;
    int every = 1;
    while (every * unit * perMetre < 9) {
      every = every == 1 ? 2 : every == 2 ? 5 : every * 2;
    }
    for (int i = 0; i * unit <= length + 1e-9; i++) {
      Vector2D foot = s.at(Vector2D.of(b.minX() + i * unit, b.minY()));
      boolean named = i % every == 0;
      s.line(foot, foot.add(Vector2D.of(0, named ? 2.4 : 1.4)), Sketch.THIN, "");
      if (named) {
        String text = unit == 0.1 ? Sizes.number(i * unit) : Integer.toString(i);
        s.text(foot.add(Vector2D.of(0, 5)), text, 0, false);
      }
    }
    s.text(
        s.at(Vector2D.of(b.minX() + length, b.minY())).add(Vector2D.of(3, 2)),
        imperial ? "ft" : "m",
        "start",
        0,
        false,
        Sketch.LETTER);
  }

  private static void numbers(Sketch s, List<Laid> laid) {
    for (int i = 0; i < laid.size(); i++) {
      Vector2D middle = s.at(laid.get(i).outline().centroid());
      String number = Integer.toString(i + 1);
      s.textWhereFree(
          List.of(
              middle,
              middle.add(Vector2D.of(0, -4)),
              middle.add(Vector2D.of(0, 4)),
              middle.add(Vector2D.of(0, -8)),
              middle.add(Vector2D.of(0, 8))),
          number,
          true);
    }
    for (int i = 0; i < laid.size(); i++) {
      Laid l = laid.get(i);
      Bounds box = new Outline(s.at(l.outline().vertices())).bounds();
      Vector2D middle = s.at(l.outline().centroid());
      if (Sketch.wide(l.label()) < box.width() * 0.8) {
        double half = Sketch.wide(l.label()) / 2;
        Outline drawn = new Outline(s.at(l.outline().vertices()));
        List<Vector2D> inside =
            Stream.of(5, -5, 9)
                .map(y -> middle.add(Vector2D.of(0, y)))
                .filter(p -> drawn.contains(p.add(Vector2D.of(half, 0))))
                .filter(p -> drawn.contains(p.subtract(Vector2D.of(half, 0))))
                .toList();
        s.textWhereFree(inside, l.label(), false);
      }
    }
  }
}
