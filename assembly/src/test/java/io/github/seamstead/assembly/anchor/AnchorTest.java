package io.github.seamstead.assembly.anchor;

import static io.github.seamstead.shared.quantity.PhysicalConstants.STANDARD_GRAVITY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.List;
import org.junit.jupiter.api.Test;

class AnchorTest {

  private static final ShelterForm FORM = new ShelterForm(10, 1.9, 3.2);
  private static final WindScreen SCREEN =
      WindScreen.of(
          FORM,
          WindPressure.of(25),
          WindCoefficients.forPyramid(FORM, Openings.CLOSED),
          90,
          30,
          WindScreen.FACTOR_OCCUPIED);
  private static final PegTest TEST =
      PegTest.of(List.of(900.0, 1100.0, 950.0, 1000.0), 2, Ground.AS_TESTED);

  @Test
  void forcesByHand() {
    // q 390.625 Pa; silhouette 6.1485 x 3.2 / 2; plan 27.776 m2.
    double q = 390.625;
    double silhouette = 1.9 / Math.sin(Math.PI / 10) * 3.2 / 2;
    double plan = 10 * 1.9 * 1.9 / (4 * Math.tan(Math.PI / 10));
    assertThat(SCREEN.drag()).isCloseTo(1.0 * q * silhouette, within(1e-6));
    assertThat(SCREEN.uplift()).isCloseTo(0.8 * q * plan, within(1e-6));
    assertThat(SCREEN.pegSliding()).isCloseTo(1.5 * q * silhouette / 15, within(1e-6));
    assertThat(SCREEN.pegPull())
        .isCloseTo(Math.hypot(SCREEN.pegUplift(), SCREEN.pegSliding()), within(1e-9));
    assertThat(SCREEN.pullAngle()).isBetween(0.0, Math.PI / 2);
  }

  @Test
  void theWorstPegIsNeverBelowTheEvenShare() {
    double net = 1.5 * SCREEN.uplift() - 0.9 * 90 * STANDARD_GRAVITY;
    assertThat(SCREEN.pegUplift()).isGreaterThan(net / 30);
  }

  @Test
  void coefficientsKeepToTheirLimits() {
    ShelterForm flat = new ShelterForm(6, 3, 0.5);
    ShelterForm tower = new ShelterForm(6, 1, 4);
    assertThatThrownBy(() -> WindCoefficients.forPyramid(flat, Openings.CLOSED))
        .hasMessage(
            "face slope: given 10.9 deg, these coefficients hold from 30 deg; give your own with"
                + " their source");
    assertThatThrownBy(() -> WindCoefficients.forPyramid(tower, Openings.CLOSED))
        .hasMessageContaining("height over width: given 2.00");
    assertThat(WindCoefficients.forPyramid(new ShelterForm(4, 3, 2), Openings.CLOSED).drag())
        .isEqualTo(1.3);
    assertThat(WindCoefficients.forPyramid(FORM, Openings.OPEN_TO_WIND).uplift())
        .isCloseTo(1.32, within(1e-12));
    assertThat(WindCoefficients.forPyramid(FORM, Openings.CLOSED).limits())
        .contains("30 degrees or steeper")
        .contains("closed");
  }

  @Test
  void anIllustratedCheckNeverCertifies() {
    PegCheck check = PegCheck.of(SCREEN, TEST);
    assertThat(check.usedRatio()).isGreaterThan(1);
    assertThat(check.pegsNeeded()).isGreaterThan(30);
    assertThat(check.text())
        .contains("more than the pegs may be asked to hold")
        .endsWith(Caution.DEFERENCE);
    assertThat(check.text().toLowerCase(java.util.Locale.ROOT)).doesNotContain("safe");
    assertThat(check.cautions()).hasSize(3);
    assertThat(check.cautions().get(0).hazard()).isEqualTo(Hazard.WIND);
    WindScreen calm = WindScreen.of(FORM, WindPressure.of(8), SCREEN.coefficients(), 90, 30, 1.5);
    assertThat(PegCheck.of(calm, TEST).text())
        .contains("within what the pegs held in your test")
        .endsWith(Caution.DEFERENCE);
    assertThat(PegCheck.of(calm, TEST).pegsNeeded()).isEqualTo(30);
  }

