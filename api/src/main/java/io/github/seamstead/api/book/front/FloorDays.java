package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.drying.DryingPart;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.FinishLayer;
import io.github.seamstead.materials.floor.FinishQuantity;
import io.github.seamstead.materials.floor.FloorStep;
import io.github.seamstead.materials.floor.LayerRole;
import io.github.seamstead.materials.floor.MembraneQuantity;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The days of the floor, from the ground up; the days of drying stand with the layer that dries.
 */
final class FloorDays {

  private static final int MOST_TOOLS = 9;

  /** More would stand in each other's way. */
  private static final int FEW = 2;

  private final Desk desk;
  private final Sizes w;
  private final int crew;
  private final FloorPart floor;

  FloorDays(Desk desk, FloorPart floor) {
    this.desk = desk;
    this.w = desk.sizes();
    this.floor = floor;
    this.crew = desk.people();
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
        new Day(Day.Work.DIG, "Dig and level", "")
            .startIf("no standing water; buried cables and pipes asked for and marked")
            .people(crew);
    List<FloorStep> work = stepsBefore();
    tools(day, work);
    day.material("stakes, edging of " + w.atLeast(floor.buildUp().footprint().perimeter()))
        .step("Strip turf, roots and dark topsoil; heap them apart.")
        .step("Drive a stake in the middle and at each corner; carry the finished level to all.")
        .step("Dig below that mark:", w.words().small(floor.buildUp().thickness()));
    String fall = "level";
    if (floor.buildUp().fall().gradient() > 0) {
      fall = "fall of " + w.words().percent(floor.buildUp().fall().gradient());
      day.step("Slope the bed as the floor shall slope:", fall);
    }
    day.step("Ram what was loosened.")
        .step("Pour out a bucket of water: it must run off and not stand.")
        .step("Mark on the stakes how far below the level each layer ends: " + tops() + ".")
        .step("Stake the edging along the outline, its top on the level; the door's side last.");
    work.stream().limit(1).forEach(s -> day.home(s.check()));
    day.home("hole covered or fenced", "bed " + fall + ", checked on a cross of strings");
    return day.stops("water in the bed: drain it first, no layer goes on wet ground.");
  }

  /** The steps of the plan before the first layer. */
  private List<FloorStep> stepsBefore() {
    return floor.steps().stream().takeWhile(s -> !s.title().contains(": ")).toList();
  }

  private List<FloorStep> steps(String layer) {
    return floor.steps().stream().filter(s -> isOf(s, layer)).toList();
  }

  private static boolean isOf(FloorStep step, String layer) {
    return step.title().endsWith(": " + layer) || step.title().endsWith(" for " + layer);
  }

  private static void tools(Day day, List<FloorStep> steps) {
    LinkedHashSet<String> tools = new LinkedHashSet<>();
    steps.forEach(s -> tools.addAll(List.of(s.tools().split(", ", -1))));
    day.tools(tools.stream().limit(MOST_TOOLS).collect(Collectors.joining(", ")));
  }

  /** Where each layer ends, below the finished level, from the ground up. */
  private String tops() {
    double top = floor.buildUp().thickness();
    return floor.buildUp().section().stream()
        .filter(b -> b.top() > b.bottom())
        .map(b -> b.name() + " " + w.words().small(top - b.top()))
        .collect(Collectors.joining(", "));
  }

