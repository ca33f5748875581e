package io.github.seamstead.consumer;

import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.geometry.frame.RegularPyramid;
import java.nio.file.Path;
import java.util.Locale;

/** Plans a job on the module path, and uses one module of the library by itself. */
public final class ModuleReport {

  private ModuleReport() {}

  public static void main(String[] args) {
    if (!ModuleReport.class.getModule().isNamed()) {
      throw new IllegalStateException("must be run as a module");
    }
    JobPlan plan = JobPlanner.plan(JobReader.read(Path.of(args[0])), PlanOptions.defaults());
    plan.frame().ifPresent(f -> line("cover area, m2", f.measures().coverArea()));
    RegularPyramid model = RegularPyramid.ofBaseSideAndHeight(4, 2, 1.5);
    line("square pyramid of side 2 m and height 1.5 m: cover, m2", model.measures().coverArea());
    line("modules", ModuleLayer.boot().modules().size());
  }

  private static void line(String name, double value) {
    System.out.printf(Locale.ROOT, "%s: %.3f%n", name, value);
  }
}
