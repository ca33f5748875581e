package io.github.seamstead.examples.derivations;

import io.github.seamstead.shared.derivation.Steps;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * One call of each published calculation, by its id: it records into the steps that it gets and
 * gives the value of the result that its Javadoc names as the last step. Add a calculation's line
 * here when you publish it.
 */
final class Samples {

  private final Map<String, ToDoubleFunction<Steps>> calls = new LinkedHashMap<>();

  private Samples() {}

  static Map<String, ToDoubleFunction<Steps>> all() {
    Samples samples = new Samples();
    FrameSamples.addTo(samples);
    SurveySamples.addTo(samples);
    PatternSamples.addTo(samples);
    SoilSamples.addTo(samples);
    MixSamples.addTo(samples);
    WaterSamples.addTo(samples);
    FloorSamples.addTo(samples);
    AssemblySamples.addTo(samples);
    FixingSamples.addTo(samples);
    HandlingSamples.addTo(samples);
    AnchorSamples.addTo(samples);
    SensitivitySamples.addTo(samples);
    return samples.calls;
  }

  void add(String id, ToDoubleFunction<Steps> call) {
    if (calls.put(id, call) != null) {
      throw new IllegalStateException("two samples of " + id);
    }
  }
}
