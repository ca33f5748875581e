package io.github.seamstead.geometry.frame;

import static io.github.seamstead.geometry.frame.PyramidMeasure.BASE_SIDE;
import static io.github.seamstead.geometry.frame.PyramidMeasure.COVER_AREA;
import static io.github.seamstead.geometry.frame.PyramidMeasure.HEIGHT;
import static io.github.seamstead.geometry.frame.PyramidMeasure.HIP_EDGE;
import static io.github.seamstead.geometry.frame.PyramidMeasure.SLANT_HEIGHT;
import static io.github.seamstead.geometry.frame.PyramidMeasure.VOLUME;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.frame.FrameSolution.Determination;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pyramids whose measures a pencil gives, and limits that the refusals themselves name. */
class FrameByHandTest {

  /** A square pyramid of 4 m and 4 m high, cut off at half its height. */
  private static final FrameMeasures FRUSTUM = new RegularPyramid(4, 4, 4, 2).measures();

  private static final double SLANT = Math.sqrt(20);

  @Test
  void aSquareFrustum() {
    assertThat(FRUSTUM.faceHeight()).isCloseTo(SLANT / 2, within(1e-12));
    assertThat(FRUSTUM.openingSide()).isEqualTo(2);
    assertThat(FRUSTUM.openingInradius()).isCloseTo(1, within(1e-12));
    assertThat(FRUSTUM.openingCircumradius()).isCloseTo(Math.sqrt(2), within(1e-12));
    // A trapezium of 4 and 2 m.
    assertThat(FRUSTUM.faceArea()).isCloseTo(3 * SLANT / 2, within(1e-12));
    // The angles of a trapezium add to a whole turn.
    assertThat(FRUSTUM.topAngle() + FRUSTUM.baseAngle()).isCloseTo(Math.PI, within(1e-12));
    FrameMeasures whole = new RegularPyramid(4, 4, 4, 0).measures();
    // Those of a triangle to half of one.
    assertThat(whole.topAngle() + 2 * whole.baseAngle()).isCloseTo(Math.PI, within(1e-12));
    assertThat(whole.faceArea()).isCloseTo(2 * SLANT, within(1e-12));
  }

  @Test
  void aModelIsATenthOfItsShelter() {
    FrameMeasures model = new RegularPyramid(4, 0.4, 0.4, 0.2).measures();
    assertThat(ScaleModel.isOne(model)).isTrue();
    FrameMeasures full = ScaleModel.fullSize(model);
    assertThat(ScaleModel.isOne(full)).isFalse();
    double scale = full.frameHeight() / model.frameHeight();
    assertThat(scale).isGreaterThan(1);
    assertThat(full.acrossCorners()).isCloseTo(scale * model.acrossCorners(), within(1e-9));
    assertThat(full.openingSide()).isCloseTo(scale * model.openingSide(), within(1e-9));
    assertThat(full.faceArea()).isCloseTo(scale * scale * model.faceArea(), within(1e-9));
    assertThat(full.volume()).isCloseTo(scale * scale * scale * model.volume(), within(1e-9));
    assertThat(full.baseAngle()).isCloseTo(model.baseAngle(), within(1e-12));
    assertThat(ScaleModel.isOne(FRUSTUM)).isFalse();
  }

  @Test
  void measuresAreEqualWhereTheirPyramidsAre() {
    FrameMeasures same = new RegularPyramid(4, 4, 4, 2).measures();
    FrameMeasures other = new RegularPyramid(4, 4, 5, 2).measures();
    assertThat(FRUSTUM).isEqualTo(same).hasSameHashCodeAs(same).isNotEqualTo(other);
    assertThat(FRUSTUM.hashCode()).isNotEqualTo(other.hashCode());
    assertThat(FRUSTUM.toString()).contains("4");
  }

  private static double most(String reason) {
    Matcher told = Pattern.compile("at most ([0-9.]+)").matcher(reason);
    assertThat(told.find()).as(reason).isTrue();
    return Double.parseDouble(told.group(1));
  }

  private static String refused(int sides, PyramidMeasure one, double with, PyramidMeasure much) {
    FrameSolution none = FrameSolver.solve(sides, Map.of(one, with, much, 1e5));
    assertThat(none.determination()).isEqualTo(Determination.NONE);
    return none.reasons().get(0);
  }

  /** What a refusal calls the most can be built, and a thousandth more cannot. */
  @ParameterizedTest
  @ValueSource(ints = {3, 5, 8, 12})
  void theMostThatIsToldIsTheMost(int sides) {
    PyramidMeasure[][] pairs = {
      {SLANT_HEIGHT, VOLUME}, {HIP_EDGE, VOLUME}, {COVER_AREA, VOLUME}, {HIP_EDGE, COVER_AREA}
    };
    for (PyramidMeasure[] pair : pairs) {
      for (double with : new double[] {0.7, 3.1}) {
        double most = most(refused(sides, pair[0], with, pair[1]));
        FrameSolution less = FrameSolver.solve(sides, Map.of(pair[0], with, pair[1], most * 0.999));
        assertThat(less.determination())
            .as("%s %s", pair[0], pair[1])
            .isIn(Determination.ONE, Determination.TWO);
        for (FrameSolution.Candidate candidate : less.candidates()) {
          assertThat(pair[0].of(candidate.pyramid())).isCloseTo(with, within(1e-6));
          assertThat(pair[1].of(candidate.pyramid())).isCloseTo(most * 0.999, within(1e-6 * most));
        }
        assertThat(
                FrameSolver.solve(sides, Map.of(pair[0], with, pair[1], most * 1.001))
                    .determination())
            .isEqualTo(Determination.NONE);
      }
    }
  }

