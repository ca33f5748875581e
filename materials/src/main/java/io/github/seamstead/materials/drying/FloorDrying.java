package io.github.seamstead.materials.drying;

import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.Layer;
import io.github.seamstead.materials.floor.LayerRole;
import io.github.seamstead.shared.check.Args;
import java.util.List;

/** Which water a mixed layer of a floor has to give off: its own, and that of what lies below. */
public final class FloorDrying {

  private FloorDrying() {}

  /**
   * Describes a layer for its forecast. A coat lies on a pack that was rammed the day before and is
   * still damp, or on a coat that was left to dry; both draw and give water down to the next sheet
   * or loose layer, which seals. A pack under it dries through it.
   *
   * @param floor the layers
   * @param index of a mixed layer, 0 for the lowest
   * @param moisture of each mixed layer as it is laid, water over dry mass
   * @param earth how moisture moves
   * @return the layer over what lies below
   * @throws IllegalArgumentException if the layer is not a mixed one
   */
  public static DryingSlab slab(
      BuildUp floor, int index, MoistureAsLaid moisture, EarthMoisture earth) {
    List<Layer> layers = floor.layers();
    Args.within("layer", index, 0, layers.size() - 1);
    EarthLayer layer = mixed(layers.get(index));
    double below = 0;
    double water = 0;
    boolean dried = false;
    EarthLayer above = layer;
    for (int i = index - 1; i >= 0; i--) {
      if (!(layers.get(i) instanceof EarthLayer next) || !next.mixed()) {
        break;
      }
      // A coat waits until the coat below is dry, and with it all that lies deeper.
      dried |= above.role() == LayerRole.EARTH_COAT && next.role() == LayerRole.EARTH_COAT;
      double held = dried ? DryingCriteria.dryMoisture(earth) : moisture.of(next);
      below += next.thickness();
      water += next.thickness() * held;
      above = next;
    }
    DryingSlab alone =
        DryingSlab.sealed(
            layer.thickness(),
            layer.mix().compactedDryDensity().likely(),
            moisture.of(layer),
            earth);
    return below > 0 ? alone.drawingInto(below, water / below) : alone;
  }

  /**
   * Gives the states that a layer reaches.
   *
   * @param layer a mixed layer
   * @param moisture as it is laid, water over dry mass
   * @param plasticLimit of its mix, such as {@link DryingCriteria#SANDY_MIX_PLASTIC_LIMIT}
   * @param earth how it holds moisture
   * @return those of a rammed pack or of a coat laid wet
   * @throws IllegalArgumentException if the layer is not a mixed one
   */
  public static DryingCriteria criteria(
      EarthLayer layer, double moisture, double plasticLimit, EarthMoisture earth) {
    return mixed(layer).role() == LayerRole.EARTH_COAT
        ? DryingCriteria.wetLaid(plasticLimit, earth)
        : DryingCriteria.rammed(moisture, earth);
  }

  /** Days after which a coat is laid on a pack that was rammed (common practice). */
  private static final double NEXT_DAY = 1;

  /**
   * Tells whether the next layer is laid on a layer while it is damp.
   *
   * @param floor the layers
   * @param index of a layer, 0 for the lowest
   * @return true for a rammed pack under a mixed layer
   */
  public static boolean isCoveredDamp(BuildUp floor, int index) {
    List<Layer> layers = floor.layers();
    return layers.get(index) instanceof EarthLayer pack
        && pack.role() == LayerRole.DRY_PACK
        && index + 1 < layers.size()
        && layers.get(index + 1) instanceof EarthLayer next
        && next.mixed();
  }

  /**
   * Gives the days until the next layer is laid: the next day on a pack, else when this one is dry
   * to coat.
   *
   * @param floor the layers
   * @param index of a mixed layer, 0 for the lowest
   * @param daysToDry days until it is dry to coat, 0 or more
   * @return days
   */
  public static double daysToNext(BuildUp floor, int index, double daysToDry) {
    Args.notNegative("days to dry", daysToDry, "d");
    return isCoveredDamp(floor, index) ? Math.min(NEXT_DAY, daysToDry) : daysToDry;
  }

  private static EarthLayer mixed(Layer layer) {
    if (layer instanceof EarthLayer earth && earth.mixed()) {
      return earth;
    }
    throw new IllegalArgumentException(
        layer.name() + ": is tipped as it comes, must be a mixed layer");
  }

  /** Tells how wet a mixed layer really is when it is laid. */
  @FunctionalInterface
  public interface MoistureAsLaid {

    /**
     * Gives the moisture of a layer.
     *
     * @param layer a mixed layer
     * @return water over dry mass
     */
    double of(EarthLayer layer);
  }
}
