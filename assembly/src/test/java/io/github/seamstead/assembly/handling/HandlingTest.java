package io.github.seamstead.assembly.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HandlingTest {

  private static final Bundle COVER = Bundle.of(60, 0.65, 0.0005, 4);
  private static final CoverEnds ENDS = new CoverEnds(19, Optional.of(0.9), Optional.of(2.4));

  @Test
  void massAndBulk() {
    assertThat(COVER.mass()).isCloseTo(43, within(1e-12));
    assertThat(COVER.bulkVolume(Packing.FOLDED).high()).isCloseTo(0.03 / 0.4, within(1e-12));
    assertThat(COVER.rollDiameter(3, Packing.ROLLED).low())
        .isCloseTo(Math.sqrt(4 * 0.03 / 0.85 / Math.PI / 3), within(1e-12));
    assertThat(COVER.foldedHeight(1, 0.5, Packing.FOLDED).likely()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void aMeasuredPackingReplacesTheUsualOne() {
    Packing bucket = Packing.measured(4, 0.0005, 0.010, 0.1);
    assertThat(bucket.clothRatio().likely()).isCloseTo(0.2, within(1e-12));
    assertThat(bucket.clothRatio().low()).isCloseTo(0.18, within(1e-12));
    assertThatThrownBy(() -> Packing.measured(4, 0.0005, 0.001, 0.1))
        .hasMessageContaining("must be at least the cloth's own 0.002 m3");
  }

  @Test
  void theTopGoesThroughTheHem() {
    Turning turning = Turning.of(ENDS, 0.0005, 0.002, Packing.BUNCHED);
    assertThat(turning.routes()).hasSize(3);
    assertThat(turning.best().first()).isEqualTo("the top");
    assertThat(turning.best().through()).isEqualTo("the hem");
    assertThat(turning.best().passage()).isEqualTo(TurnRoute.Passage.PASSES);
    // Girth 19 m of 0.5 mm and the seams: 0.0115 m2 of cloth, 0.41 m across when loose.
    TurnRoute top = turning.routes().get(2);
    assertThat(top.through()).isEqualTo("the opening at the top");
    assertThat(top.bundle().high()).isCloseTo(Math.sqrt(4 * 0.115 / Math.PI), within(1e-12));
    assertThat(top.passage()).isEqualTo(TurnRoute.Passage.TOO_TIGHT);
    assertThat(turning.routes().get(1).passage()).isEqualTo(TurnRoute.Passage.PASSES);
    assertThat(turning.text()).contains("reach in through the hem to the top").contains("passes");
    CoverEnds narrow = new CoverEnds(19, Optional.of(1.2), Optional.empty());
    assertThat(Turning.of(narrow, 0.0005, 0.002, Packing.BUNCHED).routes().get(1).passage())
        .isEqualTo(TurnRoute.Passage.DOUBTFUL);
  }

  @Test
  void theLeastLoopPasses() {
    Turning turning = Turning.of(ENDS, 0.0005, 0.002, Packing.BUNCHED);
    double least = turning.leastLoop();
    CoverEnds enough = new CoverEnds(19, Optional.of(least * 1.0001), Optional.empty());
    CoverEnds tight = new CoverEnds(19, Optional.of(least * 0.9999), Optional.empty());
    assertThat(Turning.of(enough, 0.0005, 0.002, Packing.BUNCHED).routes().get(1).passage())
        .isEqualTo(TurnRoute.Passage.PASSES);
    assertThat(Turning.of(tight, 0.0005, 0.002, Packing.BUNCHED).routes().get(1).passage())
        .isEqualTo(TurnRoute.Passage.DOUBTFUL);
    assertThatThrownBy(() -> new CoverEnds(5, Optional.of(6.0), Optional.empty()))
        .hasMessage("loop round the top: given 6 m, must be from 0 m to 5 m");
  }

  @Test
  void raisingOverTheApex() {
    double wrap = RopePull.wrap(Math.toRadians(60), Math.toRadians(35));
    assertThat(Math.toDegrees(wrap)).isCloseTo(95, within(1e-9));
    RopePull pull = RopePull.of(45, RopePull.TIMBER_EDGE, wrap, RopePull.ONE_PERSON);
    assertThat(pull.raisePull()).isCloseTo(45 * 9.80665 * Math.exp(0.37 * wrap), within(1e-9));
    assertThat(pull.people()).isEqualTo(4);
    RopePull three = new RopePull(45 * 9.80665, 0.37, wrap, 3, RopePull.ONE_PERSON);
    assertThat(three.people()).isEqualTo(6);
    assertThat(three.ropePull()).isCloseTo(pull.raisePull() / 3, within(1e-9));
    assertThat(pull.cautions().get(0).text())
        .contains("under the load")
        .endsWith(Caution.DEFERENCE);
    assertThat(RopePull.drawnUp(10, Math.PI / 2, 0.5)).isCloseTo(98.0665, within(1e-9));
    // Straight down on both sides the apex carries the sum, level it carries the difference.
    RopePull down = RopePull.of(10, 0, RopePull.wrap(Math.PI / 2, Math.PI / 2), 267);
    assertThat(down.apexPull()).isCloseTo(2 * 98.0665, within(1e-9));
    assertThat(RopePull.of(10, 0, 0, 267).apexPull()).isZero();
    assertThatThrownBy(() -> RopePull.of(10, 1, 60, 267))
        .hasMessageContaining("no crew can raise this load");
    assertThatThrownBy(() -> RopePull.of(0, 0.3, 1, 267))
        .hasMessage("mass to raise: given 0 kg, must be greater than 0 kg");
  }

  @Test
  void theDropZoneAsksForRope() {
    DropZone zone = DropZone.of(3, 4);
    assertThat(zone.radius()).isEqualTo(7);
    assertThat(zone.ropeLength()).isCloseTo(Math.sqrt(58) + 5 + 2, within(1e-12));
    assertThat(zone.haul()).isCloseTo(Math.atan(3.0 / 7), within(1e-12));
    assertThat(zone.caution().limit()).contains("7.0 m");
  }

  @Test
  void windSetsTheCrew() {
    RaisingWind many = RaisingWind.of(10, 12);
    assertThat(many.limitGust()).isEqualTo(RaisingWind.BEGIN_GUST);
    assertThat(many.limitMean()).isEqualTo(RaisingWind.BEGIN_MEAN);
    assertThat(many.beaufort().force()).isEqualTo(4);
    assertThat(many.text()).contains("published limit");
    RaisingWind few = RaisingWind.of(40, 4);
    // 4 x 266.9 N over 0.5 x 1.25 x 1.2 x 40 m2.
    assertThat(few.limitGust()).isCloseTo(Math.sqrt(4 * 266.893 / 30) * 11.6 / 15.6, within(1e-4));
    assertThat(few.stopGust()).isEqualTo(few.crewGust());
    assertThat(many.stopGust()).isEqualTo(RaisingWind.STOP_GUST);
    assertThat(few.text()).contains("not its weight");
    assertThat(few.beaufort().force()).isEqualTo(2);
    assertThat(few.cautions()).hasSize(2);
    assertThat(few.cautions().get(1).text()).contains("not used");
  }

  @Test
  void anUnplacedLoadHasOneEnd() {
    LiftTask dropped =
        new LiftTask(
            new LiftPoint(0.3, 0, 0),
            new LiftPoint(0.6, 1.7, 0),
            1,
            LiftDuration.UP_TO_TWO_HOURS,
            Coupling.POOR,
            false);
    assertThat(LiftLimit.of(dropped).end()).isEmpty();
    assertThat(LiftLimit.of(dropped).mass()).isEqualTo(LiftLimit.of(dropped).start().mass());
    // 23 x 0.625 x 0.775 x 0.88 x 0.90
    assertThat(LiftLimit.of(LiftTask.ofBundle()).mass()).isCloseTo(8.8234, within(5e-5));
    // A bundle 30 cm deep: 40 cm from the ground, 35 cm at the knuckles.
    LiftTask bundle = LiftTask.ofBundle(0.3, 0, 0.75);
    assertThat(bundle.from().reach()).isCloseTo(0.40, within(1e-12));
    assertThat(bundle.to().reach()).isCloseTo(0.35, within(1e-12));
    assertThat(LiftLimit.of(bundle).mass()).isCloseTo(8.8234, within(5e-5));
    // From a table at 75 cm: 23 x 25/35 x 0.90.
    assertThat(LiftLimit.of(LiftTask.ofBundle(0.3, 0.75, 0.75)).mass())
        .isCloseTo(14.7857, within(5e-5));
    assertThat(LiftLimit.of(LiftTask.ofBundle()).caution().text()).contains("one hand");
    assertThatThrownBy(() -> new LiftPoint(0.3, -1, 0))
        .hasMessage("height of the hands: given -1 m, must be from 0 m to 3 m");
  }

  @Test
  void derivationsFollow() {
    StepRecorder r = new StepRecorder();
    follow("assembly.handling.mass", r, COVER.mass(r), COVER.mass());
    r = new StepRecorder();
    follow(
        "assembly.handling.roll",
        r,
        COVER.rollDiameter(3, 0.7, r),
        COVER.rollDiameter(3, Packing.ROLLED).likely());
    Turning turning = Turning.of(ENDS, 0.0005, 0.002, Packing.BUNCHED);
    r = new StepRecorder();
    follow("assembly.handling.turn", r, turning.bundle(0.2, r), turning.best().bundle().likely());
    r = new StepRecorder();
    follow("assembly.handling.turnloop", r, turning.leastLoop(r), turning.leastLoop());
    RopePull pull = new RopePull(500, 0.37, 1.7, 2, RopePull.ONE_PERSON);
    r = new StepRecorder();
    follow("assembly.handling.apex", r, pull.apexPull(r), pull.apexPull());
    r = new StepRecorder();
    follow("assembly.handling.pull", r, pull.people(r), pull.people());
    for (Tackle tackle : new Tackle[] {new Tackle(4, 4, 0.1), new Tackle(2, 1, 0.05)}) {
      r = new StepRecorder();
      follow("assembly.handling.tackle", r, tackle.pull(500, r), tackle.pull(500));
    }
    DropZone zone = DropZone.of(3, 4);
    r = new StepRecorder();
    follow("assembly.handling.dropzone", r, zone.ropeLength(r), zone.ropeLength());
    for (double area : new double[] {5, 40}) {
      RaisingWind wind = RaisingWind.of(area, 4);
      r = new StepRecorder();
      follow("assembly.handling.wind", r, wind.limitGust(r), wind.limitGust());
    }
    LiftTask outside =
        LiftTask.of(0.7, 0, 1.9, 2.5, 20, LiftDuration.UP_TO_ONE_HOUR, Coupling.FAIR);
    for (LiftForm form : LiftForm.values()) {
      for (LiftTask task : new LiftTask[] {LiftTask.ofBundle(), outside}) {
        LiftLimit limit = LiftLimit.of(task, form);
        r = new StepRecorder();
        follow("assembly.handling.lift", r, limit.mass(r), limit.mass());
      }
    }
  }

  private static void follow(String id, StepRecorder recorder, double worked, double plain) {
    assertThat(worked).isEqualTo(plain);
    DerivationChecks.assertFollowsTo(recorder.derivation(id, id), plain);
  }
}