  @Test
  void thePullTestTakesTheLowerReading() {
    // Mean 987.5, deviation 85.39, k 2.631: 762.8 N is below the lowest pull.
    assertThat(TEST.lowest()).isEqualTo(900);
    assertThat(TEST.characteristic()).isCloseTo(762.8, within(0.5));
    assertThat(TEST.holding()).isCloseTo(TEST.characteristic() / 2, within(1e-9));
    PegTest wet = PegTest.of(TEST.pulls(), 2, Ground.WET_OR_THAWING);
    assertThat(wet.holding()).isCloseTo(TEST.holding() / 2, within(1e-9));
    PegTest even = PegTest.of(List.of(500.0, 500.0, 500.0), 2, Ground.AS_TESTED);
    assertThat(even.holding()).isEqualTo(250);
    assertThatThrownBy(() -> PegTest.of(List.of(100.0, 900.0, 1500.0), 2, Ground.AS_TESTED))
        .hasMessageContaining("which leave nothing to rely on; test more pegs");
    assertThatThrownBy(() -> PegTest.of(List.of(900.0, 950.0), 2, Ground.AS_TESTED))
        .hasMessage("peg tests: given 2, must be from 3 to 100");
  }

  @Test
  void ballastSlidesFirstOnSmoothGround() {
    Ballast wet = Ballast.of(SCREEN, 0.2);
    Ballast rough = Ballast.of(SCREEN, 0.6);
    double drag = 1.5 * SCREEN.drag();
    double lift = 1.5 * SCREEN.uplift();
    assertThat(wet.mass()).isCloseTo((lift + drag / 0.2) / (0.9 * 9.80665) - 90, within(1e-6));
    assertThat(rough.mass()).isLessThan(wet.mass());
    assertThat(wet.containers(200)).isEqualTo((int) Math.ceil(wet.mass() / 200));
    assertThat(wet.caution().text()).contains("slides before it lifts");
  }

  @Test
  void ropesOfHemAndGuys() {
    assertThatThrownBy(() -> HemRope.of(100, 0.6, 1e-300))
        .hasMessage("dip of the hem rope: given 1.0E-300 m, must be from 0.0006 m to 0.15 m");
    HemRope rope = HemRope.of(100, 0.6, 0.05);
    assertThat(rope.tension()).isCloseTo(Math.hypot(90, 30), within(1e-9));
    assertThat(HemRope.lineLoad(SCREEN)).isCloseTo(SCREEN.pegPull() * 30 / 19, within(1e-9));
    GuyRope guy = GuyRope.of(500, Math.toRadians(45));
    assertThat(guy.tension()).isCloseTo(500 * Math.sqrt(2), within(1e-9));
    assertThat(guy.downPull()).isCloseTo(500, within(1e-9));
    assertThat(guy.caution().text()).contains("better 45");
    assertThat(GuyRope.of(500, Math.toRadians(30)).tension()).isCloseTo(1000, within(1e-9));
    assertThatThrownBy(() -> GuyRope.of(500, Math.toRadians(20)))
        .hasMessageContaining("angle of the guy rope from the mast: given 20");
  }

  @Test
  void ventsCarryTheirCautions() {
    Ventilation vents = Ventilation.of(28, 0.05, 0.06);
    assertThat(vents.balanced()).isTrue();
    assertThat(vents.enough()).isTrue();
    assertThat(Ventilation.of(28, 0, 0).balanced()).isFalse();
    assertThat(Ventilation.of(28, 0, 0).enough()).isFalse();
    assertThat(Ventilation.behindMesh(0.2, 0.4)).isCloseTo(0.08, within(1e-12));
    assertThat(vents.cautions().stream().map(Caution::hazard))
        .containsExactly(Hazard.CARBON_MONOXIDE, Hazard.FIRE);
  }

