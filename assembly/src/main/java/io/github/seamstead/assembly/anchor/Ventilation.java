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
 * @param floorArea floor area, in square metres, greater than 0
 * @param highArea net free area near the top, in square metres, 0 or more
 * @param lowArea net free area near the ground, in square metres, 0 or more
 */
public record Ventilation(double floorArea, double highArea, double lowArea) {

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
    Args.positive("floor area", floorArea, "m2");
    Args.notNegative("high vents", highArea, "m2");
    Args.notNegative("low vents", lowArea, "m2");
  }

  /**
   * Compares vents with the rule.
   *
   * @param floorArea floor area, in square metres, greater than 0
   * @param highArea net free area near the top, in square metres, 0 or more
   * @param lowArea net free area near the ground, in square metres, 0 or more
   * @return the comparison
   * @throws IllegalArgumentException if an area is out of range
   */
  public static Ventilation of(double floorArea, double highArea, double lowArea) {
    return new Ventilation(floorArea, highArea, lowArea);
  }

  /**
   * Counts the openings of a cover: an opening at the top is high air unless a cap closes it, vents
   * are high or low by where their middle stands, and a door counts only as what it is, an opening
   * that is shut in rain, so it is left out.
   *
   * @param floorArea floor area, in square metres, greater than 0
   * @param topArea opening at the top, in square metres, 0 or more
   * @param capped whether a cap closes the top
   * @param vents the vents
   * @param height height of the frame that stands, in metres, greater than 0
   * @return the comparison
   * @throws IllegalArgumentException if an area is out of range
   */
  public static Ventilation ofCover(
      double floorArea, double topArea, boolean capped, List<Vent> vents, double height) {
    Args.positive("height of the frame", height, "m");
    double high = capped ? 0 : topArea;
    double low = 0;
    for (Vent vent : vents) {
      if (vent.height() > height / 2) {
        high += vent.area();
      } else {
        low += vent.area();
      }
    }
    return new Ventilation(floorArea, high, low);
  }

  /**
   * A vent that stays open.
   *
   * @param area its net free area, in square metres, 0 or more
   * @param height height of its middle over the ground, in metres, 0 or more
   */
  public record Vent(double area, double height) {

    public Vent {
      Args.notNegative("area of the vent", area, "m2");
      Args.notNegative("height of the vent", height, "m");
    }
  }

  /**
   * Gives the area of all vents together, high and low.
   *
   * @return net free area, in square metres
   */
  public double presentArea() {
    return highArea + lowArea;
  }

  /**
   * Computes the net area behind a mesh.
   *
   * @param grossArea area of the hole, in square metres, 0 or more
   * @param openRatio open part of the mesh as its maker states, 0 to 1
   * @return in square metres
   * @throws IllegalArgumentException if a number is out of range
   */
  public static double behindMesh(double grossArea, double openRatio) {
    Args.notNegative("area of the hole", grossArea, "m2");
    return grossArea * Args.within("open part of the mesh", openRatio, 0, 1, "");
  }

  /**
   * Tells whether high and low vents balance, so that the smaller area is asked for.
   *
   * @return true if 40 to 50 % of the area is high
   */
  public boolean balanced() {
    double sum = highArea + lowArea;
    double high = highArea / sum;
    return sum > 0 && high >= 0.4 - HAIR && high <= 0.5 + HAIR;
  }

  /**
   * Computes the area asked for.
   *
   * @return net free area, in square metres
   */
  public double neededArea() {
    return neededArea(Steps.none());
  }

  /**
   * Computes the area asked for with the steps.
   *
   * @param steps where the steps go
   * @return net free area, in square metres
   */
  @Calculation("assembly.anchor.vents")
  public double neededArea(Steps steps) {
    double part = balanced() ? BALANCED_PART : UNBALANCED_PART;
    return steps
        .step("A_v", "net free area of vents")
        .formula("A_f / k")
        .with("A_f", floorArea, "m2")
        .with("k", part, "")
        .from(ATTIC)
        .note(balanced() ? "high and low vents balance" : "high and low vents do not balance")
        .gives(floorArea / part, "m2");
  }

  /**
   * Tells whether the vents have the area asked for against damp.
   *
   * @return true if they have
   */
  public boolean enough() {
    return presentArea() >= neededArea() * (1 - HAIR);
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
                + " nothing about stoves; mesh counts only with its net area.",
            "Burn nothing inside that has no flue, no barbecue either; fit flue and air inlet by"
                + " the maker's figures and local rules. Do not rely on an alarm alone.",
            CARBON_MONOXIDE),
        Caution.of(
            Hazard.FIRE,
            "Coated cloth burns or melts, and a flame-retardant finish resists a small flame only.",
            "No open flame inside or within 6 m; heaters at least 3 m from exits and from what"
                + " burns; gas bottles outside; a way out kept clear.",
            FLAME));
  }
}
