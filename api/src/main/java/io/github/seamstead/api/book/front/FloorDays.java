package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.drying.DryingPart;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.floor.FloorWork;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FinishQuantity;
import io.github.seamstead.materials.floor.LayerRole;
import io.github.seamstead.materials.floor.MembraneQuantity;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The days of the floor, from the ground up; the days of drying stand with the layer that dries.
 */
final class FloorDays {

  private static final double HOUR = 3600;

  /** In days; a shorter wait is over before the next morning. */
  private static final double LEAST_WAIT = 0.5;

  private final Desk desk;
  private final Sizes w;
  private final int crew;
  private final FloorPart floor;

  FloorDays(Desk desk, FloorPart floor) {
    this.desk = desk;
    this.w = desk.sizes();
    this.floor = floor;
    this.crew = desk.crew().map(c -> c.people()).orElse(2);
  }

  void add(List<Day> days) {
    if (floor.rest().stream().allMatch(r -> r.laidShare() == 0)) {
      days.add(dig());
    }
    List<EarthQuantity> loose =
        floor.buildUp().earth().stream()
            .filter(q -> !q.layer().mixed() && !floor.isLaid(q.layer()))
            .toList();
    if (!loose.isEmpty() || !membranes().isEmpty()) {
      days.add(base(loose));
    }
    for (EarthQuantity q : floor.buildUp().earth()) {
      if (q.layer().mixed() && !floor.isLaid(q.layer())) {
        days.add(mixed(q));
      }
    }
    List<FinishQuantity> finishes =
        floor.buildUp().finishes().stream().filter(f -> !floor.isLaid(f.layer())).toList();
    if (!finishes.isEmpty()) {
      days.add(finish(finishes));
    }
  }

  private Day dig() {
    Day day =
        new Day("Dig and level", "The bed of the floor, before or under the cover.")
            .ofFloor()
            .startIf("no standing water; buried cables and pipes asked for and marked")
            .bring("spades, barrow, stakes, string, level or water hose, rammer")
            .people(crew)
            .step("Set a stake in the middle and at each corner; mark the finished floor on all.")
            .step("Dig below that mark:", w.words().small(floor.buildUp().thickness()))
            .step("Take out roots, humus and all that is soft, and heap the soil under cover.")
            .step("Ram the ground; pour a bucket of water: it must drain and not stand.")
            .step("Set the edging, its upper edge on the mark.")
            .step("Check the depth on a cross of strings, in nine places.");
    String fall = "level";
    if (floor.buildUp().fall().gradient() > 0) {
      fall = "fall of " + w.words().percent(floor.buildUp().fall().gradient());
      day.step("Slope the bed as the floor shall slope:", fall);
    }
    day.home("depth right in nine places, " + fall, "hole covered or fenced");
    return day.stops("water in the bed: drain it first, no layer goes on wet ground.");
  }

  private Day base(List<EarthQuantity> loose) {
    Day day =
        new Day("Gravel and sheet", "What keeps ground water out of the earth.")
            .ofFloor()
            .startIf("bed drained and rammed")
            .bring("barrow, rakes, straight board, level, rammer, knife")
            .people(crew);
    double clock = 0;
    for (EarthQuantity q : loose) {
      String lifts = q.layer().lifts() > 1 ? ", in " + q.layer().lifts() + " lifts" : "";
      day.step(
          "Spread "
              + q.layer().name()
              + " ("
              + q.layer().mix().name()
              + ", "
              + w.words().volume(q.looseVolume().likely())
              + " loose"
              + lifts
              + "), ram it to:",
          w.words().small(q.meanThickness()));
      clock += hours(q);
    }
    if (loose.stream().anyMatch(q -> q.layer().role() == LayerRole.CAPILLARY_BREAK)) {
      day.step("Pull a straight board over it in two directions; fill what is low.");
    }
    for (MembraneQuantity m : membranes()) {
      day.step(
          "Cut "
              + m.strips().size()
              + " strips of "
              + m.layer().name()
              + ": "
              + m.strips().stream().map(w::rough).collect(Collectors.joining(", "))
              + ". Lap them by:",
          w.words().small(m.layer().lap()));
      day.step("Turn it up at the edge:", w.words().small(m.layer().upstand()));
    }
    day.home("one straight board lies on all of it", "sheet whole, laps dry and flat");
    return timed(day.stops("a hole in the sheet, gravel that rolls under the foot."), clock);
  }

  private List<MembraneQuantity> membranes() {
    return floor.buildUp().membranes().stream().filter(m -> !floor.isLaid(m.layer())).toList();
  }

  private double hours(EarthQuantity q) {
    return floor
        .work()
        .flatMap(
            work ->
                work.layers().stream()
                    .filter(l -> l.layer().equals(q.layer().name()))
                    .map(FloorWork.LayerWork::time)
                    .findFirst())
        .map(t -> t.elapsedHours().likely())
        .orElse(0.0);
  }

  private Day timed(Day day, double clockHours) {
    if (clockHours > 0 && desk.crew().isPresent()) {
      day.spans(clockHours * HOUR / desk.crew().get().hoursPerDay());
    }
    return day;
  }

