package io.github.seamstead.materials.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import java.util.EnumMap;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class PhaseRelationsProperties {

  private static Map<PhaseQuantity, Double> all(PhaseState s) {
    Map<PhaseQuantity, Double> all = new EnumMap<>(PhaseQuantity.class);
    all.put(PhaseQuantity.SPECIFIC_GRAVITY, s.specificGravity());
    all.put(PhaseQuantity.VOID_RATIO, s.voidRatio());
    all.put(PhaseQuantity.POROSITY, s.porosity());
    all.put(PhaseQuantity.MOISTURE, s.moisture());
    all.put(PhaseQuantity.MOISTURE_WET_BASIS, s.moistureWetBasis());
    all.put(PhaseQuantity.SATURATION, s.saturation());
    all.put(PhaseQuantity.AIR_CONTENT, s.airContent());
    all.put(PhaseQuantity.DRY_DENSITY, s.dryDensity());
    all.put(PhaseQuantity.BULK_DENSITY, s.bulkDensity());
    return all;
  }

  @Property(tries = 15, seed = "20261134")
  void everySufficientSetGivesTheSameSoilBack(
      @ForAll @Scale(4) @DoubleRange(min = 0.4, max = 0.8) double solids,
      @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.95) double filled,
      @ForAll @Scale(4) @DoubleRange(min = 2.3, max = 2.9) double gravity) {
    PhaseState truth = new PhaseState(solids, filled * (1 - solids), gravity, 1000);
    Map<PhaseQuantity, Double> all = all(truth);
    PhaseQuantity[] q = PhaseQuantity.values();
    int solved = 0;
    for (int i = 0; i < q.length; i++) {
      for (int j = i + 1; j < q.length; j++) {
        for (int k = j + 1; k < q.length; k++) {
          Map<PhaseQuantity, Double> three =
              Map.of(q[i], all.get(q[i]), q[j], all.get(q[j]), q[k], all.get(q[k]));
          PhaseState state;
          StepRecorder steps = new StepRecorder();
          try {
            state = PhaseRelations.solve(three, 1000, steps);
          } catch (IllegalArgumentException e) {
            assertThat(e).hasMessageContaining("do not follow from each other");
            continue;
          }
          solved++;
          assertThat(state.bulkDensity()).isCloseTo(truth.bulkDensity(), within(1e-6));
          assertThat(state.saturation()).isCloseTo(truth.saturation(), within(1e-9));
          assertThat(state.specificGravity()).isCloseTo(gravity, within(1e-9));
          DerivationChecks.assertFollowsTo(
              steps.derivation("materials.water.phases", "phases"), state.saturation());
        }
      }
    }
    // Of 84 triples these repeat themselves: the 2 × … with both void ratio and porosity (7), both
    // moistures (7), bulk and dry density with either moisture (2), void ratio or porosity with
    // saturation and air content (2), gravity and dry density with void ratio or porosity (2).
    assertThat(solved).isEqualTo(64);
  }
}
