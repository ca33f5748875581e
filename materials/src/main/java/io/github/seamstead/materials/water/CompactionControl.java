package io.github.seamstead.materials.water;

import static io.github.seamstead.shared.quantity.PhysicalConstants.WATER_DENSITY;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Whether a pack is rammed dense enough: each place of it against the compaction test of its mix.
 *
 * @param curve the compaction test
 * @param places what was measured in the laid pack, in the order given
 * @param waterToOptimum water to add to the mix as it is placed, over its damp mass; below 0 if it
 *     is wetter than the optimum
 * @param advice what to do, plain sentences; empty if all is well
 */
public record CompactionControl(
    ProctorCurve curve, List<Place> places, double waterToOptimum, List<String> advice) {

  /** Field over greatest dry density that a place must reach. */
  public static final double REQUIRED = 0.95;

  /** Source of {@link #REQUIRED}. */
  public static final Source REQUIRED_SOURCE =
      Source.commonPractice("95 % of the standard compaction test for a base");

  /** How far from the optimum a mix may be placed. */
  private static final double NEAR_OPTIMUM = 0.02;

  /**
   * One place of the laid pack.
   *
   * @param dryDensity in kg/m³
   * @param relative over the greatest dry density of the test
   * @param phases its pores, their water and their air
   */
  public record Place(double dryDensity, double relative, PhaseState phases) {

    /**
     * Tells whether it is dense enough.
     *
     * @return true from {@link CompactionControl#REQUIRED} on
     */
    public boolean passes() {
      return relative >= REQUIRED;
    }
  }

  public CompactionControl {
    places = List.copyOf(places);
    advice = List.copyOf(advice);
  }

  /**
   * Describes a place by its density and moisture.
   *
   * @param curve the compaction test, with the specific gravity of the grains
   * @param dryDensity of the place, in kg/m³, such as {@link FieldDensity#ofSandCone} gives
   * @param moisture of the place, water over dry mass
   * @param steps receives the phase relations
   * @return the place
   * @throws IllegalArgumentException if grains of that density cannot be packed so, or the curve
   *     does not know them
   */
  public static Place place(ProctorCurve curve, double dryDensity, double moisture, Steps steps) {
    Args.require(
        curve.specificGravity().isPresent(),
        "compaction test",
        "no specific gravity of the grains",
        "must have one");
    PhaseState phases =
        PhaseRelations.solve(
            Map.of(
                PhaseQuantity.SPECIFIC_GRAVITY, curve.specificGravity().get(),
                PhaseQuantity.DRY_DENSITY, dryDensity,
                PhaseQuantity.MOISTURE, moisture),
            WATER_DENSITY,
            steps);
    return new Place(dryDensity, curve.relativeCompaction(dryDensity), phases);
  }

  /**
   * Judges a pack.
   *
   * @param curve the compaction test
   * @param places what was measured in the laid pack, possibly nothing yet
   * @param placingMoisture water over dry mass with which the mix is rammed, 0 to 1
   * @param plannedDensity dry density that the plan reckons with, in kg/m³, greater than 0
   * @return the judgement
   * @throws IllegalArgumentException if a value is out of range
   */
  public static CompactionControl of(
      ProctorCurve curve, List<Place> places, double placingMoisture, double plannedDensity) {
    Args.within("placing moisture", placingMoisture, 0, 1, "");
    double optimum = curve.optimumMoisture().likely();
    List<String> advice = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      if (!places.get(i).passes()) {
        advice.add(
            "place "
                + (i + 1)
                + " is rammed to "
                + percent(places.get(i).relative())
                + " of the test's greatest dry density, and "
                + percent(REQUIRED)
                + " is asked for: loosen it, bring it to "
                + percent(optimum)
                + " of water and ram it again in thinner lifts");
      }
    }
    if (Math.abs(placingMoisture - optimum) > NEAR_OPTIMUM) {
      advice.add(
          "it is to be rammed at "
              + percent(placingMoisture)
              + " of water, and the test packs densest at "
              + percent(optimum)
              + ": "
              + (placingMoisture < optimum ? "wet it" : "dry it")
              + " first");
    }
    if (curve.relativeCompaction(plannedDensity) > 1) {
      advice.add(
          "the plan reckons with "
              + percent(curve.relativeCompaction(plannedDensity))
              + " of the greatest dry density of the test: state a density that the mix reaches");
    }
    advice.addAll(curve.remarks());
    return new CompactionControl(
        curve, places, Moisture.waterToAdd(1, placingMoisture, optimum, Steps.none()), advice);
  }

  private static String percent(double ratio) {
    return Numbers.fixed(ratio * 100, 1) + " %";
  }
}
