package io.github.seamstead.api.plan;

import io.github.seamstead.api.job.Job;
import io.github.seamstead.geometry.plane.Outline;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Plans a job: runs the modules in the order of the work. A part that the document does not ask for
 * is left out and listed; a value that a module refuses becomes a fault of the document, and all
 * such faults are thrown together.
 */
public final class JobPlanner {

  private JobPlanner() {}

  /**
   * Plans a job.
   *
   * @param job the job as it was read
   * @param options the terms
   * @return all results
   * @throws io.github.seamstead.api.job.JobFaultsException if values of the document contradict
   *     each other
   */
  public static JobPlan plan(Job job, PlanOptions options) {
    Run run = new Run(job, options);
    run.progress(0, "frame");
    Optional<FramePart> frame = FramePlanner.plan(run);
    run.progress(0.05, "survey");
    Optional<SurveyPart> survey = SurveyPlanner.plan(run, frame);
    run.progress(0.15, "panels");
    Optional<CoverPart> cover =
        faces(job.document().frame().sides(), frame, survey)
            .flatMap(faces -> CoverPlanner.plan(run, faces, JoiningPlanner.marks(faces), frame));
    run.progress(0.5, "joining");
    List<MarkoutPart> markout = cover.map(c -> MarkoutPlanner.plan(run, c)).orElse(List.of());
    Supplier<Optional<LayoutPart>> layout = LayoutPlanner.start(run, cover);
    Optional<JoiningPart> joining = cover.flatMap(c -> JoiningPlanner.plan(run, c));
    Optional<SchedulePart> schedule = joining.flatMap(j -> SchedulePlanner.plan(run, j));
    Optional<FixingsPart> fixings =
        joining.flatMap(j -> FixingsPlanner.plan(run, cover.orElseThrow(), j));
    Optional<HandlingPart> handling =
        frame.flatMap(f -> cover.flatMap(c -> HandlingPlanner.plan(run, f, c)));
    Optional<AnchoringPart> anchoring =
        frame.flatMap(f -> cover.flatMap(c -> AnchoringPlanner.plan(run, f, c, fixings)));
    run.progress(0.6, "soil and mixes");
    List<SoilPart> soils = SoilPlanner.plan(run);
    List<MixPart> mixes = MixPlanner.plan(run, soils);
    List<TrialPart> trials = mixes.stream().flatMap(mix -> mix.trial().stream()).toList();
    run.progress(0.8, "floor");
    Optional<FloorPart> floor =
        MixPlanner.allPlanned(run, mixes)
            ? FloorPlanner.plan(run, frame, survey, mixes)
            : Optional.empty();
    run.progress(0.9, "drying");
    List<DryingPart> drying = DryingPlanner.plan(run, floor, soils, mixes);
    Optional<LayoutPart> laid = layout.get();
    run.requireNoFaults();
    run.progress(1, "done");
    return new JobPlan(
        job,
        options,
        frame,
        survey,
        cover,
        markout,
        laid,
        joining,
        schedule,
        fixings,
        handling,
        anchoring,
        soils,
        mixes,
        trials,
        floor,
        drying,
        run.notPlanned(),
        run.unmet(),
        run.assumptions(),
        run.cautions(),
        run.derivations());
  }

  /** The faces that panels are drawn for: as surveyed, else as the fabric lies on the ideal. */
  private static Optional<List<Outline>> faces(
      int sides, Optional<FramePart> frame, Optional<SurveyPart> survey) {
    if (survey.isPresent()) {
      return survey.map(s -> SurveyPlanner.faces(s, sides));
    }
    return frame
        .flatMap(FramePart::fabric)
        .map(fabric -> Collections.nCopies(sides, fabric.surface().faceOutline()));
  }
}
