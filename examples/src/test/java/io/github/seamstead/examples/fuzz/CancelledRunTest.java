package io.github.seamstead.examples.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A run that nobody waits for any more ends soon, wherever it is. */
class CancelledRunTest {

  private static final OperatingSystemMXBean MACHINE =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

  /** Cancels a run after a while and gives the seconds until it has returned. */
  private static double secondsToReturn(Job job, double after) throws Exception {
    Cancellation cancellation = new Cancellation();
    CompletableFuture<Void> run =
        CompletableFuture.runAsync(
            () -> {
              try {
                JobPlanner.plan(job, PlanOptions.defaults().stoppedBy(cancellation));
              } catch (JobFaultsException e) {
                // What is refused has returned as well.
                return;
              }
            });
    try {
      run.get((long) (after * 1000), TimeUnit.MILLISECONDS);
      return 0;
    } catch (java.util.concurrent.TimeoutException e) {
      cancellation.cancel();
    }
    long start = System.nanoTime();
    run.get(300, TimeUnit.SECONDS);
    return (System.nanoTime() - start) / 1e9;
  }

  @Test
  void aRunThatIsCancelledAtOnceTellsWhatItLeftOut() {
    Cancellation cancellation = new Cancellation();
    cancellation.cancel();
    Job job = Large.FIFTY_SOILS.job();
    JobPlan plan = JobPlanner.plan(job, PlanOptions.defaults().stoppedBy(cancellation));
    assertThat(plan.soils()).isEmpty();
    assertThat(plan.floor()).isEmpty();
    assertThat(plan.notPlanned().toString()).contains("the run was cancelled");
  }

  @ParameterizedTest
  @EnumSource(Large.class)
  void aLargeRunReturnsWhereverItIsCancelled(Large large) throws Exception {
    // How soon is held by the soak: a busy machine must not fail a build.
    secondsToReturn(large.job(), 0.7);
  }

  @ParameterizedTest
  @EnumSource(Large.class)
  void aLargeRunThatIsCancelledAtItsFirstWordTellsWhatItLeftOut(Large large) {
    Cancellation cancellation = new Cancellation();
    PlanOptions options =
        PlanOptions.defaults()
            .stoppedBy(cancellation)
            .heardBy((done, doing) -> cancellation.cancel());
    JobPlan plan = JobPlanner.plan(large.job(), options);
    assertThat(plan.notPlanned().toString()).contains("the run was cancelled");
  }

  @Tag("soak")
  @ParameterizedTest
  @EnumSource(Large.class)
  void aLargeRunReturnsWithinAFifthOfASecond(Large large) throws Exception {
    Job job = large.job();
    for (double after = 0.05; after < 4; after *= 1.4) {
      assertThat(secondsToReturn(job, after)).as("cancelled after %s s", after).isLessThan(0.2);
    }
  }

  @Test
  void aTimeLimitEndsTheSearches() {
    PlanOptions hard = PlanOptions.defaults().withEffort(9);
    Job job = JobReader.read(java.nio.file.Path.of("jobs/seed-loft.json"));
    JobPlan plan = JobPlanner.plan(job, hard.withTimeLimit(Duration.ofMillis(200)));
    assertThat(plan.layout().orElseThrow().result().stopped()).isPresent();
  }

  @Tag("soak")
  @ParameterizedTest
  @EnumSource(Large.class)
  void theLargestDocumentsAreAnsweredInTenSecondsOrTellHowFarTheyAre(Large large) {
    answered(options -> JobPlanner.plan(large.job(), options));
  }

  @Tag("soak")
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"seamstead\":1,\"frame\":{\"survey\":{\"distances\":[%s]}}}~{\"from\":\"B1\",\"to\":\"B2\"},",
        "{\"seamstead\":1,%s\"x\":1}~\"k\":1,",
        "%s~{\"a\":",
        "{\"seamstead\":1,\"site\":{\"name\":\"%s\"}}~\\u202e",
        "{\"seamstead\":1,\"soils\":[%s]}~{\"id\":\"a\",\"ribbon\":\"1 1/2 ft in\"},"
      })
  void fourMebibytesOfAnythingAreAnsweredInTenSeconds(String form) {
    String[] parts = form.split("~", 2);
    int times = (int) (JobReader.LARGEST_BYTES - parts[0].length()) / parts[1].length();
    byte[] text = parts[0].replace("%s", parts[1].repeat(times)).getBytes(StandardCharsets.UTF_8);
    answered(options -> JobPlanner.plan(JobReader.parse(text), options));
  }

  /** Within ten seconds of processor time, or with a word every three. */
  private static void answered(Consumer<PlanOptions> work) {
    long start = MACHINE.getProcessCpuTime();
    AtomicLong last = new AtomicLong(start);
    AtomicLong longest = new AtomicLong();
    Progress words =
        (done, doing) -> {
          long now = MACHINE.getProcessCpuTime();
          long silent = now - last.getAndSet(now);
          longest.accumulateAndGet(silent, Math::max);
        };
    try {
      work.accept(PlanOptions.defaults().heardBy(words));
    } catch (JobFaultsException e) {
      assertThat(e.faults()).hasSizeLessThanOrEqualTo(200);
    }
    words.report(1, "done");
    if (MACHINE.getProcessCpuTime() - start > 10e9) {
      assertThat(longest.get() / 1e9).as("longest silence").isLessThan(3);
    }
  }
}
