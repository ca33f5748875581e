package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FinishQuantity;
import io.github.seamstead.materials.floor.MembraneQuantity;
import io.github.seamstead.materials.floor.OrderLine;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.mix.Fibre;
import java.util.ArrayList;
import java.util.List;

/** Layers, sectors, the batch cards and what to order. */
final class FloorPages {

  private FloorPages() {}

  static void write(BookContext book, FloorPart floor) {
    Words w = book.words();
    book.paragraph(
        "Floor area " + w.area(floor.buildUp().footprint().area()) + " inside the edging.");
    book.figure(FloorDrawings.section(floor.buildUp(), w));
    Table layers =
        new Table(
            "Earth layers, from the ground up",
            "layer",
            "#thickness",
            "#compacted",
            "#loose, as mixed",
            "#dry mass");
    for (EarthQuantity q : floor.buildUp().earth()) {
      layers.row(
          q.layer().name(),
          w.small(q.meanThickness()),
          w.range(q.compactedVolume(), w::volume),
          w.range(q.looseVolume(), w::volume),
          w.range(q.dryMass(), w::mass));
    }
    book.table(layers);
    floor.buildUp().advice().forEach(book::note);
    book.figure(FloorDrawings.sectors(floor.sectors(), floor.buildUp().footprint(), w));
    MixerCards.write(book, floor);
    PackSection.write(book, floor);
    FloorLabourSection.write(book, floor);
    floor.orders().ifPresent(orders -> orders(book, floor, orders));
    floor.straw().ifPresent(straw -> straw(book, straw));
    FloorStepsSection.write(book, floor);
    book.end(Chapter.FLOOR);
  }

  private static void straw(BookContext book, Fibre straw) {
    Words w = book.words();
    book.paragraph(
        "Of the straw, chopped: "
            + w.mass(straw.mass())
            + ", loose "
            + w.range(straw.looseVolume(), w::volume)
            + ", or "
            + w.range(straw.bales(), bales -> BookContext.number(Math.ceil(bales), 0))
            + (Math.ceil(straw.bales().high()) <= 1 ? " bale." : " bales with two strings."));
  }

  private static void orders(BookContext book, FloorPart floor, OrderList orders) {
    Words w = book.words();
    book.heading("What to order");
    if (!floor.rest().isEmpty()) {
      book.note("For what is not laid yet, less what came and lies ready.");
    }
    List<List<String>> csv = new ArrayList<>();
    csv.add(List.of("material", "order", "unit", "cost"));
    Table table =
        new Table("Loose material", "material", "#need", "#order", "#loose volume", "#trips");
    for (OrderLine line : orders.lines()) {
      table.row(
          line.material(),
          w.range(line.rawNeed(), w::mass),
          w.mass(line.ordered()),
          w.volume(line.looseVolume()),
          line.trips() == 0 ? "–" : Integer.toString(line.trips()));
      csv.add(
          List.of(
              line.material(),
              BookContext.number(w.inMassUnit(line.ordered()), 0),
              w.massUnit(),
              BookContext.number(line.cost(), 2)));
    }
    book.table(table);
    Table rest = new Table("Sheet and coats", "what", "#how much");
    for (MembraneQuantity m : orders.membranes()) {
      rest.row(
          m.layer().name(),
          m.rolls() + (m.rolls() == 1 ? " roll, " : " rolls, ") + w.area(m.areaWithLaps()));
      csv.add(List.of(m.layer().name(), Integer.toString(m.rolls()), "roll", ""));
    }
    for (FinishQuantity f : orders.finishes()) {
      rest.row(f.layer().name(), w.range(f.litres(), l -> w.litres(l / 1000)));
      csv.add(
          List.of(
              f.layer().name(),
              BookContext.number(w.inLiquidUnit(f.litres().high() / 1000), 1),
              w.liquidUnit(),
              ""));
    }
    book.table(rest);
    book.list("shopping-list.csv", csv);
  }
}
