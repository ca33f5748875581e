package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;

/**
 * A damp-proof sheet from a roll, laid in strips with laps and turned up at the edge.
 *
 * @param name the name on the section drawing; not blank
 * @param rollWidth in metres; greater than 0, at most 20 m
 * @param rollLength in metres; greater than 0, at most 500 m
 * @param lap overlap of neighbouring strips, in metres; 0 or more, less than half the roll's width
 * @param upstand how far it turns up at the edge, in metres; 0 to 1 m
 */
public record MembraneLayer(
    String name, double rollWidth, double rollLength, double lap, double upstand) implements Layer {

  public MembraneLayer {
    Args.notBlank("layer", name);
    Args.positive(name + ": roll width", rollWidth, "m");
    Args.within(name + ": roll width", rollWidth, 0, 20, "m");
    Args.positive(name + ": roll length", rollLength, "m");
    Args.within(name + ": roll length", rollLength, 0, 500, "m");
    Args.within(name + ": lap", lap, 0, rollWidth / 2, "m");
    Args.within(name + ": upstand", upstand, 0, 1, "m");
  }

  @Override
  public double thickness() {
    return 0;
  }
}
