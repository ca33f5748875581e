package io.github.seamstead.api.chapter.progress;

import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.floor.LayerRest;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.chapter.progress.ProgressPart.PieceState;
import io.github.seamstead.api.chapter.progress.ProgressPart.TileState;
import io.github.seamstead.api.page.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the job is: pieces, seams, layers and tiles, each with what is left. */
final class ProgressPages {

  private ProgressPages() {}

  static void write(BookContext book, ProgressPart part, Optional<FloorPart> floor) {
    book.paragraph("As the diary stands on the evening of " + part.last() + ".");
    book.heading("The next day");
    book.body().open("ul");
    part.nextDay().forEach(line -> book.body().element("li", line));
    book.body().closeLine();
    if (!part.pieces().isEmpty()) {
      pieces(book, part);
    }
    seams(book, part);
    floor.ifPresent(f -> layers(book, f.rest()));
    tiles(book, part);
    book.end("The job so far");
  }

  private static void pieces(BookContext book, ProgressPart part) {
    int open = part.open().size();
    book.heading("Pieces");
    book.paragraph(
        part.pieces().size()
            - open
            + " of "
            + part.pieces().size()
            + " pieces are cut; they keep their shape and their place.");
    Table table = new Table("Pieces to cut", "piece", "state", "from", "remark");
    List<List<String>> csv = new ArrayList<>();
    csv.add(List.of("piece", "state", "stock", "copy"));
    for (PieceState piece : part.pieces()) {
      String from = piece.stock().isEmpty() ? "–" : piece.stock() + " number " + piece.copy();
      if (!piece.cut()) {
        table.row(piece.name(), piece.state(), from, piece.spoiled());
      }
      csv.add(List.of(piece.name(), piece.state(), piece.stock(), Integer.toString(piece.copy())));
    }
    book.table(table);
    book.list("pieces.csv", csv);
  }

  private static void seams(BookContext book, ProgressPart part) {
    if (part.seamsMade().isEmpty()) {
      return;
    }
    book.heading("Seams of the ring");
    book.paragraph("Made: " + String.join("; ", part.seamsMade()) + ".");
    book.paragraph(
        part.seamsOpen().isEmpty()
            ? "The ring is closed."
            : "Open: " + String.join("; ", part.seamsOpen()) + ".");
  }

  private static void layers(BookContext book, List<LayerRest> layers) {
    Words w = book.words();
    if (layers.stream().allMatch(l -> l.laidShare() == 0)) {
      return;
    }
    book.heading("Layers of the floor");
    Table table =
        new Table("Layers, from the ground up", "layer", "#laid", "#loads left", "sectors left");
    for (LayerRest rest : layers) {
      table.row(
          rest.layer(),
          w.percent(rest.laidShare()),
          rest.loadsLeft().high() == 0
              ? "–"
              : w.range(rest.loadsLeft(), n -> BookContext.number(n, 0)),
          rest.isDone()
              ? rest.laidOn().map(day -> "done on " + day).orElse("done")
              : String.join(", ", rest.sectorsLeft().stream().map(String::valueOf).toList()));
    }
    book.table(table);
  }

  private static void tiles(BookContext book, ProgressPart part) {
    if (part.tiles().isEmpty()) {
      return;
    }
    Words w = book.words();
    book.heading("Test tiles");
    Table table = new Table("Test tiles", "tile", "of", "#weighings that count", "cracks");
    for (TileState tile : part.tiles()) {
      table.row(
          tile.name(),
          tile.layer(),
          Integer.toString(tile.weighings()),
          tile.crack() == 0 ? "none" : w.small(tile.crack()) + ": weighings after it do not count");
    }
    book.table(table);
  }
}
