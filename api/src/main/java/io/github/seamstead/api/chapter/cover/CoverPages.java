package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceEdge;
import io.github.seamstead.shared.plane.Bounds;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The pieces of the cover: a drawing and an edge table for each shape, the cut list. */
final class CoverPages {

  private CoverPages() {}

  static void write(BookContext book, CoverPart part) {
    Words w = book.words();
    Table cuts = new Table("Cut list", "piece", "kind", "#count", "#width", "#height", "#cloth");
    List<List<String>> csv = new ArrayList<>();
    csv.add(List.of("shape", "label", "kind", "width_m", "height_m", "cloth_m2"));
    for (CutShape shape : part.cuts()) {
      PatternPiece piece = shape.pattern();
      Bounds b = piece.cut().bounds();
      cuts.row(
          shape.name(),
          piece.kind().label(),
          Integer.toString(shape.pieces().size()),
          w.length(b.width()),
          w.length(b.height()),
          w.area(piece.clothArea()));
      for (PatternPiece each : shape.pieces()) {
        csv.add(
            List.of(
                shape.id(),
                each.label(),
                each.kind().label(),
                BookContext.number(b.width(), 4),
                BookContext.number(b.height(), 4),
                BookContext.number(each.clothArea(), 4)));
      }
    }
    book.table(cuts);
    book.list("cut-list.csv", csv);
    book.paragraph(
        "All drawings show the good side. Full line: cut here. Dashed line: stitch or fold here. In"
            + " the folder drawings each shape stands true to size in millimetres;"
            + " print-sheets.html, where there is one, has pieces of a model's size ready to"
            + " print.");
    fans(book, part);
    part.misfits().forEach(misfit -> book.note(misfit.text() + "."));
    for (CutShape shape : part.cuts()) {
      shape(book, shape);
    }
    part.lining().ifPresent(lining -> lining(book, lining));
    book.end(Chapter.PATTERN);
  }

  /** Where faces stay in one piece, the cloth is bent over the pole instead of sewn. */
  private static void fans(BookContext book, CoverPart part) {
    for (int i = 0; i < part.panels().size(); i++) {
      Panel panel = part.panels().get(i);
      if (panel.faces() > 1) {
        book.note(
            "Panel "
                + part.names().get(i)
                + " goes over "
                + panel.faces()
                + " faces in one piece, with "
                + (panel.faces() - 1)
                + " seams fewer. Chalk a line from each corner of its lower edge to the corner"
                + " above it: there the cloth bends over the pole."
                + (panel.topLength() > 0
                    ? " Snip the turn-in of the upper edge at these lines, so that it lies flat."
                    : ""));
      }
    }
  }

  private static void shape(BookContext book, CutShape shape) {
    Words w = book.words();
    PatternPiece piece = shape.pattern();
    Bounds b = piece.cut().bounds();
    String sizes =
        shape.pieces().size() + " to cut, " + w.length(b.width()) + " by " + w.length(b.height());
    book.heading(shape.name());
    book.figure(PieceDrawing.forBook(piece, sizes, w));
    book.keep(PieceDrawing.trueSize(piece, sizes));
    Table edges =
        new Table(
            "Edges of " + shape.name(), "edge", "joint", "what", "#finished length", "#allowance");
    List<List<String>> rows = new ArrayList<>();
    for (PieceEdge edge : piece.edges()) {
      rows.add(
          List.of(
              shape.named(edge.letter()),
              shape.named(edge.joint()),
              edge.allowance().role().label(),
              w.length(edge.finishedLength()),
              w.small(edge.allowance().width())));
    }
    addRuns(edges, rows);
    book.table(edges);
    names(book, shape);
  }

  /** The pieces of one shape carry different names: what is written on each. */
  private static void names(BookContext book, CutShape shape) {
    if (!shape.namesDiffer()) {
      return;
    }
    Table names =
        new Table("What is written on each", "piece", "edge and joint, one after another");
    for (PatternPiece each : shape.pieces()) {
      names.row(
          each.label(),
          each.edges().stream()
              .filter(edge -> !edge.letter().isEmpty())
              .map(edge -> (edge.letter() + " " + edge.joint()).strip())
              .collect(Collectors.joining(", ")));
    }
    book.table(names);
  }

  private static void lining(BookContext book, LiningPart lining) {
    Words w = book.words();
    PatternPiece piece = lining.panel().parts().get(0);
    Bounds b = piece.cut().bounds();
    book.heading("Lining");
    Table table = new Table("Lining panels", "what", "#value");
    table.row("panels, all of one shape", Integer.toString(lining.count()));
    table.row("width to cut", w.length(b.width()));
    table.row("height to cut", w.length(b.height()));
    table.row("cloth in all, without waste", w.area(lining.clothArea()));
    table.row("mass of all", w.mass(lining.clothMass()));
    book.table(table);
  }

  /** A rounded edge has many like sides: rows in a run that read the same become one. */
  private static void addRuns(Table table, List<List<String>> rows) {
    int start = 0;
    while (start < rows.size()) {
      List<String> row = new ArrayList<>(rows.get(start));
      int end = start + 1;
      while (end < rows.size() && rows.get(end).equals(row)) {
        end++;
      }
      if (end - start > 1) {
        row.set(3, (end - start) + " × " + row.get(3));
      }
      table.row(row.toArray(String[]::new));
      start = end;
    }
  }
}
