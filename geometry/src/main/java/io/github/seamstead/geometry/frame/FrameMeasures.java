package io.github.seamstead.geometry.frame;

import org.jspecify.annotations.Nullable;

/**
 * All measures of a regular right pyramid. Lengths in metres, areas in square metres, volumes in
 * cubic metres, angles in radians. They follow from the pyramid alone, so that two are equal if
 * their pyramids are; {@link RegularPyramid#measures()} gives them.
 *
 * <p>Hips are flatter than faces: {@code tan(hipSlope) = tan(faceSlope) cos(pi/n)}. Water and snow
 * lie longest along the hips, so laps and ponding are judged by {@link #hipSlope()}.
 */
public final class FrameMeasures {

  /** Lengths along the frame, in metres. */
  record Edges(
      double hipEdge,
      double slantHeight,
      double hipLength,
      double faceHeight,
      double frameHeight) {}

  /** Angles of the whole pyramid, in radians. */
  record Angles(
      double faceSlope,
      double hipSlope,
      double apexAngle,
      double baseAngle,
      double hipDihedral,
      double developed,
      double cone) {}

  /** The ring at the top, in metres and square metres; all 0 for a whole pyramid. */
  record Opening(double inradius, double circumradius, double area) {}

  /** What the faces cover and enclose, in square and cubic metres, and how high it lies. */
  record Sizes(
      double faceArea,
      double coverArea,
      double volume,
      double centroidHeight,
      double coverCentroidHeight) {}

  private final RegularPyramid pyramid;
  private final Edges edges;
  private final Angles angles;
  private final Opening opening;
  private final Sizes sizes;

  FrameMeasures(RegularPyramid pyramid, Edges edges, Angles angles, Opening opening, Sizes sizes) {
    this.pyramid = pyramid;
    this.edges = edges;
    this.angles = angles;
    this.opening = opening;
    this.sizes = sizes;
  }

  /**
   * Gives the pyramid that was measured.
   *
   * @return the pyramid
   */
  public RegularPyramid pyramid() {
    return pyramid;
  }

  /**
   * Gives the base ring's plan.
   *
   * @return the polygon
   */
  public RegularPolygon base() {
    return pyramid.base();
  }

  /**
   * Gives from the centre of the base to a corner, {@code R = a / (2 sin(pi/n))}.
   *
   * @return the measure, in metres
   */
  public double circumradius() {
    return base().circumradius();
  }

  /**
   * Gives from the centre of the base to a side, {@code r = a / (2 tan(pi/n))}.
   *
   * @return the measure, in metres
   */
  public double inradius() {
    return base().inradius();
  }

  /**
   * Gives across flats, see {@link RegularPolygon#acrossFlats()}.
   *
   * @return the measure, in metres
   */
  public double acrossFlats() {
    return base().acrossFlats();
  }

  /**
   * Gives across corners, see {@link RegularPolygon#acrossCorners()}.
   *
   * @return the measure, in metres
   */
  public double acrossCorners() {
    return base().acrossCorners();
  }

  /**
   * Gives the perimeter of the base, {@code n a}.
   *
   * @return the measure, in metres
   */
  public double perimeter() {
    return base().perimeter();
  }

  /**
   * Gives the area of the base.
   *
   * @return the measure, in square metres
   */
  public double baseArea() {
    return base().area();
  }

  /**
   * Gives the height of the whole pyramid, {@code H}.
   *
   * @return the measure, in metres
   */
  public double apexHeight() {
    return pyramid.apexHeight();
  }

  /**
   * Gives the height of the opening, or of the apex of a whole pyramid.
   *
   * @return the measure, in metres
   */
  public double frameHeight() {
    return edges.frameHeight();
  }

  /**
   * Gives from a base corner to the apex along the hip, of the whole pyramid, {@code e = sqrt(R^2 +
   * H^2)}.
   *
   * @return the measure, in metres
   */
  public double hipEdge() {
    return edges.hipEdge();
  }

  /**
   * Gives from the middle of a base side to the apex along the face, of the whole pyramid, {@code s
   * = sqrt(r^2 + H^2)}.
   *
   * @return the measure, in metres
   */
  public double slantHeight() {
    return edges.slantHeight();
  }

  /**
   * Gives along the hip from base to opening; {@link #hipEdge()} of a whole pyramid.
   *
   * @return the measure, in metres
   */
  public double hipLength() {
    return edges.hipLength();
  }

  /**
   * Gives along the face's middle line from base to opening; {@link #slantHeight()} of a whole
   * pyramid.
   *
   * @return the measure, in metres
   */
  public double faceHeight() {
    return edges.faceHeight();
  }

