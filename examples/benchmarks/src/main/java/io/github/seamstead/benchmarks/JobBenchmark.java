package io.github.seamstead.benchmarks;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The whole demo job within one process: read, planned, written as a page. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class JobBenchmark {

  /** The demo job's name in {@code examples/jobs}. */
  @Param({"seed-loft", "hill-hide", "class-model"})
  public String job = "";

  private Path file = Path.of("");
  private Job read = JobReader.read(Path.of("examples/jobs/class-model.json"));

  /** Finds the job from the project's top folder. */
  @Setup
  public void find() {
    file = Path.of("examples/jobs", job + ".json");
    read = JobReader.read(file);
  }

  /** Reading and checking the document. */
  @Benchmark
  public Job read() {
    return JobReader.read(file);
  }

  /** Planning at the least effort. */
  @Benchmark
  public JobPlan plan() {
    return JobPlanner.plan(read, PlanOptions.defaults());
  }

  /** From the file to the page. */
  @Benchmark
  public String page() {
    return Book.of(JobPlanner.plan(JobReader.read(file), PlanOptions.defaults())).html();
  }
}
