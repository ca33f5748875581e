package io.github.seamstead.api.book;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.geometry.drawing.PaperSize;
import io.github.seamstead.geometry.drawing.PieceDrawing;
import io.github.seamstead.geometry.drawing.PieceDrawing.Line;
import io.github.seamstead.geometry.drawing.PieceDrawing.LineKind;
import io.github.seamstead.geometry.drawing.PieceDrawing.Text;
import io.github.seamstead.geometry.drawing.PrintTiles;
import io.github.seamstead.geometry.drawing.PrintTiles.Tile;
import io.github.seamstead.shared.plane.Bounds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Pieces of a model's size true to scale on sheets of paper, with registration crosses, as one page
 * to print. A piece that would need more than {@value #MOST_SHEETS} sheets is marked out with a
 * tape instead.
 */
final class PrintSheets {

  static final int MOST_SHEETS = 16;

  /** Room for half the width of the cut line. */
  private static final double PIECE_MARGIN_MM = 1;

  /** What an office printer leaves blank. */
  private static final double PRINTER_MARGIN_MM = 6;

  private static final double OVERLAP_MM = 10;
  private static final double RULER_MM = 50;

  private PrintSheets() {}

  /**
   * Writes the page.
   *
   * @param cover the cover
   * @param paper the paper it is printed on
   * @return the page; empty if no piece is small enough
   */
  public static Optional<String> html(CoverPart cover, PaperSize paper) {
    List<String> sheets = new ArrayList<>();
    List<PrintSheetMap.Entry> map = new ArrayList<>();
    for (CutShape shape : cover.cuts()) {
      PieceDrawing drawing = PieceDrawing.of(shape.pattern(), PIECE_MARGIN_MM);
      if (isSmall(drawing, paper)) {
        PrintTiles tiles = PrintTiles.plan(drawing, paper, PRINTER_MARGIN_MM, OVERLAP_MM);
        String name = shape.name() + ", " + shape.pieces().size() + " to cut";
        map.add(new PrintSheetMap.Entry(name, drawing, tiles));
        tiles.tiles().forEach(tile -> sheets.add(sheet(drawing, tiles, tile, shape.id(), name)));
      }
    }
    return sheets.isEmpty() ? Optional.empty() : Optional.of(page(sheets, map, paper));
  }

  private static boolean isSmall(PieceDrawing drawing, PaperSize paper) {
    double across = Math.ceil(drawing.width() / (paper.width() - 2 * PRINTER_MARGIN_MM));
    double up = Math.ceil(drawing.height() / (paper.height() - 2 * PRINTER_MARGIN_MM));
    return across * up <= MOST_SHEETS;
  }

  private static String page(List<String> sheets, List<PrintSheetMap.Entry> map, PaperSize paper) {
    Markup page = new Markup().raw("<!DOCTYPE html>\n").open("html", "lang", "en").open("head");
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "http-equiv", "Content-Security-Policy", "content", Page.POLICY);
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", "Print sheets, true size");
    page.open("style")
        .raw(
            "body{margin:0;font:1rem/1.5 system-ui,sans-serif;color:#111}p{padding:0 1rem}"
                + "svg{display:block;max-width:100%;height:auto;break-after:page}"
                + "@page{size:"
                + paper.label()
                + ";margin:0}@page turned{size:"
                + paper.label()
                + " landscape;margin:0}svg.turned{page:turned}"
                + "@media print{p{display:none}svg{max-width:none}}")
        .close()
        .close()
        .open("body");
    page.element(
        "p",
        sheets.size()
            + " sheets of "
            + paper.label()
            + ". Print at 100 %, not fitted to the page, and check the bar of 50 mm. Trim two"
            + " sides, lay the crosses over one another, tape.");
    PrintSheetMap.write(map, paper, page);
    sheets.forEach(page::raw);
    return page.close().close().raw("\n").toString();
  }

  private static String sheet(
      PieceDrawing drawing, PrintTiles tiles, Tile tile, String shape, String name) {
    double width = tiles.turned() ? tiles.paper().height() : tiles.paper().width();
    double height = tiles.turned() ? tiles.paper().width() : tiles.paper().height();
    String id = shape + "-" + tile.number();
    String title =
        name
            + ": sheet "
            + tile.number()
            + " of "
            + tiles.pages()
            + ", row "
            + tile.row()
            + ", column "
            + tile.column();
    Markup svg = new Markup();
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        tiles.turned() ? "turned" : "upright",
        "width",
        Canvas.number(width) + "mm",
        "height",
        Canvas.number(height) + "mm",
        "viewBox",
        "0 0 " + Canvas.number(width) + " " + Canvas.number(height),
        "role",
        "img",
        "aria-labelledby",
        "t-" + id + " d-" + id);
    svg.element("title", title, "id", "t-" + id);
    svg.element(
        "desc", "A part of the piece at true size with crosses to join by.", "id", "d-" + id);
    Bounds area = tile.area();
    svg.open("defs").open("clipPath", "id", "c-" + id);
    svg.empty(
        "rect",
        "x",
        Canvas.number(tiles.margin()),
        "y",
        Canvas.number(tiles.margin()),
        "width",
        Canvas.number(width - 2 * tiles.margin()),
        "height",
        Canvas.number(height - 2 * tiles.margin()));
    svg.close().close().open("g", "clip-path", "url(#c-" + id + ")");
    for (Line line : drawing.lines()) {
      line(svg, line, area, tiles.margin());
    }
    for (Text text : drawing.texts()) {
      text(svg, text, area, tiles.margin());
    }
    for (Vector2D cross : tile.registration()) {
      cross(svg, cross, area, tiles.margin());
    }
    svg.close();
    svg.empty(
        "path",
        "d",
        "M"
            + Canvas.number(tiles.margin())
            + " "
            + Canvas.number(tiles.margin() + 3)
            + "h"
            + Canvas.number(RULER_MM)
            + "m0 -1.5v3m-50 0v-3",
        "stroke",
        "#111",
        "stroke-width",
        "0.4",
        "fill",
        "none");
    svg.element(
        "text",
        "50 mm. " + title,
        "x",
        Canvas.number(tiles.margin() + RULER_MM + 3),
        "y",
        Canvas.number(tiles.margin() + 4.2),
        "font-size",
        "3.6",
        "font-family",
        "system-ui, sans-serif",
        "fill",
        "#111",
        "stroke",
        "#fff",
        "stroke-width",
        "1",
        "paint-order",
        "stroke");
    return svg.close().raw("\n").toString();
  }

  private static void line(Markup svg, Line line, Bounds area, double margin) {
    StringBuilder d = new StringBuilder();
    for (Vector2D p : line.points()) {
      d.append(d.isEmpty() ? "M" : "L").append(place(p, area, margin));
    }
    boolean dashed =
        line.kind() == LineKind.STITCH
            || line.kind() == LineKind.HOLE_FOLD
            || line.kind() == LineKind.FOLD;
    svg.empty(
        "path",
        "d",
        line.closed() ? d + "Z" : d.toString(),
        "fill",
        "none",
        "stroke",
        "#111",
        "stroke-width",
        line.kind() == LineKind.CUT ? "0.6" : "0.35",
        "stroke-dasharray",
        dashed ? "3 1.5" : "none");
  }

  private static void text(Markup svg, Text text, Bounds area, double margin) {
    svg.element(
        "text",
        text.text(),
        "transform",
        "translate("
            + place(text.at(), area, margin)
            + ") rotate("
            + Canvas.number(-Math.toDegrees(text.rotation()))
            + ")",
        "font-size",
        Canvas.number(text.height() * 1.4),
        "font-family",
        "system-ui, sans-serif",
        "text-anchor",
        "middle",
        "dominant-baseline",
        "central",
        "fill",
        "#111");
  }

  private static void cross(Markup svg, Vector2D at, Bounds area, double margin) {
    svg.empty(
        "path",
        "d",
        "M" + place(at, area, margin) + "m-4 0h8m-4 -4v8",
        "stroke",
        "#111",
        "stroke-width",
        "0.3",
        "fill",
        "none");
  }

  private static String place(Vector2D p, Bounds area, double margin) {
    return Canvas.number(p.getX() - area.minX() + margin)
        + " "
        + Canvas.number(area.maxY() - p.getY() + margin);
  }
}
