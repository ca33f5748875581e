package io.github.seamstead.api.plan;

import io.github.seamstead.api.chapter.ChapterCaution;
import io.github.seamstead.api.chapter.NotPlanned;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.drying.DryingPart;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Findings;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.joining.SchedulePart;
import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.chapter.markout.MarkoutPart;
import io.github.seamstead.api.chapter.rigging.AnchoringPart;
import io.github.seamstead.api.chapter.rigging.FixingsPart;
import io.github.seamstead.api.chapter.rigging.HandlingPart;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.soil.SoilPart;
import io.github.seamstead.api.chapter.soil.TrialPart;
import io.github.seamstead.api.chapter.survey.SurveyPart;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.List;
import java.util.Optional;

/**
 * All results of one run, as the modules gave them, in the order of the work. Immutable.
 *
 * <p>Each chapter's part is found by its type in {@link #parts()}; the methods named after the
 * stages are the short way there.
 */
public final class JobPlan {

  private final Job job;
  private final PlanOptions options;
  private final Parts parts;
  private final List<NotPlanned> notPlanned;
  private final List<Unmet> unmet;
  private final List<Assumption> assumptions;
  private final List<ChapterCaution> cautions;
  private final List<Derivation> derivations;
  private final Done done;
  private final Optional<PlanChanges> changes;

  JobPlan(Job job, PlanOptions options, Parts parts, Run run, Optional<PlanChanges> changes) {
    this.changes = changes;
    this.done = run.done();
    this.job = job;
    this.options = options;
    this.parts = parts;
    Findings found = run.findings();
    notPlanned = found.notPlanned();
    unmet = found.unmet();
    assumptions = found.assumptions();
    cautions = found.cautions();
    derivations = found.derivations();
  }

  private JobPlan(JobPlan plan, PlanChanges changes) {
    this.changes = Optional.of(changes);
    done = plan.done;
    job = plan.job;
    options = plan.options;
    parts = plan.parts;
    notPlanned = plan.notPlanned;
    unmet = plan.unmet;
    assumptions = plan.assumptions;
    cautions = plan.cautions;
    derivations = plan.derivations;
  }

  /** The same plan with what changed since the plan before it. */
  JobPlan with(PlanChanges since) {
    return new JobPlan(this, since);
  }

  /**
   * Gives what the diary says is done, on which the plan builds.
   *
   * @return the fixed part of the plan; {@link Done#NOTHING} for a job without a diary
   */
  public Done done() {
    return done;
  }

  /**
   * Gives what changed since the plan before, and why.
   *
   * @return the changes; empty for a job without a diary
   */
  public Optional<PlanChanges> changes() {
    return changes;
  }

  /**
   * Gives the job.
   *
   * @return the job as it was read
   */
  public Job job() {
    return job;
  }

  /**
   * Gives the terms of the run.
   *
   * @return the options
   */
  public PlanOptions options() {
    return options;
  }

  /**
   * Gives what the chapters found.
   *
   * @return the parts by type
   */
  public Parts parts() {
    return parts;
  }

  /**
   * Gives the ideal frame.
   *
   * @return the part, if it was planned
   */
  public Optional<FramePart> frame() {
    return parts.one(FramePart.class);
  }

  /**
   * Gives the frame as it was taped.
   *
   * @return the part, if it was planned
   */
  public Optional<SurveyPart> survey() {
    return parts.one(SurveyPart.class);
  }

  /**
   * Gives the pieces of the cover.
   *
   * @return the part, if it was planned
   */
  public Optional<CoverPart> cover() {
    return parts.one(CoverPart.class);
  }

  /**
   * Gives how each panel shape is drawn with a tape.
   *
   * @return the parts; empty if not planned
   */
  public List<MarkoutPart> markout() {
    return parts.all(MarkoutPart.class);
  }

  /**
   * Gives where each piece is cut.
   *
   * @return the part, if it was planned
   */
  public Optional<LayoutPart> layout() {
    return parts.one(LayoutPart.class);
  }

  /**
   * Gives how the panels are joined.
   *
   * @return the part, if it was planned
   */
  public Optional<JoiningPart> joining() {
    return parts.one(JoiningPart.class);
  }

  /**
   * Gives how long the joining takes.
   *
   * @return the part, if it was planned
   */
  public Optional<SchedulePart> schedule() {
    return parts.one(SchedulePart.class);
  }

  /**
   * Gives what holds seams and hem.
   *
   * @return the part, if it was planned
   */
  public Optional<FixingsPart> fixings() {
    return parts.one(FixingsPart.class);
  }

  /**
   * Gives lifting, turning and raising the cover.
   *
   * @return the part, if it was planned
   */
  public Optional<HandlingPart> handling() {
    return parts.one(HandlingPart.class);
  }

  /**
   * Gives wind screening of edge and pegs.
   *
   * @return the part, if it was planned
   */
  public Optional<AnchoringPart> anchoring() {
    return parts.one(AnchoringPart.class);
  }

  /**
   * Gives the local soils.
   *
   * @return the parts; empty if not planned
   */
  public List<SoilPart> soils() {
    return parts.all(SoilPart.class);
  }

  /**
   * Gives the mixes that the floor calls.
   *
   * @return the parts; empty if not planned
   */
  public List<MixPart> mixes() {
    return parts.all(MixPart.class);
  }

  /**
   * Gives what the trial samples say.
   *
   * @return the parts; empty if not planned
   */
  public List<TrialPart> trials() {
    return parts.all(TrialPart.class);
  }

  /**
   * Gives the floor.
   *
   * @return the part, if it was planned
   */
  public Optional<FloorPart> floor() {
    return parts.one(FloorPart.class);
  }

  /**
   * Gives how each mixed layer dries.
   *
   * @return the parts; empty if not planned
   */
  public List<DryingPart> drying() {
    return parts.all(DryingPart.class);
  }

  /**
   * Gives chapters left out, and why.
   *
   * @return the list
   */
  public List<NotPlanned> notPlanned() {
    return notPlanned;
  }

  /**
   * Gives what the job asks for and cannot be met as stated.
   *
   * @return the list
   */
  public List<Unmet> unmet() {
    return unmet;
  }

  /**
   * Gives every value that the document leaves out and the plan took from elsewhere.
   *
   * @return the list
   */
  public List<Assumption> assumptions() {
    return assumptions;
  }

  /**
   * Gives every caution, each once, with its chapter.
   *
   * @return the list
   */
  public List<ChapterCaution> cautions() {
    return cautions;
  }

  /**
   * Gives the worked steps of each calculation.
   *
   * @return the list; empty unless asked for
   */
  public List<Derivation> derivations() {
    return derivations;
  }

  @Override
  public String toString() {
    return "JobPlan[" + unmet.size() + " unmet, " + notPlanned.size() + " not planned]";
  }
}
