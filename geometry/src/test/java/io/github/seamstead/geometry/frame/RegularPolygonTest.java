package io.github.seamstead.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RegularPolygonTest {

  private static OutsideCheck check(String what, io.github.seamstead.shared.source.Source source) {
    return OutsideCheck.of("geometry.frame", what, source);
  }

  @ParameterizedTest
  @CsvSource({
    "3, 0.4330",
    "4, 1.0000",
    "5, 1.7205",
    "6, 2.5981",
    "7, 3.6339",
    "8, 4.8284",
    "9, 6.1818",
    "10, 7.6942",
    "11, 9.3656",
    "12, 11.1961"
  })
  void areaAgreesWithThePrintedTable(int n, double area) {
    // The twelve-gon is cut off in print (11.1961 for 11.19615), hence 1e-4 and not half of it.
    check("regular " + n + "-gon: area / side²", TestSources.TOOLBOX_POLYGONS)
        .expect(area)
        .within(1e-4)
        .got(new RegularPolygon(n, 1).area());
  }

  @Test
  void twelveGonIsCutNotRoundedInPrint() {
    assertThat(new RegularPolygon(12, 1).area()).isCloseTo(11.19615, within(5e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "7, 1.152382, 1.038261", "8, 1.306563, 1.207107", "9, 1.461902, 1.373739",
    "10, 1.618034, 1.538842", "11, 1.774733, 1.702844", "12, 1.931852, 1.866025"
  })
  void radiiAgreeWithThePrintedTable(int n, double circumradius, double inradius) {
    RegularPolygon polygon = new RegularPolygon(n, 1);
    check("regular " + n + "-gon: circumradius / side", TestSources.POLYGON_TABLE)
        .expect(circumradius)
        .within(1e-6)
        .got(polygon.circumradius());
    check("regular " + n + "-gon: inradius / side", TestSources.POLYGON_TABLE)
        .expect(inradius)
        .within(1e-6)
        .got(polygon.inradius());
  }

  @ParameterizedTest
  @CsvSource({
    "3, 0.433013, 0.577350, 0.288675, 60.0000", "4, 1.000000, 0.707107, 0.500000, 90.0000",
    "5, 1.720477, 0.850651, 0.688191, 108.0000", "6, 2.598076, 1.000000, 0.866025, 120.0000",
    "7, 3.633912, 1.152382, 1.038261, 128.5714", "11, 9.365640, 1.774733, 1.702844, 147.2727"
  })
  void allAgreesWithTheHandbookTable(int n, double area, double out, double in, double degrees) {
    RegularPolygon polygon = new RegularPolygon(n, 1);
    check("regular " + n + "-gon, side 1: area", TestSources.CRC_TABLE)
        .expect(area)
        .within(6e-7)
        .got(polygon.area());
    check("regular " + n + "-gon, side 1: circumradius", TestSources.CRC_TABLE)
        .expect(out)
        .within(6e-7)
        .got(polygon.circumradius());
    check("regular " + n + "-gon, side 1: inradius", TestSources.CRC_TABLE)
        .expect(in)
        .within(6e-7)
        .got(polygon.inradius());
    check("regular " + n + "-gon: interior angle, degrees", TestSources.CRC_TABLE)
        .expect(degrees)
        .within(6e-5)
        .got(Math.toDegrees(polygon.interiorAngle()));
  }

  @Test
  void hexagonOfUnitCircle() {
    RegularPolygon hexagon = RegularPolygon.ofCircumradius(6, 1);
    check("hexagon, R = 1: side", TestSources.HEXAGON).expect(1).within(1e-7).got(hexagon.side());
    check("hexagon, R = 1: inradius", TestSources.HEXAGON)
        .expect(0.8660254)
        .within(1e-7)
        .got(hexagon.inradius());
    check("hexagon, R = 1: perimeter", TestSources.HEXAGON)
        .expect(6)
        .within(1e-7)
        .got(hexagon.perimeter());
    check("hexagon, R = 1: area", TestSources.HEXAGON)
        .expect(2.5980762)
        .within(1e-7)
        .got(hexagon.area());
  }

  /** A public roof page prints the inradius as S / (2 tan(360°/N)). */
  @Test
  void inradiusIsNotThatOfTheFullCentralAngle() {
    RegularPolygon octagon = new RegularPolygon(8, 1);
    assertThat(octagon.inradius()).isNotCloseTo(1 / (2 * Math.tan(2 * Math.PI / 8)), within(0.5));
    assertThat(octagon.inradius()).isCloseTo(octagon.chord(3) / 2, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 9, 10, 63, 64})
  void acrossFlatsAndCornersAreWhatATapeReads(int n) {
    RegularPolygon polygon = new RegularPolygon(n, 1.3);
    double longest = 0;
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < n; k++) {
      longest = Math.max(longest, k == 0 ? 0 : polygon.chord(k));
      // A side lies square below the centre; heights of the corners above it.
      double up = -polygon.circumradius() * Math.cos(Math.PI / n + 2 * Math.PI * k / n);
      lowest = Math.min(lowest, up);
      highest = Math.max(highest, up);
    }
    assertThat(polygon.acrossCorners()).isCloseTo(longest, within(1e-12));
    assertThat(polygon.acrossFlats()).isCloseTo(highest - lowest, within(1e-12));
  }

  @Test
  void badInputIsNamed() {
    assertThatThrownBy(() -> new RegularPolygon(2, 1))
        .hasMessage("number of sides: given 2, must be from 3 to 64");
    assertThatThrownBy(() -> new RegularPolygon(65, 1)).hasMessageContaining("65");
    assertThatThrownBy(() -> new RegularPolygon(6, Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> RegularPolygon.ofInradius(6, -1))
        .hasMessage("inradius: given -1 m, must be greater than 0 m");
    assertThatThrownBy(() -> new RegularPolygon(6, 1).chord(6)).hasMessageContaining("1 to 5");
  }
}
