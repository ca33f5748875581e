package io.github.seamstead.examples.service;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.shared.work.Cancellation;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;

/** Plans under way and done, each with a switch of its own. Safe for many threads. */
final class PlanQueue {

  /** More plans than this are neither held nor started. */
  private static final int MOST = 200;

  private final ExecutorService workers;
  private final Map<String, Entry> entries = new ConcurrentHashMap<>();
  private final AtomicLong next = new AtomicLong();

  PlanQueue(int workers) {
    this.workers = Executors.newFixedThreadPool(workers);
  }

  /**
   * Starts a plan, or gives nothing if too many wait already.
   *
   * @param job the job
   * @param effort effort of the search
   * @param limit the longest time that the search may take
   */
  Optional<Entry> start(Job job, int effort, Duration limit) {
    if (entries.size() >= MOST) {
      entries.values().removeIf(entry -> entry.text.isDone());
    }
    if (entries.size() >= MOST) {
      return Optional.empty();
    }
    Entry entry = new Entry(Long.toString(next.incrementAndGet()));
    PlanOptions options =
        PlanOptions.defaults()
            .withEffort(effort)
            .withTimeLimit(limit)
            .heardBy(entry::hear)
            .stoppedBy(entry.cancellation);
    entries.put(entry.id, entry);
    workers.execute(() -> entry.run(job, options));
    return Optional.of(entry);
  }

  Optional<Entry> find(String id) {
    return Optional.ofNullable(entries.get(id));
  }

  void close() {
    entries.values().forEach(Entry::stop);
    workers.shutdown();
  }

  /** One plan. */
  static final class Entry {

    private final String id;
    private final Cancellation cancellation = new Cancellation();
    private final CompletableFuture<String> text = new CompletableFuture<>();
    private volatile double doneRatio;
    private volatile String doing = "waiting";

    private Entry(String id) {
      this.id = id;
    }

    private void run(Job job, PlanOptions options) {
      try {
        text.complete(ResultsJson.text(JobPlanner.plan(job, options)));
      } catch (RuntimeException | Error e) {
        // Whoever asks for the results is told; a worker goes on with the next plan.
        text.completeExceptionally(e);
      }
    }

    private void hear(double ratio, String message) {
      doneRatio = ratio;
      doing = message;
    }

    String id() {
      return id;
    }

    double doneRatio() {
      return doneRatio;
    }

    String doing() {
      return doing;
    }

    void stop() {
      cancellation.cancel();
    }

    /**
     * Gives the results if they are there.
     *
     * @throws JobFaultsException if values of the job contradict each other
     * @throws IllegalStateException if the library failed
     */
    Optional<String> results() {
      try {
        return Optional.ofNullable(text.getNow(null));
      } catch (CompletionException e) {
        if (e.getCause() instanceof JobFaultsException faults) {
          throw faults;
        }
        throw new IllegalStateException("the plan failed: " + e.getCause(), e);
      }
    }
  }
}
