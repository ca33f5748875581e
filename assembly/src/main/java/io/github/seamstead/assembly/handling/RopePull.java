package io.github.seamstead.assembly.handling;

import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Pull on ropes that run over the apex: to raise {@code F e^(mu beta)}, to hold {@code F e^(-mu
 * beta)}. The radius of the edge does not matter.
 *
 * @param load load of all ropes together, in newtons, greater than 0, at most 1e6
 * @param friction friction coefficient at the edge, 0 to 1
 * @param wrap angle through which a rope is turned, in radians, 0 to ten turns
 * @param ropes ropes that share the load, 1 to 20
 * @param pullPerPerson steady pull of one person, in newtons, 1 to 1000
 */
public record RopePull(double load, double friction, double wrap, int ropes, double pullPerPerson) {

  /** Steady level pull of one person: 60 lb, 267 N. */
  public static final double ONE_PERSON = 60 * 4.4482216152605;

  /** Friction of rope over a flat timber edge, measured: 0.37. */
  public static final double TIMBER_EDGE = 0.37;

  /** Friction of rope over a round metal bar, measured 0.14 to 0.25: the greatest. */
  public static final double METAL_BAR = 0.25;

  /** Least friction of rope over a round metal bar, measured: it decides what must be held. */
  public static final double METAL_BAR_LEAST = 0.14;

  /** Friction of coated cloth drawn over poles, if none was measured: 0.5, common practice. */
  public static final double CLOTH_ON_POLES = 0.5;

  /** Ropes that draw a cover up, so that it comes up straight: 2, common practice. */
  public static final int USUAL_ROPES = 2;

  private static final Source CAPSTAN = Source.derived("capstan equation of Euler and Eytelwein");
  private static final Source PULLING =
      Source.found(
          "US Army", "Field manual, as reproduced", "", "average level pull of a man 60 lb");
  private static final Source EDGES =
      Source.found(
          "Delaney", "Physics for Roping Technicians", "2022", "p. 88, edges by raise and lower");

  public RopePull {
    Args.positive("load of the ropes", load, "N");
    Args.within("load of the ropes", load, 0, 1e6, "N");
    Args.within("friction at the edge", friction, 0, 1, "");
    Args.within("turn of the rope", Math.toDegrees(wrap), 0, 3600, "deg");
    Args.within("pull of one person", pullPerPerson, 1, 1000, "N");
    Args.require(
        load * StrictMath.exp(friction * wrap) <= 1e9 * pullPerPerson,
        "pull that raises: given a friction of "
            + Numbers.plain(friction)
            + " over "
            + Numbers.plain(wrap)
            + " rad, no crew can raise this load");
    Args.within("ropes", ropes, 1, 20);
  }

  /**
   * Reckons a mass that hangs free, on one rope: the cautious case.
   *
   * @param mass the mass, in kilograms, greater than 0
   * @param friction friction coefficient at the edge, 0 to 1
   * @param wrap angle through which the rope is turned, in radians
   * @param pullPerPerson steady pull of one person, in newtons, such as {@link #ONE_PERSON}
   * @return the pull
   * @throws IllegalArgumentException if a number is out of range
   */
  public static RopePull of(double mass, double friction, double wrap, double pullPerPerson) {
    Args.positive("mass to raise", mass, "kg");
    return new RopePull(mass * STANDARD_GRAVITY, friction, wrap, 1, pullPerPerson);
  }

  /**
   * Computes the load of a cover that is drawn up the frame: {@code m g (sin a + mu cos a)}.
   *
   * @param mass mass of the cover, in kilograms, greater than 0
   * @param slope slope of the frame, in radians, 0 to a right angle
   * @param clothFriction friction of cloth on the poles, 0 to 2
   * @return in newtons
   * @throws IllegalArgumentException if a number is out of range
   */
  public static double drawnUp(double mass, double slope, double clothFriction) {
    Args.positive("mass to raise", mass, "kg");
    Args.within("slope of the frame", Math.toDegrees(slope), 0, 90, "deg");
    Args.within("friction of cloth on the poles", clothFriction, 0, 2, "");
    return mass
        * STANDARD_GRAVITY
        * (StrictMath.sin(slope) + clothFriction * StrictMath.cos(slope));
  }

  /**
   * Computes the angle through which a rope is turned at the apex: the sum of both falls below the
   * level. A rope that hangs straight down on both sides turns by a half turn.
   *
   * @param loadSide how steeply the rope falls on the load's side, in radians, 0 to a right angle
   * @param haulSide how steeply it falls on the crew's side, in radians, 0 to a right angle
   * @return in radians
   * @throws IllegalArgumentException if an angle is out of range
   */
  public static double wrap(double loadSide, double haulSide) {
    Args.within("fall of the rope at the load", Math.toDegrees(loadSide), 0, 90, "deg");
    Args.within("fall of the rope at the crew", Math.toDegrees(haulSide), 0, 90, "deg");
    return loadSide + haulSide;
  }

