package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;

/** The measures of a whole regular pyramid that a document may state; any two that suffice do. */
public enum FrameMeasure {
  /** Length of one base edge. */
  BASE_SIDE("baseSide", Dimension.LENGTH, "length of one base edge, corner to corner"),
  /** Radius of the circle through the base corners. */
  CIRCUMRADIUS("circumradius", Dimension.LENGTH, "from the centre to a base corner"),
  /** Radius of the circle that touches the base edges. */
  INRADIUS("inradius", Dimension.LENGTH, "from the centre to the middle of a base edge"),
  /** Distance between opposite base edges; for an even number of sides. */
  ACROSS_FLATS("acrossFlats", Dimension.LENGTH, "between opposite base edges, even sides only"),
  /** Distance between opposite base corners; for an even number of sides. */
  ACROSS_CORNERS(
      "acrossCorners", Dimension.LENGTH, "between opposite base corners, even sides only"),
  /** Length round the base. */
  PERIMETER("perimeter", Dimension.LENGTH, "length round the base"),
  /** Area of the base. */
  BASE_AREA("baseArea", Dimension.AREA, "area of the base"),
  /** Height of the whole pyramid's apex over the base. */
  HEIGHT("height", Dimension.LENGTH, "height of the apex over the base, as if not cut off"),
  /** Length of a hip, from base corner to apex. */
  HIP_EDGE("hipEdge", Dimension.LENGTH, "from a base corner along the hip to the apex"),
  /** Length up the middle of a face. */
  SLANT_HEIGHT("slantHeight", Dimension.LENGTH, "from the middle of a base edge to the apex"),
  /** Slope of a face over level. */
  FACE_SLOPE("faceSlope", Dimension.ANGLE, "slope of a face over level"),
  /** Slope of a hip over level; always flatter than the face. */
  HIP_SLOPE("hipSlope", Dimension.ANGLE, "slope of a hip over level"),
  /** Angle of a face at the apex. */
  APEX_ANGLE("apexAngle", Dimension.ANGLE, "angle of one face at the apex"),
  /** Volume of the whole pyramid. */
  VOLUME("volume", Dimension.VOLUME, "volume under the whole pyramid"),
  /** Area of all whole faces. */
  COVER_AREA("coverArea", Dimension.AREA, "area of all faces together, as if not cut off");

  private final String word;
  private final Dimension dimension;
  private final String meaning;

  FrameMeasure(String word, Dimension dimension, String meaning) {
    this.word = word;
    this.dimension = dimension;
    this.meaning = meaning;
  }

  /**
   * Gives the key in the document.
   *
   * @return for example {@code baseSide}
   */
  public String word() {
    return word;
  }

  /**
   * Gives the kind of quantity.
   *
   * @return length, area, volume or angle
   */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * Says what the measure is.
   *
   * @return a few words
   */
  public String meaning() {
    return meaning;
  }
}
