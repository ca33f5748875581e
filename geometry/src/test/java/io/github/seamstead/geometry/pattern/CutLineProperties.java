package io.github.seamstead.geometry.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Jts;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Cut lines against distances measured by the oracle library. */
class CutLineProperties {

  @Property(tries = 150, seed = "2026110022")
  void everyCutEdgeLiesAtItsAllowance(
      @ForAll @Scale(6) @DoubleRange(min = 0.8, max = 3) double base,
      @ForAll @Scale(6) @DoubleRange(min = 0.8, max = 5) double height,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 0.8) double part,
      @ForAll @Scale(6) @DoubleRange(min = -0.1, max = 0.1) double lean,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.1) double hem,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double right,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.08) double top,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double left) {
    Outline regular = Demo.trapezoid(base, height, part);
    Outline face =
        Outline.of(
            regular.vertex(0),
            regular.vertex(1),
            regular.vertex(2).add(Demo.v(lean / 5, lean)),
            regular.vertex(3).add(Demo.v(lean / 7, 0)));
    List<EdgeAllowance> allowances =
        new EdgePlan(
                EdgeAllowance.hem(hem),
                EdgeAllowance.finSeam(right),
                EdgeAllowance.turnIn(top),
                EdgeAllowance.lapUnder(left))
            .forFace(face);
    CutLine cut = CutLine.around("test", face, allowances, 2);
    assertAllowances(face, allowances, cut);
  }

  @Property(tries = 150, seed = "2026110023")
  void sharpTipKeepsItsAllowanceAndGrowsNoSpike(
      @ForAll @Scale(6) @DoubleRange(min = 5, max = 85) double tipDegrees,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.03) double right,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.03) double left,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 4) double limit) {
    Outline face = Demo.triangle(1, 0.5 / Math.tan(Math.toRadians(tipDegrees / 2)));
    List<EdgeAllowance> allowances =
        List.of(
            EdgeAllowance.reinforced(), EdgeAllowance.finSeam(right), EdgeAllowance.finSeam(left));
    CutLine cut = CutLine.around("test", face, allowances, limit);
    assertAllowances(face, allowances, cut);
    Vector2D tip = face.vertex(2);
    for (int hip : new int[] {1, 2}) {
      // The allowance stands square to the stitch line right up to the tip.
      Vector2D along = face.vertex(hip + 1).subtract(face.vertex(hip)).normalize();
      Vector2D out = Demo.v(along.getY(), -along.getX()).multiply(allowances.get(hip).width());
      assertThat(
              Jts.polygon(cut.outline())
                  .buffer(1e-9)
                  .covers(Jts.segment(face.vertex(hip).add(out), face.vertex(hip + 1).add(out))))
          .isTrue();
    }
    double widest = Math.max(right, left);
    Polygon tipCircle = (Polygon) Jts.point(tip).buffer(widest * 0.999, 16);
    assertThat(Jts.polygon(cut.outline()).covers(tipCircle.intersection(wedge(face))))
        .as("cloth round the tip")
        .isTrue();
    double top = cut.outline().bounds().maxY() - tip.getY();
    assertThat(top).isLessThanOrEqualTo(Math.hypot(limit * widest, limit * widest) + 1e-12);
    assertThat(top).isGreaterThan(0);
  }

  @Property(tries = 100, seed = "2026110024")
  void foldedHemLiesOnThePanel(
      @ForAll @Scale(6) @DoubleRange(min = 35, max = 85) double baseDegrees,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.15) double hem,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double seam) {
    Outline face = Demo.triangle(2, Math.tan(Math.toRadians(baseDegrees)));
    List<EdgeAllowance> allowances =
        List.of(EdgeAllowance.hem(hem), EdgeAllowance.finSeam(seam), EdgeAllowance.finSeam(seam));
    CutLine cut = CutLine.around("test", face, allowances, 2);
    Geometry below = Jts.polygon(cut.outline()).intersection(half(-1));
    Geometry above = Jts.polygon(cut.outline()).intersection(half(1));
    Geometry folded = below.copy();
    folded.apply((org.locationtech.jts.geom.CoordinateFilter) c -> c.setY(-c.getY()));
    assertThat(folded.difference(above).getArea()).isCloseTo(0, within(1e-12));
    assertThat(above.intersection(strip(hem)).difference(folded).getArea())
        .as("the hem is as wide as the panel beside it")
        .isCloseTo(0, within(1e-9));
  }

  private static void assertAllowances(Outline face, List<EdgeAllowance> allowances, CutLine cut) {
    Polygon polygon = Jts.polygon(cut.outline());
    assertThat(polygon.isValid()).isTrue();
    assertThat(polygon.buffer(1e-9).covers(Jts.polygon(face))).isTrue();
    for (int i = 0; i < cut.owners().size(); i++) {
      int owner = cut.owners().get(i);
      if (owner == CutLine.CORNER) {
        continue;
      }
      Vector2D a = face.vertex(owner);
      Vector2D b = face.vertex(owner + 1);
      Vector2D far = b.subtract(a).multiply(10);
      LineString line = Jts.segment(a.subtract(far), b.add(far));
      double width = allowances.get(owner).width();
      assertThat(line.distance(Jts.point(cut.outline().vertex(i)))).isCloseTo(width, within(1e-11));
      assertThat(line.distance(Jts.point(cut.outline().vertex(i + 1))))
          .isCloseTo(width, within(1e-11));
    }
  }

  private static Geometry wedge(Outline face) {
    Vector2D tip = face.vertex(2);
    Vector2D right = face.vertex(1).subtract(tip);
    Vector2D left = face.vertex(0).subtract(tip);
    return Jts.polygon(Outline.of(tip, tip.add(left), tip.add(right)));
  }

  private static Geometry half(int sign) {
    return Jts.polygon(
        Outline.of(
            Demo.v(-100, 0), Demo.v(100, 0), Demo.v(100, sign * 100), Demo.v(-100, sign * 100)));
  }

  private static Geometry strip(double height) {
    return Jts.polygon(
        Outline.of(Demo.v(-100, 0), Demo.v(100, 0), Demo.v(100, height), Demo.v(-100, height)));
  }
}
