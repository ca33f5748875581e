package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.floor.BatchPart;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FinishQuantity;
import io.github.seamstead.materials.floor.JointTiming;
import io.github.seamstead.materials.floor.MembraneQuantity;
import io.github.seamstead.materials.floor.OrderLine;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.floor.SectorBatches;
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
    book.figure(FloorDrawings.sectors(floor.sectors(), floor.buildUp().footprint()));
    floor.batches().forEach(batch -> batch(book, floor, batch));
    floor.timings().stream()
        .map(JointTiming::warning)
        .forEach(warning -> warning.ifPresent(book::note));
    FloorLabourSection.write(book, floor);
    floor.orders().ifPresent(orders -> orders(book, orders));
    book.end(Chapter.FLOOR);
  }

  private static void batch(BookContext book, FloorPart floor, BatchPlan plan) {
    Words w = book.words();
    Markup body = book.body();
    String name = plan.quantity().layer().name();
    body.open("div", "class", "card");
    body.element("h3", "At the mixer: " + name);
    body.element(
        "p",
        "Mix "
            + plan.likelyCount()
            + " loads"
            + (plan.count().low() == plan.count().high()
                ? ""
                : " ("
                    + Math.round(plan.count().low())
                    + " to "
                    + Math.round(plan.count().high())
                    + ")"),
        "class",
        "key");
    body.open("ul");
    for (BatchPart part : plan.batch().parts()) {
      body.open("li")
          .element("strong", BookContext.number(part.buckets(), 1) + " buckets")
          .text(" " + part.part().name())
          .closeLine();
    }
    body.open("li")
        .element("strong", w.litres(plan.batch().water() / 1000))
        .text(" water")
        .closeLine();
    body.closeLine();
    body.element(
        "p",
        "A bucket is to the brim, struck level, and not shaken down. Add the last of the water by"
            + " feel: a handful must hold when squeezed and break clean.");
    body.closeLine();
    Table table =
        new Table(
            "Loads by sector: " + name, "lay", "sector", "#loads", "#first load", "#last load");
    for (SectorBatches s : floor.sectors().batches(plan)) {
      table.row(
          s.sector().order() + ".",
          Integer.toString(s.sector().number()),
          BookContext.number(s.loads(), 1),
          Integer.toString(s.firstLoad()),
          Integer.toString(s.lastLoad()));
    }
    book.table(table);
  }

  private static void orders(BookContext book, OrderList orders) {
    Words w = book.words();
    book.heading("What to order");
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
              BookContext.number(line.ordered(), 0),
              "kg",
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
      rest.row(f.layer().name(), w.range(f.litres(), l -> BookContext.number(l, 1) + " l"));
      csv.add(List.of(f.layer().name(), BookContext.number(f.litres().high(), 1), "l", ""));
    }
    book.table(rest);
    book.list("shopping-list.csv", csv);
  }
}
