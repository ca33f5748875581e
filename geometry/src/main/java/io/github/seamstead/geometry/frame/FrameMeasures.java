package io.github.seamstead.geometry.frame;

/**
 * All measures of a regular right pyramid. Lengths in metres, areas in square metres, volumes in
 * cubic metres, angles in radians.
 *
 * <p>Hips are flatter than faces: {@code tan(hipSlope) = tan(faceSlope) cos(pi/n)}. Water and snow
 * lie longest along the hips, so laps and ponding are judged by {@link #hipSlope()}.
 *
 * @param pyramid the pyramid that was measured
 * @param base the base ring's plan
 * @param circumradius base centre to base corner, R
 * @param inradius base centre to base side, r
 * @param acrossFlats see {@link RegularPolygon#acrossFlats()}
 * @param acrossCorners see {@link RegularPolygon#acrossCorners()}
 * @param perimeter of the base
 * @param baseArea of the base
 * @param apexHeight of the whole pyramid, H
 * @param frameHeight of the opening, or of the apex of a whole pyramid
 * @param hipEdge base corner to apex along the hip, of the whole pyramid, e
 * @param slantHeight middle of a base side to apex along the face, of the whole pyramid, s
 * @param hipLength along the hip from base to opening; {@code hipEdge} of a whole pyramid
 * @param faceHeight along the face's middle line from base to opening; {@code slantHeight} of a
 *     whole pyramid
 * @param faceSlope of a face's middle line from the horizontal
 * @param hipSlope of a hip from the horizontal
 * @param apexAngle between neighbouring hips in a face
 * @param baseAngle in a face's base corner, between base side and hip
 * @param topAngle in a face's corner at the opening, {@code pi - baseAngle}; {@code apexAngle} of a
 *     whole pyramid
 * @param hipDihedral between neighbouring faces, inside
 * @param baseDihedral between a face and the base, inside; equals {@code faceSlope}
 * @param openingDihedral between a face and the plane of the opening, inside; {@code pi -
 *     faceSlope}. For a whole pyramid the angle that any level cut would have
 * @param openingSide side of the opening; 0 for a whole pyramid
 * @param openingCircumradius centre to corner of the opening; 0 for a whole pyramid
 * @param openingInradius centre to side of the opening; 0 for a whole pyramid
 * @param openingArea of the opening; 0 for a whole pyramid
 * @param faceArea of one face
 * @param coverArea of all faces
 * @param volume enclosed
 * @param centroidHeight of the enclosed volume above the base
 * @param coverCentroidHeight of the faces, as thin shells, above the base
 * @param developedAngle the sum of the faces' apex angles, less than 2π: the faces laid side by
 *     side leave a gap of 2π less this
 * @param coneAngle the sector angle of the cone with the same apex and base corners, {@code 2 pi R
 *     / e}, which {@code developedAngle} nears from below as n grows
 */
public record FrameMeasures(
    RegularPyramid pyramid,
    RegularPolygon base,
    double circumradius,
    double inradius,
    double acrossFlats,
    double acrossCorners,
    double perimeter,
    double baseArea,
    double apexHeight,
    double frameHeight,
    double hipEdge,
    double slantHeight,
    double hipLength,
    double faceHeight,
    double faceSlope,
    double hipSlope,
    double apexAngle,
    double baseAngle,
    double topAngle,
    double hipDihedral,
    double baseDihedral,
    double openingDihedral,
    double openingSide,
    double openingCircumradius,
    double openingInradius,
    double openingArea,
    double faceArea,
    double coverArea,
    double volume,
    double centroidHeight,
    double coverCentroidHeight,
    double developedAngle,
    double coneAngle) {

  /**
   * Across corners, in metres: a narrower frame is a model, for nobody can sit in it (common
   * practice).
   */
  public static final double LEAST_SHELTER = 1.2;

  /** How many times larger the shelter is that a model on a table stands for (common practice). */
  public static final int MODEL_SCALE = 10;

  /**
   * Measures the shelter that this frame is a model of.
   *
   * @return the measures of the pyramid with every length {@value #MODEL_SCALE} times as great
   */
  public FrameMeasures fullSize() {
    return new RegularPyramid(
            pyramid.sides(),
            MODEL_SCALE * pyramid.baseSide(),
            MODEL_SCALE * pyramid.apexHeight(),
            MODEL_SCALE * pyramid.openingSide())
        .measures();
  }

  /**
   * Tells whether the frame is a model that stands on a table.
   *
   * @return true if it is narrower across corners than {@value #LEAST_SHELTER} m
   */
  public boolean isModel() {
    return acrossCorners < LEAST_SHELTER;
  }


  /**
   * Gives the angle by which a plate across a hip is bent from flat, {@code pi - hipDihedral}.
   *
   * @return the bend, in radians
   */
  public double hipBend() {
    return Math.PI - hipDihedral;
  }

  /**
   * Gives the least slope of the cover, by which laps and ponding are judged: that of the hips.
   *
   * @return the slope, in radians
   */
  public double drainageSlope() {
    return hipSlope;
  }
}
