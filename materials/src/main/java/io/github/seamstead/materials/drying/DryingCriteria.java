package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * The states that a drying layer reaches, each at a mean moisture of its own. A moisture does not
 * depend on how wet the layer was laid or on the air.
 *
 * @param states in the order in which they are reached; the last is dry to coat; at least one, each
 *     at most as moist as the one before
 */
public record DryingCriteria(List<State> states) {

  /** Plastic limit of a sandy floor mix where no test of the mix is stated (common practice). */
  public static final double SANDY_MIX_PLASTIC_LIMIT = 0.14;

  /**
   * Humidity of the air under a sealed box on a floor that counts as dry: a floor screed is covered
   * at 75 %.
   */
  public static final double DRY_HUMIDITY = 0.75;

  /** Source of {@link #DRY_HUMIDITY}. */
  public static final Source DRY_SOURCE =
      Source.found(
          "", "Screed drying times, a tiler's guide", "2014", "75 % under a sealed hygrometer");

  /** A rammed lift is walked on at once and takes the next lift damp, the day after at latest. */
  public static final Source RAMMED_SOURCE =
      Source.found("", "Builder's diary of a tamped floor", "", "second lift the day after, damp");

  /**
   * One state.
   *
   * @param name in the crew's words; not blank
   * @param moisture mean moisture, water over dry mass, that counts as reached, more than 0; at
   *     most 0.8
   */
  public record State(String name, double moisture) {

    public State {
      Args.notBlank("state", name);
      Args.positive(name + " moisture", moisture, "");
      Args.within(name + " moisture", moisture, 0, 0.8, "");
    }
  }

  public DryingCriteria {
    states = Args.notEmpty("states", states);
    for (int i = 1; i < states.size(); i++) {
      double before = states.get(i - 1).moisture();
      Args.within(states.get(i).name() + " moisture", states.get(i).moisture(), 0, before, "");
    }
  }

  /**
   * Makes the states of a coat laid wet: firm at the plastic limit, walkable on a board at half of
   * it (common practice), and dry to oil or to coat when air sealed in over it stays at 75 %.
   *
   * @param plasticLimit of the mix, water over dry mass, such as 0.14
   * @param earth which tells the moisture in balance with that air
   * @return the states
   * @throws IllegalArgumentException if the limit is not above twice the dry moisture or above 0.6
   */
  public static DryingCriteria wetLaid(double plasticLimit, EarthMoisture earth) {
    double dry = dryMoisture(earth);
    Args.within("plastic limit", plasticLimit, 2 * dry, 0.6, "");
    return new DryingCriteria(
        List.of(
            new State("firm", plasticLimit),
            new State("walkable", plasticLimit / 2),
            new State("dry to coat", dry)));
  }

  /**
   * Makes the states of a semi-dry pack, which stands by ramming and not by drying: it is walked on
   * and takes its coat damp as soon as it is rammed; dry through it counts as a coat does.
   *
   * @param placed moisture with which it was rammed, water over dry mass
   * @param earth which tells the moisture in balance with air of 75 %
   * @return the states
   * @throws IllegalArgumentException if the moisture is out of range
   */
  public static DryingCriteria rammed(double placed, EarthMoisture earth) {
    double dry = Math.min(placed, dryMoisture(earth));
    // A mean over cells may stand a trace above what went into each of them.
    double atOnce = placed * (1 + 1e-9);
    return new DryingCriteria(
        List.of(
            new State("walkable, as rammed", atOnce),
            new State("takes the coat, damp", atOnce),
            new State("dry through if left open", dry)));
  }

  /**
   * Gives the moisture that counts as dry.
   *
   * @param earth how it holds moisture against the air
   * @return in balance with air of {@link #DRY_HUMIDITY}, water over dry mass
   */
  public static double dryMoisture(EarthMoisture earth) {
    return earth.equilibriumMoisture(DRY_HUMIDITY);
  }

  /**
   * Gives the moisture of the last state.
   *
   * @return water over dry mass
   */
  public double driest() {
    return states.get(states.size() - 1).moisture();
  }
}
