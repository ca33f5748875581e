package io.github.seamstead.api.plan;

import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.diary.internal.JobMerge;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.Job;
import java.util.List;
import java.util.Optional;

/**
 * Plans a job: runs the modules in the order of the work.
 *
 * <p>A run that is cancelled soon gives what it has: searches that were begun their best so far,
 * and the chapters that were not done stand among those left out. One that is asked to finish gives
 * all chapters, with what its searches had found until then.
 *
 * <p>A chapter that the document does not ask for is left out and listed. A chapter that cannot be
 * met, such as a door that leaves its face, is listed with the value it follows from; what builds
 * on it is left out, and everything else is planned. Values that contradict each other are faults
 * of the document, and all such faults are thrown together.
 *
 * <pre>{@code
 * Job job = JobReader.read(Path.of("jobs/class-model.json"));
 * JobPlan plan = JobPlanner.plan(job, PlanOptions.defaults());
 * plan.frame().orElseThrow().measures().coverArea(); // 0.211 in square metres
 * plan.unmet().isEmpty(); // true
 * }</pre>
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
   *     each other, or if nothing of it can be met
   */
  public static JobPlan plan(Job job, PlanOptions options) {
    return plan(job, options, Series.alone());
  }

  static JobPlan plan(Job job, PlanOptions options, Done done) {
    return plan(job, options, Series.alone(), done);
  }

  /**
   * Plans one of many jobs that are alike, or one with other suppositions.
   *
   * @param job the job as it was read
   * @param options the terms
   * @param series what the plans recall, what is supposed, and whether asides are left out
   * @return all results; the same as of a plan by itself but for what is supposed and left out
   * @throws io.github.seamstead.api.job.JobFaultsException if values of the document contradict
   *     each other, or if nothing of it can be met
   */
  public static JobPlan plan(Job job, PlanOptions options, Series series) {
    return plan(job, options, series, Done.NOTHING);
  }

  private static JobPlan plan(Job job, PlanOptions options, Series series, Done done) {
    Run run = new Run(job, options, Chapters.all(), series, done);
    Parts parts = run.plan();
    run.findings().requireNoFaults(parts);
    return new JobPlan(job, options, parts, run, Optional.empty());
  }

  /**
   * Plans on from a diary: what is done stays as it is. The plan tells what changed since the plan
   * of the day before the last one, and why.
   *
   * <p>Panels, layout, joining and floor are planned beside the chapters asked for: a diary speaks
   * of them. Costs two plans, and one more for each day on which pieces were cut after something
   * had moved them.
   *
   * @param job the job as it is written; the diary's evidence is put into it
   * @param diary what was done
   * @param options the terms; effort and seed as they were when pieces were cut
   * @return all results
   * @throws io.github.seamstead.api.job.JobFaultsException with every contradiction of the diary,
   *     or as {@link #plan(Job, PlanOptions)} does
   */
  public static JobPlan plan(Job job, Diary diary, PlanOptions options) {
    PlanOptions whole = DiaryRun.whole(options);
    DiaryRun.Read read = new DiaryRun(job, diary, whole).read();
    JobPlan now = plan(JobMerge.into(job, diary.lines()), whole, read.done());
    return now.with(changes(read.before(), now, diary));
  }

  /**
   * Plans on from a diary after the job document itself was changed: pieces that are cut stay as
   * the document drew them by which they were cut, and the plan says which no longer fit.
   *
   * @param was the job by which the days of the diary worked
   * @param job the job as it is now
   * @param diary what was done
   * @param options the terms; effort and seed as they were when pieces were cut
   * @return all results, with what changed against the plan of the earlier document
   * @throws io.github.seamstead.api.job.JobFaultsException as {@link #plan(Job, Diary,
   *     PlanOptions)} does
   */
  public static JobPlan plan(Job was, Job job, Diary diary, PlanOptions options) {
    PlanOptions whole = DiaryRun.whole(options);
    Done done = new DiaryRun(was, diary, whole).read().done();
    JobPlan then = plan(JobMerge.into(was, diary.lines()), whole, done);
    JobPlan now = plan(JobMerge.into(job, diary.lines()), whole, done.cutOnly());
    return now.with(changes(then, now));
  }

  /**
   * Says what differs between two plans by more than its tolerance, and why.
   *
   * @param before the earlier plan
   * @param after the later plan
   * @return the changes, and the values of the two documents that differ
   */
  public static PlanChanges changes(JobPlan before, JobPlan after) {
    return new PlanComparison(
            before, after, DocumentDifference.of(before.job().document(), after.job().document()))
        .changes();
  }

  private static PlanChanges changes(JobPlan before, JobPlan after, Diary diary) {
    List<PlanChanges.Reason> why =
        diary.lines().subList(diary.before().lines().size(), diary.lines().size()).stream()
            .map(DiaryWords::reason)
            .toList();
    return new PlanComparison(before, after, why).changes();
  }
}
