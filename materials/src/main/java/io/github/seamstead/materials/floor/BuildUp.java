package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The floor's layers from the ground up over one footprint, and what each takes.
 *
 * <p>A fall is formed in one earth layer, which keeps its stated thickness at the lowest corner.
 * Costs O(n²) for n corners, linear in the layers.
 *
 * <pre>{@code
 * FloorMix gravel = FloorMix.single("gravel", 1600, 1500, 0.02, 0.02);
 * BuildUp floor =
 *     BuildUp.level(Footprint.regular(6, 1.5), List.of(EarthLayer.capillaryBreak(0.1, gravel)));
 * floor.footprint().area(); // 5.85 in square metres
 * }</pre>
 *
 * @param footprint what is covered
 * @param layers bottom to top; at least one, finishes above all others
 * @param fall the fall of the finished floor
 * @param fallLayer the index of the earth layer that forms the fall; any value if level
 */
public record BuildUp(Footprint footprint, List<Layer> layers, Fall fall, int fallLayer) {

  public BuildUp {
    layers = Args.notEmpty("layers", layers);
    boolean finished = false;
    for (Layer layer : layers) {
      Args.require(
          !finished || layer instanceof FinishLayer,
          layer.name() + ": lies above a finish, oil and wax must come last");
      finished |= layer instanceof FinishLayer;
    }
    if (fall.gradient() > 0) {
      Args.within("layer that forms the fall", fallLayer, 0, layers.size() - 1);
      Args.agree(
          layers.get(fallLayer) instanceof EarthLayer,
          layers.get(fallLayer).name() + ": cannot form the fall",
          "must be a layer of earth or grain");
    }
  }

  /**
   * Makes a level floor.
   *
   * @param footprint what is covered
   * @param layers bottom to top
   * @return the build-up
   * @throws IllegalArgumentException as the constructor does
   */
  public static BuildUp level(Footprint footprint, List<? extends Layer> layers) {
    return new BuildUp(footprint, List.copyOf(layers), Fall.level(), 0);
  }

  /**
   * Gives the height of the finished floor over the ground at its lowest corner.
   *
   * @return the sum of the compacted thicknesses, in metres
   */
  public double thickness() {
    return layers.stream().mapToDouble(Layer::thickness).sum();
  }

  /**
   * Computes what the earth layers take.
   *
   * @return one entry for each earth layer, bottom to top
   */
  public List<EarthQuantity> earth() {
    double area = footprint.area();
    List<EarthQuantity> quantities = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      if (layers.get(i) instanceof EarthLayer layer) {
        boolean falls = i == fallLayer && fall.gradient() > 0;
        double extra = falls ? fall.meanExtra(footprint) : 0;
        quantities.add(EarthQuantity.of(layer, area, extra));
      }
    }
    return List.copyOf(quantities);
  }

  /**
   * Computes the strips and rolls of the sheets.
   *
   * @return one entry for each sheet, bottom to top
   */
  public List<MembraneQuantity> membranes() {
    return layers.stream()
        .filter(MembraneLayer.class::isInstance)
        .map(layer -> MembraneQuantity.of((MembraneLayer) layer, footprint))
        .toList();
  }

  /**
   * Computes the litres of the finishes.
   *
   * @return one entry for each finish, in the order of work
   */
  public List<FinishQuantity> finishes() {
    return layers.stream()
        .filter(FinishLayer.class::isInstance)
        .map(layer -> FinishQuantity.of((FinishLayer) layer, footprint.area()))
        .toList();
  }

  /**
   * Collects the advice on layers: grains too large for their coat, and no capillary break.
   *
   * @return plain sentences, empty if there is nothing to say
   */
  public List<String> advice() {
    List<String> advice = new ArrayList<>();
    boolean capillary = false;
    for (Layer layer : layers) {
      if (layer instanceof EarthLayer earth) {
        earth.grainAdvice().ifPresent(advice::add);
        earth.waterAdvice().ifPresent(advice::add);
        capillary |= earth.role() == LayerRole.CAPILLARY_BREAK;
        if (earth.lifts() > 1) {
          advice.add(earth.name() + ": ram in " + earth.lifts() + " lifts of 100 mm or less");
        }
      }
      capillary |= layer instanceof MembraneLayer;
    }
    if (!capillary) {
      advice.add("no capillary break and no membrane: ground water will climb into the floor");
    }
    return List.copyOf(advice);
  }

  /**
   * Gives the layers with their heights for a section drawing at the lowest corner.
   *
   * @return bottom to top; sheets and finishes have no height of their own
   */
  public List<SectionBand> section() {
    List<SectionBand> bands = new ArrayList<>();
    double at = 0;
    for (Layer layer : layers) {
      Optional<LayerRole> role =
          layer instanceof EarthLayer earth ? Optional.of(earth.role()) : Optional.empty();
      bands.add(new SectionBand(layer.name(), role, at, at + layer.thickness()));
      at += layer.thickness();
    }
    return List.copyOf(bands);
  }

  /**
   * Gives the load of the floor on the ground, as placed.
   *
   * @return mass per area of all earth layers, in kg/m²
   */
  public Range massPerArea() {
    Range sum = Range.exactly(0);
    for (EarthQuantity quantity : earth()) {
      sum = sum.plus(quantity.placedMass().times(1 / quantity.area()));
    }
    return sum;
  }

  /**
   * A band of the section drawing.
   *
   * @param name the layer's name
   * @param role what it does; empty for sheets and finishes
   * @param bottom height over the ground, in metres
   * @param top height over the ground, in metres
   */
  public record SectionBand(String name, Optional<LayerRole> role, double bottom, double top) {}
}
