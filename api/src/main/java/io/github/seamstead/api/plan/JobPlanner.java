package io.github.seamstead.api.plan;

import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Job;

/**
 * Plans a job: runs the modules in the order of the work.
 *
 * <p>A chapter that the document does not ask for is left out and listed. A chapter that cannot be
 * met, such as a door that leaves its face, is listed with the value it follows from; what builds
 * on it is left out, and everything else is planned. Values that contradict each other are faults
 * of the document, and all such faults are thrown together.
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
    Run run = new Run(job, options, Chapters.all(), series);
    Parts parts = run.plan();
    run.requireNoFaults(parts);
    return new JobPlan(job, options, parts, run);
  }
}
