package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The strips of a membrane and the rolls they come from.
 *
 * @param layer the sheet
 * @param strips the length of each strip from left to right, in metres; a strip longer than a roll
 *     is pieced from several lengths with a lap at each joint
 * @param rolls whole rolls to order
 * @param areaWithLaps strips × roll width, in square metres
 */
public record MembraneQuantity(
    MembraneLayer layer, List<Double> strips, int rolls, double areaWithLaps) {

  public MembraneQuantity {
    strips = List.copyOf(strips);
  }

  /** Strips run along y; each is as long as the part of the footprint under it, plus upstands. */
  static MembraneQuantity of(MembraneLayer layer, Footprint footprint) {
    Bounds bounds = footprint.outline().bounds();
    double left = bounds.minX() - layer.upstand();
    double right = bounds.maxX() + layer.upstand();
    double pitch = layer.rollWidth() - layer.lap();
    int count = Math.max(1, (int) Math.ceil((right - left - layer.lap()) / pitch - 1e-9));
    List<Double> strips = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double from = left + i * pitch;
      strips.add(
          footprint
                  .outline()
                  .extentBetween(from - layer.upstand(), from + layer.rollWidth() + layer.upstand())
              + 2 * layer.upstand());
    }
    double total = strips.stream().mapToDouble(Double::doubleValue).sum();
    return new MembraneQuantity(layer, strips, rolls(strips, layer), total * layer.rollWidth());
  }

  /** First fit, longest first; a strip longer than a roll takes whole rolls and a rest. */
  private static int rolls(List<Double> strips, MembraneLayer layer) {
    double length = layer.rollLength();
    Args.require(
        length > layer.lap(),
        layer.name(),
        "a roll of " + Numbers.plain(length) + " m",
        "must be longer than its lap");
    int whole = 0;
    List<Double> rests = new ArrayList<>();
    for (double strip : strips) {
      double rest = strip;
      while (rest > length) {
        whole++;
        rest += layer.lap() - length;
      }
      rests.add(rest);
    }
    rests.sort(Comparator.reverseOrder());
    List<Double> open = new ArrayList<>();
    for (double rest : rests) {
      int roll = 0;
      while (roll < open.size() && open.get(roll) < rest) {
        roll++;
      }
      if (roll == open.size()) {
        open.add(length);
      }
      open.set(roll, open.get(roll) - rest);
    }
    return whole + open.size();
  }
}
