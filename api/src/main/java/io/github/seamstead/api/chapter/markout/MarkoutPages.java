package io.github.seamstead.api.chapter.markout;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Canvas;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Ink;
import io.github.seamstead.api.page.Labels;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Shade;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.geometry.markout.BaselineRow;
import io.github.seamstead.geometry.markout.CheckLength;
import io.github.seamstead.geometry.markout.MarkOut;
import io.github.seamstead.geometry.markout.TapeDivision;
import io.github.seamstead.geometry.markout.TwoTapeRow;
import java.util.Arrays;
import java.util.List;

/** Tables from which a panel is drawn with tapes on the ground. */
final class MarkoutPages {

  private static final double MARGIN = 38;
  private static final double TALLEST = 380;

  /** Nearer to a mark than half a millimetre is at it. */
  private static final double AT_MARK = 0.0005;

  private MarkoutPages() {}

  static void write(BookContext book, List<MarkoutPart> parts) {
    book.paragraph(
        "Each table needs a tape and a straight line. Mark A is the zero of the baseline. All"
            + " lengths are rounded to the tape; the last column says how far that moves the"
            + " corner.");
    double scale = parts.stream().mapToDouble(MarkoutPages::scale).min().orElse(1);
    for (MarkoutPart part : parts) {
      part(book, part, scale);
    }
    book.end(Chapter.MARKOUT);
  }

  /** All shapes are drawn alike, so that they can be told apart by their size. */
  private static double scale(MarkoutPart part) {
    List<BaselineRow> rows = part.tables().baseline();
    double width = spread(rows.stream().mapToDouble(BaselineRow::station).toArray());
    double height = spread(rows.stream().mapToDouble(BaselineRow::offset).toArray());
    return Canvas.scale(width, height, MARGIN, TALLEST);
  }

  private static double spread(double[] values) {
    return Arrays.stream(values).max().orElse(0) - Arrays.stream(values).min().orElse(0);
  }

  private static void part(BookContext book, MarkoutPart part, double scale) {
    MarkOut m = part.tables();
    TapeDivision d = m.division();
    String name = part.shape().name();
    book.heading(name);
    book.figure(drawing(book.words(), part, name, scale));
    Table offsets = new Table("By offsets: " + name, "corner", "#along", "#square off", "#off by");
    for (BaselineRow row : m.baseline()) {
      offsets.row(
          Integer.toString(row.corner()),
          d.write(row.markedStation()),
          d.write(row.markedOffset()),
          book.words().error(row.error()));
    }
    book.table(offsets);
    Table tapes =
        new Table("By two tapes: " + name, "corner", "#from A", "#from B", "side", "#off by");
    for (TwoTapeRow row : m.twoTapes()) {
      tapes.row(
          Integer.toString(row.corner()),
          d.write(row.markedFirst()),
          d.write(row.markedSecond()),
          side(row),
          book.words().error(row.error()));
    }
    book.table(tapes);
    Table checks = new Table("Then check: " + name, "from", "to", "#length");
    for (CheckLength c : m.checks()) {
      checks.row(
          Integer.toString(c.from()),
          Integer.toString(c.to()) + (c.side() ? " (side)" : ""),
          d.write(c.marked()));
    }
    book.table(checks);
    book.note(
        (m.baselineFit().fits() ? "By offsets the template fits" : "By offsets it does not fit")
            + (m.twoTapeFit().fits() ? ", by two tapes it fits" : ", by two tapes it does not fit")
            + ", worst corner off by "
            + book.words()
                .error(Math.min(m.baselineFit().cornerError(), m.twoTapeFit().cornerError()))
            + ".");
  }

  /** On which side of the way from A to B; a corner that lies on a mark has no crossing. */
  private static String side(TwoTapeRow row) {
    if (row.markedFirst() < AT_MARK) {
      return "at mark A";
    }
    if (row.markedSecond() < AT_MARK) {
      return "at mark B";
    }
    return (row.left() ? "left" : "right") + (row.isPoor() ? ", poor crossing" : "");
  }

  private static Drawing drawing(Words w, MarkoutPart part, String name, double scale) {
    List<double[]> corners =
        part.tables().baseline().stream()
            .map(row -> new double[] {row.station(), row.offset()})
            .toList();
    double minX = corners.stream().mapToDouble(c -> c[0]).min().orElse(0);
    double maxX = corners.stream().mapToDouble(c -> c[0]).max().orElse(1);
    double minY = corners.stream().mapToDouble(c -> c[1]).min().orElse(0);
    double maxY = corners.stream().mapToDouble(c -> c[1]).max().orElse(1);
    Canvas canvas = Canvas.atScale(minX, minY, maxX, maxY, MARGIN, scale);
    canvas.path(corners, true, Ink.CUT, Shade.PALE);
    double over = 18 / canvas.scale();
    canvas.line(minX - over, 0, maxX + over, 0, Ink.FOLD);
    Labels labels = new Labels(canvas);
    double cx = (minX + maxX) / 2;
    double cy = (minY + maxY) / 2;
    for (int i = 0; i < corners.size(); i++) {
      double[] c = corners.get(i);
      double length = Math.max(1e-9, StrictMath.hypot(c[0] - cx, c[1] - cy));
      double in = 13 / canvas.scale() / length;
      canvas.dot(c[0], c[1], 2.5, Ink.CUT, Shade.PAPER);
      labels.beside(c[0] + (c[0] - cx) * in, c[1] + (c[1] - cy) * in, Integer.toString(i));
    }
    int edge = part.tables().baselineEdge();
    double apart = part.tables().template().edgeLength(edge);
    labels.beside(0, -14 / canvas.scale(), "A");
    labels.beside(apart, -14 / canvas.scale(), "B");
    canvas.scaleBar(w.scaleUnit(), w::scale);
    return canvas.drawing(
        "markout-" + Markup.anchor(part.shape().id()),
        "Marking out " + name,
        "The cut outline with its corners numbered; dash-dotted: the baseline through the marks A"
            + " and B.");
  }
}
