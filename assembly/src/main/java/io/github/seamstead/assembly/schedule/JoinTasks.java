package io.github.seamstead.assembly.schedule;

import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Makes tasks of the steps of a plan. */
public final class JoinTasks {

  /** The resource that every joint needs. */
  public static final String TEAM = "team";

  private static final LearningCurve NO_LEARNING = new LearningCurve(LearningCurve.Rule.UNIT, 1);

  private JoinTasks() {}

  /**
   * Makes one task per joint, which waits for the joints that make its two groups.
   *
   * @param plan the plan; the likely duration of a joint is the step's
   * @param optimisticRatio optimistic over likely duration, more than 0 and at most 1; 8/9 by
   *     common practice
   * @param pessimisticRatio pessimistic over likely duration, 1 or more; 10/9 by common practice
   * @param cureTime wait after each joint before its group may be handled, in seconds, 0 for none
   * @param tools how many of each further tool a joint holds, such as one stapler
   * @return the tasks, named by their joint marks, each needing one {@link #TEAM}
   * @throws IllegalArgumentException if a ratio or the wait is out of range, or the plan has no
   *     step
   */
  public static Network of(
      MergePlan plan,
      double optimisticRatio,
      double pessimisticRatio,
      double cureTime,
      Map<String, Integer> tools) {
    return of(plan, optimisticRatio, pessimisticRatio, cureTime, tools, NO_LEARNING);
  }

  /**
   * Makes one task per joint, later joints quicker by a learning rule.
   *
   * @param plan the plan; the likely duration of the first joint is the step's
   * @param optimisticRatio optimistic over likely duration, more than 0 and at most 1
   * @param pessimisticRatio pessimistic over likely duration, 1 or more
   * @param cureTime wait after each joint before its group may be handled, in seconds, 0 for none
   * @param tools how many of each further tool a joint holds
   * @param learning how the k-th joint of the plan shrinks against the first
   * @return the tasks, named by their joint marks, each needing one {@link #TEAM}
   * @throws IllegalArgumentException if a ratio or the wait is out of range, or the plan has no
   *     step
   */
  public static Network of(
      MergePlan plan,
      double optimisticRatio,
      double pessimisticRatio,
      double cureTime,
      Map<String, Integer> tools,
      LearningCurve learning) {
    Args.within("optimistic over likely", optimisticRatio, Double.MIN_NORMAL, 1, "");
    Args.within("pessimistic over likely", pessimisticRatio, 1, 1000, "");
    Args.notNegative("cure", cureTime, "s");
    Map<String, Integer> needs = new HashMap<>(tools);
    needs.put(TEAM, 1);
    Map<Arc, String> madeBy = new HashMap<>();
    int pieces = plan.ring().size();
    List<Task> tasks = new ArrayList<>();
    for (JoinStep step : plan.steps()) {
      List<Link> after = new ArrayList<>();
      for (Arc part : List.of(step.left(), step.right())) {
        String before = madeBy.get(part);
        if (before != null && after.stream().noneMatch(l -> l.task().equals(before))) {
          after.add(new Link(before, cureTime));
        }
      }
      String id = step.joint().mark().name();
      double likely = step.time() * learning.piece(1, step.number());
      tasks.add(
          new Task(
              id,
              step.joint().text(),
              new ThreePoint(likely * optimisticRatio, likely, likely * pessimisticRatio),
              after,
              needs));
      madeBy.put(
          new Arc(
              step.left().first(), Math.min(pieces, step.left().count() + step.right().count())),
          id);
    }
    return Network.of(tasks);
  }
}
