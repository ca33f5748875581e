package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;

/**
 * What a finish takes.
 *
 * @param layer the finish
 * @param litresPerCoat coat by coat in the order of work, in litres
 * @param litres all coats, in litres
 */
public record FinishQuantity(FinishLayer layer, List<Range> litresPerCoat, Range litres) {

  public FinishQuantity {
    litresPerCoat = List.copyOf(litresPerCoat);
  }

  static FinishQuantity of(FinishLayer layer, double area) {
    return new FinishQuantity(
        layer,
        layer.rates().stream().map(rate -> rate.times(area)).toList(),
        layer.allCoats().times(area));
  }
}