  @Test
  void aCapIsJudgedOnItsHips() {
    // Faces of 1 in 5 would do, but hips of a square cap are flatter.
    double face = Math.atan(0.2);
    assertThat(CapDrainage.of(4, face, 0).drains()).isEqualTo(CapDrainage.Drains.ONLY_IF_TAUT);
    assertThat(CapDrainage.of(4, Math.atan(0.2 * Math.sqrt(2)), 0).drains())
        .isEqualTo(CapDrainage.Drains.SHEDS);
    assertThat(CapDrainage.of(8, Math.toRadians(40), 0.1).drains())
        .isEqualTo(CapDrainage.Drains.PONDS);
    assertThat(CapDrainage.of(8, 0, 0).text()).contains("Water stands");
    assertThat(CapDrainage.of(4, face, 0).text()).contains("1 in 5");
    assertThat(CapDrainage.of(8, 0.7, 0).text()).contains("sheds");
  }

  @Test
  void pressureNamesItsRival() {
    WindPressure q = WindPressure.of(25);
    assertThat(q.rival()).isEqualTo(AirDensity.HANDBOOK);
    assertThat(q.rivalPressure()).isEqualTo(375);
    assertThat(WindPressure.of(25, AirDensity.HANDBOOK).rival()).isEqualTo(AirDensity.EUROPEAN);
    assertThatThrownBy(() -> WindPressure.of(0))
        .hasMessage("design gust: given 0 m/s, must be greater than 0 m/s");
    assertThatThrownBy(() -> Beaufort.of(-1)).hasMessageContaining("mean wind speed");
  }

  @Test
  void derivationsFollow() {
    StepRecorder r = new StepRecorder();
    follow("assembly.anchor.pressure", r, WindPressure.of(25).pressure(r), 390.625);
    PeakWind wind = PeakWind.of(24, Terrain.SHELTERED, 3);
    r = new StepRecorder();
    follow("assembly.anchor.gust", r, wind.gust(r), wind.gust());
    r = new StepRecorder();
    follow("assembly.anchor.screen", r, SCREEN.pegPull(r), SCREEN.pegPull());
    WindScreen heavy = WindScreen.of(FORM, WindPressure.of(5), SCREEN.coefficients(), 5000, 30, 1);
    r = new StepRecorder();
    follow("assembly.anchor.screen", r, heavy.pegPull(r), heavy.pegPull());
    assertThat(heavy.pegUplift()).isZero();
    r = new StepRecorder();
    follow("assembly.anchor.peg", r, TEST.holding(r), TEST.holding());
    PegCheck check = PegCheck.of(SCREEN, TEST);
    r = new StepRecorder();
    follow("assembly.anchor.pegs", r, check.pegsNeeded(r), check.pegsNeeded());
    for (double friction : new double[] {0.1, 1}) {
      Ballast ballast = Ballast.of(SCREEN, friction);
      r = new StepRecorder();
      follow("assembly.anchor.ballast", r, ballast.mass(r), ballast.mass());
    }
    HemRope rope = HemRope.of(100, 0.6, 0.05);
    r = new StepRecorder();
    follow("assembly.anchor.hemrope", r, rope.tension(r), rope.tension());
    GuyRope guy = GuyRope.of(500, 0.8);
    r = new StepRecorder();
    follow("assembly.anchor.guy", r, guy.tension(r), guy.tension());
    Ventilation vents = Ventilation.of(28, 0.05, 0.06);
    r = new StepRecorder();
    follow("assembly.anchor.vents", r, vents.neededArea(r), vents.neededArea());
    CapDrainage cap = CapDrainage.of(8, 0.6, 0);
    r = new StepRecorder();
    follow("assembly.anchor.hip", r, cap.hipSlope(r), cap.hipSlope());
  }

  private static void follow(String id, StepRecorder recorder, double worked, double plain) {
    assertThat(worked).isEqualTo(plain);
    DerivationChecks.assertFollowsTo(recorder.derivation(id, id), plain);
  }
}
