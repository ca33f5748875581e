package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.util.List;
import java.util.Optional;

/**
 * What the plan is asked for.
 *
 * @param objective what to keep small
 * @param limits what no merge may exceed
 * @param times how long a joint takes
 * @param teams how many teams join at once, 1 or more; 1 to {@link #MOST_TEAMS}
 * @param closingJoint the joint to make last, such as the one beside the door; empty for the best;
 *     rings only
 * @param firstGroups runs of neighbouring pieces to be joined first, as the builder wishes; they
 *     may lie inside one another but not overlap
 * @param work the terms of the exact search for elapsed time; a work unit is a node visited
 */
public record PlanOptions(
    Objective objective,
    Limits limits,
    JoinTimes times,
    int teams,
    Optional<Integer> closingJoint,
    List<Arc> firstGroups,
    Work work) {

  /** The most teams. */
  public static final int MOST_TEAMS = 100;

  /** Nodes for the search if nothing else is asked: some tenths of a second at most. */
  public static final long USUAL_SEARCH_NODES = 20_000;

  public PlanOptions {
    Args.within("teams", teams, 1, MOST_TEAMS);
    firstGroups = List.copyOf(firstGroups);
  }

  /**
   * Asks for an objective: one team, nine minutes per joint, no limits, free closing joint.
   *
   * @param objective what to keep small
   * @return the options
   */
  public static PlanOptions least(Objective objective) {
    return new PlanOptions(
        objective,
        Limits.NONE,
        JoinTimes.commonPractice(),
        1,
        Optional.empty(),
        List.of(),
        Work.of(Budget.ofWork(USUAL_SEARCH_NODES), 0));
  }

  /**
   * Sets the objective.
   *
   * @param newObjective what to keep small
   * @return the new options
   */
  public PlanOptions with(Objective newObjective) {
    return new PlanOptions(newObjective, limits, times, teams, closingJoint, firstGroups, work);
  }

  /**
   * Sets the limits.
   *
   * @param newLimits what no merge may exceed
   * @return the new options
   */
  public PlanOptions with(Limits newLimits) {
    return new PlanOptions(objective, newLimits, times, teams, closingJoint, firstGroups, work);
  }

  /**
   * Sets the times.
   *
   * @param newTimes how long a joint takes
   * @return the new options
   */
  public PlanOptions with(JoinTimes newTimes) {
    return new PlanOptions(objective, limits, newTimes, teams, closingJoint, firstGroups, work);
  }

  /**
   * Sets the teams.
   *
   * @param count 1 to {@link #MOST_TEAMS}
   * @return the new options
   */
  public PlanOptions withTeams(int count) {
    return new PlanOptions(objective, limits, times, count, closingJoint, firstGroups, work);
  }

  /**
   * Fixes the joint that closes the ring.
   *
   * @param joint its number, from 1
   * @return the new options
   */
  public PlanOptions closingAt(int joint) {
    return new PlanOptions(objective, limits, times, teams, Optional.of(joint), firstGroups, work);
  }

  /**
   * Fixes groups to be joined first.
   *
   * @param groups runs of neighbouring pieces
   * @return the new options
   */
  public PlanOptions keeping(List<Arc> groups) {
    return new PlanOptions(objective, limits, times, teams, closingJoint, groups, work);
  }

  /**
   * Sets how long the exact search for elapsed time may go on.
   *
   * @param nodes nodes to visit, 0 or more
   * @return the new options
   * @throws IllegalArgumentException if the number is negative
   */
  public PlanOptions searching(long nodes) {
    return searching(Work.of(Budget.ofWork(nodes), 0));
  }

  /**
   * Sets the terms of the exact search for elapsed time.
   *
   * @param terms nodes to visit as work units, time, and the switch that stops it with its best
   * @return the new options
   */
  public PlanOptions searching(Work terms) {
    return new PlanOptions(objective, limits, times, teams, closingJoint, firstGroups, terms);
  }

  /** Leaves the closing joint open. */
  PlanOptions closingAnywhere() {
    return new PlanOptions(objective, limits, times, teams, Optional.empty(), firstGroups, work);
  }
}
