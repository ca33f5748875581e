package io.github.seamstead.api.book.front;

import io.github.seamstead.materials.drying.Milestone;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The days in their order, and where each lies on the calendar. */
final class WorkPlan {

  /** A crew works five days of seven; drying goes on over the week-end. */
  private static final double WEEK = 7 / 5.0;

  /**
   * A stretch of the calendar, in days from the start.
   *
   * @param day the day sheet it stands for
   * @param from first day
   * @param until end of the work
   * @param dry end of the wait as likely
   * @param late end of the wait at the latest, if it ends within what was forecast
   */
  record Stretch(Day day, double from, double until, double dry, OptionalDouble late) {}

  private final List<Day> days;

  private WorkPlan(List<Day> days) {
    this.days = days;
  }

  static WorkPlan of(Desk desk) {
    List<Day> days = new ArrayList<>();
    FloorDays.tiles(desk).ifPresent(days::add);
    new CoverDays(desk).add(days);
    new RaisingDays(desk).add(days);
    desk.plan().floor().ifPresent(floor -> new FloorDays(desk, floor).add(days));
    return new WorkPlan(days);
  }

  List<Day> days() {
    return days;
  }

  double workingDays() {
    return days.stream().mapToDouble(Day::span).sum();
  }

  double crewDays() {
    return days.stream().mapToDouble(d -> d.span() * d.people()).sum();
  }

  List<Stretch> calendar() {
    List<Stretch> stretches = new ArrayList<>();
    double at = 0;
    for (Day day : days) {
      double until = at + day.span() * WEEK;
      double likely = day.waiting().map(WorkPlan::wait).orElse(0.0);
      OptionalDouble late =
          day.waiting().isEmpty()
              ? OptionalDouble.of(until)
              : day.waiting().get().latest().isPresent()
                  ? OptionalDouble.of(until + day.waiting().get().latest().getAsDouble())
                  : OptionalDouble.empty();
      stretches.add(new Stretch(day, at, until, until + likely, late));
      at = until + likely;
    }
    return stretches;
  }

  private static double wait(Milestone m) {
    return m.likely().orElse(m.horizon());
  }

  /** Whether something has to dry before the work goes on. */
  boolean waits() {
    return days.stream().anyMatch(d -> d.waiting().isPresent());
  }

  /** Whether a wait may last longer than was forecast. */
  boolean isOpenEnded() {
    return calendar().stream().anyMatch(s -> s.late().isEmpty());
  }

  /** Days from the start to the end, if every wait is as short as it may be. */
  double soonest() {
    return span(m -> m.soonest().orElse(m.likely().orElse(m.horizon())));
  }

  /** Days from the start to the end, waits as likely. */
  double likely() {
    return span(WorkPlan::wait);
  }

  /** Days from the start to the end, every wait at its latest or at what was forecast. */
  double latest() {
    return span(m -> m.latest().orElse(m.horizon()));
  }

  private double span(java.util.function.ToDoubleFunction<Milestone> wait) {
    return days.stream()
        .mapToDouble(d -> d.span() * WEEK + d.waiting().map(wait::applyAsDouble).orElse(0.0))
        .sum();
  }
}
