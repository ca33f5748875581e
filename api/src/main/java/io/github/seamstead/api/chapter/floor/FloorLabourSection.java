package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.floor.Settlement;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Range;

/** The crew's hours on the floor, its barrow trips, and what soft ground under it may do. */
final class FloorLabourSection {

  private FloorLabourSection() {}

  static void write(BookContext book, FloorPart floor) {
    floor.work().ifPresent(work -> hours(book, work));
    if (!floor.barrowTrips().isEmpty()) {
      Table table = new Table("Barrow trips to the floor", "layer", "#likely trips");
      floor.barrowTrips().forEach(t -> table.row(t.layer(), Integer.toString(t.trips())));
      book.table(table);
    }
    floor.settlement().ifPresent(settlement -> settlement(book, settlement));
  }

  private static void hours(BookContext book, FloorWork work) {
    Table table = new Table("Hours of the crew", "layer", "#of all hands", "#by the clock");
    for (FloorWork.LayerWork layer : work.layers()) {
      table.row(
          layer.layer(),
          rough(book, layer.time().personHours(), "h"),
          rough(book, layer.time().elapsedHours(), "h"));
    }
    table.row(
        "all earth layers",
        rough(book, work.personHours(), "h"),
        rough(book, work.clockHours(), "h"));
    book.table(table);
    book.paragraph(
        "Working days, one layer after the other: "
            + rough(book, work.days(), "d")
            + ". A crew of beginners; digging, membrane, finishes and the days of drying"
            + " between the layers come on top.");
  }

  private static void settlement(BookContext book, Settlement settlement) {
    Words w = book.words();
    book.heading("Soft ground under the floor");
    Table table = new Table("How far it may sink", "by", "#likely (range)");
    table.row("the floor's weight", w.range(settlement.squeeze(), w::small));
    table.row("roots and humus that rot", w.range(settlement.decay(), w::small));
    table.row("both", w.range(settlement.total(), w::small));
    book.table(table);
    book.paragraph("A bound from the thickness stated, not an investigation of the ground.");
    settlement.advice().forEach(book::note);
  }

  /** Two figures: the rates behind the hours are known no better. */
  private static String rough(BookContext book, Range range, String unit) {
    return book.words().range(range, x -> Numbers.significant(x, 2) + "\u00a0" + unit);
  }
}
