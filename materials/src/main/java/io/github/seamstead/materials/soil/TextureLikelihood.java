package io.github.seamstead.materials.soil;

/** How likely an observation is for each texture, up to a factor that does not depend on it. */
@FunctionalInterface
public interface TextureLikelihood {

  /**
   * Evaluates the likelihood at one point of the triangle.
   *
   * @param clayRatio share of clay, 0 to 1, with the other two adding to 1
   * @param siltRatio share of silt, 0 to 1
   * @param sandRatio share of sand, 0 to 1
   * @return above 0 and finite
   */
  double at(double clayRatio, double siltRatio, double sandRatio);
}
