package io.github.seamstead.assembly.merge;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import java.util.Optional;

/**
 * What a team may carry, where printed rules disagree.
 *
 * <p>The rule used is the British one: two people carry two thirds, three people half of the sum of
 * what each may carry alone; for four no figure is printed and half is kept; more than four are
 * unlikely to work together and are refused. The rival shown is EN 1005-2's multiplier of 0.85 for
 * two people; for three and four its rival is the plain sum. Two people of 23 kg carry 30.7 kg by
 * the first and 39.1 kg by the second: the lower is used.
 *
 * @param people 1 to {@link #MOST_PEOPLE}
 * @param massPerPerson what each may carry alone, in kilograms
 * @param capacity what they may carry together by the rule used, in kilograms
 * @param rule the rule used, in words
 * @param rivalCapacity by the rival rule, in kilograms
 * @param rivalRule the rival rule, in words
 */
public record TeamLift(
    int people,
    double massPerPerson,
    double capacity,
    String rule,
    double rivalCapacity,
    String rivalRule) {

  /** The most people of one carry. */
  public static final int MOST_PEOPLE = 4;

  /**
   * Computes what people may carry together.
   *
   * @param people 1 to {@link #MOST_PEOPLE}
   * @param massPerPerson what each may carry alone, in kilograms, greater than 0
   * @return both rules
   * @throws IllegalArgumentException if a number is out of range
   */
  public static TeamLift of(int people, double massPerPerson) {
    Args.within("people of one carry", people, 1, MOST_PEOPLE);
    Args.positive("mass per person", massPerPerson, "kg");
    double factor = people == 1 ? 1 : people == 2 ? 2.0 / 3 : 0.5;
    double rival = people == 2 ? 0.85 : 1;
    return new TeamLift(
        people,
        massPerPerson,
        factor * people * massPerPerson,
        people == 1
            ? "one person"
            : people == 2 ? "two thirds of the sum of two" : "half of the sum of " + people,
        rival * people * massPerPerson,
        people == 2 ? "EN 1005-2: 0.85 for two persons" : "plain sum");
  }

  /**
   * Computes what one team of a crew may carry. The crew is shared out evenly; who is left over
   * holds the tool, and more than four do not lift together.
   *
   * @param people people of the crew, 1 or more
   * @param teams teams that join at once, 1 or more
   * @param massPerPerson what each may carry alone, in kilograms, greater than 0
   * @return the lift of one team
   * @throws IllegalArgumentException if a number is out of range
   */
  public static TeamLift ofCrew(int people, int teams, double massPerPerson) {
    Args.within("people of the crew", people, 1, 10_000);
    Args.within("teams of the crew", teams, 1, people);
    return of(Math.min(MOST_PEOPLE, people / teams), massPerPerson);
  }

  /**
   * Finds the fewest hands for a load: the least team that may carry it.
   *
   * @param loadMass the load, in kilograms, 0 or more
   * @param massPerPerson what each may carry alone, in kilograms, greater than 0
   * @return 1 to {@link #MOST_PEOPLE} people, or nothing if even these may not
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Optional<Integer> peopleFor(double loadMass, double massPerPerson) {
    Args.notNegative("load", loadMass, "kg");
    for (int people = 1; people <= MOST_PEOPLE; people++) {
      if (of(people, massPerPerson).capacity() >= loadMass * (1 - 1e-12)) {
        return Optional.of(people);
      }
    }
    return Optional.empty();
  }

  /**
   * Computes the capacity with its steps.
   *
   * @param steps where the steps go
   * @return {@link #capacity()}, in kilograms
   */
  @Calculation("assembly.merge.teamlift")
  public double capacity(Steps steps) {
    double rival = people == 2 ? 0.85 : 1;
    steps
        .step("m_rival", "capacity by the rival rule, for comparison: " + rivalRule)
        .formula("f_rival * n * m_1")
        .with("f_rival", rival, "")
        .with("n", people, "")
        .with("m_1", massPerPerson, "kg")
        .from(MergeSources.TEAM_EN)
        .gives(rivalCapacity, "kg");
    return steps
        .step("m_team", "what the team may carry: " + rule)
        .formula("f * n * m_1")
        .with("f", people == 1 ? 1 : people == 2 ? 2.0 / 3 : 0.5, "")
        .with("n", people, "")
        .with("m_1", massPerPerson, "kg")
        .from(MergeSources.TEAM_UK)
        .gives(capacity, "kg");
  }

  /**
   * Gives the limits that follow.
   *
   * @return limits on the carried mass alone
   */
  public Limits limits() {
    return Limits.NONE.withCarriedMass(capacity);
  }

  /**
   * Gives the caution that goes with a carry.
   *
   * @return sagging loads, coupling and numbers of people
   */
  public Caution caution() {
    return Caution.of(
        Hazard.LIFTING,
        "Folded cloth sags and gives a poor grip; a team does not share its load evenly.",
        "Loads over about 25 kg, or sagging loads of any mass, are a job for a team or a hoist;"
            + " more than four people are unlikely to lift well together.",
        MergeSources.TEAM_UK);
  }
}
