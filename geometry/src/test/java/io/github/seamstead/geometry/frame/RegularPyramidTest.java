package io.github.seamstead.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RegularPyramidTest {

  private static OutsideCheck check(String what, Source source) {
    return OutsideCheck.of("geometry.frame", what, source);
  }

  private static FrameMeasures ofHeight(int n, double height) {
    return RegularPyramid.ofBaseSideAndHeight(n, 1, height).measures();
  }

  @Test
  void tetrahedron() {
    FrameMeasures m = ofHeight(3, Math.sqrt(2.0 / 3));
    check("tetrahedron: dihedral, degrees", TestSources.TETRAHEDRON)
        .expect(70.528779)
        .within(1e-6)
        .got(Math.toDegrees(m.hipDihedral()));
    check("tetrahedron: base dihedral, degrees", TestSources.TETRAHEDRON)
        .expect(70.528779)
        .within(1e-6)
        .got(Math.toDegrees(m.baseDihedral()));
    check("tetrahedron: volume", TestSources.JOHNSON).expect(0.117851).within(1e-6).got(m.volume());
    check("tetrahedron: surface", TestSources.JOHNSON)
        .expect(1.732051)
        .within(1e-6)
        .got(m.coverArea() + m.baseArea());
    check("tetrahedron: hip slope, degrees", TestSources.JOHNSON)
        .expect(54.7356)
        .within(6e-5)
        .got(Math.toDegrees(m.hipSlope()));
    assertThat(m.hipEdge()).isCloseTo(1, within(1e-12));
  }

  @Test
  void squarePyramidOfEquilateralFaces() {
    FrameMeasures m = ofHeight(4, Math.sqrt(0.5));
    check("J1: dihedral face-face, degrees", TestSources.J1)
        .expect(109.47)
        .within(0.005)
        .got(Math.toDegrees(m.hipDihedral()));
    check("J1: dihedral face-base, degrees", TestSources.J1)
        .expect(54.74)
        .within(0.005)
        .got(Math.toDegrees(m.baseDihedral()));
    check("J1: slant height", TestSources.JOHNSON)
        .expect(0.866025)
        .within(1e-6)
        .got(m.slantHeight());
    check("J1: volume", TestSources.J1).expect(0.235702).within(1e-6).got(m.volume());
    check("J1: surface", TestSources.J1)
        .expect(2.732051)
        .within(1e-6)
        .got(m.coverArea() + m.baseArea());
    check("J1: hip slope, degrees", TestSources.JOHNSON)
        .expect(45)
        .within(1e-9)
        .got(Math.toDegrees(m.hipSlope()));
    check("J8: height", TestSources.J8).expect(1.707).within(5e-4).got(1 + m.apexHeight());
    check("J8: volume", TestSources.J8).expect(1.236).within(5e-4).got(1 + m.volume());
    check("J8: triangle-to-wall dihedral, degrees", TestSources.J8)
        .expect(144.74)
        .within(0.005)
        .got(90 + Math.toDegrees(m.baseDihedral()));
  }

  @Test
  void pentagonalPyramidOfEquilateralFaces() {
    FrameMeasures m =
        FrameSolver.solve(
                5, java.util.Map.of(PyramidMeasure.BASE_SIDE, 1.0, PyramidMeasure.HIP_EDGE, 1.0))
            .single()
            .measures();
    check("J2: height", TestSources.J2).expect(0.52573).within(1e-5).got(m.apexHeight());
    check("J2: volume", TestSources.J2).expect(0.30150).within(1e-5).got(m.volume());
    check("J2: surface", TestSources.J2)
        .expect(3.88554)
        .within(1e-5)
        .got(m.coverArea() + m.baseArea());
    check("J2: dihedral face-face, degrees", TestSources.J9)
        .expect(138.19)
        .within(0.005)
        .got(Math.toDegrees(m.hipDihedral()));
    check("J2: hip slope, degrees", TestSources.JOHNSON)
        .expect(31.7175)
        .within(6e-5)
        .got(Math.toDegrees(m.hipSlope()));
    check("J9: volume", TestSources.J9).expect(2.022).within(5e-4).got(m.volume() + m.baseArea());
    check("J9: triangle-to-wall dihedral, degrees", TestSources.J9)
        .expect(127.37)
        // Printed cut off: 90° + 37.3774°.
        .within(0.01)
        .got(90 + Math.toDegrees(m.baseDihedral()));
  }

  @ParameterizedTest
  @CsvSource({
    "30,3,0.166667,0.333333,0.600925,112.6199,33.6901,128.6822,16.1021,0.500000,0.024056",
    "30,4,0.288675,0.577350,0.763763,81.7868,49.1066,138.5904,22.2077,1.154701,0.096225",
    "30,5,0.397327,0.794654,0.938869,64.3566,57.8217,145.8177,25.0366,1.986636,0.227864",
    "30,6,0.500000,1.000000,1.118034,53.1301,63.4349,151.0450,26.5651,3.000000,0.433013",
    "30,7,0.599440,1.198880,1.298966,45.2777,67.3611,154.9410,27.4823,4.196081,0.726104",
    "30,8,0.696923,1.393847,1.480814,39.4678,70.2661,157.9378,28.0756,5.575387,1.121681",
    "30,9,0.793128,1.586257,1.663193,34.9905,72.5048,160.3069,28.4812,7.138156,1.634327",
    "30,10,0.888451,1.776901,1.845909,31.4320,74.2840,162.2234,28.7709,8.884507,2.278642",
    "30,11,0.983137,1.966274,2.028851,28.5345,75.7328,163.8040,28.9849,10.814509,3.069236",
    "30,12,1.077350,2.154701,2.211953,26.1286,76.9357,165.1291,29.1474,12.928203,4.020726",
    "45,4,0.500000,0.707107,0.866025,70.5288,54.7356,120.0000,35.2644,1.414214,0.166667",
    "45,5,0.688191,0.973249,1.094173,54.3830,62.8085,130.8824,38.9734,2.433122,0.394672",
    "45,6,0.866025,1.224745,1.322876,44.4153,67.7923,138.5904,40.8934,3.674235,0.750000",
    "45,8,1.207107,1.707107,1.778824,32.6499,73.6751,148.6003,42.7342,6.828427,1.942809",
    "45,10,1.538842,2.176251,2.232951,25.8786,77.0607,154.7572,43.5630,10.881254,3.946723",
    "45,12,1.866025,2.638958,2.685908,21.4572,79.2714,158.9094,44.0070,15.833751,6.964102"
  })
  void regressionTableByFaceSlope(
      double slope,
      int n,
      double height,
      double slant,
      double hip,
      double apex,
      double base,
      double dihedral,
      double hipSlope,
      double area,
      double volume) {
    FrameMeasures m =
        FrameSolver.solve(
                n,
                java.util.Map.of(
                    PyramidMeasure.BASE_SIDE,
                    1.0,
                    PyramidMeasure.FACE_SLOPE,
                    Math.toRadians(slope)))
            .single()
            .measures();
    String what = "side 1, n = " + n + ", face slope " + (int) slope + "°: ";
    regression(what + "height").expect(height).within(6e-7).got(m.apexHeight());
    regression(what + "slant height").expect(slant).within(6e-7).got(m.slantHeight());
    regression(what + "hip edge").expect(hip).within(6e-7).got(m.hipEdge());
    regression(what + "apex angle, degrees").expect(apex).within(6e-5).got(deg(m.apexAngle()));
    regression(what + "base angle, degrees").expect(base).within(6e-5).got(deg(m.baseAngle()));
    regression(what + "dihedral, degrees").expect(dihedral).within(6e-5).got(deg(m.hipDihedral()));
    regression(what + "hip slope, degrees").expect(hipSlope).within(6e-5).got(deg(m.hipSlope()));
    regression(what + "cover area").expect(area).within(6e-7).got(m.coverArea());
    regression(what + "volume").expect(volume).within(6e-7).got(m.volume());
  }

  private static OutsideCheck regression(String what) {
    return check(what, TestSources.REGRESSION);
  }

  private static double deg(double radians) {
    return Math.toDegrees(radians);
  }

  @Test
  void decagonOfSixMetresAcrossFlats() {
    RegularPyramid pyramid =
        FrameSolver.solve(
                10,
                java.util.Map.of(
                    PyramidMeasure.ACROSS_FLATS, 6.0, PyramidMeasure.FACE_SLOPE, Math.PI / 6))
            .single();
    FrameMeasures m = pyramid.measures();
    String what = "decagon, 6 m across flats, 30°: ";
    regression(what + "side, m").expect(1.949518).within(6e-7).got(pyramid.baseSide());
    regression(what + "circumradius, m").expect(3.154387).within(6e-7).got(m.circumradius());
    regression(what + "height, m").expect(1.732051).within(6e-7).got(m.apexHeight());
    regression(what + "slant height, m").expect(3.464102).within(6e-7).got(m.slantHeight());
    regression(what + "hip edge, m").expect(3.598632).within(6e-7).got(m.hipEdge());
    regression(what + "apex angle, degrees").expect(31.43201).within(6e-6).got(deg(m.apexAngle()));
    regression(what + "cloth, m²").expect(33.766645).within(6e-7).got(m.coverArea());
    regression(what + "floor, m²").expect(29.242773).within(6e-7).got(m.baseArea());
    regression(what + "volume, m³").expect(16.883323).within(6e-7).got(m.volume());
  }

  @Test
  void frustumVolumes() {
    check("square frustum, base 4, top 2, height 6: volume", TestSources.PAPYRUS)
        .expect(56)
        .within(1e-12)
        .got(RegularPyramid.ofRings(4, 4, 2, 6).measures().volume());
    check("square frustum, base 4, top 2, height 3: volume", TestSources.REGRESSION)
        .expect(28)
        .within(1e-12)
        .got(RegularPyramid.ofRings(4, 4, 2, 3).measures().volume());
  }

  @Test
  void manySidesComeCloseToTheCone() {
    FrameMeasures m =
        new RegularPyramid(64, RegularPolygon.ofCircumradius(64, 2).side(), 2, 0).measures();
    check("cone of point angle 90°: sector angle, degrees", TestSources.CONE)
        .expect(254.6)
        .within(0.05)
        .got(deg(m.coneAngle()));
    assertThat(deg(m.developedAngle())).isBetween(254.4, deg(m.coneAngle()));
  }

  @ParameterizedTest
  @CsvSource({"3, 4, 216.000", "5, 12, 138.462", "1, 1, 254.558"})
  void coneSectors(double radius, double height, double sector) {
    RegularPyramid pyramid =
        RegularPyramid.ofBaseSideAndHeight(
            32, RegularPolygon.ofCircumradius(32, radius).side(), height);
    regression("cone R " + radius + ", H " + height + ": sector angle, degrees")
        .expect(sector)
        .within(5e-4)
        .got(deg(pyramid.measures().coneAngle()));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.4})
  void measuresCanBeFollowedStepByStep(double opening) {
    for (int n : new int[] {3, 8, 11, 64}) {
      RegularPyramid pyramid = new RegularPyramid(n, 1.7, 2.3, opening);
      StepRecorder recorder = new StepRecorder();
      FrameMeasures worked = pyramid.measures(recorder);
      assertThat(worked).isEqualTo(pyramid.measures());
      DerivationChecks.assertFollowsTo(
          recorder.derivation("geometry.frame.measures", "Measures"), worked.coverArea());
    }
  }

  @Test
  void openingByEachMeasureIsTheSame() {
    RegularPyramid whole = RegularPyramid.ofBaseSideAndHeight(7, 2, 3);
    RegularPyramid cut = whole.withOpeningSide(0.5);
    RegularPolygon ring = cut.opening().orElseThrow();
    assertThat(whole.withOpeningAtHeight(cut.frameHeight()).openingSide())
        .isCloseTo(0.5, within(1e-12));
    assertThat(whole.withOpeningCircumradius(ring.circumradius()).openingSide())
        .isCloseTo(0.5, within(1e-12));
    assertThat(whole.withOpeningInradius(ring.inradius()).openingSide())
        .isCloseTo(0.5, within(1e-12));
    assertThat(RegularPyramid.ofRings(7, 2, 0.5, cut.frameHeight()).apexHeight())
        .isCloseTo(3, within(1e-12));
    assertThat(RegularPyramid.ofRingsAndHip(7, 2, 0.5, cut.measures().hipLength()).apexHeight())
        .isCloseTo(3, within(1e-12));
    assertThat(cut.whole()).isEqualTo(whole);
    assertThat(whole.planAt(cut.frameHeight()).side()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void badInputIsNamed() {
    RegularPyramid whole = RegularPyramid.ofBaseSideAndHeight(7, 2, 3);
    assertThatThrownBy(() -> whole.withOpeningSide(2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("opening side: given 2 m, must be less than the base side of 2 m");
    assertThatThrownBy(() -> whole.withOpeningCircumradius(5))
        .hasMessageContaining("opening circumradius: given 5 m, must be less than the base");
    assertThatThrownBy(() -> whole.withOpeningInradius(Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> whole.withOpeningAtHeight(3))
        .hasMessage("height of the cut: given 3 m, must be less than the apex height of 3 m");
    assertThatThrownBy(() -> whole.planAt(-0.1)).hasMessageContaining("given -0.1 m");
    assertThatThrownBy(() -> new RegularPyramid(7, 2, 3, -1)).hasMessageContaining("given -1 m");
    assertThatThrownBy(() -> new RegularPyramid(7, 2, 3, Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> new RegularPyramid(7, 2, 3, 1e-9))
        .hasMessageContaining("at least 0.000001 m");
    assertThatThrownBy(() -> new RegularPyramid(7, 2, 0, 0)).hasMessageContaining("apex height");
    assertThatThrownBy(() -> RegularPyramid.ofRings(6, 1, 2, 1)).hasMessageContaining("less than");
    assertThatThrownBy(() -> RegularPyramid.ofRingsAndHip(6, 2, 1, 0.9))
        .hasMessage(
            "hip length: given 0.9 m, must be more than the 1 m by which the base ring lies outside"
                + " the opening ring");
  }
}