  private Day base(List<EarthQuantity> loose) {
    Day day =
        new Day(Day.Work.BED, "Gravel and sheet", "")
            .startIf("bed drained and rammed")
            .people(crew);
    List<FloorStep> work = new ArrayList<>();
    List<String> material = new ArrayList<>();
    double days = 0;
    for (EarthQuantity q : loose) {
      List<FloorStep> of = steps(q.layer().name());
      work.addAll(of);
      material.add(w.words().volume(q.looseVolume().likely()) + " " + q.layer().mix().name());
      String lifts = q.layer().lifts() > 1 ? " in " + q.layer().lifts() + " lifts" : "";
      day.step(
          "Spread the " + q.layer().name() + lifts + " to the marks; rammed it is:",
          w.words().small(q.meanThickness()));
      passes(of).ifPresent(p -> day.step("Ram each lift, passes of the hand rammer:", p));
      days += days(q);
    }
    for (MembraneQuantity m : membranes()) {
      work.addAll(steps(m.layer().name()));
      material.add(
          w.area(m.areaWithLaps())
              + " "
              + m.layer().name()
              + " in strips of "
              + m.strips().stream().map(w::rough).collect(Collectors.joining(", ")));
      day.step(
          "Lay the " + m.layer().name() + " strips, the upper over the lower. Lap:",
          w.words().small(m.layer().lap()));
      day.step("Turn it up at the edge:", w.words().small(m.layer().upstand()));
    }
    tools(day, work);
    day.material(String.join("; ", material));
    work.stream().map(FloorStep::check).distinct().forEach(day::home);
    return timed(day.stops("a hole in the sheet, gravel that rolls under the foot."), days);
  }

  private List<MembraneQuantity> membranes() {
    return floor.buildUp().membranes().stream().filter(m -> !floor.isLaid(m.layer())).toList();
  }

  private static Optional<String> passes(List<FloorStep> steps) {
    return steps.stream()
        .flatMap(s -> s.quantities().stream())
        .filter(q -> q.kind() == FloorStep.Kind.COUNT && q.name().startsWith("passes"))
        .map(q -> Numbers.plain(q.value().likely()))
        .findFirst();
  }

  private double days(EarthQuantity q) {
    if (desk.crew().isEmpty()) {
      return 0;
    }
    double day = desk.crew().get().hoursPerDay();
    return floor.work().stream()
        .flatMap(work -> work.layers().stream())
        .filter(l -> l.layer().equals(q.layer().name()))
        .findFirst()
        .map(l -> l.time().workingDays(day))
        .orElse(0.0);
  }

  private static Day timed(Day day, double workingDays) {
    return workingDays > 0 ? day.spans(workingDays) : day;
  }

  private Day mixed(EarthQuantity q) {
    boolean pack = q.layer().role() == LayerRole.DRY_PACK;
    String name = q.layer().name();
    int at = -1;
    for (int i = 0; i < floor.batches().size(); i++) {
      at = floor.batches().get(i).quantity().equals(q) ? i : at;
    }
    Day day =
        Day.ofLayer(name)
            .startIf(
                pack
                    ? "sheet below whole, no frost tonight"
                    : "layer below clean and ready, no frost for a week")
            .people(crew);
    List<FloorStep> work = steps(name);
    tools(day, work);
    day.material(
        (at < 0 ? "" : loads(floor.batches().get(at)) + " loads by the ")
            + "mixer card; masks P3 or N100");
    work.stream()
        .filter(s -> s.title().startsWith("Lay") || s.title().startsWith("Ram"))
        .forEach(s -> day.hands(s.hands()));
    if (!pack) {
      day.step("Mist the layer below until it is dark and does not shine; brush on slip.");
    }
    day.step(
        "Set two rails, tops where the "
            + name
            + " ends, at the sector marked 1, farthest from the door. Thickness:",
        w.words().small(q.meanThickness()));
    day.warn("Dust of soil and sand scars the lungs: damp it, wear a P3 or N100 mask.");
    day.step("Mix by the card: a handful holds when squeezed, breaks clean.");
    if (pack) {
      if (at >= 0) {
        day.step("Tip each load where the map has its sector; tick it on the mixer card.");
      }
      day.step("Heap it loose over the rails, rake it even this thick:", spread(work));
      day.step(
          "Ram it down to the rails, from the edge inwards, until the rammer rings. Passes:",
          passes(work).orElse(""));
    } else {
      day.step("Press it onto the layer below; pull it level along the rails.");
      day.step("Float it after the shine is gone; trowel when a thumb hardly marks it.");
    }
    day.step("Lift the rails, fill their grooves, go on with the next number to the door.");
    day.step(
        "Cut the open edge upright; keep it wet until the next sector joins it" + edge(at) + ".");
    day.step("Make one test tile of the last load and write its mass on it.");
    List<String> pause = new ArrayList<>();
    pause.add("tile of this mix: no crack, no dust");
    pause.add("rails level, sectors numbered");
    if (floor.drum()) {
      pause.add("mixer guarded, on a residual current device");
    }
    clay(at).ifPresent(pause::add);
    day.pause("before the first load", pause);
    work.stream()
        .filter(s -> s.title().startsWith("Lay") || s.title().startsWith("Ram"))
        .forEach(s -> day.home(s.check().split("; ", -1)));
    day.home(
        floor.drum() ? "mixer washed, guard on, plug out" : "tarpaulin and tools washed",
        "barriers up: nobody walks on it");
    day.stops("rain on it, frost, a mix that differs from the tile.");
    forecast(q).ifPresent(day::thenWait);
    return timed(day, days(q));
  }