  private Day mixed(EarthQuantity q) {
    boolean pack = q.layer().role() == LayerRole.DRY_PACK;
    String name = q.layer().name();
    Optional<BatchPlan> plan =
        floor.batches().stream().filter(b -> b.quantity().equals(q)).findFirst();
    Day day =
        new Day(
                "Lay the " + name,
                w.words().small(q.meanThickness())
                    + " thick, by the mixer card, in the order of the"
                    + " map.")
            .ofFloor()
            .startIf(
                pack
                    ? "sheet below whole, no frost tonight"
                    : "layer below clean and ready, no frost for a week")
            .bring(
                "buckets, barrow, rails, board, "
                    + (pack ? "rammer" : "float, trowel")
                    + ", masks, gloves, mixer card")
            .people(crew);
    if (!pack) {
      day.step("Wet the layer below until it is dark and not shiny; scratch it if it is smooth.");
    }
    day.step(
        "Set two rails to the thickness, at the sector marked 1, farthest from the door:",
        w.words().small(q.meanThickness()));
    day.warn("Dust of soil and sand scars the lungs: damp it, wear a P3 or N100 mask.");
    day.step(
        "Mix by the card: a handful holds when squeezed, breaks clean.",
        plan.map(p -> loads(p)).orElse(""));
    day.step(
        pack
            ? "Spread, pull level along the rails, ram until the rammer rings."
            : "Spread, press it onto the layer below, pull level along the rails.");
    day.step("Cut the edge straight and keep it wet until the next sector joins it.");
    day.step(
        pack
            ? "Pull the rails, fill their grooves, go on with the next number."
            : "Float after the shine is gone; trowel when a thumb hardly marks it.");
    day.step("Work backwards to the door; nobody steps on what is laid.");
    day.step("Make one test tile of the last load and write its mass on it.");
    day.pause(
        "before the first load",
        List.of(
            "tile of this mix: no crack, no dust",
            "rails level, sectors numbered on the edging",
            "mixer guarded, on a residual current device"));
    day.home(
        "mixer washed, guard on, plug out",
        "last edge wet or cut straight",
        "barriers up: " + "nobody walks on it");
    day.stops("rain on it, frost, a mix that differs from the tile.");
    forecast(q).ifPresent(day::thenWait);
    return timed(day, hours(q));
  }

  private static String loads(BatchPlan plan) {
    String range =
        plan.count().low() == plan.count().high()
            ? ""
            : " (" + Math.round(plan.count().low()) + "–" + Math.round(plan.count().high()) + ")";
    return plan.likelyCount() + range + " loads";
  }

  /**
   * The state in which the layer takes the next work, if it has to be waited for: a rammed pack
   * takes its coat damp, at once.
   */
  private Optional<Milestone> forecast(EarthQuantity q) {
    return desk.plan().drying().stream()
        .filter(d -> d.layer().equals(q.layer()))
        .map(DryingPart::forecast)
        .flatMap(f -> f.milestones().stream())
        .filter(m -> !m.name().contains("if left open"))
        .reduce((first, last) -> last)
        .filter(m -> m.likely().orElse(m.horizon()) > LEAST_WAIT);
  }

  private Day finish(List<FinishQuantity> finishes) {
    Day day =
        new Day("Oil and finish", "One thin coat a day; each must be dry before the next.")
            .ofFloor()
            .startIf(
                "coat dry by its check; room aired, above "
                    + (w.words().isImperial() ? "50 °F" : "10 °C"))
            .bring("brushes, lint-free rags, lidded metal can with water, gloves")
            .people(2);
    day.step("Sweep damp and vacuum; fill cracks with slip, sand smooth, clean again.");
    day.warn("Rags with drying oil heat themselves and burn. Flat outdoors or in water, at once.");
    int coats = 0;
    for (FinishQuantity f : finishes) {
      for (int i = 0; i < f.litresPerCoat().size() && day.steps().size() < 7; i++) {
        coats++;
        day.step(
            "Coat "
                + coats
                + ": "
                + f.layer().name()
                + ", wipe off what stands after half an hour.",
            w.words().litres(f.litresPerCoat().get(i).likely() / 1000));
      }
    }
    day.step("Let it harden; walk on it in socks only.");
    day.pause(
        "before the first coat",
        List.of(
            "last check of water passed",
            "rag can filled with" + " water stands at the door",
            "no flame, no spark, doors open"));
    day.home("rags under water or flat outdoors, counted", "cans shut");
    day.spans(Math.max(1, coats));
    return day.stops("a coat that is sticky to the finger.");
  }

  /** The days until the tiles tell which mix to take; they start first of all. */
  static Optional<Day> tiles(Desk desk) {
    if (desk.plan().mixes().isEmpty()) {
      return Optional.empty();
    }
    Day day =
        new Day("Soil and tiles first", "They need days to dry, so they start before all else.")
            .ofFloor()
            .startIf("a dry place out of the sun, at least a week before sand is ordered")
            .bring("soil, sand, buckets, moulds, scale, soil card")
            .people(2)
            .step("Dig soil below the roots, in three places; sieve and mix it.");
    desk.plan().soils().stream()
        .flatMap(s -> s.nextTests().stream().limit(1))
        .findFirst()
        .ifPresent(
            t ->
                day.step(
                    "Make the next soil test: " + t.kind().label() + ".",
                    Numbers.fixed(t.kind().handsOnSeconds() / 60, 0) + " min"));
    day.step("Mix the trial tiles of the soil card, each with its own number.");
    day.step("Strike them level in the moulds, wet the moulds first.");
    day.step("Write name, parts of sand and date on each; dry them slowly.");
    day.step("When they no longer lose mass: tape the cracks, rub, scratch; write on the card.");
    day.step("Put the readings into the job document and plan again before ordering sand.");
    day.home("tiles level, out of draught and sun");
    return Optional.of(day.stops("nothing: the other work goes on while they dry."));
  }
}
