package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.assembly.fixings.ShoppingItem;
import io.github.seamstead.geometry.layout.StockNeed;
import io.github.seamstead.materials.floor.FinishQuantity;
import io.github.seamstead.materials.floor.MembraneQuantity;
import io.github.seamstead.materials.floor.OrderLine;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What has to be bought, with what it costs where the job states a price.
 *
 * @param lines what to order
 * @param priced the sum of what has a price
 * @param unpriced the names of what has none
 */
record Needs(List<Line> lines, double priced, List<String> unpriced) {

  /**
   * One thing to order.
   *
   * @param what its name
   * @param amount how much, rounded up to what is sold
   * @param note trips, rolls, or when it is wanted
   */
  record Line(String what, String amount, String note) {}

  static Needs of(Desk desk) {
    List<Line> lines = new ArrayList<>();
    List<String> unpriced = new ArrayList<>();
    double priced = desk.plan().layout().map(l -> l.result().cost()).orElse(0.0);
    priced += furtherCloth(desk, lines, unpriced);
    lining(desk, lines, unpriced);
    bars(desk, lines, unpriced);
    ropes(desk, lines, unpriced);
    if (desk.plan().floor().isPresent()) {
      priced +=
          desk.plan().floor().get().orders().map(o -> loose(desk, o, lines, unpriced)).orElse(0.0);
    }
    desk.plan()
        .fixings()
        .ifPresent(f -> f.shopping().items().forEach(item -> fixing(desk, item, lines, unpriced)));
    site(desk, lines, unpriced);
    return new Needs(List.copyOf(lines), priced, List.copyOf(unpriced));
  }

  /** The cloth that lacks. */
  private static double furtherCloth(Desk desk, List<Line> lines, List<String> unpriced) {
    List<StockNeed> needs =
        desk.plan().layout().map(l -> l.result().furtherStock()).orElse(List.of());
    for (StockNeed more : needs) {
      String name = "cloth like " + more.stockId();
      String amount =
          more.length() > 0 ? desk.sizes().length(more.length()) : more.items() + " more";
      lines.add(new Line(name, amount, "first: nothing is cut before"));
      if (more.cost() <= 0) {
        unpriced.add(name);
      }
    }
    return needs.stream().mapToDouble(StockNeed::cost).sum();
  }

  /** The lining is cut from cloth of its own, which the stock of the cover does not count. */
  private static void lining(Desk desk, List<Line> lines, List<String> unpriced) {
    desk.plan()
        .cover()
        .flatMap(CoverPart::lining)
        .ifPresent(
            lining -> {
              Sizes w = desk.sizes();
              Bounds cut = lining.panel().parts().get(0).cut().bounds();
              String each = w.length(cut.width()) + " by " + w.length(cut.height());
              lines.add(
                  new Line(
                      "lining cloth",
                      w.area(lining.clothArea()),
                      "net: " + lining.count() + " that taper, " + each));
              unpriced.add("lining cloth");
            });
  }

  /** What the floor's work uses beside its layers. */
  private static void site(Desk desk, List<Line> lines, List<String> unpriced) {
    desk.plan()
        .floor()
        .filter(f -> f.rest().stream().allMatch(r -> r.laidShare() == 0))
        .ifPresent(
            f -> {
              lines.add(
                  new Line(
                      "edging", desk.sizes().atLeast(f.buildUp().footprint().perimeter()), ""));
              unpriced.add("edging");
              if (f.buildUp().earth().stream().anyMatch(q -> q.layer().mixed())) {
                lines.add(new Line("masks P3 or N100", Integer.toString(desk.people()), ""));
                unpriced.add("masks");
              }
            });
  }

  /** The bars that the members of the frame are sawn from. */
  private static void bars(Desk desk, List<Line> lines, List<String> unpriced) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    desk.plan()
        .frame()
        .flatMap(f -> f.bars())
        .ifPresent(
            plan ->
                plan.bars()
                    .forEach(
                        bar ->
                            counts.merge(
                                desk.sizes().length(bar.stock().length()),
                                bar.times(),
                                Integer::sum)));
    counts.forEach(
        (length, count) -> lines.add(new Line("bars of " + length, Integer.toString(count), "")));
    if (!counts.isEmpty()) {
      unpriced.add("bars");
    }
  }

  /** The ropes over the top; a model is set over its frame by hand. */
  private static void ropes(Desk desk, List<Line> lines, List<String> unpriced) {
    if (!desk.sizes().isModel()) {
      desk.plan()
          .handling()
          .ifPresent(
              h -> {
                String each =
                    h.pull().ropes() + " × " + desk.sizes().atLeast(h.zone().ropeLength());
                lines.add(new Line("rope to raise it", each, "at least"));
                unpriced.add("rope");
              });
    }
  }

  private static double loose(
      Desk desk, OrderList orders, List<Line> lines, List<String> unpriced) {
    Sizes w = desk.sizes();
    Set<String> waiting = undecided(desk);
    for (OrderLine line : orders.lines()) {
      if (line.supply().hauled()) {
        List<String> notes = new ArrayList<>();
        if (line.trips() > 0) {
          notes.add(line.trips() + (line.trips() == 1 ? " trip" : " trips"));
        }
        if (waiting.contains(line.material())) {
          notes.add("after the tiles");
        }
        lines.add(new Line(line.material(), w.mass(line.ordered()), String.join(", ", notes)));
        if (line.cost() <= 0) {
          unpriced.add(line.material());
        }
      }
    }
    for (MembraneQuantity m : orders.membranes()) {
      lines.add(
          new Line(
              m.layer().name(),
              w.area(m.areaWithLaps()),
              m.rolls() == 1 ? "1 roll" : m.rolls() + " rolls"));
      unpriced.add(m.layer().name());
    }
    for (FinishQuantity f : orders.finishes()) {
      lines.add(
          new Line(f.layer().name(), w.words().litres(f.litres().likely() / 1000), "for the end"));
      unpriced.add(f.layer().name());
    }
    return orders.cost();
  }

  /** What goes into mixes whose tiles are not made or not decided: its amount may still change. */
  private static Set<String> undecided(Desk desk) {
    return desk.plan().mixes().stream()
        .filter(mix -> mix.trial().filter(t -> t.reading().decided()).isEmpty())
        .flatMap(mix -> mix.choice().recipe().portions().stream())
        .map(portion -> portion.component().name())
        .collect(Collectors.toSet());
  }

  private static void fixing(
      Desk desk, ShoppingItem item, List<Line> lines, List<String> unpriced) {
    if (desk.sizes().isModel() && item.name().equals("pegs")) {
      return;
    }
    String many = Integer.toString(item.packs());
    String amount =
        item.packSize() == 1
            ? many
            : many
                + (item.packs() == 1 ? " pack of " : " packs of ")
                + Numbers.plain(item.packSize());
    String name = desk.sizes().words().said(item.name());
    lines.add(new Line(name, amount, ""));
    unpriced.add(name);
  }
}
