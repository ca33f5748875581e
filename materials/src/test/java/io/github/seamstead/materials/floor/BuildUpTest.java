package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.mix.Recipe;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BuildUpTest {

  private static final Source DERIVED =
      Source.derived("20 m2 by 100 mm at 1850 kg/m3, 8 % moisture, 1300 kg/m3 loose, by hand");
  private static final Source MEASURED_FLOOR =
      Source.found("", "Builder's floor diary, 10.8 m2 by 13 mm and a third more", "", "");
  private static final Source OIL_DIARY =
      Source.found("", "Builder's diary: 8 L of oil for 28 m2, all coats", "", "");
  private static final Source OIL_GUIDE =
      Source.found(
          "", "Earthen floor, start to finish, part 3", "", "half a US gallon for 100 ft2");
  private static final Source WEEK =
      Source.found("", "Earthen floor in one week", "", "15 m2 base of 100 mm, about 25 h of work");

  private static final Footprint TWENTY =
      Footprint.of(new double[] {0, 5, 5, 0}, new double[] {0, 0, 4, 4});

  @Test
  void compactedToLoose() {
    FloorMix earth = FloorMix.single("earth", 1850, 1300, 0.08, 0.02);
    EarthQuantity quantity =
        BuildUp.level(
                TWENTY,
                List.of(new EarthLayer("base", LayerRole.DRY_PACK, 0.1, 0.01, earth, false)))
            .earth()
            .get(0);
    OutsideCheck.of("materials.floor", "compacted volume, m3", DERIVED)
        .expect(2.0)
        .within(0.005)
        .got(quantity.compactedVolume().likely());
    OutsideCheck.of("materials.floor", "dry mass, kg", DERIVED)
        .expect(3700)
        .within(0.5)
        .got(quantity.dryMass().likely());
    OutsideCheck.of("materials.floor", "moist mass, kg", DERIVED)
        .expect(3996)
        .within(0.5)
        .got(quantity.placedMass().likely());
    OutsideCheck.of("materials.floor", "loose volume, m3", DERIVED)
        .expect(2.85)
        .within(0.005)
        .got(quantity.looseVolume().likely());
    StepRecorder steps = new StepRecorder();
    double loose = quantity.looseVolume(steps);
    assertThat(loose).isEqualTo(quantity.looseVolume().likely());
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.floor.loose-volume", "loose"), loose);
    assertThat(quantity.looseVolume().low()).isLessThan(loose);
    assertThat(quantity.looseVolume().high()).isGreaterThan(loose);
  }

  @Test
  void aThinCoatInPrint() {
    OutsideCheck.of("materials.floor", "volume of 10.8 m2 by 13 mm, m3", MEASURED_FLOOR)
        .expect(0.14)
        .within(0.005)
        .got(
            EarthQuantity.of(EarthLayer.coat("coat", 0.013, fine()), 10.8, 0)
                .compactedVolume()
                .likely());
  }

  private static FloorMix fine() {
    return FloorMix.single("fine mix", 1750, 1250, 0.1, 0.003);
  }

  @Test
  void oilCountsCoatByCoat() {
    double first = FinishLayer.linseedOil().rates().get(0).likely();
    OutsideCheck.of("materials.floor", "first coat of oil, L/m2", OIL_GUIDE)
        .expect(0.204)
        .within(0.005)
        .got(first);
    Range all = FinishLayer.linseedOil().allCoats();
    // The diary's rate is for all coats and must lie in the range, not be read as one coat.
    OutsideCheck.of("materials.floor", "all coats of oil, L/m2, within the range", OIL_DIARY)
        .expect(8.0 / 28)
        .within((all.high() - all.low()) / 2)
        .got((all.high() + all.low()) / 2);
    FinishQuantity oil = BuildUp.level(TWENTY, List.of(FinishLayer.linseedOil())).finishes().get(0);
    assertThat(oil.litres().likely()).isCloseTo(0.375 * 20, within(1e-9));
    assertThat(oil.litresPerCoat()).hasSize(4);
  }

  @Test
  void theUsualMinutesMoveTheWholeRange() {
    CrewRates slow = CrewRates.beginners(3).withUsualMinutesPerLoad(22);
    assertThat(slow.minutesPerLoad().low()).isCloseTo(16, within(1e-12));
    assertThat(slow.minutesPerLoad().likely()).isCloseTo(22, within(1e-12));
    assertThat(slow.minutesPerLoad().high()).isCloseTo(30, within(1e-12));
    assertThatThrownBy(() -> CrewRates.beginners(3).withUsualMinutesPerLoad(400))
        .hasMessageContaining("minutes per load (high)")
        .hasMessageContaining("480");
  }

  @Test
  void theWorkOfAWeekLiesInTheRange() {
    Footprint fifteen = Footprint.of(new double[] {0, 5, 5, 0}, new double[] {0, 0, 3, 3});
    EarthQuantity base =
        BuildUp.level(
                fifteen,
                List.of(new EarthLayer("base", LayerRole.DRY_PACK, 0.1, 0.01, Demo.BASE, true)))
            .earth()
            .get(0);
    Optional<BatchPlan> loads = Optional.of(BatchPlan.of(base, Demo.MIXER));
    WorkTime time = WorkTime.of(base, loads, CrewRates.beginners(3));
    OutsideCheck.of("materials.floor", "work for a 15 m2 base, h, within the range", WEEK)
        .expect(25)
        .within((time.personHours().high() - time.personHours().low()) / 2)
        .got((time.personHours().high() + time.personHours().low()) / 2);
    assertThat(time.elapsedHours().likely()).isLessThan(time.personHours().likely());
    StepRecorder steps = new StepRecorder();
    double hours = WorkTime.likelyHours(base, loads, CrewRates.beginners(3), steps);
    assertThat(hours).isEqualTo(time.personHours().likely());
    DerivationChecks.assertFollowsTo(steps.derivation("materials.floor.work", "work"), hours);
  }

  @Test
  void theSectionAddsUp() {
    List<BuildUp.SectionBand> bands = Demo.FLOOR.section();
    assertThat(bands).hasSize(5);
    double at = 0;
    for (BuildUp.SectionBand band : bands) {
      assertThat(band.bottom()).isEqualTo(at);
      at = band.top();
    }
    assertThat(at).isCloseTo(Demo.FLOOR.thickness(), within(1e-12));
    assertThat(Demo.FLOOR.thickness()).isCloseTo(0.175, within(1e-12));
    // 1000/1750 - 1000/2650 is 19.4 %: the coat is laid wetter than that.
    assertThat(Demo.FLOOR.advice())
        .singleElement()
        .asString()
        .contains("wetter than its density can hold (19.4 %)");
    assertThat(Demo.FLOOR.massPerArea().likely()).isBetween(250.0, 400.0);
  }

  @Test
  void aFallThickensOnlyItsLayer() {
    BuildUp level = Demo.FLOOR;
    BuildUp falling = new BuildUp(level.footprint(), level.layers(), new Fall(0.01, 0), 2);
    assertThat(falling.earth().get(0)).isEqualTo(level.earth().get(0));
    double extra = falling.earth().get(1).meanThickness() - level.earth().get(1).meanThickness();
    assertThat(extra).isCloseTo(new Fall(0.01, 0).meanExtra(level.footprint()), within(1e-12));
    assertThatThrownBy(() -> new BuildUp(level.footprint(), level.layers(), new Fall(0.01, 0), 1))
        .hasMessageContaining("cannot form the fall");
  }

  /**
   * Sheet turned up at both walls: strips of 2 m lapped by 0.2 m reach over 3 m and two upstands.
   */
  @Test
  void aSheetIsTurnedUpAtEachWall() {
    Footprint room = Footprint.of(new double[] {0, 3, 3, 0}, new double[] {0, 0, 5, 5});
    double[] upstands = {0, 0.2, 0.3, 0.5, 0.9};
    int[] strips = {2, 2, 2, 3, 3};
    for (int i = 0; i < upstands.length; i++) {
      MembraneLayer layer = new MembraneLayer("sheet", 2, 25, 0.2, upstands[i]);
      MembraneQuantity sheet = MembraneQuantity.of(layer, room);
      assertThat(sheet.strips()).as("upstand %s", upstands[i]).hasSize(strips[i]);
      double covered = 2 * strips[i] - 0.2 * (strips[i] - 1);
      assertThat(covered).isGreaterThanOrEqualTo(3 + 2 * upstands[i]);
      for (double length : sheet.strips()) {
        assertThat(length).isCloseTo(5 + 2 * upstands[i], within(1e-9));
      }
      assertThat(sheet.areaWithLaps())
          .isCloseTo(strips[i] * 2 * (5 + 2 * upstands[i]), within(1e-9));
    }
  }

  @Test
  void membraneStripsCoverTheFloor() {
    MembraneQuantity sheet = BuildUp.level(TWENTY, List.of(Demo.SHEET)).membranes().get(0);
    // 5.2 m across with upstands: two strips of 4 m cover 7.85 m; each 4 m + 2 × 0.1 m long.
    assertThat(sheet.strips())
        .hasSize(2)
        .allSatisfy(s -> assertThat(s).isCloseTo(4.2, within(1e-9)));
    assertThat(sheet.rolls()).isEqualTo(1);
    assertThat(sheet.areaWithLaps()).isGreaterThan(5.2 * 4.2);
    MembraneLayer narrow = new MembraneLayer("sheet", 1, 4, 0.1, 0);
    MembraneQuantity many = BuildUp.level(TWENTY, List.of(narrow)).membranes().get(0);
    assertThat(many.strips()).hasSize(6);
    assertThat(many.rolls()).isEqualTo(6);
    MembraneLayer shortRoll = new MembraneLayer("sheet", 5, 3, 0.1, 0);
    MembraneQuantity pieced = BuildUp.level(TWENTY, List.of(shortRoll)).membranes().get(0);
    assertThat(pieced.rolls()).isEqualTo(2);
  }

  @Test
  void aGrainTooLargeIsRefusedOrAdvised() {
    assertThatThrownBy(() -> EarthLayer.coat("skim", 0.004, Demo.BASE))
        .hasMessageContaining("must be at least as thick as its largest grain");
    EarthLayer thin = EarthLayer.coat("coat", 0.010, Demo.COAT);
    assertThat(thin.grainAdvice())
        .hasValueSatisfying(a -> assertThat(a).contains("screen to 3.3 mm"));
    assertThat(EarthLayer.coat("coat", 0.015, Demo.COAT).grainAdvice()).isEmpty();
    assertThat(EarthLayer.dryPack(Demo.BASE).thickness()).isEqualTo(0.050);
    EarthLayer deep = new EarthLayer("base", LayerRole.DRY_PACK, 0.25, 0.01, Demo.BASE, true);
    assertThat(deep.lifts()).isEqualTo(3);
    assertThat(BuildUp.level(TWENTY, List.of(deep)).advice())
        .anyMatch(a -> a.contains("3 lifts"))
        .anyMatch(a -> a.contains("no capillary break"));
  }

  @Test
  void oilUnderEarthIsRefused() {
    assertThatThrownBy(
            () ->
                BuildUp.level(
                    TWENTY, List.of(FinishLayer.linseedOil(), EarthLayer.dryPack(Demo.BASE))))
        .hasMessageContaining("must come last");
  }

  @Test
  void aRecipeBecomesAFloorMix() {
    MixComponent soil = MixComponent.claySoil("pit soil", new Uncertain(0.4, 0.03));
    MixComponent sand = MixComponent.washedSand("washed sand");
    Recipe recipe = Recipe.ofDryMasses(List.of(soil, sand), List.of(100.0, 250.0));
    FloorMix mix =
        FloorMix.of("1 soil : 2.5 sand by dry mass", recipe, 0.16, 0.004)
            .plus(MixPart.of("chopped straw", 0.02, 60, 0.1));
    assertThat(mix.parts()).hasSize(3);
    assertThat(mix.parts().get(1).dryMassShare()).isCloseTo(250.0 / 350 * 0.98, within(1e-12));
    assertThat(mix.compactedDryDensity().likely())
        .isCloseTo(350 / recipe.compactedVolume().likely(), within(1e-9));
    assertThat(mix.compactedToLoose().likely()).isGreaterThan(1);
  }

  @Test
  void sharesMustAddToOne() {
    assertThatThrownBy(
            () ->
                new FloorMix(
                    "30 + 33 + 33",
                    List.of(
                        MixPart.of("a", 0.30, 1200, 0),
                        MixPart.of("b", 0.33, 1200, 0),
                        MixPart.of("c", 0.33, 1200, 0)),
                    Range.exactly(1800),
                    0.1,
                    0.005))
        .hasMessageContaining("must add to 1");
  }
}
