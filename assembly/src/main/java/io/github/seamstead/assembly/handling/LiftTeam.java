package io.github.seamstead.assembly.handling;

import io.github.seamstead.assembly.merge.TeamLift;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Optional;

/**
 * How many people lift a load. The team rule is {@link TeamLift}'s: two thirds of the sum for two,
 * half for three; the rival is 0.85 for two; the lower is used.
 *
 * @param loadMass the load, in kilograms, greater than 0
 * @param limit what one person may lift
 * @param onePersonMass what one person is asked to lift at most, in kilograms: the limit, or less
 * @param team the least team that may lift it, or nothing if four people may not
 */
public record LiftTeam(
    double loadMass, LiftLimit limit, double onePersonMass, Optional<TeamLift> team) {

  /**
   * Finds the least team.
   *
   * @param loadMass the load, in kilograms, greater than 0
   * @param limit what one person may lift
   * @return the team
   * @throws IllegalArgumentException if the load is not positive
   */
  public static LiftTeam of(double loadMass, LiftLimit limit) {
    return of(loadMass, limit, limit.mass());
  }

  /**
   * Finds the least team that also keeps to a limit of the crew's own; the lower of both counts.
   *
   * @param loadMass the load, in kilograms, greater than 0
   * @param limit what one person may lift
   * @param statedMass what the crew lets one person lift, in kilograms, 0 or more
   * @return the team
   * @throws IllegalArgumentException if the load is not positive
   */
  public static LiftTeam of(double loadMass, LiftLimit limit, double statedMass) {
    Args.positive("load", loadMass, "kg");
    Args.notNegative("lift of one person", statedMass, "kg");
    double one = Math.min(limit.mass(), statedMass);
    Optional<Integer> people = one > 0 ? TeamLift.peopleFor(loadMass, one) : Optional.empty();
    return new LiftTeam(
        loadMass,
        limit,
        one,
        people.isPresent() ? Optional.of(TeamLift.of(people.get(), one)) : Optional.empty());
  }

  /**
   * Computes load over the limit of one person.
   *
   * @return the lifting index, or nothing if the task is outside the method
   */
  public Optional<Double> liftingIndex() {
    double one = limit.mass();
    return one > 0 ? Optional.of(loadMass / one) : Optional.empty();
  }

  /**
   * Writes the outcome.
   *
   * @return load, limit, people and rule, or what to do instead
   */
  public String text() {
    String load = Numbers.significant(loadMass, 3) + " kg";
    if (!limit.outside().isEmpty()) {
      return load
          + ": this lift is outside the method ("
          + String.join("; ", limit.outside())
          + "); change the lift or use a hoist.";
    }
    String one = Numbers.significant(onePersonMass, 3) + " kg for one person";
    return team.map(
            t ->
                load
                    + ": "
                    + t.people()
                    + (t.people() == 1 ? " person" : " people")
                    + " (limit "
                    + one
                    + "; together "
                    + Numbers.significant(t.capacity(), 3)
                    + " kg by "
                    + t.rule()
                    + ", "
                    + Numbers.significant(t.rivalCapacity(), 3)
                    + " kg by "
                    + t.rivalRule()
                    + ").")
        .orElse(
            load
                + ": too much for four people by this rule (limit "
                + one
                + "); drag it on a sheet, split the group or use a hoist.");
  }

  /**
   * Gives the cautions that go with a team.
   *
   * @return lifting alone and together
   */
  public List<Caution> cautions() {
    return team.map(t -> List.of(limit.caution(), t.caution())).orElse(List.of(limit.caution()));
  }
}
