package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Crew;
import io.github.seamstead.api.job.PlantBarrow;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.CrewRates;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.Settlement;
import io.github.seamstead.materials.floor.WorkTime;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The crew's hours on the floor, its barrow trips, and how far soft ground under it sinks. */
final class FloorLabour {

  private static final double HOUR = 3600;

  private FloorLabour() {}

  static Optional<FloorWork> work(
      Run run, List<EarthQuantity> earth, List<BatchPlan> batches, CrewRates rates) {
    Optional<Crew> crew = run.document().site().flatMap(Site::crew);
    if (crew.isEmpty()) {
      run.skip(Chapter.FLOOR, "hours of the crew: the document has no crew under site");
      return Optional.empty();
    }
    run.assume(
        "$.site.crew",
        "beginners",
        "hours to wheel, spread, ram and trowel grow with the loose volume and the area of each"
            + " layer, by published labour factors");
    List<FloorWork.LayerWork> layers = new ArrayList<>();
    Range hours = Range.exactly(0);
    Range clock = Range.exactly(0);
    for (EarthQuantity quantity : earth) {
      Optional<BatchPlan> plan = planOf(quantity, batches);
      WorkTime time = WorkTime.of(quantity, plan, rates).atPace(run.supposed().pace());
      run.workedOnly(
          "materials.floor.work",
          "Hours for the " + quantity.layer().name(),
          steps -> WorkTime.likelyHours(quantity, plan, rates, steps));
      run.workedOnly(
          "materials.floor.work-doubt",
          "How sure are the hours for the " + quantity.layer().name() + "?",
          steps -> WorkTime.hoursDoubt(quantity, plan, rates, steps));
      layers.add(new FloorWork.LayerWork(quantity.layer().name(), time));
      hours = hours.plus(time.personHours());
      clock = clock.plus(time.elapsedHours());
    }
    Range days = clock.times(HOUR / crew.get().hoursPerDay());
    return Optional.of(new FloorWork(layers, hours, clock, days));
  }

  private static Optional<BatchPlan> planOf(EarthQuantity quantity, List<BatchPlan> batches) {
    return batches.stream().filter(b -> b.quantity().equals(quantity)).findFirst();
  }

  /** Trips of each earth layer: from the mixer, or from the heap where it is tipped as it comes. */
  static List<BarrowTrips> barrowTrips(
      Run run, PlantBarrow barrow, List<EarthQuantity> earth, List<BatchPlan> batches) {
    double payload =
        barrow
            .payload()
            .orElseGet(() -> FloorMixing.densest(run, "$.plant.barrow.payload", barrow.volume()));
    return earth.stream()
        .map(
            q ->
                new BarrowTrips(
                    q.layer().name(),
                    planOf(q, batches)
                        .map(b -> b.barrowTrips(barrow.volume(), payload))
                        .orElseGet(() -> q.barrowTrips(barrow.volume(), payload))))
        .toList();
  }

  static Settlement settlement(Run run, double softBase, BuildUp buildUp) {
    double mass = buildUp.massPerArea().likely();
    Settlement settlement = Settlement.of(softBase, mass);
    run.workedOnly(
        "materials.floor.settlement",
        "Squeeze of the soft ground",
        steps -> Settlement.squeeze(softBase, mass, Settlement.COMPRESSIBILITY.likely(), steps));
    run.workedOnly(
        "materials.floor.settlement-doubt",
        "How sure is the settlement?",
        steps -> Settlement.doubt(softBase, mass, steps));
    run.caution(Chapter.FLOOR, settlement.caution());
    return settlement;
  }
}
