package io.github.seamstead.api.compare;

import io.github.seamstead.api.book.front.WorkTotals;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.job.Alternative;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.work.Progress;
import io.github.seamstead.shared.work.internal.OrderedWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Stream;

/**
 * Plans the variants of a job and gives a row for each.
 *
 * <p>The rows come in the order of the variants and are the same for any executor. Cost: linear in
 * the variants; a few plans are in memory at a time, whatever their number.
 */
final class VariantPlans {

  /** Soils and forecasts kept between plans; each is a few kilobytes. */
  private static final int KEPT = 256;

  private final JobDraft job;
  private final CompareOptions options;
  private final Series series;

  private VariantPlans(JobDraft job, CompareOptions options) {
    this.job = job;
    this.options = options;
    this.series = new Series(Recall.of(KEPT), Supposed.NOTHING, options.quick(), false);
  }

  /**
   * Plans the job as it is written, then each variant, as the rows are asked for. Once the switch
   * of the options is on, the stream ends with the rows before.
   *
   * @param job the job as it is written
   * @param variants what is other in each variant
   * @param options the terms
   * @param executor where plans are made; {@code Runnable::run} for no thread but the caller's
   * @param ahead how many plans may be under way at once, 1 to 1000; as many as the executor has
   *     threads is enough
   * @return the rows in order, the first that of the job as written; read once, by one thread
   * @throws IllegalArgumentException if {@code ahead} is out of range
   */
  public static Stream<VariantRow> rows(
      JobDraft job,
      List<Alternative> variants,
      CompareOptions options,
      Executor executor,
      int ahead) {
    Args.within("plans under way", ahead, 1, 1000);
    List<Alternative> all = new ArrayList<>();
    all.add(new Alternative("as written", List.of()));
    all.addAll(variants);
    VariantPlans plans = new VariantPlans(job, options);
    return OrderedWork.of(
            all.size(),
            number -> plans.row(number, all.get(number)),
            executor,
            ahead,
            options.plan().cancellation())
        .peek(row -> plans.report(row, all.size()));
  }

  private void report(VariantRow row, int of) {
    options.plan().progress().report((row.number() + 1.0) / of, row.name());
  }

  private VariantRow row(int number, Alternative variant) {
    List<JobChange> changes = new ArrayList<>(variant.set());
    changes.addAll(options.cut());
    try {
      Job read = job.with(changes).job();
      PlanOptions terms = options.planned().heardBy(Progress.NONE);
      return row(number, variant.name(), JobPlanner.plan(read, terms, series));
    } catch (JobFaultsException e) {
      return unmet(number, variant.name(), e.faults().stream().map(JobFault::text).toList());
    } catch (ArgumentFault e) {
      return unmet(number, variant.name(), List.of(String.valueOf(e.getMessage())));
    }
  }

  private static VariantRow unmet(int number, String name, List<String> why) {
    return new VariantRow(
        number, name, why, Map.of(), Optional.empty(), false, List.of(), Optional.empty());
  }

  static VariantRow row(int number, String name, JobPlan plan) {
    WorkTotals work = WorkTotals.of(plan);
    return new VariantRow(
        number,
        name,
        plan.unmet().stream().map(u -> u.chapter().title() + ": " + u.what()).toList(),
        Measures.of(plan, work),
        Optional.of(work.calendarDays().times(1 / 7.0)).filter(range -> work.workingDays() > 0),
        work.openEnded(),
        work.unpriced(),
        plan.frame().map(f -> f.pyramid()));
  }
}