  /**
   * Gives the slope of a face's middle line from the horizontal, {@code atan(H / r)}.
   *
   * @return the measure, in radians
   */
  public double faceSlope() {
    return angles.faceSlope();
  }

  /**
   * Gives the slope of a hip from the horizontal, {@code atan(H / R)}.
   *
   * @return the measure, in radians
   */
  public double hipSlope() {
    return angles.hipSlope();
  }

  /**
   * Gives between neighbouring hips in a face, {@code 2 atan(a / (2 s))}.
   *
   * @return the measure, in radians
   */
  public double apexAngle() {
    return angles.apexAngle();
  }

  /**
   * Gives in a face's base corner, between base side and hip, {@code atan(2 s / a)}.
   *
   * @return the measure, in radians
   */
  public double baseAngle() {
    return angles.baseAngle();
  }

  /**
   * Gives in a face's corner at the opening, {@code pi - baseAngle}; {@link #apexAngle()} of a
   * whole pyramid.
   *
   * @return the measure, in radians
   */
  public double topAngle() {
    return pyramid.isTruncated() ? Math.PI - baseAngle() : apexAngle();
  }

  /**
   * Gives between neighbouring faces, inside.
   *
   * @return the measure, in radians
   */
  public double hipDihedral() {
    return angles.hipDihedral();
  }

  /**
   * Gives between a face and the base, inside; equals {@link #faceSlope()}.
   *
   * @return the measure, in radians
   */
  public double baseDihedral() {
    return faceSlope();
  }

  /**
   * Gives between a face and the plane of the opening, inside, {@code pi - faceSlope}; for a whole
   * pyramid the angle that any level cut would have.
   *
   * @return the measure, in radians
   */
  public double openingDihedral() {
    return Math.PI - faceSlope();
  }

  /**
   * Gives the side of the opening; 0 for a whole pyramid.
   *
   * @return the measure, in metres
   */
  public double openingSide() {
    return pyramid.openingSide();
  }

  /**
   * Gives from the centre to a corner of the opening; 0 for a whole pyramid.
   *
   * @return the measure, in metres
   */
  public double openingCircumradius() {
    return opening.circumradius();
  }

  /**
   * Gives from the centre to a side of the opening; 0 for a whole pyramid.
   *
   * @return the measure, in metres
   */
  public double openingInradius() {
    return opening.inradius();
  }

  /**
   * Gives the area of the opening; 0 for a whole pyramid.
   *
   * @return the measure, in square metres
   */
  public double openingArea() {
    return opening.area();
  }

  /**
   * Gives the area of one face.
   *
   * @return the measure, in square metres
   */
  public double faceArea() {
    return sizes.faceArea();
  }

  /**
   * Gives the area of all faces.
   *
   * @return the measure, in square metres
   */
  public double coverArea() {
    return sizes.coverArea();
  }

  /**
   * Gives the enclosed volume.
   *
   * @return the measure, in cubic metres
   */
  public double volume() {
    return sizes.volume();
  }

  /**
   * Gives the centroid of the enclosed volume above the base.
   *
   * @return the measure, in metres
   */
  public double centroidHeight() {
    return sizes.centroidHeight();
  }

  /**
   * Gives the centroid of the faces, as thin shells, above the base.
   *
   * @return the measure, in metres
   */
  public double coverCentroidHeight() {
    return sizes.coverCentroidHeight();
  }

  /**
   * Gives the sum of the faces' apex angles, less than 2 pi: the faces laid side by side leave a
   * gap of 2 pi less this.
   *
   * @return the measure, in radians
   */
  public double developedAngle() {
    return angles.developed();
  }

  /**
   * Gives the sector angle of the cone with the same apex and base corners, {@code 2 pi R / e},
   * which {@link #developedAngle()} nears from below as n grows.
   *
   * @return the measure, in radians
   */
  public double coneAngle() {
    return angles.cone();
  }

  /**
   * Gives the angle by which a plate across a hip is bent from flat, {@code pi - hipDihedral}.
   *
   * @return the bend, in radians
   */
  public double hipBend() {
    return Math.PI - hipDihedral();
  }

  /**
   * Gives the least slope of the cover, by which laps and ponding are judged: that of the hips.
   *
   * @return the slope, in radians
   */
  public double drainageSlope() {
    return hipSlope();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FrameMeasures measures && pyramid.equals(measures.pyramid);
  }

  @Override
  public int hashCode() {
    return pyramid.hashCode();
  }

  @Override
  public String toString() {
    return "FrameMeasures[" + pyramid + "]";
  }
}