  private String spread(List<FloorStep> steps) {
    return steps.stream()
        .flatMap(s -> s.quantities().stream())
        .filter(q -> q.name().startsWith("thickness as spread"))
        .map(q -> w.words().small(q.value().likely()))
        .findFirst()
        .orElse("");
  }

  /** How long an edge stays open, by the plan. */
  private String edge(int batch) {
    return batch < 0 || batch >= floor.timings().size()
        ? ""
        : ", up to " + w.words().duration(floor.timings().get(batch).longestWait()) + " later";
  }

  /** The clay of a load, where rounding to buckets takes it out of its band. */
  private Optional<String> clay(int batch) {
    return batch < 0 || batch >= floor.clays().size() || !floor.clays().get(batch).strays()
        ? Optional.empty()
        : Optional.of("parts weighed or in quarter buckets: whole ones miss the clay wanted");
  }

  static String loads(BatchPlan plan) {
    String range =
        plan.count().low() == plan.count().high()
            ? ""
            : " (" + Math.round(plan.count().low()) + "–" + Math.round(plan.count().high()) + ")";
    return plan.likelyCount() + range;
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
        .filter(Milestone::isWaitedFor);
  }

  private Day finish(List<FinishQuantity> finishes) {
    Day day =
        new Day(Day.Work.FINISH, "Oil and finish", "")
            .startIf(
                "coat dry by its check; room aired, above " + w.celsius(FinishLayer.LEAST_CELSIUS))
            .people(Math.min(crew, FEW));
    List<FloorStep> work =
        finishes.stream().flatMap(f -> steps(f.layer().name()).stream()).toList();
    tools(day, work);
    day.material(
        finishes.stream()
            .map(f -> w.words().litres(f.litres().likely() / 1000) + " " + f.layer().name())
            .collect(Collectors.joining(", ")));
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
    day.step("Let each coat dry before the next; walk on it in socks only.");
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
        new Day(
                Day.Work.TILES,
                "Soil and tiles first",
                "They need days to dry, so they start before all else.")
            .startIf("a dry place out of the sun, at least a week before sand is ordered")
            .tools("spade, sieve, buckets, moulds, scale, straight board")
            .material("soil, sand, water, soil card")
            .people(Math.min(desk.people(), FEW))
            .step("Dig soil below the roots, in three places; sieve and mix it.");
    desk.plan().soils().stream()
        .flatMap(s -> s.nextTests().stream().limit(1))
        .findFirst()
        .ifPresent(
            t ->
                day.step(
                    "Make the next soil test: " + t.kind().label() + ".",
                    desk.sizes().words().duration(t.kind().handsOnTime())));
    day.step("Mix the trial tiles of the soil card, each with its own number.");
    day.step("Strike them level in the moulds, wet the moulds first.");
    day.step("Write name, parts of sand and date on each; dry them slowly.");
    day.step("When they no longer lose mass: tape the cracks, rub, scratch; write on the card.");
    day.step("Put the readings into the job document and plan again before ordering sand.");
    day.home("tiles level, out of draught and sun");
    return Optional.of(day.stops("nothing: the other work goes on while they dry."));
  }
}
