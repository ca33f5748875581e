package io.github.seamstead.api.book.front;

import io.github.seamstead.api.job.Site;
import io.github.seamstead.assembly.schedule.WorkCalendar;
import io.github.seamstead.materials.drying.Milestone;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The days in their order, and where each lies on the calendar. */
final class WorkPlan {

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

  /**
   * A stretch of the calendar, in days from the start.
   *
   * @param day the day sheet it stands for
   * @param from first day
   * @param until end of the work
   * @param dry end of the wait as likely
   * @param late end of the wait at the latest, if it ends within what was forecast
   */
  record Stretch(Day day, double from, double until, double dry, Optional<Double> late) {}

  private final List<Day> days;
  private final List<LocalDate> dates;

  private WorkPlan(List<Day> days, Optional<LocalDate> joining) {
    this.days = List.copyOf(days);
    this.dates = joining.map(this::datesAround).orElse(List.of());
  }

  static WorkPlan of(Desk desk) {
    List<Day> days = new ArrayList<>();
    FloorDays.tiles(desk).ifPresent(days::add);
    new CoverDays(desk).add(days);
    new RaisingDays(desk).add(days);
    desk.plan().floor().ifPresent(floor -> new FloorDays(desk, floor).add(days));
    return new WorkPlan(days, desk.document().site().flatMap(Site::start));
  }

  List<Day> days() {
    return days;
  }

  /** The first date of a day sheet, if the document states when joining starts. */
  Optional<LocalDate> date(int day) {
    return dates.isEmpty() ? Optional.empty() : Optional.of(dates.get(day));
  }

  /** The dates of a day sheet as they are read. */
  Optional<String> dateText(int day) {
    return date(day)
        .map(
            first -> {
              int span = (int) Math.max(1, days.get(day).span());
              String text = DATE.format(first);
              return span == 1
                  ? text
                  : text + " to " + DATE.format(WorkCalendar.workingDay(first, span - 1));
            });
  }

  /** The day of joining has the stated date; without such a day, the first has it. */
  private List<LocalDate> datesAround(LocalDate joining) {
    int at = first(Day.Work.RING).orElse(0);
    LocalDate[] dates = new LocalDate[days.size()];
    if (dates.length == 0) {
      return List.of();
    }
    dates[at] = WorkCalendar.workingDay(joining, 0);
    for (int i = at - 1; i >= 0; i--) {
      dates[i] = WorkCalendar.workingDay(dates[i + 1], (int) -days.get(i).span());
    }
    for (int i = at + 1; i < dates.length; i++) {
      Day before = days.get(i - 1);
      LocalDate next = WorkCalendar.workingDay(dates[i - 1], (int) before.span());
      long wait = (long) Math.ceil(before.waiting().map(WorkPlan::wait).orElse(0.0));
      dates[i] = WorkCalendar.workingDay(next.plusDays(wait), 0);
    }
    return List.of(dates);
  }

  /** How a day sheet is called: by the working days that it takes, counted from the first. */
  String label(int day) {
    int first = 1 + days.stream().limit(day).mapToInt(d -> (int) d.span()).sum();
    int last = first + (int) Math.max(1, days.get(day).span()) - 1;
    return first == last ? "Day " + first : "Days " + first + "–" + last;
  }

  /** How the first day sheet is called that uses what was ordered: not that of soil and tiles. */
  String firstLabel() {
    for (int i = 0; i < days.size(); i++) {
      if (days.get(i).work() != Day.Work.TILES) {
        return label(i);
      }
    }
    return "the first day";
  }

  /** How the first day sheet for a work is called. */
  Optional<String> label(Day.Work work) {
    return first(work).map(this::label);
  }

  private Optional<Integer> first(Day.Work work) {
    for (int i = 0; i < days.size(); i++) {
      if (days.get(i).work() == work) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  double workingDays() {
    return days.stream().mapToDouble(Day::span).sum();
  }

  double personDays() {
    return days.stream().mapToDouble(d -> d.span() * d.people()).sum();
  }

  List<Stretch> calendar() {
    List<Stretch> stretches = new ArrayList<>();
    double at = 0;
    for (Day day : days) {
      double until = at + calendarDays(day);
      double likely = day.waiting().map(WorkPlan::wait).orElse(0.0);
      Optional<Double> late =
          day.waiting().isEmpty()
              ? Optional.of(until)
              : day.waiting().get().latest().isPresent()
                  ? Optional.of(until + day.waiting().get().latest().get())
                  : Optional.empty();
      stretches.add(new Stretch(day, at, until, until + likely, late));
      at = until + likely;
    }
    return stretches;
  }

  /** Days of the calendar that the work of a day sheet takes, its share of week-ends included. */
  private static double calendarDays(Day day) {
    return day.span() * WorkCalendar.DAYS_OF_A_WEEK / WorkCalendar.WORKING_DAYS_OF_A_WEEK;
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

  private double span(ToDoubleFunction<Milestone> wait) {
    return days.stream()
        .mapToDouble(d -> calendarDays(d) + d.waiting().map(wait::applyAsDouble).orElse(0.0))
        .sum();
  }
}
