package io.github.seamstead.geometry.markout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class MarkOutProperties {

  /** Star-shaped about their middle, so always simple: 3 to 9 corners, 1 to 4 m across. */
  @Provide
  Arbitrary<Outline> outlines() {
    return Arbitraries.doubles()
        .between(0.6, 2)
        .ofScale(6)
        .list()
        .ofMinSize(3)
        .ofMaxSize(9)
        .map(
            radii -> {
              List<Vector2D> corners = new ArrayList<>();
              for (int i = 0; i < radii.size(); i++) {
                double azimuth = 2 * Math.PI * i / radii.size();
                corners.add(
                    Vector2D.of(
                        radii.get(i) * Math.cos(azimuth), radii.get(i) * Math.sin(azimuth)));
              }
              return new Outline(corners);
            })
        .withoutEdgeCases();
  }

  @Property(tries = 100, seed = "2026110015")
  void offsetsReturnTheCornersToHalfADivision(
      @ForAll("outlines") Outline outline, @ForAll TapeDivision division) {
    MarkOut tables = MarkOut.of(outline, division, 1);
    for (BaselineRow row : tables.baseline()) {
      assertThat(row.error()).isLessThanOrEqualTo(division.step() * Math.sqrt(0.5) + 1e-12);
      // Back from the baseline's axes to the outline's own.
      Vector2D zero = outline.vertex(tables.baselineEdge());
      Vector2D along = outline.vertex(tables.baselineEdge() + 1).subtract(zero).normalize();
      Vector2D back =
          zero.add(along.multiply(row.station()))
              .add(Vector2D.of(-along.getY(), along.getX()).multiply(row.offset()));
      assertThat(back.distance(outline.vertex(row.corner()))).isLessThan(1e-12);
    }
  }

  @Property(tries = 100, seed = "2026110016")
  void tapesMeetAtTheirMarkedDistances(
      @ForAll("outlines") Outline outline, @ForAll TapeDivision division) {
    MarkOut tables = MarkOut.of(outline, division, 1);
    Vector2D second = Vector2D.of(division.round(outline.edgeLength(0)), 0);
    for (TwoTapeRow row : tables.twoTapes()) {
      if (!row.isPoor() && row.corner() > 1) {
        assertThat(row.drawn().norm()).isCloseTo(row.markedFirst(), within(1e-9));
        assertThat(row.drawn().distance(second)).isCloseTo(row.markedSecond(), within(1e-9));
        // Each tape and the mark is off by at most half a division; the crossing spreads it.
        assertThat(row.error())
            .isLessThan(2.5 * division.step() / Math.sin(TwoTapeRow.POOR_CROSSING));
      }
    }
  }

  @Property(tries = 100, seed = "2026110017")
  void fitIsThatOfTheDrawnPolygon(
      @ForAll("outlines") Outline outline,
      @ForAll TapeDivision division,
      @ForAll @DoubleRange(min = 0.01, max = 0.05) double tolerance) {
    MarkOut tables = MarkOut.of(outline, division, tolerance);
    Polygon truth = polygon(MarkOut.onBaseline(outline, 0));
    Polygon drawn = polygon(tables.baseline().stream().map(BaselineRow::drawn).toList());
    TemplateFit fit = tables.baselineFit();
    assertThat(drawn.getArea() - truth.getArea()).isCloseTo(fit.areaDifference(), within(1e-12));
    assertThat(fit.fits())
        .isEqualTo(fit.cornerError() <= tolerance && fit.sideError() <= tolerance);
    // No drawn corner lies further outside or inside the true outline than stated.
    for (BaselineRow row : tables.baseline()) {
      var point =
          new GeometryFactory().createPoint(new Coordinate(row.drawn().getX(), row.drawn().getY()));
      assertThat(truth.getBoundary().distance(point))
          .isLessThanOrEqualTo(fit.cornerError() + 1e-12);
    }
    assertThat(fit.shortness()).isLessThanOrEqualTo(fit.cornerError() + 1e-12);
    assertThat(fit.fullness()).isLessThanOrEqualTo(fit.cornerError() + 1e-12);
    for (CheckLength check : tables.checks()) {
      assertThat(check.error())
          .isLessThanOrEqualTo(
              2 * Math.max(fit.cornerError(), tables.twoTapeFit().cornerError()) + 1e-12);
    }
  }

  private static Polygon polygon(List<Vector2D> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Vector2D corner = corners.get(i % corners.size());
      ring[i] = new Coordinate(corner.getX(), corner.getY());
    }
    return new GeometryFactory().createPolygon(ring);
  }
}
