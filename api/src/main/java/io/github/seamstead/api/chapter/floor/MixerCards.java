package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.floor.BatchCard;
import io.github.seamstead.materials.floor.BatchClay;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.JointTiming;
import io.github.seamstead.materials.floor.SectorBatches;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.Optional;

/** The cards at the mixer or the tarpaulin, and which load goes into which sector. */
final class MixerCards {

  private MixerCards() {}

  static void write(BookContext book, FloorPart floor) {
    for (int i = 0; i < floor.batches().size(); i++) {
      BatchPlan plan = floor.batches().get(i);
      BatchCard card = BatchCard.of(plan, Optional.of(floor.clays().get(i)));
      card(book, floor, plan, card);
      sectors(book, floor, plan);
      // Under the layer whose edges wait, and not at the end of all.
      JointTiming timing = floor.timings().get(i);
      book.paragraph(
          "An open edge of "
              + plan.quantity().layer().name()
              + " stays wet enough to join for "
              + book.words().range(timing.openTime(), book.words()::duration)
              + ".");
      timing.warning().ifPresent(book::note);
    }
  }

  private static void card(BookContext book, FloorPart floor, BatchPlan plan, BatchCard card) {
    Words w = book.words();
    Markup body = book.body();
    String one = floor.drum() ? "load" : "heap";
    body.open("div", "class", "card");
    body.element("h3", (floor.drum() ? "At the mixer: " : "On the tarpaulin: ") + card.layer());
    Optional<String> refusal = card.clay().flatMap(c -> c.refusal(w::litres));
    if (refusal.isPresent()) {
      body.element("p", "Do not mix it so: " + refusal.get() + ".", "class", "key");
      body.closeLine();
      return;
    }
    body.element("p", "Mix " + count(plan) + " " + one + "s", "class", "key");
    body.open("ul");
    for (BatchCard.Line line : card.lines()) {
      boolean single = line.buckets().matches("[¼½¾]|1");
      body.open("li")
          .element("strong", line.buckets() + (single ? " bucket" : " buckets"))
          .text(
              " "
                  + line.material()
                  + (line.fibre() ? ", last, by handfuls" : "")
                  + " ("
                  + w.mass(line.mass())
                  + ")")
          .closeLine();
    }
    body.open("li");
    if (card.partsTooWet()) {
      body.element("strong", "no water")
          .text(": the parts bring " + w.litres(card.excessWater()) + " too much for each " + one);
    } else {
      body.element("strong", w.litres(card.water())).text(" water");
    }
    body.closeLine();
    body.closeLine();
    card.clay().ifPresent(clay -> body.element("p", rounding(clay)));
    if (card.partsTooWet()) {
      plan.batch()
          .mix()
          .dryFirst()
          .ifPresent(
              dry ->
                  body.element(
                      "p",
                      "Better: dry "
                          + dry.part().name()
                          + " to "
                          + w.percent(dry.moisture())
                          + " of water first. As it is, the mix has "
                          + w.percent(plan.batch().moisture())
                          + " instead of "
                          + w.percent(plan.batch().mix().placingMoisture())
                          + "."));
    }
    body.element("p", String.join(" ", card.order()));
    if (!floor.drum()) {
      body.element(
          "p",
          "Roll the heap over by lifting one side of the tarpaulin after the other, tread it flat,"
              + " and go on until no streak of soil or sand is left.");
    }
    body.element("p", card.feel());
    body.element("p", card.tooWet() + " " + card.tooDry());
    body.element("p", "A bucket is to the brim, struck level, and not shaken down.");
    body.closeLine();
  }

  private static String count(BatchPlan plan) {
    boolean exact = plan.count().low() == plan.count().high();
    return plan.likelyCount()
        + (exact
            ? ""
            : " ("
                + Math.round(plan.count().low())
                + " to "
                + Math.round(plan.count().high())
                + ")");
  }

  /** States the error that whole buckets make, whether it matters or not. */
  private static String rounding(BatchClay clay) {
    return "Rounded to buckets a load has "
        + points(clay.batched())
        + " clay; "
        + points(clay.wanted())
        + " is wanted, "
        + points(clay.band().least())
        + " to "
        + points(clay.band().greatest())
        + " is allowed.";
  }

  private static String points(double share) {
    return Numbers.fixed(share * 100, 1) + "\u00a0%";
  }

  private static void sectors(BookContext book, FloorPart floor, BatchPlan plan) {
    Table table =
        new Table(
            "Loads by sector, in the order of laying: " + plan.quantity().layer().name(),
            "sector",
            "#loads",
            "#first load",
            "#last load");
    for (SectorBatches s : floor.sectors().batches(plan)) {
      table.row(
          Integer.toString(s.sector().order()),
          BookContext.number(s.loads(), 1),
          Integer.toString(s.firstLoad()),
          Integer.toString(s.lastLoad()));
    }
    book.table(table);
  }
}
