package io.github.seamstead.api.plan;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.api.diary.internal.DiaryFold;
import io.github.seamstead.api.diary.internal.JobMerge;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.DiaryEntry;
import io.github.seamstead.api.job.DiaryLine;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.shared.work.Progress;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Plans a job along its diary: each day works by the plan of the evening before. A plan is made
 * again only where a piece was cut by it and something since the plan before may have moved it.
 */
final class DiaryRun {

  private static final Set<Chapter> READ =
      Set.of(Chapter.PATTERN, Chapter.LAYOUT, Chapter.JOINING, Chapter.FLOOR);

  private final Job job;
  private final Diary diary;
  private final PlanOptions options;
  private final DiaryFold fold;
  private Optional<JobPlan> before;

  /**
   * Plans the job as it was before the first line.
   *
   * @param job the job by which the diary's days worked
   * @param diary the diary
   * @param options the terms, the same for all plans
   */
  DiaryRun(Job job, Diary diary, PlanOptions options) {
    this.job = job;
    this.diary = diary;
    this.options = options;
    boolean oneDay = diary.before().lines().isEmpty();
    JobPlan first = run(job, Done.NOTHING, oneDay ? options : stage());
    before = oneDay ? Optional.of(first) : Optional.empty();
    fold = new DiaryFold(job, diary, new PlannedBefore(first));
  }

  /**
   * What a diary comes to.
   *
   * @param done what is done
   * @param before the plan by which the last day worked
   */
  record Read(Done done, JobPlan before) {}

  /** The terms with the chapters that a diary looks at, beside those asked for. */
  static PlanOptions whole(PlanOptions options) {
    Set<Chapter> chapters = EnumSet.copyOf(options.chapters());
    chapters.addAll(READ);
    return new PlanOptions(
        options.effort(),
        options.seed(),
        options.worked(),
        chapters,
        options.timeLimit(),
        options.progress(),
        options.cancellation(),
        options.executor());
  }

  /** The chapters that a diary looks at; nobody hears of the plans between. */
  private PlanOptions stage() {
    return new PlanOptions(
        options.effort(),
        options.seed(),
        false,
        READ,
        options.timeLimit(),
        Progress.NONE,
        options.cancellation(),
        options.executor());
  }

  static JobPlan run(Job job, Done done, PlanOptions options) {
    return JobPlanner.plan(job, options, done);
  }

  /** Reads the whole diary, or throws all its contradictions. */
  Read read() {
    List<DiaryLine> lines = diary.lines();
    int lastDay = diary.before().lines().size();
    for (int i = 0; i < lines.size(); i++) {
      boolean newDay = i == 0 || !lines.get(i).date().equals(lines.get(i - 1).date());
      if (i > 0 && i == lastDay) {
        before = plan(i, options);
      } else if (newDay && i > 0 && fold.isStale() && cutsOn(lines, i)) {
        plan(i, stage());
      }
      fold.read(i);
    }
    List<JobFault> faults = new ArrayList<>(terms());
    faults.addAll(fold.faults());
    if (!faults.isEmpty()) {
      throw new JobFaultsException(faults);
    }
    return new Read(fold.done(), before.orElseThrow());
  }

  /** Whether a piece is cut on a day by its plan. */
  private static boolean cutsOn(List<DiaryLine> lines, int from) {
    LocalDate day = lines.get(from).date();
    for (int i = from; i < lines.size() && lines.get(i).date().equals(day); i++) {
      if (lines.get(i).entry() instanceof DiaryEntry.Cut cut && cut.place().isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** Plans what was known before a line; after a contradiction the plan before must do. */
  private Optional<JobPlan> plan(int lines, PlanOptions terms) {
    if (!fold.faults().isEmpty()) {
      return Optional.empty();
    }
    Job known = JobMerge.into(job, diary.lines().subList(0, lines));
    JobPlan plan = run(known, fold.done(), terms);
    fold.planned(new PlannedBefore(plan));
    return Optional.of(plan);
  }

  /** A plan with another effort or seed lays pieces elsewhere than they were cut. */
  private List<JobFault> terms() {
    List<JobFault> faults = new ArrayList<>();
    term("effort", diary.effort().map(Integer::longValue), options.effort()).ifPresent(faults::add);
    term("seed", diary.seed().map(Integer::longValue), options.seed()).ifPresent(faults::add);
    return faults;
  }

  private Optional<JobFault> term(String key, Optional<Long> stated, long used) {
    return stated
        .filter(value -> value != used)
        .map(
            value ->
                new JobFault(
                    "$." + key,
                    diary.textLines().getOrDefault("$." + key, 0),
                    Long.toString(value),
                    "must be the "
                        + key
                        + " of this plan, "
                        + used
                        + ": pieces were cut by plans of that "
                        + key
                        + ", so plan on with it"));
  }
}
