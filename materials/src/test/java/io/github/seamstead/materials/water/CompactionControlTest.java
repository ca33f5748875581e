package io.github.seamstead.materials.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.Steps;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CompactionControlTest {

  private static final List<ProctorPoint> POINTS =
      List.of(
          new ProctorPoint(0.08, 1720),
          new ProctorPoint(0.10, 1800),
          new ProctorPoint(0.12, 1845),
          new ProctorPoint(0.14, 1820),
          new ProctorPoint(0.16, 1750));
  private static final ProctorCurve CURVE = ProctorCurve.fit(POINTS, Optional.of(2.7));

  @Test
  void aLoosePlaceIsRammedAgain() {
    double dense = 0.96 * CURVE.maximumDryDensity().likely();
    double loose = 0.90 * CURVE.maximumDryDensity().likely();
    CompactionControl control =
        CompactionControl.of(
            CURVE,
            List.of(
                CompactionControl.place(CURVE, dense, 0.12, Steps.none()),
                CompactionControl.place(CURVE, loose, 0.12, Steps.none())),
            0.12,
            1800);
    assertThat(control.places())
        .extracting(CompactionControl.Place::passes)
        .containsExactly(true, false);
    assertThat(control.advice()).hasSize(1);
    assertThat(control.advice().get(0)).contains("place 2", "90.0 %", "95.0 %", "ram it again");
    // Grains 2700, dry 0.9 of the greatest: pores by volume, and how much of them is water.
    PhaseState phases = control.places().get(1).phases();
    assertThat(phases.porosity()).isCloseTo(1 - loose / 2700, within(1e-9));
    assertThat(phases.saturation())
        .isCloseTo(0.12 * loose / 1000 / (1 - loose / 2700), within(1e-9));
  }

  @Test
  void tooDryAMixIsWettedFirst() {
    CompactionControl control = CompactionControl.of(CURVE, List.of(), 0.09, 1950);
    double optimum = CURVE.optimumMoisture().likely();
    assertThat(control.waterToOptimum()).isCloseTo((optimum - 0.09) / 1.09, within(1e-12));
    assertThat(control.advice().get(0)).contains("9.0 %", "wet it first");
    assertThat(control.advice().get(1)).contains("greatest dry density");
    assertThat(CompactionControl.of(CURVE, List.of(), 0.18, 1700).advice().get(0))
        .contains("dry it");
  }

  @Test
  void aDensityThatGrainsCannotHaveIsRefused() {
    assertThatThrownBy(() -> CompactionControl.place(CURVE, 2650, 0.12, Steps.none()))
        .isInstanceOf(IllegalArgumentException.class);
    ProctorCurve blind = ProctorCurve.fit(POINTS, Optional.empty());
    assertThatThrownBy(() -> CompactionControl.place(blind, 1700, 0.12, Steps.none()))
        .hasMessageContaining("specific gravity");
  }
}
