package io.github.seamstead.api.doubt;

import io.github.seamstead.api.job.FrameMeasure;
import io.github.seamstead.shared.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A length that fixes the frame. */
record Length(String path, double value) {

  static List<Length> of(Map<FrameMeasure, Double> measures) {
    List<Length> lengths = new ArrayList<>();
    measures.forEach(
        (measure, value) -> {
          if (measure.dimension() == Dimension.LENGTH) {
            lengths.add(new Length("frame.measures." + measure.word(), value));
          }
        });
    return lengths;
  }
}
