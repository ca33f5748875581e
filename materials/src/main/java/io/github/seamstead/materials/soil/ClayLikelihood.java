package io.github.seamstead.materials.soil;

/**
 * A likelihood that depends on the clay share alone, so that a grid need evaluate it only once for
 * each clay share that occurs.
 */
@FunctionalInterface
interface ClayLikelihood extends TextureLikelihood {

  double ofClay(double clayRatio);

  @Override
  default double at(double clayRatio, double siltRatio, double sandRatio) {
    return ofClay(clayRatio);
  }
}
