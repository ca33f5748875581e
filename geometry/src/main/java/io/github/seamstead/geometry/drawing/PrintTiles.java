package io.github.seamstead.geometry.drawing;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A drawing divided into sheets of paper that are trimmed, laid over one another by the overlap and
 * taped together on the registration marks. Sheets on which nothing would be drawn are left out.
 *
 * @param paper the paper
 * @param turned true if the paper lies with its long side across
 * @param margin that the printer leaves blank on each side, in millimetres
 * @param overlap of neighbouring sheets, in millimetres
 * @param columns sheets across, blank ones counted
 * @param rows sheets up, blank ones counted
 * @param tiles the sheets to print, row by row from the top, each from left to right
 */
public record PrintTiles(
    PaperSize paper,
    boolean turned,
    double margin,
    double overlap,
    int columns,
    int rows,
    List<Tile> tiles) {

  private static final int GREATEST_PAGES = 1000;

  public PrintTiles {
    tiles = List.copyOf(tiles);
  }

  /**
   * Divides a drawing, with the paper upright or turned, whichever takes fewer sheets. Costs O(s +
   * p) for s short lines and p sheets; a line that runs across many sheets costs one step for each.
   *
   * @param drawing the drawing
   * @param paper the paper
   * @param margin that the printer leaves blank, in millimetres, 0 or more
   * @param overlap of neighbouring sheets, in millimetres, 0 or more, less than half the printable
   *     size
   * @return the sheets
   * @throws IllegalArgumentException if margin and overlap leave too little of the paper, or more
   *     than 1000 sheets would be needed
   */
  public static PrintTiles plan(
      PieceDrawing drawing, PaperSize paper, double margin, double overlap) {
    Args.notNegative("printer margin", margin, "mm");
    Args.notNegative("sheet overlap", overlap, "mm");
    Args.require(
        2 * overlap < paper.width() - 2 * margin,
        "sheet overlap",
        Numbers.plain(overlap) + " mm with a margin of " + Numbers.plain(margin) + " mm",
        "must be less than half of what " + paper.label() + " paper leaves to print on");
    PrintTiles upright = laidOut(drawing, paper, false, margin, overlap);
    PrintTiles turned = laidOut(drawing, paper, true, margin, overlap);
    return turned.pages() < upright.pages() ? turned : upright;
  }

  /**
   * Counts the sheets to print.
   *
   * @return at least 1
   */
  public int pages() {
    return tiles.size();
  }

  private static PrintTiles laidOut(
      PieceDrawing drawing, PaperSize paper, boolean turned, double margin, double overlap) {
    double width = (turned ? paper.height() : paper.width()) - 2 * margin;
    double height = (turned ? paper.width() : paper.height()) - 2 * margin;
    double columns = count(drawing.width(), width, overlap);
    double rows = count(drawing.height(), height, overlap);
    Args.require(
        columns * rows <= GREATEST_PAGES,
        "print sheets for " + drawing.pieceId(),
        "a drawing of "
            + Numbers.fixed(drawing.width(), 0)
            + " mm by "
            + Numbers.fixed(drawing.height(), 0)
            + " mm",
        "must fit on " + GREATEST_PAGES + " sheets",
        "scale it down to a model, or mark it out with a tape");
    InkGrid grid = new InkGrid((int) columns, (int) rows, width, height, overlap);
    drawing.lines().forEach(grid::ink);
    drawing.texts().forEach(grid::ink);
    return new PrintTiles(
        paper, turned, margin, overlap, (int) columns, (int) rows, grid.inkedTiles());
  }

  private static double count(double length, double sheet, double overlap) {
    return Math.max(1, Math.ceil((length - overlap) / (sheet - overlap) - 1e-9));
  }

  /**
   * One sheet.
   *
   * @param number 1 for the first to print
   * @param column 1 for the leftmost
   * @param row 1 for the topmost
   * @param area what it shows of the drawing, in the drawing's millimetres
   * @param registration four crosses in the drawing's millimetres, in the middle of the overlaps,
   *     each printed on every sheet that meets there
   */
  public record Tile(int number, int column, int row, Bounds area, List<Vector2D> registration) {

    public Tile {
      registration = List.copyOf(registration);
    }
  }
}
