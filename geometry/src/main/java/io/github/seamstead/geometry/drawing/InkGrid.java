package io.github.seamstead.geometry.drawing;

import io.github.seamstead.shared.plane.Bounds;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Which cells of a grid of overlapping sheets have anything drawn on them. */
final class InkGrid {

  /** Width of a capital over its height, on the safe side for any plain typeface. */
  private static final double WIDEST_LETTER = 0.9;

  private final int columns;
  private final int rows;
  private final double width;
  private final double height;
  private final double overlap;
  private final boolean[][] inked;

  InkGrid(int columns, int rows, double width, double height, double overlap) {
    this.columns = columns;
    this.rows = rows;
    this.width = width;
    this.height = height;
    this.overlap = overlap;
    inked = new boolean[rows][columns];
  }

  void ink(PieceDrawing.Line line) {
    List<Vector2D> p = line.points();
    for (int i = line.closed() ? 0 : 1; i < p.size(); i++) {
      ink(p.get((i + p.size() - 1) % p.size()), p.get(i));
    }
  }

  /** A text is taken as the box round it; a sheet is larger than any text is high. */
  void ink(PieceDrawing.Text text) {
    double half = WIDEST_LETTER * text.height() * text.text().length() / 2;
    Vector2D along =
        Vector2D.of(StrictMath.cos(text.rotation()), StrictMath.sin(text.rotation()))
            .multiply(half);
    Vector2D up =
        Vector2D.of(-StrictMath.sin(text.rotation()), StrictMath.cos(text.rotation()))
            .multiply(text.height() / 2);
    Vector2D lowerLeft = text.at().subtract(along).subtract(up);
    Vector2D lowerRight = text.at().add(along).subtract(up);
    Vector2D upperRight = text.at().add(along).add(up);
    Vector2D upperLeft = text.at().subtract(along).add(up);
    ink(lowerLeft, lowerRight);
    ink(lowerRight, upperRight);
    ink(upperRight, upperLeft);
    ink(upperLeft, lowerLeft);
  }

  private void ink(Vector2D a, Vector2D b) {
    double stepX = width - overlap;
    double stepY = height - overlap;
    int lastColumn = cell(Math.max(a.getX(), b.getX()), stepX, columns);
    int lastRow = cell(Math.max(a.getY(), b.getY()), stepY, rows);
    int firstColumn = cell(Math.min(a.getX(), b.getX()) - overlap, stepX, columns);
    int firstRow = cell(Math.min(a.getY(), b.getY()) - overlap, stepY, rows);
    for (int r = firstRow; r <= lastRow; r++) {
      for (int c = firstColumn; c <= lastColumn; c++) {
        if (!inked[r][c] && crosses(a, b, area(c, r))) {
          inked[r][c] = true;
        }
      }
    }
  }

  private static int cell(double at, double step, int count) {
    return (int) Math.max(0, Math.min(count - 1, Math.floor(at / step)));
  }

  /** Clips the segment to the sheet, side by side. */
  private static boolean crosses(Vector2D a, Vector2D b, Bounds area) {
    double dx = b.getX() - a.getX();
    double dy = b.getY() - a.getY();
    double[] part = {0, 1};
    return clip(-dx, a.getX() - area.minX(), part)
        && clip(dx, area.maxX() - a.getX(), part)
        && clip(-dy, a.getY() - area.minY(), part)
        && clip(dy, area.maxY() - a.getY(), part);
  }

  private static boolean clip(double slope, double room, double[] part) {
    if (slope == 0) {
      return room >= 0;
    }
    double at = room / slope;
    if (slope < 0) {
      part[0] = Math.max(part[0], at);
    } else {
      part[1] = Math.min(part[1], at);
    }
    return part[0] <= part[1];
  }

  private Bounds area(int column, int row) {
    double x = column * (width - overlap);
    double y = row * (height - overlap);
    return new Bounds(x, y, x + width, y + height);
  }

  List<PrintTiles.Tile> inkedTiles() {
    List<PrintTiles.Tile> tiles = new ArrayList<>();
    for (int r = rows - 1; r >= 0; r--) {
      for (int c = 0; c < columns; c++) {
        if (inked[r][c]) {
          tiles.add(
              new PrintTiles.Tile(tiles.size() + 1, c + 1, rows - r, area(c, r), crosses(c, r)));
        }
      }
    }
    return tiles;
  }

  private List<Vector2D> crosses(int column, int row) {
    double left = column * (width - overlap) + overlap / 2;
    double low = row * (height - overlap) + overlap / 2;
    double right = left + width - overlap;
    double high = low + height - overlap;
    return List.of(
        Vector2D.of(left, low),
        Vector2D.of(right, low),
        Vector2D.of(right, high),
        Vector2D.of(left, high));
  }
}
