package io.github.seamstead.api.testing;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import java.nio.file.Path;

/** The bundled demo jobs, planned. */
public final class DemoJobs {

  /** Where they lie, seen from this module. */
  public static final Path FOLDER = Path.of("../examples/jobs");

  private DemoJobs() {}

  /**
   * Plans a demo with the default options.
   *
   * @param name without folder and ending
   * @return the plan
   */
  public static JobPlan plan(String name) {
    return plan(name, PlanOptions.defaults());
  }

  /**
   * Plans a demo.
   *
   * @param name without folder and ending
   * @param options the options
   * @return the plan
   */
  public static JobPlan plan(String name, PlanOptions options) {
    return JobPlanner.plan(JobReader.read(FOLDER.resolve(name + ".json")), options);
  }
}
