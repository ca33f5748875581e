package io.github.seamstead.geometry.frame;

import static io.github.seamstead.geometry.frame.PyramidMeasure.ACROSS_FLATS;
import static io.github.seamstead.geometry.frame.PyramidMeasure.APEX_ANGLE;
import static io.github.seamstead.geometry.frame.PyramidMeasure.BASE_SIDE;
import static io.github.seamstead.geometry.frame.PyramidMeasure.CIRCUMRADIUS;
import static io.github.seamstead.geometry.frame.PyramidMeasure.COVER_AREA;
import static io.github.seamstead.geometry.frame.PyramidMeasure.FACE_SLOPE;
import static io.github.seamstead.geometry.frame.PyramidMeasure.HEIGHT;
import static io.github.seamstead.geometry.frame.PyramidMeasure.HIP_EDGE;
import static io.github.seamstead.geometry.frame.PyramidMeasure.HIP_SLOPE;
import static io.github.seamstead.geometry.frame.PyramidMeasure.SLANT_HEIGHT;
import static io.github.seamstead.geometry.frame.PyramidMeasure.VOLUME;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.frame.FrameSolution.Determination;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FrameSolverTest {

  @ParameterizedTest
  @ValueSource(ints = {6, 7, 12, 64})
  void equilateralFacesDoNotExistFromSixSidesOn(int n) {
    FrameSolution solution = FrameSolver.solve(n, Map.of(BASE_SIDE, 1.0, HIP_EDGE, 1.0));
    assertThat(solution.determination()).isEqualTo(Determination.NONE);
    assertThat(solution.reasons()).hasSize(1);
    assertThatThrownBy(solution::single).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void slantAndVolumeHaveTwoPyramids() {
    FrameSolution solution = FrameSolver.solve(8, Map.of(SLANT_HEIGHT, 3.0, VOLUME, 8.0));
    assertThat(solution.determination()).isEqualTo(Determination.TWO);
    RegularPyramid flat = solution.candidates().get(0).pyramid();
    RegularPyramid steep = solution.candidates().get(1).pyramid();
    assertThat(flat.apexHeight()).isLessThan(steep.apexHeight());
    assertThat(flat.measures().volume()).isCloseTo(8, within(1e-11));
    assertThat(steep.measures().volume()).isCloseTo(8, within(1e-11));
    assertThat(solution.reasons().get(0))
        .startsWith("Two pyramids have this slant height and volume: base side ")
        .endsWith("; one further measure decides.");
    assertThatThrownBy(solution::single).hasMessageContaining("Two pyramids");
    FrameSolution decided =
        FrameSolver.solve(
            8, Map.of(SLANT_HEIGHT, 3.0, VOLUME, 8.0, HEIGHT, round(steep.apexHeight())));
    assertThat(decided.single().apexHeight()).isCloseTo(steep.apexHeight(), within(0.01));
  }

  private static double round(double metres) {
    return Math.round(metres * 1000) / 1000.0;
  }

  @Test
  void whereTwoPyramidsTouchThereIsOneAndARemark() {
    // The greatest volume for a slant height stands at H = s / sqrt(3).
    RegularPyramid greatest =
        RegularPyramid.ofBaseSideAndHeight(
            8, RegularPolygon.ofInradius(8, Math.sqrt(2.0 / 3)).side(), Math.sqrt(1.0 / 3));
    FrameSolution solution =
        FrameSolver.solve(8, Map.of(SLANT_HEIGHT, 1.0, VOLUME, greatest.measures().volume()));
    assertThat(solution.single().apexHeight()).isCloseTo(Math.sqrt(1.0 / 3), within(1e-6));
    assertThat(solution.candidates().get(0).magnification()).isInfinite();
    assertThat(solution.reasons().get(0)).contains("barely determine").contains("touch");
  }

  @Test
  void tooMuchVolumeIsRefusedWithTheGreatest() {
    FrameSolution solution = FrameSolver.solve(4, Map.of(SLANT_HEIGHT, 1.0, VOLUME, 2.0));
    // V = 4/3 (s² - H²) H, greatest 4/3 · 2/3 · sqrt(1/3).
    assertThat(solution.reasons())
        .containsExactly(
            "volume: given 2 m3, can be at most 0.5132002 m3 with a slant height of 1 m.");
    assertThat(FrameSolver.solve(4, Map.of(COVER_AREA, 1.0, VOLUME, 2.0)).reasons().get(0))
        .startsWith("volume: given 2 m3, a cover of 1 m2 encloses at most ");
    assertThat(FrameSolver.solve(4, Map.of(COVER_AREA, 9.0, HIP_EDGE, 1.0)).reasons())
        .containsExactly("cover area: given 9 m2, can be at most 2 m2 with a hip edge of 1 m.");
  }

  @Test
  void impossiblePairsSayWhy() {
    assertThat(FrameSolver.solve(4, Map.of(HEIGHT, 2.0, SLANT_HEIGHT, 1.5)).reasons())
        .containsExactly("slant height: given 1.5 m, must be more than the height of 2 m.");
    assertThat(FrameSolver.solve(4, Map.of(HIP_EDGE, 2.0, SLANT_HEIGHT, 2.5)).reasons())
        .containsExactly("hip edge: given 2 m, must be more than the slant height of 2.5 m.");
    assertThat(FrameSolver.solve(6, Map.of(CIRCUMRADIUS, 2.0, HIP_EDGE, 1.5)).reasons())
        .containsExactly("hip edge: given 1.5 m, must be more than the circumradius of 2 m.");
    assertThat(FrameSolver.solve(4, Map.of(HIP_EDGE, 1.0, COVER_AREA, 1.9999)).determination())
        .isEqualTo(Determination.ONE);
  }

  @Test
  void measuresThatBarelyDetermineAreNamed() {
    // With 64 sides slant and hip differ by a thousandth: their difference carries the whole base.
    RegularPyramid pyramid = RegularPyramid.ofBaseSideAndHeight(64, 0.3, 3);
    FrameSolution solution =
        FrameSolver.solve(
            64, Map.of(SLANT_HEIGHT, SLANT_HEIGHT.of(pyramid), HIP_EDGE, HIP_EDGE.of(pyramid)));
    assertThat(solution.reasons()).hasSize(1);
    assertThat(solution.reasons().get(0))
        .startsWith("slant height and hip edge barely determine the pyramid: an error of 1 %")
        .endsWith("measure the base and the height as well.");
    FrameSolution better =
        FrameSolver.solve(
            64,
            Map.of(
                SLANT_HEIGHT,
                SLANT_HEIGHT.of(pyramid),
                HIP_EDGE,
                HIP_EDGE.of(pyramid),
                HEIGHT,
                3.0));
    assertThat(better.reasons()).isEmpty();
  }

  @Test
  void magnificationIsWhatAnErrorDoes() {
    RegularPyramid pyramid = RegularPyramid.ofBaseSideAndHeight(9, 1, 0.8);
    for (PyramidMeasure first : PyramidMeasure.values()) {
      for (PyramidMeasure second : PyramidMeasure.values()) {
        if (first.isIndependentOf(second)) {
          double x = first.of(pyramid);
          double y = second.of(pyramid);
          double small = 1e-7;
          FrameSolution exact = FrameSolver.solve(9, Map.of(first, x, second, y));
          double grown = 0;
          double claimed = nearest(exact, pyramid).magnification();
          for (int which = 0; which < 2; which++) {
            FrameSolution off =
                FrameSolver.solve(
                    9,
                    Map.of(
                        first,
                        which == 0 ? x * (1 + small) : x,
                        second,
                        which == 1 ? y * (1 + small) : y));
            RegularPyramid moved = nearest(off, pyramid).pyramid();
            grown =
                Math.max(
                    grown,
                    Math.max(
                            Math.abs(moved.baseSide() / pyramid.baseSide() - 1),
                            Math.abs(moved.apexHeight() / pyramid.apexHeight() - 1))
                        / small);
          }
          assertThat(grown).as("%s, %s", first, second).isCloseTo(claimed, within(1e-2 * claimed));
        }
      }
    }
  }

  private static FrameSolution.Candidate nearest(FrameSolution solution, RegularPyramid pyramid) {
    return solution.candidates().stream()
        .min(
            java.util.Comparator.comparingDouble(
                c -> Math.abs(c.pyramid().apexHeight() - pyramid.apexHeight())))
        .orElseThrow();
  }

  @Test
  void contradictingMeasuresAreNamed() {
    FrameSolution solution =
        FrameSolver.solve(6, Map.of(BASE_SIDE, 2.0, HEIGHT, 2.0, SLANT_HEIGHT, 3.1));
    assertThat(solution.determination()).isEqualTo(Determination.NONE);
    assertThat(solution.reasons())
        .containsExactly(
            "slant height: given 3.1 m, but base side and height make it 2.645751 m (17.2 % apart,"
                + " at most 0.5 % allowed).");
  }

  @Test
  void oneWrongMeasureAmongFourIsNamed() {
    // Across flats 3.464, slant 2.645751: base side, height and slant agree, the hip is misread.
    FrameSolution solution =
        FrameSolver.solve(
            6, Map.of(BASE_SIDE, 2.0, HEIGHT, 2.0, SLANT_HEIGHT, 2.646, HIP_EDGE, 2.5));
    assertThat(solution.determination()).isEqualTo(Determination.NONE);
    assertThat(solution.reasons()).hasSize(1);
    assertThat(solution.reasons().get(0)).startsWith("hip edge: given 2.5 m, but ");
  }

  @Test
  void tooFewMeasuresSayWhatIsMissing() {
    assertThat(FrameSolver.solve(6, Map.of()).reasons())
        .containsExactly("measures: given none, must be two independent ones.");
    assertThat(FrameSolver.solve(6, Map.of(HEIGHT, 2.0)).reasons())
        .containsExactly("measures: given only the height, must be two independent ones.");
    FrameSolution plan = FrameSolver.solve(6, Map.of(BASE_SIDE, 2.0, CIRCUMRADIUS, 2.0));
    assertThat(plan.determination()).isEqualTo(Determination.TOO_FEW);
    assertThat(plan.reasons().get(0)).contains("all of the plan alone");
    FrameSolution angles = FrameSolver.solve(6, Map.of(FACE_SLOPE, 0.5, HIP_SLOPE, 0.444));
    assertThat(angles.reasons().get(0)).contains("leave the size open");
    assertThat(angles.determination()).isEqualTo(Determination.TOO_FEW);
  }

  @Test
  void measuresOfOneKindThatContradictAreNamed() {
    FrameSolution solution = FrameSolver.solve(6, Map.of(BASE_SIDE, 2.0, ACROSS_FLATS, 4.0));
    assertThat(solution.determination()).isEqualTo(Determination.NONE);
    assertThat(solution.reasons()).hasSize(2);
    assertThat(solution.reasons().get(1)).startsWith("distance across flats: given 4 m, but ");
  }

  @Test
  void badValuesAreNamed() {
    assertThatThrownBy(() -> FrameSolver.solve(2, Map.of()))
        .hasMessage("number of sides: given 2, must be from 3 to 64");
    assertThatThrownBy(() -> FrameSolver.solve(6, Map.of(HEIGHT, -1.0)))
        .hasMessage("height: given -1 m, must be greater than 0 m");
    assertThatThrownBy(() -> FrameSolver.solve(6, Map.of(HEIGHT, Double.NaN)))
        .hasMessageContaining("NaN");
    assertThatThrownBy(() -> FrameSolver.solve(6, Map.of(FACE_SLOPE, 30.0)))
        .hasMessageContaining("face slope: given 30 rad, must be more than 0 rad and less than");
    assertThatThrownBy(() -> FrameSolver.solve(6, Map.of(APEX_ANGLE, 1.1)))
        .hasMessageContaining("apex angle of a face: given 1.1 rad");
    assertThatThrownBy(() -> FrameSolver.solve(6, Map.of(HEIGHT, 1e300)))
        .hasMessageContaining("height");
  }
}
