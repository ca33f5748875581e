package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.materials.floor.BatchCard;
import io.github.seamstead.materials.floor.BatchClay;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.Sector;
import io.github.seamstead.materials.floor.SectorBatches;
import io.github.seamstead.materials.floor.SectorPlan;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** What goes into the mixer and where it goes: one numbering, that of laying. */
final class MixerCard {

  private static final double SIZE = 68;

  private MixerCard() {}

  static void write(Desk desk) {
    if (desk.plan().floor().isEmpty()) {
      return;
    }
    FloorPart floor = desk.plan().floor().get();
    Markup m = new Markup();
    m.element(
        "p",
        "Numbers are the order of laying: 1 is farthest from the door, the last is at it. A bucket"
            + " is full to the brim, struck level, not shaken down."
            + (floor.batches().isEmpty()
                ? ""
                : " What a full sector leaves of a load starts the next one."),
        "class",
        "lead");
    m.open("div", "class", "two mixer");
    desk.figure(m, map(desk.sizes(), floor), false);
    m.open("div");
    if (!floor.batches().isEmpty()) {
      loads(m, floor);
    }
    m.close().closeLine();
    m.open("div", "class", "recipes");
    for (int i = 0; i < floor.batches().size(); i++) {
      recipe(desk.sizes(), m, floor, i);
      floor
          .restOf(floor.batches().get(i).quantity().layer())
          .ifPresent(
              rest ->
                  m.element(
                      "p", "Left to lay: " + Math.round(rest.loadsLeft().likely()) + " loads."));
    }
    if (floor.batches().isEmpty()) {
      m.element(
          "p",
          "The job states no mixer, so no loads are counted: mix by the parts of the soil card.");
    }
    m.closeLine();
    desk.add("Mixer card and floor map", "Mixer card", Sheet.Kind.CARD, m);
  }

  private static void recipe(Sizes w, Markup m, FloorPart floor, int at) {
    BatchPlan plan = floor.batches().get(at);
    Optional<BatchClay> clay =
        at < floor.clays().size() ? Optional.of(floor.clays().get(at)) : Optional.empty();
    BatchCard card = BatchCard.of(plan, clay);
    m.open("div", "class", "recipe");
    m.element("h3", (floor.drum() ? "One load of " : "One heap of ") + card.layer());
    Optional<String> refusal = clay.flatMap(c -> c.refusal(w.words()::litres));
    if (refusal.isPresent()) {
      m.open("p", "class", "model").element("strong", "Do not mix it so: ");
      m.text(refusal.get() + ".").close();
      m.closeLine();
      return;
    }
    m.open("ul");
    for (BatchCard.Line line : card.lines()) {
      m.open("li").element("b", line.buckets() + buckets(line)).text(" " + line.material());
      m.text(line.fibre() ? ", last, by handfuls" : "").close();
    }
    if (card.partsTooWet()) {
      m.open("li").element("b", "no water").text(": the parts are too wet, dry them first").close();
    } else {
      m.open("li").element("b", w.words().litres(card.water()));
      m.text(" water, the last of it by feel").close();
    }
    m.close();
    m.open("p").text(floor.drum() ? "Loads: " : "Heaps: ").element("b", FloorDays.loads(plan));
    m.text(". " + card.feel()).closeLine();
    m.closeLine();
  }

  private static String buckets(BatchCard.Line line) {
    return line.buckets().matches("[¼½¾]|1") ? " bucket" : " buckets";
  }

  private static boolean isLaid(FloorPart floor, BatchPlan plan, Sector sector) {
    return floor
        .restOf(plan.quantity().layer())
        .filter(rest -> !rest.sectorsLeft().contains(sector.order()))
        .isPresent();
  }

  /** A row for each sector with a box for each load that starts in it. */
  private static void loads(Markup m, FloorPart floor) {
    m.element("h3", "Tick each load as it is tipped");
    m.open(
        "div",
        "class",
        "scroll",
        "tabindex",
        "0",
        "role",
        "region",
        "aria-label",
        "Loads by sector");
    m.open("table", "class", "names").open("thead").open("tr");
    m.element("th", "sector", "scope", "col");
    for (BatchPlan plan : floor.batches()) {
      m.element("th", plan.quantity().layer().name() + ": loads", "scope", "col");
    }
    m.close().close().open("tbody");
    List<Sector> sectors = floor.sectors().inOrder();
    for (Sector sector : sectors) {
      m.open("tr").open("td").element("b", Integer.toString(sector.order())).close();
      for (int b = 0; b < floor.batches().size(); b++) {
        m.open("td");
        if (isLaid(floor, floor.batches().get(b), sector)) {
          m.text("laid").close();
          continue;
        }
        tally(m, floor, floor.batches().get(b), sector, "load" + b + "-");
        m.close();
      }
      m.closeLine();
    }
    Ticks.endTable(m);
  }

  private static void tally(Markup m, FloorPart floor, BatchPlan plan, Sector sector, String key) {
    SectorBatches row =
        floor.sectors().batches(plan).stream()
            .filter(s -> s.sector().number() == sector.number())
            .findFirst()
            .orElseThrow();
    int from = (int) Math.ceil(row.from() - 1e-9);
    int until = (int) Math.ceil(row.until() - 1e-9);
    for (int load = from + 1; load <= until; load++) {
      Ticks.dated(
          m,
          key + load,
          "load " + load + ", sector " + sector.order(),
          DiaryLines.laid(plan.quantity().layer().name(), sector.number()));
      m.text(load + " ");
    }
    if (until == from) {
      m.text("rest of load " + from);
    }
  }

  private static Drawing map(Sizes w, FloorPart floor) {
    SectorPlan plan = floor.sectors();
    List<Sector> sectors = plan.sectors();
    double radius =
        floor.buildUp().footprint().corners().stream()
            .mapToDouble(plan.centre()::distance)
            .max()
            .orElse(1);
    double perMetre = (SIZE / 2 - 6) / radius;
    Sketch s = new Sketch(SIZE, SIZE + 2);
    s.map(SIZE / 2, SIZE / 2 - 3, perMetre);
    for (Sector sector : sectors) {
      s.shape(
          s.at(sector.outline().vertices().stream().map(plan::doorDown).toList()),
          Sketch.OUTLINE,
          "",
          sector.order() % 2 == 0 ? "#fff" : Sketch.PALE);
    }
    for (Outline gap : floor.buildUp().footprint().gaps()) {
      s.shape(
          s.at(gap.vertices().stream().map(plan::doorDown).toList()),
          Sketch.THIN,
          "",
          Sketch.HATCH);
    }
    for (Sector sector : sectors) {
      Vector2D p = plan.doorDown(sector.labelPoint()).multiply(sectors.size() > 20 ? 1.35 : 1.1);
      s.textWhereFree(
          List.of(s.at(p), s.at(p.multiply(1.15)), s.at(p.multiply(0.85))),
          Integer.toString(sector.order()),
          true);
    }
    s.text(Vector2D.of(SIZE / 2, SIZE - 4), "door", 0, true);
    s.bar(2, SIZE, w.unit(), w.words().scale(w.unit()));
    return s.drawing(
        "floor-card-map",
        "The floor seen from above",
        "The sectors of the floor with their order of laying, the door at the bottom; 1 is farthest"
            + " from it.");
  }
}
