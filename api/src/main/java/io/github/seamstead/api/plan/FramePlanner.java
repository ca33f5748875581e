package io.github.seamstead.api.plan;

import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.FrameMeasure;
import io.github.seamstead.api.job.FrameOpening;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.FrameSolution;
import io.github.seamstead.geometry.frame.FrameSolver;
import io.github.seamstead.geometry.frame.PyramidMeasure;
import io.github.seamstead.geometry.frame.RegularPyramid;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Solves the ideal frame from the measures stated. */
final class FramePlanner {

  private FramePlanner() {}

  static Optional<FramePart> plan(Run run) {
    Frame frame = run.document().frame();
    if (frame.measures().isEmpty()) {
      return Optional.empty();
    }
    Map<PyramidMeasure, Double> given = given(frame.measures().get());
    Optional<FrameSolution> solution =
        run.attempt("$.frame.measures", () -> FrameSolver.solve(frame.sides(), given));
    Optional<RegularPyramid> whole =
        solution.flatMap(s -> run.attempt("$.frame.measures", s::single));
    return whole
        .flatMap(w -> run.attempt("$.frame.opening", () -> cut(w, frame.opening())))
        .map(pyramid -> new FramePart(pyramid, measures(run, pyramid), solution));
  }

  private static Map<PyramidMeasure, Double> given(Map<FrameMeasure, Double> stated) {
    Map<PyramidMeasure, Double> given = new EnumMap<>(PyramidMeasure.class);
    stated.forEach((measure, value) -> given.put(PyramidMeasure.valueOf(measure.name()), value));
    return given;
  }

  private static RegularPyramid cut(RegularPyramid whole, Optional<FrameOpening> opening) {
    if (opening.isEmpty()) {
      return whole;
    }
    FrameOpening o = opening.get();
    if (o.side().isPresent()) {
      return whole.withOpeningSide(o.side().get());
    }
    if (o.radius().isPresent()) {
      return whole.withOpeningCircumradius(o.radius().get());
    }
    return whole.withOpeningAtHeight(o.cutHeight().orElseThrow());
  }

  private static FrameMeasures measures(Run run, RegularPyramid pyramid) {
    return run.worked("geometry.frame.measures", "The frame's measures", pyramid::measures);
  }
}
