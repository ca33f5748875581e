package io.github.seamstead.assembly.anchor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Silhouettes by projection, and pegs one by one as a free body, against the closed forms. */
class FreeBodyTest {

  private static final double FACTOR = 1.5;

  private static double[][] corners(int n, double radius) {
    double[][] corners = new double[n][];
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * i / n;
      corners[i] = new double[] {radius * Math.cos(a), radius * Math.sin(a)};
    }
    return corners;
  }

  /** Pegs evenly along the sides, so many that their spacing is of no weight. */
  private static List<double[]> pegs(int n, double radius, int perSide) {
    double[][] c = corners(n, radius);
    List<double[]> pegs = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double[] from = c[i];
      double[] to = c[(i + 1) % n];
      for (int k = 0; k < perSide; k++) {
        double t = (k + 0.5) / perSide;
        pegs.add(new double[] {from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])});
      }
    }
    return pegs;
  }

  private static double along(double[] point, double direction) {
    return point[0] * Math.cos(direction) + point[1] * Math.sin(direction);
  }

  private static double widest(double[][] corners) {
    double widest = 0;
    for (int d = 0; d < 3600; d++) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (double[] corner : corners) {
        double x = along(corner, Math.PI * d / 3600);
        least = Math.min(least, x);
        most = Math.max(most, x);
      }
      widest = Math.max(widest, most - least);
    }
    return widest;
  }

  @Test
  void widthsAreThoseOfTheProjectedCorners() {
    for (int n = 3; n <= 13; n++) {
      ShelterForm form = new ShelterForm(n, 2, 3);
      double radius = 1 / Math.sin(Math.PI / n);
      assertThat(form.greatestWidth())
          .as("%s sides", n)
          .isCloseTo(widest(corners(n, radius)), within(2e-6 * radius));
    }
  }

  @Test
  void silhouettesAreSummedFromSlices() {
    for (int n = 3; n <= 9; n++) {
      for (double top : new double[] {0.4, 1.7, 3.4}) {
        for (boolean capped : new boolean[] {false, true}) {
          ShelterForm form = ShelterForm.ofFrame(n, 1.6, 3.4, top, capped);
          double radius = 0.8 / Math.sin(Math.PI / n);
          double wide = widest(corners(n, radius));
          double area = 0;
          double moment = 0;
          int slices = 20_000;
          for (int i = 0; i < slices; i++) {
            double z = 3.4 * (i + 0.5) / slices;
            double base = z < top ? wide : capped ? 2 * radius : 0;
            double slice = base * (1 - z / 3.4) * 3.4 / slices;
            area += slice;
            moment += slice * z;
          }
          assertThat(form.elevationArea()).isCloseTo(area, within(1e-3 * area));
          assertThat(form.dragHeight()).isCloseTo(moment / area, within(2e-3));
          assertThat(form.faceSlope())
              .isCloseTo(Math.atan(3.4 / (0.8 / Math.tan(Math.PI / n))), within(1e-12));
        }
      }
    }
  }

  @Test
  void aCutFrameIsNeitherTakenAsATriangleToItsOpeningNorMadeFlatter() {
    ShelterForm open = ShelterForm.ofFrame(8, 1.6, 2.2, 1.4, false);
    ShelterForm triangle = new ShelterForm(8, 1.6, 1.4);
    assertThat(open.elevationArea()).isGreaterThan(1.3 * triangle.elevationArea());
    assertThat(open.faceSlope()).isGreaterThan(triangle.faceSlope());
    assertThat(open.height()).isEqualTo(1.4);
    assertThat(open.openAtTheTop()).isTrue();
    ShelterForm capped = ShelterForm.ofFrame(8, 1.6, 2.2, 1.4, true);
    ShelterForm whole = new ShelterForm(8, 1.6, 2.2);
    assertThat(capped.elevationArea()).isCloseTo(whole.elevationArea(), within(1e-9));
    assertThat(capped.height()).isEqualTo(2.2);
    assertThat(capped.openAtTheTop()).isFalse();
    assertThat(whole.openAtTheTop()).isFalse();
    assertThatThrownBy(() -> ShelterForm.ofFrame(8, 1.6, 2.2, 2.3, false))
        .hasMessageContaining("height of the opening");
  }

  /** Bolts: even uplift and a share of the moment by the distance from the middle. */
  private static double bolts(List<double[]> pegs, double rest, double moment, double direction) {
    double squares = pegs.stream().mapToDouble(p -> Math.pow(along(p, direction), 2)).sum();
    double far = pegs.stream().mapToDouble(p -> along(p, direction)).max().orElseThrow();
    return rest / pegs.size() + moment * far / squares;
  }

  /** Tipping: the lee edge presses on the ground, pegs pull by their distance from it. */
  private static double tipping(List<double[]> pegs, double inradius, double rest, double moment) {
    double squares = pegs.stream().mapToDouble(p -> Math.pow(along(p, 0) + inradius, 2)).sum();
    double far = pegs.stream().mapToDouble(p -> along(p, 0) + inradius).max().orElseThrow();
    return far * (rest * inradius + moment) / squares;
  }

  @Test
  void theWorstPegIsThatOfTheFreeBody() {
    for (int n : new int[] {3, 4, 5, 6, 7, 10, 12}) {
      for (double uplift : new double[] {0, 0.4, 1.32}) {
        ShelterForm form = ShelterForm.ofFrame(n, 2, 2.5, 2, false);
        int perSide = 60;
        WindScreen screen =
            WindScreen.of(
                form,
                WindPressure.of(25),
                WindCoefficients.stated(1.2, uplift, "an invented trial"),
                20,
                n * perSide,
                FACTOR);
        double rest = FACTOR * screen.uplift() - 0.9 * 20 * 9.80665;
        double moment = FACTOR * screen.drag() * form.dragHeight();
        double radius = 1 / Math.sin(Math.PI / n);
        List<double[]> pegs = pegs(n, radius, perSide);
        double worst = 0;
        for (int d = 0; d < 180; d++) {
          worst = Math.max(worst, bolts(pegs, rest, moment, Math.PI * d / 90));
        }
        // A side to the lee, that is at the left: turn by half a side for an even number.
        double turn = Math.PI / n;
        List<double[]> turned =
            n % 2 == 1
                ? pegs
                : pegs.stream()
                    .map(
                        p ->
                            new double[] {
                              p[0] * Math.cos(turn) - p[1] * Math.sin(turn),
                              p[0] * Math.sin(turn) + p[1] * Math.cos(turn)
                            })
                    .toList();
        worst = Math.max(worst, tipping(turned, form.inradius(), rest, moment));
        assertThat(screen.pegUplift())
            .as("%s sides, uplift %s", n, uplift)
            .isGreaterThan(worst * 0.99)
            .isLessThan(Math.max(worst * 1.13, 1e-9));
      }
    }
  }

  @Test
  void overturningAddsToTheWorstPegOfATallFrame() {
    // No uplift, no weight: the moment alone pulls. Bolts on a circle give 2 M / (N r).
    ShelterForm tall = new ShelterForm(12, 1, 3.8);
    WindScreen screen =
        WindScreen.of(
            tall,
            WindPressure.of(20),
            WindCoefficients.stated(1, 0, "an invented trial"),
            0,
            36,
            FACTOR);
    double moment = FACTOR * screen.drag() * 3.8 / 3;
    double circle = 2 * moment / (36 * tall.inradius());
    assertThat(screen.pegUplift()).isBetween(circle, 1.02 * circle);
    double sliding = FACTOR * screen.drag() / 18;
    assertThat(Math.tan(screen.pullAngle())).isCloseTo(screen.pegUplift() / sliding, within(1e-9));
    // 2 D h / 3 / (N r) over 2 D / N is h / (3 r), which is 34.2 degrees; the corners add a little.
    double even = Math.atan(3.8 / (3 * tall.inradius()));
    assertThat(screen.pullAngle()).isBetween(even, 1.02 * even);
  }

  @Test
  void ventsAreCountedInAllAndACapClosesTheTop() {
    List<Ventilation.Vent> vents =
        List.of(new Ventilation.Vent(0.03, 1.8), new Ventilation.Vent(0.05, 0.3));
    Ventilation capped = Ventilation.ofCover(28.7, 0.37, true, vents, 2.2);
    assertThat(capped.highArea()).isEqualTo(0.03);
    assertThat(capped.lowArea()).isEqualTo(0.05);
    assertThat(capped.presentArea()).isCloseTo(0.08, within(1e-12));
    assertThat(capped.enough()).isFalse();
    assertThat(capped.neededArea()).isCloseTo(28.7 / 150, within(1e-12));
    assertThat(Ventilation.ofCover(28.7, 0.37, false, vents, 2.2).enough()).isTrue();
  }

  @Test
  void ownCoefficientsNameTheirSource() {
    WindCoefficients own = WindCoefficients.stated(0.7, 1.1, "local code, clause 4");
    assertThat(own.limits()).contains("local code, clause 4").contains("not checked");
    assertThat(WindCoefficients.outside(new ShelterForm(8, 1.6, 0.9)).orElseThrow())
        .isEqualTo("face slope: given 25.0 deg, these coefficients hold from 30 deg");
    assertThat(WindCoefficients.outside(new ShelterForm(8, 1.6, 2))).isEmpty();
    assertThatThrownBy(() -> WindCoefficients.stated(0.7, 1.1, " "))
        .hasMessageContaining("source of the coefficients");
  }

  @Test
  void ropesOfAScreenedEdge() {
    ShelterForm form = new ShelterForm(6, 2, 2);
    WindScreen screen =
        WindScreen.of(
            form,
            WindPressure.of(20),
            WindCoefficients.forPyramid(form, Openings.CLOSED),
            30,
            24,
            FACTOR);
    double along = screen.pegPull() * 24 / 12;
    assertThat(HemRope.ofHem(screen, 0.5).tension())
        .isCloseTo(along * Math.hypot(0.25 / 0.4, 0.25), within(1e-6));
    assertThat(GuyRope.ofCorners(screen).tension())
        .isCloseTo(FACTOR * screen.drag() / 3 * Math.sqrt(2), within(1e-6));
  }
}
