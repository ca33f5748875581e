package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Net free area of vents against damp, by the attic rule: 1/150 of the floor, or 1/300 where 40 to
 * 50 % of the area is high and the rest low. It is a rule for damp, not for stoves or people's
 * breath: no published area was found for a fabric shelter with a stove.
 *
 * @param floorSquareMetres floor area, in square metres, greater than 0
 * @param highSquareMetres net free area near the top, in square metres, 0 or more
 * @param lowSquareMetres net free area near the ground, in square metres, 0 or more
 */
public record Ventilation(
    double floorSquareMetres, double highSquareMetres, double lowSquareMetres) {

  /** Part of the floor asked for where high and low vents do not balance: 1/150. */
  public static final double UNBALANCED_PART = 150;

  /** Part of the floor asked for where high and low vents balance: 1/300. */
  public static final double BALANCED_PART = 300;

  private static final double HAIR = 1e-9;
  private static final Source ATTIC =
      Source.found(
          "International Code Council",
          "International Residential Code",
          "",
          "R806: 1/150 of the floor, or 1/300 with 40 to 50 % high and the rest low");
  private static final Source CARBON_MONOXIDE =
      Source.found("", "Camping safety, carbon monoxide", "", "no burning thing in a tent");
  private static final Source FLAME =
      Source.found(
          "Minnesota State Fire Marshal",
          "Heating temporary tents",
          "",
          "no open flame inside or within 20 ft; heaters 10 ft from exits and what burns");

  public Ventilation {
    Args.positive("floor area", floorSquareMetres, "m2");
    Args.notNegative("high vents", highSquareMetres, "m2");
    Args.notNegative("low vents", lowSquareMetres, "m2");
  }

  /**
   * Compares vents with the rule.
   *
   * @param floorSquareMetres floor area, in square metres, greater than 0
   * @param highSquareMetres net free area near the top, in square metres, 0 or more
   * @param lowSquareMetres net free area near the ground, in square metres, 0 or more
   * @return the comparison
   * @throws IllegalArgumentException if an area is out of range
   */
  public static Ventilation of(
      double floorSquareMetres, double highSquareMetres, double lowSquareMetres) {
    return new Ventilation(floorSquareMetres, highSquareMetres, lowSquareMetres);
  }

  /**
   * Counts the openings of a cover: an opening at the top is high air unless a cap closes it, vents
   * are high or low by where their middle stands, and a door counts only as what it is, an opening
   * that is shut in rain, so it is left out.
   *
   * @param floorSquareMetres floor area, in square metres, greater than 0
   * @param topSquareMetres opening at the top, in square metres, 0 or more
   * @param capped whether a cap closes the top
   * @param vents the vents
   * @param heightMetres height of the frame that stands, in metres, greater than 0
   * @return the comparison
   * @throws IllegalArgumentException if an area is out of range
   */
  public static Ventilation ofCover(
      double floorSquareMetres,
      double topSquareMetres,
      boolean capped,
      List<Vent> vents,
      double heightMetres) {
    Args.positive("height of the frame", heightMetres, "m");
    double high = capped ? 0 : topSquareMetres;
    double low = 0;
    for (Vent vent : vents) {
      if (vent.heightMetres() > heightMetres / 2) {
        high += vent.squareMetres();
      } else {
        low += vent.squareMetres();
      }
    }
    return new Ventilation(floorSquareMetres, high, low);
  }

  /**
   * A vent that stays open.
   *
   * @param squareMetres its net free area, in square metres, 0 or more
   * @param heightMetres height of its middle over the ground, in metres, 0 or more
   */
  public record Vent(double squareMetres, double heightMetres) {

    public Vent {
      Args.notNegative("area of the vent", squareMetres, "m2");
      Args.notNegative("height of the vent", heightMetres, "m");
    }
  }

  /**
   * Gives the area of all vents together, high and low.
   *
   * @return net free area, in square metres
   */
  public double presentSquareMetres() {
    return highSquareMetres + lowSquareMetres;
  }

  /**
   * Computes the net area behind a mesh.
   *
   * @param grossSquareMetres area of the hole, in square metres, 0 or more
   * @param openRatio open part of the mesh as its maker states, 0 to 1
   * @return in square metres
   * @throws IllegalArgumentException if a number is out of range
   */
  public static double behindMesh(double grossSquareMetres, double openRatio) {
    Args.notNegative("area of the hole", grossSquareMetres, "m2");
    return grossSquareMetres * Args.within("open part of the mesh", openRatio, 0, 1, "");
  }

  /**
   * Tells whether high and low vents balance, so that the smaller area is asked for.
   *
   * @return true if 40 to 50 % of the area is high
   */
  public boolean balanced() {
    double sum = highSquareMetres + lowSquareMetres;
    double high = highSquareMetres / sum;
    return sum > 0 && high >= 0.4 - HAIR && high <= 0.5 + HAIR;
  }

  /**
   * Computes the area asked for.
   *
   * @return net free area, in square metres
   */
  public double neededSquareMetres() {
    return neededSquareMetres(Steps.none());
  }

  /**
   * Computes the area asked for with the steps.
   *
   * @param steps where the steps go
   * @return net free area, in square metres
   */
  @Calculation("assembly.anchor.vents")
  public double neededSquareMetres(Steps steps) {
    double part = balanced() ? BALANCED_PART : UNBALANCED_PART;
    return steps
        .step("A_v", "net free area of vents")
        .formula("A_f / k")
        .with("A_f", floorSquareMetres, "m2")
        .with("k", part, "")
        .from(ATTIC)
        .note(balanced() ? "high and low vents balance" : "high and low vents do not balance")
        .gives(floorSquareMetres / part, "m2");
  }

  /**
   * Tells whether the vents have the area asked for against damp.
   *
   * @return true if they have
   */
  public boolean enough() {
    return presentSquareMetres() >= neededSquareMetres() * (1 - HAIR);
  }

  /**
   * Gives the cautions that go with vents.
   *
   * @return carbon monoxide and fire
   */
  public List<Caution> cautions() {
    return List.of(
        Caution.of(
            Hazard.CARBON_MONOXIDE,
            "Anything that burns under a cover gives off carbon monoxide, which is not smelled; a"
                + " barbecue that looks dead still does. This area is a rule against damp and says"
                + " nothing about stoves.",
            "Burn nothing inside that has no flue; fit a flue and an air inlet by its maker's"
                + " figures and local rules, and do not rely on an alarm alone. Mesh counts only"
                + " with its net area.",
            CARBON_MONOXIDE),
        Caution.of(
            Hazard.FIRE,
            "Coated cloth burns or melts, and a flame-retardant finish resists a small flame only.",
            "No open flame inside or within 6 m, heaters at least 3 m from exits and from what"
                + " burns, gas bottles outside, a way out kept clear.",
            FLAME));
  }
}
