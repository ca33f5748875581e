package io.github.seamstead.materials.floor;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A plane fall of the finished floor, such as towards the door for mopping.
 *
 * @param gradient drop over run, 0 to 0.1
 * @param direction the way down, in radians counter-clockwise from x; finite
 */
public record Fall(double gradient, double direction) {

  public Fall {
    Args.within("fall", gradient, 0, 0.1, "");
    Args.finite("direction of fall", direction, "rad");
  }

  /**
   * Makes a level floor.
   *
   * @return no fall
   */
  public static Fall level() {
    return new Fall(0, 0);
  }

  /**
   * Gives the height of the finished floor above its lowest corner.
   *
   * @param footprint the plan
   * @param point a point of it
   * @return in metres
   */
  public double heightAt(Footprint footprint, Vector2D point) {
    return gradient * (farthest(footprint.corners()) - along(point));
  }

  /**
   * Gives the mean thickness that the fall adds to a layer which keeps its thickness at the lowest
   * corner: the height over the middle of the area.
   *
   * @param footprint the plan
   * @return in metres
   */
  public double meanExtra(Footprint footprint) {
    double whole = footprint.grossArea();
    double moment = whole * heightAt(footprint, footprint.centroid());
    double area = whole;
    for (Outline gap : footprint.gaps()) {
      double left = gap.area();
      moment -= left * heightAt(footprint, gap.centroid());
      area -= left;
    }
    return moment / area;
  }

  private double farthest(List<Vector2D> corners) {
    return corners.stream().mapToDouble(this::along).max().orElse(0);
  }

  private double along(Vector2D p) {
    return p.getX() * StrictMath.cos(direction) + p.getY() * StrictMath.sin(direction);
  }
}