  /** Six hips of 1 m: the flat hexagon has 1.5 sqrt(3) m2, and nothing steeper has as much. */
  @Test
  void aCoverIsAtMostTheFlatPolygonOfItsHips() {
    for (double cover : new double[] {2.7, 50}) {
      assertThat(FrameSolver.solve(6, Map.of(HIP_EDGE, 1.0, COVER_AREA, cover)).reasons().get(0))
          .endsWith("can be at most 2.598076 m2 with a hip edge of 1 m.");
    }
    // Three hips: the faces are right angled where the cover is greatest, 3/2 m2.
    assertThat(FrameSolver.solve(3, Map.of(HIP_EDGE, 1.0, COVER_AREA, 1.6)).reasons().get(0))
        .endsWith("can be at most 1.5 m2 with a hip edge of 1 m.");
  }

  /** Solved by hand: hip 1 and cover 2 on a square touch at a flat roof, 1.9 has two of them. */
  @Test
  void aHipAndACoverMayHaveTwoPyramids() {
    // m = 1, n m = 4, w = 1.9/4: r^4 - r^2 + w^2 = 0.
    double w = 1.9 / 4;
    double root = Math.sqrt(1 - 4 * w * w);
    double wide = Math.sqrt((1 + root) / 2);
    double narrow = Math.sqrt((1 - root) / 2);
    FrameSolution solution = FrameSolver.solve(4, Map.of(HIP_EDGE, 1.0, COVER_AREA, 1.9));
    // The wide one has a slant height of w / r less than its inradius: flat, so it is no pyramid.
    assertThat(w / wide).isLessThan(wide);
    assertThat(solution.single().baseSide()).isCloseTo(2 * narrow, within(1e-9));
  }

  /** A pair is the weaker the more an error of one per cent moves the base: by differences. */
  @ParameterizedTest
  @EnumSource(PyramidMeasure.class)
  void magnificationIsThatOfSmallErrors(PyramidMeasure measure) {
    RegularPyramid pyramid = new RegularPyramid(7, 1.3, 1.9, 0);
    for (PyramidMeasure other : new PyramidMeasure[] {BASE_SIDE, HEIGHT}) {
      double[][] slopes = {slope(measure, pyramid), slope(other, pyramid)};
      double det = slopes[0][0] * slopes[1][1] - slopes[0][1] * slopes[1][0];
      if (Math.abs(det) < 1e-6) {
        continue;
      }
      double largest = 0;
      for (double[] row : slopes) {
        for (double one : row) {
          largest = Math.max(largest, Math.abs(one));
        }
      }
      assertThat(Sensitivity.magnification(measure, other, pyramid.measures()))
          .as("%s and %s", measure, other)
          .isCloseTo(largest / Math.abs(det), within(1e-4 * largest / Math.abs(det)));
    }
  }

  /** Relative change of a measure for one of the base and one of the height. */
  private static double[] slope(PyramidMeasure measure, RegularPyramid p) {
    double step = 1e-6;
    double now = Math.log(measure.of(p));
    RegularPyramid wider =
        new RegularPyramid(p.sides(), p.baseSide() * Math.exp(step), p.apexHeight(), 0);
    RegularPyramid higher =
        new RegularPyramid(p.sides(), p.baseSide(), p.apexHeight() * Math.exp(step), 0);
    return new double[] {
      (Math.log(measure.of(wider)) - now) / step, (Math.log(measure.of(higher)) - now) / step
    };
  }

  @Test
  void pyramidsBeyondAllMeasureAreRefused() {
    // A slope of one in a million and less is flat, and 1.37e6 m wide is no frame.
    assertThat(FrameSolver.solve(4, Map.of(HEIGHT, 1e-4, BASE_SIDE, 300.0)).determination())
        .isEqualTo(Determination.NONE);
    assertThat(FrameSolver.solve(4, Map.of(HEIGHT, 300.0, BASE_SIDE, 1e-4)).determination())
        .isEqualTo(Determination.NONE);
    assertThat(FrameSolver.solve(4, Map.of(HEIGHT, 7e5, SLANT_HEIGHT, 7e5 * 1.4)).determination())
        .as("1.37e6 m of base")
        .isEqualTo(Determination.NONE);
    assertThat(FrameSolver.solve(4, Map.of(HEIGHT, 4e5, SLANT_HEIGHT, 4e5 * 1.4)).determination())
        .isEqualTo(Determination.ONE);
  }

  @Test
  void ringsThatDoNotNestAreNamed() {
    assertThatThrownBy(() -> RegularPyramid.ofRingsAndHip(6, 1, 1.5, 3))
        .hasMessageContaining("opening side")
        .hasMessageContaining("must be less than the base side of 1 m");
    RegularPyramid hexagon = RegularPyramid.ofBaseSideAndHeight(6, 1, 2);
    double inradius = Math.sqrt(3) / 2;
    assertThatThrownBy(() -> hexagon.withOpeningInradius(inradius * 1.01))
        .hasMessageContaining("opening inradius");
    // A ring of 0.5 m on one of 1 m with hips of 2.5 m: half a metre in, so root of six up.
    RegularPyramid cut = RegularPyramid.ofRingsAndHip(6, 1, 0.5, 2.5);
    assertThat(cut.apexHeight()).isCloseTo(2 * Math.sqrt(6), within(1e-12));
  }
}
