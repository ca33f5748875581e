package io.github.seamstead.shared.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Polygon;

/** Outlines against the oracle library, on random star-shaped and random arbitrary polygons. */
class OutlineProperties {

  @Property(tries = 150, seed = "542299099118809575")
  void measuresAgree(@ForAll long seed, @ForAll @IntRange(min = 3, max = 24) int corners) {
    Outline outline = star(seed, corners);
    Polygon oracle = Jts.polygon(outline);
    assertThat(outline.area()).isCloseTo(oracle.getArea(), within(1e-12 * 100));
    assertThat(outline.perimeter()).isCloseTo(oracle.getLength(), within(1e-10));
    assertThat(outline.centroid().getX()).isCloseTo(oracle.getCentroid().getX(), within(1e-9));
    assertThat(outline.centroid().getY()).isCloseTo(oracle.getCentroid().getY(), within(1e-9));
    assertThat(outline.isConvex())
        .isEqualTo(oracle.convexHull().getNumPoints() == oracle.getNumPoints());
  }

  @Property(tries = 150, seed = "1583797587207094629")
  void pointsAgree(
      @ForAll long seed,
      @ForAll @IntRange(min = 3, max = 24) int corners,
      @ForAll @Scale(6) @DoubleRange(min = -12, max = 12) double x,
      @ForAll @Scale(6) @DoubleRange(min = -12, max = 12) double y) {
    Outline outline = star(seed, corners);
    Vector2D p = Vector2D.of(x, y);
    Polygon oracle = Jts.polygon(outline);
    double distance = oracle.getExteriorRing().distance(Jts.point(p));
    assertThat(outline.distanceToEdge(p)).isCloseTo(distance, within(1e-12 * 100));
    if (distance > 1e-9) {
      assertThat(outline.contains(p)).isEqualTo(oracle.contains(Jts.point(p)));
    }
    Vector2D q = Vector2D.of(y, x - 1);
    assertThat(outline.distanceToSegment(p, q))
        .isCloseTo(oracle.getExteriorRing().distance(Jts.segment(p, q)), within(1e-10));
  }

  @Property(tries = 150, seed = "439080805835205538")
  void relationsAgree(
      @ForAll long seed,
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1) double size,
      @ForAll @Scale(6) @DoubleRange(min = -8, max = 8) double x) {
    Outline one = star(seed, corners);
    Outline other = scaled(star(seed + 1, corners), size, Vector2D.of(x, 0));
    assertThat(one.meets(other)).isEqualTo(Jts.polygon(one).intersects(Jts.polygon(other)));
    assertThat(one.contains(other)).isEqualTo(Jts.polygon(one).contains(Jts.polygon(other)));
  }

  @Property(tries = 150, seed = "-1720525487025776156")
  void onlySimplePolygonsAreTaken(
      @ForAll long seed, @ForAll @IntRange(min = 4, max = 7) int corners) {
    Random random = new Random(seed);
    List<Vector2D> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      points.add(Vector2D.of(random.nextDouble(), random.nextDouble()));
    }
    boolean taken;
    try {
      taken = new Outline(points).size() == corners;
    } catch (IllegalArgumentException e) {
      taken = false;
    }
    assertThat(taken).isEqualTo(Jts.polygon(points).isSimple() && Jts.polygon(points).isValid());
  }

  @Property(tries = 100, seed = "2873545765562084053")
  void placingAndMirroringKeepMeasures(
      @ForAll long seed,
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @Scale(6) @DoubleRange(min = -7, max = 7) double angle) {
    Outline outline = star(seed, corners);
    Outline moved = outline.placed(angle, Vector2D.of(3, -2)).mirrored();
    assertThat(moved.area()).isCloseTo(outline.area(), within(1e-9));
    assertThat(moved.perimeter()).isCloseTo(outline.perimeter(), within(1e-9));
  }

  @Property(tries = 150, seed = "4183")
  void clippingAgrees(
      @ForAll long seed,
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @Scale(6) @DoubleRange(min = -8, max = 8) double x) {
    Outline one = star(seed, corners);
    Outline convex = scaled(regular(corners), 3, Vector2D.of(x, 0));
    assertThat(one.areaWithin(convex))
        .isCloseTo(Jts.polygon(one).intersection(Jts.polygon(convex)).getArea(), within(1e-9));
    double upright =
        Jts.polygon(one).intersection(Jts.polygon(band(x))).getEnvelopeInternal().getHeight();
    assertThat(one.extentBetween(x, x + 1)).isCloseTo(upright, within(1e-9));
  }

  @Property(tries = 150, seed = "4184")
  void theKernelSeesTheWholeBoundary(
      @ForAll long seed, @ForAll @IntRange(min = 3, max = 24) int corners) {
    Outline outline = star(seed, corners);
    if (seesAll(outline, Vector2D.ZERO)) {
      assertThat(outline.kernelCentre()).isPresent();
    }
    outline.kernelCentre().ifPresent(middle -> assertThat(seesAll(outline, middle)).isTrue());
  }

  private static boolean seesAll(Outline outline, Vector2D from) {
    for (int i = 0; i < outline.size(); i++) {
      if (Crossings.turn(from, outline.vertex(i), outline.vertex(i + 1)) <= 0) {
        return false;
      }
    }
    return true;
  }

  @Property(tries = 150, seed = "4185")
  void theInsetKeepsItsDistance(
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.4) double distance) {
    Outline outline = regular(corners);
    Outline inner = outline.inset("room", distance);
    assertThat(inner.size()).isEqualTo(corners);
    for (int i = 0; i < corners; i++) {
      Vector2D middle = inner.vertex(i).lerp(inner.vertex(i + 1), 0.5);
      assertThat(outline.distanceToEdge(middle)).isCloseTo(distance, within(1e-9));
    }
  }

  private static Outline regular(int corners) {
    List<Vector2D> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      points.add(Vector2D.of(Math.cos(angle), Math.sin(angle)));
    }
    return new Outline(points);
  }

  private static Outline band(double x) {
    return Outline.rectangle(1, 40).placed(0, Vector2D.of(x, -20));
  }

  private static Outline scaled(Outline outline, double factor, Vector2D shift) {
    return new Outline(
        outline.vertices().stream().map(v -> v.multiply(factor).add(shift)).toList());
  }

  private static Outline star(long seed, int corners) {
    Random random = new Random(seed);
    List<Vector2D> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      // A third of the step is kept free, so that neighbours never coincide.
      double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / corners;
      double radius = 2 + 8 * random.nextDouble();
      points.add(Vector2D.of(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return new Outline(points);
  }
}
