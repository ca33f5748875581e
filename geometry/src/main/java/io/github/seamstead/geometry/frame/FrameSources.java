package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.source.Source;

/** Where this package's formulas stand. */
final class FrameSources {

  static final Source POLYGON =
      Source.found("CRC", "Standard Mathematical Tables and Formulas", "30th ed.", "sec. 5.3");

  static final Source PYRAMID = Source.derived("right triangles in the regular right pyramid");

  static final Source DIHEDRAL =
      Source.derived("spherical triangle at a base corner: cos(δ/2) = sin(π/n) sin θ");

  static final Source FRUSTUM =
      Source.derived("frustum of a pyramid: V = h/3 (A + B + sqrt(A B)), by similar pyramids");

  private FrameSources() {}
}
