package io.github.seamstead.materials.floor;

/** One layer of the floor: grain or earth with a thickness, a sheet, or a finish by the litre. */
public sealed interface Layer permits EarthLayer, MembraneLayer, FinishLayer {

  /**
   * Gives the layer's name on the section drawing.
   *
   * @return the name
   */
  String name();

  /**
   * Gives the height that the layer adds to the floor.
   *
   * @return the compacted thickness, in metres; 0 for sheets and finishes
   */
  double thickness();
}
