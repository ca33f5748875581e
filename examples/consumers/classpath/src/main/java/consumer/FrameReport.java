package consumer;

import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.chapter.PlanOptions;
import java.nio.file.Path;
import java.util.Locale;

/** Plans a job from the class path and prints what the frame and the cover take. */
public final class FrameReport {

  private FrameReport() {}

  public static void main(String[] args) {
    JobPlan plan = JobPlanner.plan(JobReader.read(Path.of(args[0])), PlanOptions.defaults());
    plan.frame()
        .ifPresent(
            frame -> {
              line("sides", frame.pyramid().sides());
              line("hip length, m", frame.measures().hipLength());
              line("cover area, m2", frame.measures().coverArea());
            });
    plan.cover().ifPresent(cover -> line("cloth area, m2", cover.clothArea()));
    plan.cautions().forEach(c -> System.out.println("caution: " + c.caution().risk()));
  }

  private static void line(String name, double value) {
    System.out.printf(Locale.ROOT, "%s: %.3f%n", name, value);
  }
}
