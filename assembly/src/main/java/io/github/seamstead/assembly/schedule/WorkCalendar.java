package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * When people work: the same shifts on every working day. Clock time is in seconds after midnight
 * before day 1.
 *
 * <pre>{@code
 * WorkCalendar.Shift noon = new WorkCalendar.Shift(12 * 3600, 13 * 3600);
 * WorkCalendar day = WorkCalendar.ofDaylight(7 * 3600, 17 * 3600, List.of(noon));
 * day.shifts().size(); // 2
 * }</pre>
 *
 * @param shifts shifts of a day, one after another; the gaps are breaks and night; at least one,
 *     not overlapping
 * @param daysOff numbers of the days on which nobody works, from 1; at most ten years of them
 * @param keepWhole whether a task that fits into a shift waits for one rather than being split;
 *     whether short tasks are not split
 */
public record WorkCalendar(List<Shift> shifts, Set<Integer> daysOff, boolean keepWhole) {

  /** Length of a day, in seconds. */
  public static final double DAY_SECONDS = 86_400;

  /** When a shift starts where none is stated, after midnight: eight (common practice). */
  public static final double USUAL_MORNING_SECONDS = 8 * 3600;

  /** How many days of a week a crew works; drying goes on over the week-end (common practice). */
  public static final int WORKING_DAYS_OF_A_WEEK = 5;

  /** The days of a week. */
  public static final int DAYS_OF_A_WEEK = 7;

  private static final int MOST_WORKING_DAYS = 100_000;
  private static final int MOST_DAYS_OFF = 3660;
  private static final double EPS = 1e-6;

  /**
   * A time span of a day.
   *
   * @param startTime start, in seconds after midnight; 0 to a day
   * @param endTime end, in seconds after midnight; at most a day
   */
  public record Shift(double startTime, double endTime) {

    public Shift {
      Args.within("start of a shift or break", startTime, 0, DAY_SECONDS, "s");
      Args.within("end of a shift or break", endTime, 0, DAY_SECONDS, "s");
      Args.require(
          endTime > startTime,
          "shift or break",
          Numbers.plain(startTime) + " to " + Numbers.plain(endTime) + " s",
          "must end after it starts");
    }
  }

  public WorkCalendar {
    List<Shift> sorted = new ArrayList<>(Args.notEmpty("shifts", shifts));
    sorted.sort(Comparator.comparingDouble(Shift::startTime));
    for (int i = 1; i < sorted.size(); i++) {
      Args.require(
          sorted.get(i).startTime() >= sorted.get(i - 1).endTime(),
          "shifts",
          "two that overlap at " + Numbers.plain(sorted.get(i).startTime()) + " s",
          "must follow each other");
    }
    shifts = List.copyOf(sorted);
    daysOff.forEach(day -> Args.within("day off", day, 1, Integer.MAX_VALUE));
    Args.within("number of days off", daysOff.size(), 0, MOST_DAYS_OFF);
    daysOff = java.util.Collections.unmodifiableSet(new TreeSet<>(daysOff));
  }

  /**
   * Works from first to last light, breaks left out, every day; tasks that fit are not split.
   *
   * @param firstLight in seconds after midnight
   * @param lastLight in seconds after midnight
   * @param breaks spans within daylight
   * @return the calendar
   * @throws IllegalArgumentException if no working time is left, or a span is out of range
   */
  public static WorkCalendar ofDaylight(double firstLight, double lastLight, List<Shift> breaks) {
    Shift daylight = new Shift(firstLight, lastLight);
    List<Shift> shifts = new ArrayList<>();
    double from = daylight.startTime();
    List<Shift> sorted = new ArrayList<>(breaks);
    sorted.sort(Comparator.comparingDouble(Shift::startTime));
    for (Shift pause : sorted) {
      if (pause.startTime() > from) {
        shifts.add(new Shift(from, Math.min(pause.startTime(), daylight.endTime())));
      }
      from = Math.max(from, pause.endTime());
      if (from >= daylight.endTime()) {
        break;
      }
    }
    if (from < daylight.endTime()) {
      shifts.add(new Shift(from, daylight.endTime()));
    }
    Args.require(!shifts.isEmpty(), "breaks: given no time to work between them");
    return new WorkCalendar(shifts, Set.of(), true);
  }

  /**
   * Finds the date of a working day, Saturdays and Sundays not counted.
   *
   * @param first the date from which is counted; on a week-end the Monday after stands for it
   * @param later how many working days later, -100 000 to 100 000; negative before
   * @return never a Saturday or Sunday
   * @throws IllegalArgumentException if the count is out of range
   */
  public static LocalDate workingDay(LocalDate first, int later) {
    Args.within("working days", later, -MOST_WORKING_DAYS, MOST_WORKING_DAYS);
    LocalDate monday = first.minusDays(first.getDayOfWeek().getValue() - 1L);
    int weekday = Math.min(first.getDayOfWeek().getValue() - 1, WORKING_DAYS_OF_A_WEEK);
    int day = weekday + later;
    return monday
        .plusWeeks(Math.floorDiv(day, WORKING_DAYS_OF_A_WEEK))
        .plusDays(Math.floorMod(day, WORKING_DAYS_OF_A_WEEK));
  }

  /**
   * Leaves days out.
   *
   * @param days numbers from 1
   * @return the new calendar
   */
  public WorkCalendar without(Set<Integer> days) {
    return new WorkCalendar(shifts, days, keepWhole);
  }

  /**
   * Gives the working time of a day.
   *
   * @return in seconds
   */
  public double workTimePerDay() {
    return shifts.stream().mapToDouble(s -> s.endTime() - s.startTime()).sum();
  }

  /**
   * Lays a task into working time.
   *
   * @param readyTime clock time from which it may start, in seconds, 0 or more
   * @param workTime how long it takes, in seconds, 0 or more
   * @return the spans of clock time in which it is worked on, one at least
   * @throws IllegalArgumentException if a time is negative or not finite
   */
  public List<Span> lay(double readyTime, double workTime) {
    Args.notNegative("ready time", readyTime, "s");
    Args.notNegative("work", workTime, "s");
    double longest = shifts.stream().mapToDouble(s -> s.endTime() - s.startTime()).max().orElse(0);
    boolean whole = keepWhole && workTime <= longest + EPS;
    List<Span> spans = new ArrayList<>();
    double left = workTime;
    for (long day = (long) (readyTime / DAY_SECONDS); ; day++) {
      if (daysOff.contains((int) Math.min(day + 1, Integer.MAX_VALUE))) {
        continue;
      }
      for (Shift shift : shifts) {
        double from = Math.max(readyTime, day * DAY_SECONDS + shift.startTime());
        double room = day * DAY_SECONDS + shift.endTime() - from;
        if (room <= EPS || (whole && room < left - EPS)) {
          continue;
        }
        double part = Math.min(left, room);
        spans.add(new Span(from, from + part));
        left -= part;
        if (left <= EPS) {
          return spans;
        }
      }
    }
  }

  /**
   * A span of clock time.
   *
   * @param startTime start, in seconds after midnight before day 1
   * @param endTime end, in the same count
   */
  public record Span(double startTime, double endTime) {}
}
