package io.github.seamstead.materials.drying;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;

/**
 * A tile of the coat's own mix in a tray, weighed as it dries.
 *
 * @param slab the tile: thickness, dry density, first moisture; the tray seals its bottom and edges
 * @param area of the open face, in square metres; 0.0025 to 1 m²
 * @param weighings in order of time, the first soon after it was filled; at least three, rising in
 *     time
 * @param scaleUncertainty standard uncertainty of one weighing, in kg; more than 0, at most 1 kg
 */
public record TestTile(
    DryingSlab slab, double area, List<Weighing> weighings, double scaleUncertainty) {

  /**
   * One weighing.
   *
   * @param time since the tile was filled, in seconds; 0 or more
   * @param mass of tile and tray, in kg; greater than 0
   */
  public record Weighing(double time, double mass) {

    public Weighing {
      Args.notNegative("weighing time", time, "s");
      Args.positive("weighed mass", mass, "kg");
    }
  }

  public TestTile {
    Args.within("tile area", area, 0.0025, 1, "m2");
    Args.positive("scale uncertainty", scaleUncertainty, "kg");
    Args.within("scale uncertainty", scaleUncertainty, 0, 1, "kg");
    weighings = List.copyOf(weighings);
    Args.require(
        weighings.size() >= 3,
        "weighings",
        String.valueOf(weighings.size()),
        "must have 3 or more to fit two unknowns");
    for (int i = 1; i < weighings.size(); i++) {
      Args.require(
          weighings.get(i).time() > weighings.get(i - 1).time(),
          "weighing " + (i + 1) + ": its time is not after the one before, times must rise");
    }
    double water = area * slab.initialWater();
    double lost = weighings.get(0).mass() - weighings.get(weighings.size() - 1).mass();
    Args.agree(
        lost <= water + 3 * scaleUncertainty,
        "weighings: the tile lost "
            + Numbers.significant(lost, 3)
            + " kg but held only "
            + Numbers.significant(water, 3)
            + " kg of water",
        "check thickness, density and first moisture");
  }
}
