package io.github.seamstead.materials.soil;

/**
 * What limits or a shrinkage bar tell of the plasticity index: log-normal about the index that goes
 * with the texture, or nothing if the test misleads.
 *
 * @param seen logarithm of the index that was seen
 * @param deviation of the logarithm, the mineral included; above {@link
 *     SharedPlasticity#INDEX_DEVIATION}
 * @param misleads probability that the test misleads
 * @param flat density then
 */
record IndexReading(double seen, double deviation, double misleads, double flat) {

  /** No index was seen. */
  static final IndexReading NONE = new IndexReading(0, 1, 1, 1);

  /** The reading of a test; {@link #NONE} of one that tells no index. */
  static IndexReading of(SoilEvidence test) {
    if (test instanceof ConsistencyLimits limits) {
      return limits.reading();
    }
    return test instanceof LinearShrinkage bar ? bar.reading() : NONE;
  }

  /** Logarithm of the index that goes with a texture at the usual activity. */
  static double expected(double clay, double silt) {
    return StrictMath.log(ConsistencyLimits.expectedIndex(clay, silt));
  }

  /** Likelihood of a texture whatever its minerals. */
  TextureLikelihood likelihood() {
    return (clay, silt, sand) -> about(expected(clay, silt), deviation);
  }

  /** Likelihood where the mineral is known and with it the logarithm of the index to be seen. */
  double given(double expected) {
    return about(
        expected,
        Math.sqrt(
            deviation * deviation
                - SharedPlasticity.INDEX_DEVIATION * SharedPlasticity.INDEX_DEVIATION));
  }

  private double about(double expected, double own) {
    return (1 - misleads) * Densities.normal(seen, expected, own) + misleads * flat;
  }
}
