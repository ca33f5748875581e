package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.internal.Searched;
import io.github.seamstead.api.job.Crew;
import io.github.seamstead.api.job.Joining;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.schedule.CriticalPath;
import io.github.seamstead.assembly.schedule.GanttChart;
import io.github.seamstead.assembly.schedule.JoinTasks;
import io.github.seamstead.assembly.schedule.LearningCurve;
import io.github.seamstead.assembly.schedule.Network;
import io.github.seamstead.assembly.schedule.ResourceSchedule;
import io.github.seamstead.assembly.schedule.Simulation;
import io.github.seamstead.assembly.schedule.Task;
import io.github.seamstead.assembly.schedule.WorkCalendar;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts the join order on the teams, with an honest range. */
final class SchedulePlanner {

  private static final long SEARCH_NODES = 5_000;

  /** Enough for the 95 % quantile to settle to a few per cent; more at a higher effort. */
  private static final long RUNS = 500;

  private SchedulePlanner() {}

  static Optional<SchedulePart> plan(Run run, JoiningPart joining) {
    return joining.order().flatMap(order -> run.attempt("$.cover.joining", () -> part(run, order)));
  }

  private static SchedulePart part(Run run, MergePlan order) {
    Optional<Joining> stated = run.document().cover().flatMap(c -> c.joining());
    double quickest = stated.map(j -> j.quickestSeam() / j.usualSeam()).orElse(8 / 9.0);
    double slowest = stated.map(j -> j.slowestSeam() / j.usualSeam()).orElse(10 / 9.0);
    int teams = run.document().site().flatMap(Site::crew).map(Crew::teams).orElse(1);
    double cure =
        run.document()
            .cover()
            .flatMap(c -> c.fixings())
            .filter(f -> f.adhesiveBead().isPresent())
            .flatMap(f -> f.adhesive())
            .map(a -> a.cureTime())
            .orElse(0.0);
    Optional<LearningCurve> learning =
        stated
            .flatMap(Joining::learning)
            .map(ratio -> new LearningCurve(LearningCurve.Rule.UNIT, ratio));
    Network network =
        learning
            .map(curve -> JoinTasks.of(order, quickest, slowest, cure, Map.of(), curve))
            .orElseGet(() -> JoinTasks.of(order, quickest, slowest, cure, Map.of()));
    work(run, order, network, learning);
    Map<String, Integer> capacities = Map.of(JoinTasks.TEAM, teams);
    ResourceSchedule schedule =
        Searched.of(
                run,
                Chapter.JOINING,
                "a shorter order in time",
                SEARCH_NODES,
                work -> ResourceSchedule.of(network, capacities, work))
            .found();
    long runs = RUNS * run.options().effort();
    Simulation simulation =
        Searched.of(
                run,
                Chapter.JOINING,
                "how long the joining may take",
                runs,
                work -> Simulation.of(network, capacities, work))
            .found();
    return new SchedulePart(
        schedule,
        simulation,
        GanttChart.of(schedule, capacities),
        run.document()
            .site()
            .flatMap(Site::crew)
            .map(crew -> days(run, schedule, capacities, crew.hoursPerDay())),
        run.document().site().flatMap(Site::start),
        learning);
  }

  private static void work(
      Run run, MergePlan order, Network network, Optional<LearningCurve> learning) {
    Task first = network.tasks().get(0);
    run.worked(
        "assembly.schedule.pert",
        "Expected time of joint " + first.id(),
        steps -> first.duration().mean(steps));
    double seconds = order.steps().get(0).time();
    learning.ifPresent(
        curve ->
            run.worked(
                "assembly.schedule.learning",
                "Time of all seams, one after another, as the crew learns",
                steps -> curve.total(seconds, order.steps().size(), steps)));
    run.worked(
        "assembly.schedule.criticalpath",
        "The longest chain of seams",
        steps -> CriticalPath.of(network).length(steps));
  }

  /** The seams by working days of one shift. */
  private static GanttChart days(
      Run run, ResourceSchedule schedule, Map<String, Integer> capacities, double daySeconds) {
    run.assume("(working day)", "one shift from 8 in the morning, every day", "common practice");
    WorkCalendar calendar =
        WorkCalendar.ofDaylight(
            WorkCalendar.USUAL_MORNING_SECONDS,
            WorkCalendar.USUAL_MORNING_SECONDS + daySeconds,
            List.of());
    return GanttChart.of(schedule, capacities, calendar, WorkCalendar.USUAL_MORNING_SECONDS);
  }
}