  /**
   * Computes friction from a trial: the same load raised and lowered over the same edge.
   *
   * @param raisePull pull that just raises it, in newtons, greater than 0
   * @param lowerPull pull that just lets it down, in newtons, greater than 0, at most the other
   * @param wrap angle through which the rope is turned, in radians, greater than 0
   * @return {@code ln(raise / lower) / (2 beta)}
   * @throws IllegalArgumentException if a number is out of range
   */
  public static double friction(double raisePull, double lowerPull, double wrap) {
    Args.positive("pull that raises", raisePull, "N");
    Args.positive("pull that lowers", lowerPull, "N");
    Args.within("pull that lowers", lowerPull, 0, raisePull, "N");
    Args.positive("turn of the rope", wrap, "rad");
    return StrictMath.log(raisePull / lowerPull) / (2 * wrap);
  }

  /**
   * Computes the pull that raises the load, of all ropes together.
   *
   * @return in newtons
   */
  public double raisePull() {
    return load * StrictMath.exp(friction * wrap);
  }

  /**
   * Computes the pull that just holds the load, of all ropes together.
   *
   * @return in newtons
   */
  public double hold() {
    return load * StrictMath.exp(-friction * wrap);
  }

  /**
   * Computes the pull that holds the load where the edge is as slippery as it may be.
   *
   * @param leastFriction least friction at the edge, 0 to {@link #friction()}
   * @return of all ropes together, in newtons
   * @throws IllegalArgumentException if the friction is out of range
   */
  public double hold(double leastFriction) {
    Args.within("least friction at the edge", leastFriction, 0, friction, "");
    return load * StrictMath.exp(-leastFriction * wrap);
  }

  /**
   * Computes the pull on one rope while raising.
   *
   * @return in newtons
   */
  public double ropePull() {
    return raisePull() / ropes;
  }

  /**
   * Computes what the apex carries while the cover is raised: load and pull together, in the line
   * that halves the rope's angle.
   *
   * @return in newtons
   */
  public double apexPull() {
    return apexPull(Steps.none());
  }

  /**
   * Computes what the apex carries while the cover is raised, with the steps: {@code sqrt(F^2 +
   * F_r^2 - 2 F F_r cos(beta))}.
   *
   * @param steps where the steps go
   * @return in newtons
   */
  @Calculation("assembly.handling.apex")
  public double apexPull(Steps steps) {
    double raise =
        steps
            .step("F_raise", "pull that raises")
            .formula("F * exp(mu * beta)")
            .with("F", load, "N")
            .with("mu", friction, "")
            .with("beta", wrap, "rad")
            .from(CAPSTAN)
            .gives(raisePull(), "N");
    double apex =
        Math.sqrt(
            Math.max(0, load * load + raise * raise - 2 * load * raise * StrictMath.cos(wrap)));
    return steps
        .step("F_apex", "force on the apex")
        .formula("sqrt(max(0, F^2 + F_raise^2 - 2 * F * F_raise * cos(beta)))")
        .with("F", load, "N")
        .with("F_raise", raise, "N")
        .with("beta", wrap, "rad")
        .from(Source.derived("sum of the two pulls of the rope"))
        .gives(apex, "N");
  }

  /**
   * Computes the people who pull, all ropes together.
   *
   * @return at least one for each rope
   */
  public int people() {
    return (int) people(Steps.none());
  }

  /**
   * Computes the people who pull, all ropes together, with the steps.
   *
   * @param steps where the steps go
   * @return at least one for each rope, a whole number
   */
  @Calculation("assembly.handling.pull")
  public double people(Steps steps) {
    steps
        .step("F_hold", "pull that holds")
        .formula("F * exp(-mu * beta)")
        .with("F", load, "N")
        .with("mu", friction, "")
        .with("beta", wrap, "rad")
        .from(CAPSTAN)
        .gives(hold(), "N");
    double raise =
        steps
            .step("F_raise", "pull that raises")
            .formula("F * exp(mu * beta)")
            .with("F", load, "N")
            .with("mu", friction, "")
            .with("beta", wrap, "rad")
            .from(CAPSTAN)
            .gives(raisePull(), "N");
    return steps
        .step("N", "people who pull")
        .formula("N_r * max(1, ceil(F_raise / (N_r * F_1) - 0.000001))")
        .with("N_r", ropes, "")
        .with("F_raise", raise, "N")
        .with("F_1", pullPerPerson, "N")
        .from(PULLING)
        .gives(ropes * Math.max(1, Math.ceil(raise / (ropes * pullPerPerson) - 0.000001)), "");
  }

  /**
   * Gives the cautions that go with a pull.
   *
   * @return edge, drop and hold
   */
  public List<Caution> cautions() {
    return List.of(
        Caution.of(
            Hazard.HEIGHT,
            "What is raised can fall, and a rope that breaks or slips whips along its line. The"
                + " apex carries both sides of the rope at once; a half turn over timber asks for"
                + " more than twice the load and wears the cloth.",
            "Nobody under the load or in the rope's line; make fast before anyone lets go. Roll or"
                + " pad the edge; ask whether the top may carry load and pull together.",
            EDGES),
        Caution.of(
            Hazard.LIFTING,
            "People tire and do not pull together.",
            "One person on firm ground pulls about 60 lb (27 kg) steadily. One calls the pull; one"
                + " does nothing but watch.",
            PULLING));
  }
}
