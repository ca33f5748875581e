package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.materials.floor.WorkTime;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;

/**
 * The hours of the floor's earth layers. Membrane, finishes and the days of drying between the
 * layers are not in them.
 *
 * @param layers the hours of each earth layer, from the bottom to the top
 * @param personHours of all hands and all layers together, in hours
 * @param clockHours by the clock, one layer after the other, in hours
 * @param days in working days of the crew
 */
public record FloorWork(List<LayerWork> layers, Range personHours, Range clockHours, Range days) {

  /**
   * The hours of one layer.
   *
   * @param layer the layer's name
   * @param time its hours
   */
  public record LayerWork(String layer, WorkTime time) {}

  public FloorWork {
    layers = List.copyOf(layers);
  }
}
