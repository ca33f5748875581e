package io.github.seamstead.geometry.frame;

import java.util.function.ToDoubleFunction;

/**
 * A measure from which {@link FrameSolver} can find a pyramid. All are measures of the whole
 * pyramid up to its apex, also where the frame is truncated.
 */
public enum PyramidMeasure {
  /** Side of the base, in metres. */
  BASE_SIDE("base side", "a", "m", Kind.PLAN, m -> m.base().side()),
  /** Base centre to base corner, in metres. */
  CIRCUMRADIUS("circumradius", "R", "m", Kind.PLAN, FrameMeasures::circumradius),
  /** Base centre to base side, in metres. */
  INRADIUS("inradius", "r", "m", Kind.PLAN, FrameMeasures::inradius),
  /** Square across from a base side, in metres; see {@link RegularPolygon#acrossFlats()}. */
  ACROSS_FLATS("distance across flats", "F", "m", Kind.PLAN, FrameMeasures::acrossFlats),
  /** Between the furthest base corners, in metres; see {@link RegularPolygon#acrossCorners()}. */
  ACROSS_CORNERS("distance across corners", "K", "m", Kind.PLAN, FrameMeasures::acrossCorners),
  /** Sum of the base sides, in metres. */
  PERIMETER("perimeter", "P", "m", Kind.PLAN, FrameMeasures::perimeter),
  /** Area of the base, in square metres. */
  BASE_AREA("base area", "A_b", "m2", Kind.PLAN, FrameMeasures::baseArea),
  /** Base plane to apex, in metres. */
  HEIGHT("height", "H", "m", Kind.HEIGHT, FrameMeasures::apexHeight),
  /** Base corner to apex along a hip, in metres. */
  HIP_EDGE("hip edge", "e", "m", Kind.HIP, FrameMeasures::hipEdge),
  /** Middle of a base side to apex along a face, in metres. */
  SLANT_HEIGHT("slant height", "s", "m", Kind.SLANT, FrameMeasures::slantHeight),
  /** Slope of a face's middle line from the horizontal, in radians, less than π/2. */
  FACE_SLOPE("face slope", "theta", "rad", Kind.SHAPE, FrameMeasures::faceSlope),
  /** Slope of a hip from the horizontal, in radians, less than π/2. */
  HIP_SLOPE("hip slope", "gamma", "rad", Kind.SHAPE, FrameMeasures::hipSlope),
  /** Angle of a face at the apex, in radians, less than 2π/n. */
  APEX_ANGLE("apex angle of a face", "alpha", "rad", Kind.SHAPE, FrameMeasures::apexAngle),
  /** Volume enclosed, in cubic metres. */
  VOLUME("volume", "V", "m3", Kind.VOLUME, FrameMeasures::volume),
  /** Area of all faces, in square metres. */
  COVER_AREA("cover area", "A_c", "m2", Kind.COVER, FrameMeasures::coverArea);

  /**
   * What a measure fixes: two measures are independent unless both are of the plan or both of the
   * shape.
   */
  enum Kind {
    PLAN,
    SHAPE,
    HEIGHT,
    SLANT,
    HIP,
    VOLUME,
    COVER
  }

  private final String label;
  private final String symbol;
  private final String unit;
  private final Kind kind;

  // A method reference without state, which the checker cannot know to be immutable.
  @SuppressWarnings("ImmutableEnumChecker")
  private final ToDoubleFunction<FrameMeasures> reading;

  PyramidMeasure(
      String label,
      String symbol,
      String unit,
      Kind kind,
      ToDoubleFunction<FrameMeasures> reading) {
    this.label = label;
    this.symbol = symbol;
    this.unit = unit;
    this.kind = kind;
    this.reading = reading;
  }

  /**
   * Names the measure in the trade's words.
   *
   * @return for example {@code slant height}
   */
  public String label() {
    return label;
  }

  /**
   * Gives the symbol used in worked steps.
   *
   * @return for example {@code s}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Gives the SI unit's symbol.
   *
   * @return {@code m}, {@code m2}, {@code m3} or {@code rad}
   */
  public String unit() {
    return unit;
  }

  /**
   * Reads this measure off a pyramid, made whole if it is truncated.
   *
   * @param pyramid the pyramid
   * @return the value in {@link #unit()}
   */
  public double of(RegularPyramid pyramid) {
    return read(pyramid.whole().measures());
  }

  /** Reads this measure off the measures of a whole pyramid. */
  double read(FrameMeasures measures) {
    return reading.applyAsDouble(measures);
  }

  /**
   * Tells whether this measure and another fix a pyramid between them (perhaps two of them), given
   * the number of sides.
   *
   * @param other another measure
   * @return false for the same measure, for two of the plan and for two angles
   */
  public boolean isIndependentOf(PyramidMeasure other) {
    return kind != other.kind;
  }

  Kind kind() {
    return kind;
  }
}
