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
  private static final double MINUTE = 60;

  private FloorLabour() {}

  static Optional<FloorWork> work(
      Run run, BuildUp buildUp, List<BatchPlan> batches, double cycleSeconds) {
    Optional<Crew> crew = run.document().site().flatMap(Site::crew);
    if (crew.isEmpty()) {
      run.skip(Chapter.FLOOR, "hours of the crew: the document has no crew under site");
      return Optional.empty();
    }
    CrewRates rates =
        CrewRates.beginners(crew.get().people()).withUsualMinutesPerLoad(cycleSeconds / MINUTE);
    run.assume(
        "$.site.crew",
        "0.4 to 1.5 h/m2",
        "common practice: beginners barrow, spread and level or ram a square metre of a layer");
    List<FloorWork.LayerWork> layers = new ArrayList<>();
    Range hours = Range.exactly(0);
    Range clock = Range.exactly(0);
    for (EarthQuantity quantity : buildUp.earth()) {
      Optional<BatchPlan> plan =
          batches.stream().filter(b -> b.quantity().equals(quantity)).findFirst();
      WorkTime time = WorkTime.of(quantity, plan, rates);
      run.worked(
          "materials.floor.work",
          "Hours for the " + quantity.layer().name(),
          steps ->
              WorkTime.personHours(
                  plan.map(b -> b.count().likely()).orElse(0.0),
                  rates.minutesPerLoad().likely(),
                  rates.peopleAtMixer(),
                  quantity.area(),
                  rates.layingHoursPerSquareMetre().likely(),
                  steps));
      layers.add(new FloorWork.LayerWork(quantity.layer().name(), time));
      hours = hours.plus(time.personHours());
      clock = clock.plus(time.elapsedHours());
    }
    Range days = clock.times(HOUR / crew.get().hoursPerDay());
    return Optional.of(new FloorWork(layers, hours, clock, days));
  }

  static List<BarrowTrips> barrowTrips(Run run, PlantBarrow barrow, List<BatchPlan> batches) {
    double payload =
        barrow
            .payload()
            .orElseGet(() -> FloorPlanner.densest(run, "$.plant.barrow.payload", barrow.volume()));
    return batches.stream()
        .map(
            b ->
                new BarrowTrips(
                    b.quantity().layer().name(), b.barrowTrips(barrow.volume(), payload)))
        .toList();
  }

  static Settlement settlement(Run run, double softBase, BuildUp buildUp) {
    double mass = buildUp.massPerArea().likely();
    Settlement settlement = Settlement.of(softBase, mass);
    run.worked(
        "materials.floor.settlement",
        "Squeeze of the soft ground",
        steps -> Settlement.squeeze(softBase, mass, Settlement.COMPRESSIBILITY.likely(), steps));
    run.caution(Chapter.FLOOR, settlement.caution());
    return settlement;
  }
}
