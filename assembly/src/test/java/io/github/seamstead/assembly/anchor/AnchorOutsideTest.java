package io.github.seamstead.assembly.anchor;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.Collections;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pegs, ballast, guys and hem ropes against sums over many single pegs and against triangles of
 * forces by hand.
 */
class AnchorOutsideTest {

  private static final Source TRIANGLE =
      Source.derived("hand sum from first principles: triangle of forces with sides as 3, 4 and 5");
  private static final Source SUMMED =
      Source.derived("statics summed over many single pegs along the sides, silhouette in strips");
  private static final double PEG_POINTS = 20_000;
  private static final int STRIPS = 200_000;
  private static final double GRAVITY = 9.80665;

  /** Half the load s w / 2 and the pull H along the hem are the legs: w, s, d, tension. */
  @ParameterizedTest
  @CsvSource({
    "37.5,1.6,0.3,50",
    "60,1,0.09375,85.440037453",
    "50,0.8,0.15,33.333333333",
    "80,0.75,0.140625,50",
    "75,0.8,0.08,80.777472107"
  })
  void hemRopes(double load, double spacing, double dip, double tension) {
    OutsideCheck.of(
            "assembly.anchor.hemrope",
            load + " N/m, pegs " + spacing + " m apart, dip " + dip + " m, N",
            TRIANGLE)
        .expect(tension)
        .within(5e-9)
        .got(HemRope.of(load, spacing, dip).tension());
  }

  /** Force, angle from the mast, tension. */
  @ParameterizedTest
  @CsvSource({
    "100,30,200",
    "300,36.86989764584,500",
    "400,53.13010235416,500",
    "250,45,353.553390593",
    "120,67.38013505196,130"
  })
  void guys(double force, double degrees, double tension) {
    OutsideCheck.of("assembly.anchor.guy", force + " N held at " + degrees + " deg, N", TRIANGLE)
        .expect(tension)
        .within(1e-8)
        .got(GuyRope.of(force, Math.toRadians(degrees)).tension());
  }

  /** What the wind does, from points on the sides and strips of the silhouette. */
  private record Statics(double drag, double uplift, double height, double worstPeg) {

    static Statics of(WindScreen screen) {
      ShelterForm form = screen.form();
      int n = form.sides();
      double corner = form.baseSide() / (2 * Math.sin(Math.PI / n));
      double inner = corner * Math.cos(Math.PI / n);
      double q = screen.pressure().pressure();
      double width = 0;
      for (int k = 0; k < n; k++) {
        for (int j = 0; j < k; j++) {
          width = Math.max(width, 2 * corner * Math.sin(Math.PI * (k - j) / n));
        }
      }
      double area = 0;
      double moment = 0;
      double step = form.apexHeight() / STRIPS;
      for (int i = 0; i < STRIPS; i++) {
        double z = (i + 0.5) * step;
        double strip = width * (1 - z / form.apexHeight()) * step;
        area += strip;
        moment += strip * z;
      }
      double factor = screen.windFactor();
      double drag = factor * screen.coefficients().drag() * q * area;
      double uplift = factor * screen.coefficients().uplift() * q * n * inner * form.baseSide() / 2;
      double rest = uplift - 0.9 * screen.restingMass() * GRAVITY;
      double height = moment / area;
      return new Statics(drag, uplift, height, worst(screen, rest, drag * height, corner, inner));
    }

    /** The greatest of a ring of pegs on a circle and one along the sides, held or tipping. */
    private static double worst(
        WindScreen screen, double rest, double moment, double corner, double inner) {
      int n = screen.form().sides();
      double acrossCorner = 0;
      double fromLee = 0;
      double circle = 0;
      double circleFromLee = 0;
      for (int side = 0; side < n; side++) {
        double turn = 2 * Math.PI * side / n;
        for (int i = 0; i < PEG_POINTS; i++) {
          double along = ((i + 0.5) / PEG_POINTS - 0.5) * 2 * corner * Math.sin(Math.PI / n);
          double x = inner * Math.cos(turn) - along * Math.sin(turn);
          double rim = inner * Math.cos(turn + 2 * Math.PI * (i + 0.5) / PEG_POINTS / n);
          acrossCorner += x * x;
          fromLee += (x + inner) * (x + inner);
          circle += rim * rim;
          circleFromLee += (rim + inner) * (rim + inner);
        }
      }
      double points = n * PEG_POINTS;
      double far = n % 2 == 0 ? inner : corner;
      double bolts = rest / points + moment * corner / acrossCorner;
      double tip = (far + inner) * (rest * inner + moment) / fromLee;
      double ring = rest / points + moment * inner / circle;
      double ringTip = 2 * inner * (rest * inner + moment) / circleFromLee;
      double worst = Math.max(Math.max(bolts, tip), Math.max(ring, ringTip));
      return Math.max(0, worst * points / screen.pegs());
    }
  }

  private static WindScreen screen(
      int sides, double side, double height, double gust, double mass, int pegs) {
    return WindScreen.of(
        new ShelterForm(sides, side, height),
        WindPressure.of(gust),
        WindCoefficients.stated(1.1, 0.7, "test"),
        mass,
        pegs,
        WindScreen.FACTOR_OCCUPIED);
  }

  @ParameterizedTest
  @CsvSource({
    "5,2.4,1.8,20,60,20",
    "6,1.9,1.9,17,90,24",
    "8,1.6,2.2,24,120,32",
    "12,1.5,3,18,80,36",
    "7,2,2.6,28,40,28"
  })
  void pegsAndBallast(int sides, double side, double height, double gust, double mass, int pegs) {
    WindScreen screen = screen(sides, side, height, gust, mass, pegs);
    Statics statics = Statics.of(screen);
    double sliding = statics.drag() / (0.5 * pegs);
    double pull = Math.hypot(statics.worstPeg(), sliding);
    String what =
        sides
            + " sides of "
            + side
            + " m, "
            + height
            + " m high, "
            + gust
            + " m/s, "
            + mass
            + " kg";
    OutsideCheck.of("assembly.anchor.screen", what + ": worst of " + pegs + " pegs, N", SUMMED)
        .expect(pull)
        .withinRatio(1e-6)
        .got(screen.pegPull(Steps.none()));
    double friction = 0.4;
    double inner = side / (2 * Math.tan(Math.PI / sides));
    double slide = statics.uplift() + statics.drag() / friction;
    double tip = statics.uplift() + statics.drag() * statics.height() / inner;
    OutsideCheck.of("assembly.anchor.ballast", what + ", friction 0.4, kg", SUMMED)
        .expect(Math.max(slide, tip) / 0.9 / GRAVITY - mass)
        .withinRatio(1e-6)
        .got(Ballast.of(screen, friction).mass(Steps.none()));
    // Pegs that all came out at the same pull hold half of it.
    double holding = 300;
    PegTest test = PegTest.of(Collections.nCopies(4, 2 * holding), 2, Ground.AS_TESTED);
    OutsideCheck.of("assembly.anchor.pegs", what + ": pegs that hold 300 N each", SUMMED)
        .expect(Math.max(pegs, Math.ceil(pegs * pull / holding)))
        .within(1e-9)
        .got(PegCheck.of(screen, test).pegsNeeded(Steps.none()));
  }
}
