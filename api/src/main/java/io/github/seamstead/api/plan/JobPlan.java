package io.github.seamstead.api.plan;

import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.List;
import java.util.Optional;

/**
 * All results of one run, as the modules gave them, in the order of the work.
 *
 * @param job the job as it was read
 * @param options the terms of the run
 * @param frame the ideal frame
 * @param survey the frame as it was taped
 * @param cover the pieces of the cover
 * @param markout how each panel shape is drawn with a tape
 * @param layout where each piece is cut
 * @param joining how the panels are joined
 * @param schedule how long the joining takes
 * @param fixings what holds seams and hem
 * @param handling lifting, turning and raising the cover
 * @param anchoring wind screening of edge and pegs
 * @param soils the local soils
 * @param mixes the mixes that the floor calls
 * @param trials what the trial samples say
 * @param floor the floor
 * @param drying how each mixed layer dries
 * @param notPlanned chapters left out, and why
 * @param unmet what the job asks for and cannot be met as stated
 * @param assumptions every value that the document leaves out and the plan took from elsewhere
 * @param cautions every caution, each once, with its chapter
 * @param derivations the worked steps of each calculation; empty unless asked for
 */
public record JobPlan(
    Job job,
    PlanOptions options,
    Optional<FramePart> frame,
    Optional<SurveyPart> survey,
    Optional<CoverPart> cover,
    List<MarkoutPart> markout,
    Optional<LayoutPart> layout,
    Optional<JoiningPart> joining,
    Optional<SchedulePart> schedule,
    Optional<FixingsPart> fixings,
    Optional<HandlingPart> handling,
    Optional<AnchoringPart> anchoring,
    List<SoilPart> soils,
    List<MixPart> mixes,
    List<TrialPart> trials,
    Optional<FloorPart> floor,
    List<DryingPart> drying,
    List<NotPlanned> notPlanned,
    List<Unmet> unmet,
    List<Assumption> assumptions,
    List<ChapterCaution> cautions,
    List<Derivation> derivations) {

  /**
   * Copies the lists.
   *
   * @param job the job as it was read
   * @param options the terms of the run
   * @param frame the ideal frame
   * @param survey the frame as it was taped
   * @param cover the pieces of the cover
   * @param markout how each panel shape is drawn with a tape
   * @param layout where each piece is cut
   * @param joining how the panels are joined
   * @param schedule how long the joining takes
   * @param fixings what holds seams and hem
   * @param handling lifting, turning and raising the cover
   * @param anchoring wind screening of edge and pegs
   * @param soils the local soils
   * @param mixes the mixes
   * @param trials what the trial samples say
   * @param floor the floor
   * @param drying how each mixed layer dries
   * @param notPlanned chapters left out
   * @param unmet what cannot be met
   * @param assumptions values taken from elsewhere
   * @param cautions every caution
   * @param derivations worked steps
   */
  public JobPlan {
    markout = List.copyOf(markout);
    soils = List.copyOf(soils);
    mixes = List.copyOf(mixes);
    trials = List.copyOf(trials);
    drying = List.copyOf(drying);
    notPlanned = List.copyOf(notPlanned);
    unmet = List.copyOf(unmet);
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    derivations = List.copyOf(derivations);
  }
}
