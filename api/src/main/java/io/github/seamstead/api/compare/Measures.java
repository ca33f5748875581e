package io.github.seamstead.api.compare;

import io.github.seamstead.api.book.front.WorkTotals;
import io.github.seamstead.api.chapter.floor.BarrowTrips;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.floor.FloorWork;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.job.Crew;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.FloorLayer;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.merge.MergePlan;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the measures off a plan. */
public final class Measures {

  private static final double DAYS_IN_WEEK = 7;
  private static final double HOUR = 3600;

  private Measures() {}

  /**
   * Reads the measures.
   *
   * @param plan the plan
   * @return each measure that the plan has, in its SI unit, weeks in weeks
   */
  public static Map<Measure, Double> of(JobPlan plan) {
    return of(plan, WorkTotals.of(plan));
  }

  static Map<Measure, Double> of(JobPlan plan, WorkTotals work) {
    Map<Measure, Double> all = new EnumMap<>(Measure.class);
    cover(plan, all);
    floor(plan, all);
    if (work.workingDays() > 0) {
      all.put(Measure.PERSON_DAYS, work.personDays());
      all.put(Measure.WEEKS, work.calendarDays().likely() / DAYS_IN_WEEK);
      all.put(Measure.MONEY, work.priced());
    }
    double hours = seamHours(plan) + floorHours(plan);
    if (hours > 0) {
      all.put(Measure.HOURS, hours);
    }
    return Collections.unmodifiableMap(all);
  }

  private static void cover(JobPlan plan, Map<Measure, Double> all) {
    plan.frame().ifPresent(f -> all.put(Measure.HEADROOM, f.measures().frameHeight()));
    plan.frame().ifPresent(f -> all.put(Measure.FLOOR_AREA, f.measures().baseArea()));
    plan.cover().ifPresent(c -> all.put(Measure.CLOTH_AREA, c.clothArea()));
    plan.layout()
        .filter(l -> !l.result().unplaced().isEmpty())
        .ifPresent(l -> all.put(Measure.CLOTH_SHORT, l.areaWithoutPlace()));
    plan.joining().ifPresent(j -> all.put(Measure.SEAM_LENGTH, j.seams().length()));
    plan.joining()
        .flatMap(JoiningPart::order)
        .ifPresent(order -> all.put(Measure.HANDLED_MASS, handled(order)));
    plan.fixings().ifPresent(f -> all.put(Measure.FIXINGS, (double) f.fixings().total()));
    plan.anchoring().ifPresent(a -> all.put(Measure.PEG_PULL, a.screen().pegPull()));
    plan.survey().ifPresent(s -> all.put(Measure.SEAM_MISFIT, s.chosen().worstMisfit()));
  }

  private static double handled(MergePlan order) {
    return order.cost().mergedMass() + order.cost().closingMass();
  }

  private static void floor(JobPlan plan, Map<Measure, Double> all) {
    plan.floor()
        .ifPresent(
            f -> {
              all.put(Measure.FLOOR_AREA, f.buildUp().footprint().area());
              if (!f.barrowTrips().isEmpty()) {
                all.put(
                    Measure.BARROW_TRIPS,
                    (double) f.barrowTrips().stream().mapToInt(BarrowTrips::trips).sum());
              }
            });
    topMix(plan).ifPresent(mix -> all.put(Measure.CLAY, mix.choice().recipe().clayRatio().value()));
  }

  /** The mix of the uppermost mixed layer. */
  static Optional<MixPart> topMix(JobPlan plan) {
    List<FloorLayer> layers =
        plan.job().document().floor().map(Floor::layers).orElse(List.<FloorLayer>of());
    Optional<String> top =
        layers.stream().flatMap(layer -> layer.mix().stream()).reduce((below, above) -> above);
    return plan.mixes().stream().filter(mix -> top.equals(Optional.of(mix.spec().id()))).findAny();
  }

  private static double floorHours(JobPlan plan) {
    return plan.floor()
        .flatMap(FloorPart::work)
        .map(FloorWork::personHours)
        .map(range -> range.likely())
        .orElse(0.0);
  }

  /**
   * All seams left to make, each worked on by a whole team: those of the ring in their order, then
   * the others.
   */
  private static double seamHours(JobPlan plan) {
    Optional<Crew> crew = plan.job().document().site().flatMap(Site::crew);
    double team = crew.map(c -> (double) c.people() / c.teams()).orElse(0.0);
    double ring =
        plan.joining()
            .flatMap(JoiningPart::order)
            .map(order -> order.cost().workTime())
            .orElse(0.0);
    double others =
        plan.joining().stream()
            .flatMapToDouble(
                j ->
                    j.left().left().stream()
                        .filter(run -> run.kind() != SeamKind.RING)
                        .mapToDouble(run -> run.wholeLength() * j.timePerLength()))
            .sum();
    return (ring + others) / HOUR * team;
  }
}
