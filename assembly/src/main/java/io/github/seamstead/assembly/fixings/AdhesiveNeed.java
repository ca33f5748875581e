package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/**
 * Adhesive or sealant of all joints, in whole cartridges.
 *
 * <p>Waste is read as the trade page does: usable yield = yield / (1 + waste). The rival reading
 * takes the waste as a part of each cartridge, yield (1 - waste), and may need one more.
 *
 * @param bead the bead
 * @param beads beads side by side in a joint, 1 to {@link #MOST_BEADS}
 * @param jointLength length of each joint, in metres, each greater than 0; at least one
 * @param cartridgeVolume content of a cartridge, in cubic metres, greater than 0
 * @param waste waste and spare as a part of the need, 0 or more and less than 1
 */
public record AdhesiveNeed(
    Bead bead, int beads, List<Double> jointLength, double cartridgeVolume, double waste) {

  /** The most beads side by side in one joint. */
  public static final int MOST_BEADS = 20;

  private static final Source WASTE = Bead.SECTIONS.at("usable yield = yield / (1 + waste)");

  public AdhesiveNeed {
    Args.within("beads of a joint", beads, 1, MOST_BEADS);
    jointLength = Args.notEmpty("joints", jointLength);
    jointLength.forEach(length -> Args.positive("joint length", length, "m"));
    Args.positive("cartridge", cartridgeVolume, "m3");
    Args.require(
        waste >= 0 && waste < 1,
        "waste of adhesive",
        Numbers.plain(waste),
        "must be 0 or more and less than 1");
    double most =
        beads
            * jointLength.stream().mapToDouble(Double::doubleValue).sum()
            * bead.area()
            / cartridgeVolume
            / (1 - waste);
    Args.require(
        most <= 1e9,
        "cartridges of adhesive",
        Numbers.plain(cartridgeVolume) + " m3 each, over 1e9 would be needed",
        "must be at most that");
  }

  /**
   * Reckons the adhesive of all joints.
   *
   * @param bead the bead
   * @param jointLength length of each joint, in metres, each greater than 0, at least one
   * @param beads beads side by side in a joint, 1 to {@link #MOST_BEADS}
   * @param cartridgeVolume content of a cartridge, in cubic metres, greater than 0
   * @param waste waste and spare as a part of the need, 0 or more and less than 1
   * @return the need
   * @throws IllegalArgumentException if a number is out of range
   */
  public static AdhesiveNeed of(
      Bead bead, List<Double> jointLength, int beads, double cartridgeVolume, double waste) {
    return new AdhesiveNeed(bead, beads, jointLength, cartridgeVolume, waste);
  }

  /**
   * Computes the length of all beads.
   *
   * @return in metres
   */
  public double seamLength() {
    return beads * jointLength.stream().mapToDouble(Double::doubleValue).sum();
  }

  /**
   * Computes the volume in place.
   *
   * @return in cubic metres, without waste
   */
  public double volume() {
    return seamLength() * bead.area();
  }

  /**
   * Computes the cartridges.
   *
   * @return 1 or more
   */
  public int cartridges() {
    return (int) cartridges(Steps.none());
  }

  /**
   * Computes the cartridges with the steps.
   *
   * @param steps where the steps go
   * @return 1 or more, a whole number
   */
  @Calculation("assembly.fixings.adhesive")
  public double cartridges(Steps steps) {
    double section = bead.area(steps);
    double length = seamLength();
    double yield =
        steps
            .step("y", "length from a cartridge, waste taken off")
            .formula("V_c / A / (1 + w_a)")
            .with("V_c", cartridgeVolume, "m3")
            .with("A", section, "m2")
            .with("w_a", waste, "")
            .from(WASTE)
            .gives(cartridgeVolume / section / (1 + waste), "m");
    return steps
        .step("C", "cartridges")
        .formula("max(1, ceil(L_b / y - 0.000001))")
        .with("L_b", length, "m")
        .with("y", yield, "m")
        .from(Source.derived("whole cartridges"))
        .note("L_b is the length of all beads")
        .gives(Math.max(1, Math.ceil(length / yield - 0.000001)), "");
  }

  /**
   * Computes the cartridges by the rival reading of waste, for comparison.
   *
   * @return 1 or more
   */
  public int rivalCartridges() {
    double yield = bead.lengthPerCartridge(cartridgeVolume) * (1 - waste);
    return (int) Math.max(1, Math.ceil(seamLength() / yield - 0.000001));
  }

  /**
   * Names the rival reading of waste.
   *
   * @return in words
   */
  public String rivalRule() {
    return "waste as a part of each cartridge: yield times (1 - waste)";
  }

  /**
   * Gives the line of the shopping list.
   *
   * @return cartridges
   */
  public ShoppingItem item() {
    return ShoppingItem.of(
        "adhesive in cartridges of " + Math.round(cartridgeVolume * 1e6) + " ml",
        "cartridge",
        volume() / cartridgeVolume,
        waste,
        1);
  }

  /**
   * Gives the caution that goes with gluing.
   *
   * @return fire, vapour and trial
   */
  public Caution caution() {
    return Caution.of(
        Hazard.FIRE,
        "Many adhesives give off vapour that burns and harms, and not every adhesive holds on every"
            + " coating.",
        "Glue away from flames and sparks, in moving air, by the maker's sheet; first pull a trial"
            + " joint apart after its full cure.",
        Source.commonPractice("trial joint on the actual cloth"));
  }
}
