package io.github.seamstead.assembly.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Bars of a schedule over time, each in the lane of the team that does it.
 *
 * @param bars by start
 * @param lanes how many lanes
 * @param startTime left end, in seconds
 * @param endTime right end, in seconds
 * @param byClock whether times count from midnight before day 1; else they are working time from
 *     the start
 */
public record GanttChart(
    List<Bar> bars, int lanes, double startTime, double endTime, boolean byClock) {

  private static final double EPS = 1e-6;

  public GanttChart {
    bars = List.copyOf(bars);
  }

  /**
   * A task's bar.
   *
   * @param task the task
   * @param lane its lane, from 1; tasks in one lane never overlap
   * @param parts spans in which it is worked on, one at least
   * @param critical whether the end of the work waits for it, through order or a shared resource
   */
  public record Bar(Task task, int lane, List<WorkCalendar.Span> parts, boolean critical) {

    public Bar {
      parts = List.copyOf(parts);
    }

    /**
     * Gives the start.
     *
     * @return in seconds
     */
    public double startTime() {
      return parts.get(0).startTime();
    }

    /**
     * Gives the end.
     *
     * @return in seconds
     */
    public double endTime() {
      return parts.get(parts.size() - 1).endTime();
    }
  }

  /**
   * Draws the schedule in working time.
   *
   * @param schedule the schedule
   * @param capacities the capacities it was made with
   * @return the bars
   */
  public static GanttChart of(ResourceSchedule schedule, Map<String, Integer> capacities) {
    List<List<WorkCalendar.Span>> spans = new ArrayList<>();
    for (ResourceSchedule.Placed placed : schedule.tasks()) {
      spans.add(List.of(new WorkCalendar.Span(placed.startTime(), placed.finishTime())));
    }
    return chart(schedule, capacities, spans, false);
  }

  /**
   * Lays the schedule into days, in the same order and with the same units of each resource. Waits
   * such as cures go on by the clock through breaks and nights. Costs O(n (n + units)).
   *
   * @param schedule the schedule
   * @param capacities the capacities it was made with
   * @param calendar when people work
   * @param startTime clock time of the start, in seconds after midnight before day 1, 0 or more
   * @return the bars by the clock
   */
  public static GanttChart of(
      ResourceSchedule schedule,
      Map<String, Integer> capacities,
      WorkCalendar calendar,
      double startTime) {
    Map<String, double[]> freeInWork = new HashMap<>();
    Map<String, double[]> freeByClock = new HashMap<>();
    capacities.forEach(
        (name, count) -> {
          freeInWork.put(name, new double[count]);
          double[] clock = new double[count];
          Arrays.fill(clock, startTime);
          freeByClock.put(name, clock);
        });
    Map<String, Double> end = new HashMap<>();
    List<List<WorkCalendar.Span>> spans = new ArrayList<>();
    for (ResourceSchedule.Placed placed : schedule.tasks()) {
      double ready = startTime;
      for (Link link : placed.task().after()) {
        ready = Math.max(ready, end.getOrDefault(link.task(), startTime) + link.lag());
      }
      List<Taken> taken = new ArrayList<>();
      for (Map.Entry<String, Integer> need : placed.task().needs().entrySet()) {
        double[] work = freeInWork.getOrDefault(need.getKey(), new double[0]);
        double[] clock = freeByClock.getOrDefault(need.getKey(), new double[0]);
        int missing = Math.min(need.getValue(), work.length);
        for (int unit = 0; unit < work.length && missing > 0; unit++) {
          if (work[unit] <= placed.startTime() + EPS) {
            missing--;
            work[unit] = Math.max(work[unit], placed.finishTime());
            ready = Math.max(ready, clock[unit]);
            taken.add(new Taken(clock, unit));
          }
        }
      }
      List<WorkCalendar.Span> parts = calendar.lay(ready, placed.finishTime() - placed.startTime());
      double done = parts.get(parts.size() - 1).endTime();
      for (Taken unit : taken) {
        unit.clock()[unit.number()] = done;
      }
      end.put(placed.task().id(), done);
      spans.add(parts);
    }
    return chart(schedule, capacities, spans, true);
  }

  /** A unit of a resource, in the clocks of all units of its kind. */
  @SuppressWarnings("ArrayRecordComponent") // The clock is shared: to take a unit is to set it.
  private record Taken(double[] clock, int number) {}

  private static GanttChart chart(
      ResourceSchedule schedule,
      Map<String, Integer> capacities,
      List<List<WorkCalendar.Span>> spans,
      boolean byClock) {
    boolean[] critical = schedule.critical(capacities);
    int n = spans.size();
    Integer[] order = new Integer[n];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble(i -> spans.get(i).get(0).startTime()));
    List<Bar> bars = new ArrayList<>();
    List<Double> laneEnd = new ArrayList<>();
    double first = Double.POSITIVE_INFINITY;
    double last = 0;
    for (int i : order) {
      List<WorkCalendar.Span> parts = spans.get(i);
      double start = parts.get(0).startTime();
      double end = parts.get(parts.size() - 1).endTime();
      int lane = 0;
      while (lane < laneEnd.size() && laneEnd.get(lane) > start + EPS) {
        lane++;
      }
      if (lane == laneEnd.size()) {
        laneEnd.add(end);
      } else {
        laneEnd.set(lane, end);
      }
      bars.add(new Bar(schedule.tasks().get(i).task(), lane + 1, parts, critical[i]));
      first = Math.min(first, start);
      last = Math.max(last, end);
    }
    return new GanttChart(bars, laneEnd.size(), first, last, byClock);
  }
}
