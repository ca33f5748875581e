package io.github.seamstead.api.book;

import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.geometry.drawing.PaperSize;
import io.github.seamstead.geometry.drawing.PieceDrawing;
import io.github.seamstead.geometry.drawing.PieceDrawing.Line;
import io.github.seamstead.geometry.drawing.PieceDrawing.LineKind;
import io.github.seamstead.geometry.drawing.PrintTiles;
import io.github.seamstead.geometry.drawing.PrintTiles.Tile;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The map of print sheets: each piece small, with the sheets that lie over it and their numbers.
 */
final class PrintSheetMap {

  private static final int MOST_COLUMNS = 3;
  private static final int MOST_ROWS = 4;
  private static final double EDGE = 12;
  private static final double HEAD = 16;
  private static final double CAPTION = 6;
  private static final double GAP = 6;

  /** Left and bottom of all sheets, and how many millimetres of the map one of theirs is. */
  private record View(double minX, double maxY, double scale, double x, double y) {

    String at(double px, double py) {
      return Canvas.number(x + (px - minX) * scale) + " " + Canvas.number(y + (maxY - py) * scale);
    }
  }

  /**
   * A piece on its sheets.
   *
   * @param name what it is and how often it is cut
   * @param drawing at true size, in millimetres
   * @param tiles its sheets
   */
  record Entry(String name, PieceDrawing drawing, PrintTiles tiles) {}

  private PrintSheetMap() {}

  /** Writes one map for every twelve pieces. */
  static void write(List<Entry> entries, PaperSize paper, Markup page) {
    int most = MOST_COLUMNS * MOST_ROWS;
    for (int from = 0; from < entries.size(); from += most) {
      sheet(entries.subList(from, Math.min(entries.size(), from + most)), from / most, paper, page);
    }
  }

  private static void sheet(List<Entry> entries, int number, PaperSize paper, Markup page) {
    String id = "map-" + (number + 1);
    String width = Canvas.number(paper.width());
    String height = Canvas.number(paper.height());
    page.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "width",
        width + "mm",
        "height",
        height + "mm",
        "viewBox",
        "0 0 " + width + " " + height,
        "role",
        "img",
        "aria-labelledby",
        "t-" + id + " d-" + id);
    page.element("title", "Map of the sheets", "id", "t-" + id);
    page.element("desc", "Each piece, small, with its sheets by number.", "id", "d-" + id);
    text(page, EDGE, HEAD - GAP, "start", "Map of the sheets: which goes where");
    int columns = Math.min(MOST_COLUMNS, (int) Math.ceil(Math.sqrt(entries.size())));
    int rows = (entries.size() + columns - 1) / columns;
    double across = (paper.width() - 2 * EDGE) / columns;
    double down = (paper.height() - HEAD - EDGE) / rows;
    for (int i = 0; i < entries.size(); i++) {
      int row = i / columns;
      double x = EDGE + i % columns * across;
      double y = HEAD + row * down;
      entry(page, entries.get(i), x, y, across - GAP, down - GAP);
    }
    page.close().raw("\n");
  }

  private static void entry(
      Markup page, Entry entry, double x, double y, double width, double height) {
    List<Tile> tiles = entry.tiles().tiles();
    double minX = tiles.stream().mapToDouble(t -> t.area().minX()).min().orElse(0);
    double maxX = tiles.stream().mapToDouble(t -> t.area().maxX()).max().orElse(1);
    double minY = tiles.stream().mapToDouble(t -> t.area().minY()).min().orElse(0);
    double maxY = tiles.stream().mapToDouble(t -> t.area().maxY()).max().orElse(1);
    double scale = Math.min(width / (maxX - minX), (height - CAPTION) / (maxY - minY));
    View view = new View(minX, maxY, scale, x, y + CAPTION);
    text(page, x, y + CAPTION / 2, "start", entry.name());
    for (Line line : entry.drawing().lines()) {
      if (line.kind() == LineKind.CUT) {
        path(page, outline(line, view), "0.5", "none");
      }
    }
    for (Tile tile : tiles) {
      path(
          page,
          "M"
              + view.at(tile.area().minX(), tile.area().minY())
              + "L"
              + view.at(tile.area().maxX(), tile.area().minY())
              + "L"
              + view.at(tile.area().maxX(), tile.area().maxY())
              + "L"
              + view.at(tile.area().minX(), tile.area().maxY())
              + "Z",
          "0.25",
          "2 1");
      double middle = (tile.area().minX() + tile.area().maxX()) / 2;
      double half = (tile.area().minY() + tile.area().maxY()) / 2;
      text(
          page,
          x + (middle - minX) * scale,
          y + CAPTION + (maxY - half) * scale,
          "middle",
          Integer.toString(tile.number()));
    }
  }

  private static String outline(Line line, View view) {
    StringBuilder d = new StringBuilder();
    for (Vector2D p : line.points()) {
      d.append(d.isEmpty() ? "M" : "L").append(view.at(p.getX(), p.getY()));
    }
    return line.closed() ? d + "Z" : d.toString();
  }

  private static void path(Markup page, String d, String weight, String dash) {
    page.empty(
        "path",
        "d",
        d,
        "fill",
        "none",
        "stroke",
        "#111",
        "stroke-width",
        weight,
        "stroke-dasharray",
        dash);
  }

  private static void text(Markup page, double x, double y, String anchor, String text) {
    page.element(
        "text",
        text,
        "x",
        Canvas.number(x),
        "y",
        Canvas.number(y),
        "font-size",
        "3.6",
        "font-family",
        "system-ui, sans-serif",
        "text-anchor",
        anchor,
        "fill",
        "#111");
  }
}
