package io.github.seamstead.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.members.CompoundCut;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The framing square's figures: a pyramid whose inradius is the run of 12 in. */
class FramingSquareTest {

  private static final Source NAVY =
      Source.found("US Navy", "Builder 3 & 2, vol. 2, NAVEDTRA 14044", "", "chapter 2");
  private static final Source ARMY =
      Source.found("US Army", "Carpentry manual EN0069", "", "fig. 2-14");
  private static final Source GRIFFITH =
      Source.found("Ira S. Griffith", "Carpentry", "1916", "sec. 38");
  private static final Source RADFORD =
      Source.found("Radford", "Cyclopedia of Construction, vol. 3", "", "roof framing");
  private static final Source METRIC =
      Source.found("basiccarpentrytechniques.com", "Framing hip roofs", "", "38 mm stock");
  private static final Source DERIVED =
      Source.derived("12 / cos(π/n) and 12 tan(π/n), computed apart from the project");

  private static OutsideCheck check(String what, Source source) {
    return OutsideCheck.of("geometry.frame", what, source);
  }

  private static FrameMeasures run(int n, double run, double rise) {
    return RegularPyramid.ofBaseSideAndHeight(n, RegularPolygon.ofInradius(n, run).side(), rise)
        .measures();
  }

  @Test
  void navyCommonAndHip() {
    check("common rafter, rise 7 in 12, in per foot of run", NAVY)
        .expect(13.89)
        .within(0.005)
        .got(run(4, 12, 7).slantHeight());
    check("common rafter, rise 7 in 12, span 16 ft, in", NAVY)
        .expect(111.125)
        .within(1.0 / 16)
        .got(run(4, 8 * 12, 8 * 7).slantHeight());
    check("hip run, square plan, 12 in common", NAVY)
        .expect(16.97)
        .within(0.005)
        .got(run(4, 12, 8).circumradius());
    check("hip, rise 8 in, in per foot of common run", NAVY)
        .expect(18.76)
        .within(0.005)
        .got(run(4, 12, 8).hipEdge());
    check("hip line, common run 15 ft, rise 10 ft, ft", NAVY)
        .expect(23.45)
        .within(0.005)
        .got(run(4, 15, 10).hipEdge());
    check("hip, total run 21.21 ft, ft", NAVY)
        .expect(21.21)
        .within(0.005)
        .got(run(4, 15, 10).circumradius());
  }

  @Test
  void armyCommon() {
    check("common rafter, rise 13 in, in per foot of run", ARMY)
        .expect(17.69)
        .within(0.005)
        .got(run(4, 12, 13).slantHeight());
    check("common rafter, rise 16 in, in per foot of run", ARMY)
        .expect(20.00)
        .within(0.005)
        .got(run(4, 12, 16).slantHeight());
  }

  @Test
  void octagonFigures() {
    FrameMeasures octagon = run(8, 12, 10);
    check("octagon: hip run per 12 in", GRIFFITH)
        .expect(13)
        .withinRatio(0.001)
        .got(octagon.circumradius());
    check("octagon: plate tangent per 12 in", GRIFFITH)
        .expect(5)
        .withinRatio(0.006)
        .got(octagon.base().side() / 2);
    check("rise 10 in 12: square hip, in (17 & 10)", RADFORD)
        .expect(Math.hypot(17, 10))
        .within(0.05)
        .got(run(4, 12, 10).hipEdge());
    check("rise 10 in 12: octagon hip, in (13 & 10)", RADFORD)
        .expect(Math.hypot(13, 10))
        .within(0.05)
        .got(octagon.hipEdge());
    CompoundCut cheek = CompoundCut.cheekOnEdge(4, run(4, 12, 10).hipSlope());
    check("rise 10 in 12: side cut of the square hip, 17 on 19 3/4", RADFORD)
        .expect(17 / 19.75)
        .within(0.003)
        .got(1 / Math.tan(cheek.mitre()));
  }

  /** Radford prints 15 7/12 for the common rafter of 10 in rise; it is 15.62. */
  @Test
  void radfordsTwelfthsAreNotReproduced() {
    assertThat(run(4, 12, 10).slantHeight())
        .isCloseTo(15.62, within(0.005))
        .isNotCloseTo(15 + 7.0 / 12, within(0.03));
  }

  /** An octagon framed with the square hip's 16.97 in does not close. */
  @Test
  void squareHipFiguresDoNotFitAnOctagon() {
    assertThat(run(8, 12, 10).circumradius()).isNotCloseTo(16.97, within(3.9));
  }

  @Test
  void shorteningAtTheTop() {
    check("hip against 38 mm stock at 45°, mm", METRIC)
        .expect(26.87)
        .within(0.005)
        .got(1000 * CompoundCut.shortening(0.038, Math.PI / 4));
    check("hip against stock t at 45°, over t", NAVY.at("rafter shortening allowance"))
        .expect(Math.sqrt(2) / 2)
        .within(1e-12)
        .got(CompoundCut.shortening(1, Math.PI / 4));
  }

  @ParameterizedTest
  @CsvSource({
    "3, 24.0000, 20.7846", "4, 16.9706, 12.0000", "5, 14.8328, 8.7185", "6, 13.8564, 6.9282",
    "7, 13.3190, 5.7789", "8, 12.9887, 4.9706", "9, 12.7701, 4.3676", "10, 12.6175, 3.8990",
    "11, 12.5066, 3.5235", "12, 12.4233, 3.2154"
  })
  void hipRunAndPlateTangent(int n, double hipRun, double tangent) {
    RegularPolygon plan = RegularPolygon.ofInradius(n, 12);
    check(n + " sides: hip run per 12 in", DERIVED)
        .expect(hipRun)
        .within(6e-5)
        .got(plan.circumradius());
    check(n + " sides: plate tangent per 12 in", DERIVED)
        .expect(tangent)
        .within(6e-5)
        .got(plan.side() / 2);
  }
}
