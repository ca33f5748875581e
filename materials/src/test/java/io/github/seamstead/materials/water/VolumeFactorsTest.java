package io.github.seamstead.materials.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;

class VolumeFactorsTest {

  private static void check(
      String what, Source source, double expected, double tolerance, double got) {
    OutsideCheck.of("materials.water", what, source).expect(expected).within(tolerance).got(got);
  }

  @Test
  void theTableIsConsistentWithItself() {
    Source table = VolumeFactors.FM_5_434;
    check("sand: compacted to loose", table, 1.17, 0.01, VolumeFactors.SAND.compactedToLoose());
    check("loam: compacted to loose", table, 1.39, 0.01, VolumeFactors.LOAM.compactedToLoose());
    check("clay: compacted to loose", table, 1.59, 0.01, VolumeFactors.CLAY.compactedToLoose());
    check("sand: loose to bank", table, 0.90, 0.01, VolumeFactors.SAND.loadFactor());
    check("loam: loose to bank", table, 0.80, 0.01, VolumeFactors.LOAM.loadFactor());
    check("clay: loose to bank", table, 0.70, 0.01, VolumeFactors.CLAY.loadFactor());
  }

  @Test
  void looseDepthBeforeRamming() {
    Source lift = Source.derived("100 mm lift by the FM 5-434 factors (from memory)");
    check("sand, loose for 100 mm, mm", lift, 117, 1, 100 * VolumeFactors.SAND.compactedToLoose());
    check("loam, loose for 100 mm, mm", lift, 139, 1, 100 * VolumeFactors.LOAM.compactedToLoose());
    check("clay, loose for 100 mm, mm", lift, 159, 1, 100 * VolumeFactors.CLAY.compactedToLoose());
  }

  @Test
  void nunnally() {
    Source book =
        Source.fromMemory("Nunnally", "Construction Methods and Management", "", "soil volume");
    VolumeFactors factors = VolumeFactors.ofDensities(1661, 1163, 2077);
    check("load factor", book, 0.70, 0.005, factors.loadFactor());
    check("shrinkage factor", book, 0.80, 0.005, factors.bankToCompacted());
    StepRecorder steps = new StepRecorder();
    double compacted = factors.convert(593_300, EarthState.LOOSE, EarthState.COMPACTED, steps);
    check("593 300 m3 loose when compacted, m3", book, 332_248, 100, compacted);
    DerivationChecks.assertFollowsTo(steps.derivation("materials.water.volume", "V"), compacted);
  }

  @Test
  void swell() {
    Source question =
        Source.found("", "Construction question: bank 3400, loose 2700 lb/yd3", "", "");
    check("swell, %", question, 26, 0.5, 100 * VolumeFactors.ofDensities(3400, 2700, 3600).swell());
    Source truck = Source.found("", "Earthmoving notes: swell 35 %, 14.7 loose m3", "", "");
    check(
        "14.7 loose m3 in the bank, m3",
        truck,
        10.89,
        0.005,
        new VolumeFactors(1.35, 0.9)
            .convert(14.7, EarthState.LOOSE, EarthState.BANK, Steps.none()));
  }

  @Test
  void volumesScaleWithOnePlusVoidRatio() {
    Source exercise = Source.found("", "Fill of 150 000 m3 at e 0.8 from borrow at e 1.4", "", "");
    check("borrow, m3", exercise, 200_000, 1e-6, VolumeFactors.byVoidRatio(150_000, 0.8, 1.4));
    assertThat(VolumeFactors.byVoidRatio(150_000, 0.8, 1.4)).isNotCloseTo(262_500, within(1.0));
  }

  @Test
  void looseAsDenseAsTheBankIsRefused() {
    assertThatThrownBy(() -> VolumeFactors.ofDensities(1660, 2800, 1900))
        .hasMessageContaining("check that both are in the same unit");
    assertThatThrownBy(() -> new VolumeFactors(0.8, 0.7)).hasMessageContaining("bank to loose");
  }
}
