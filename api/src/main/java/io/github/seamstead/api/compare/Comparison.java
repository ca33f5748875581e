package io.github.seamstead.api.compare;

import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.job.Alternative;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.VariantsDocument;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Stream;

/**
 * The variants of a job beside each other.
 *
 * <pre>{@code
 * JobDraft job = JobDraft.read(Path.of("jobs/seed-loft.json"));
 * VariantsDocument variants = VariantsReader.read(Path.of("jobs/variants/seed-loft.json"), job);
 * Comparison comparison =
 *     Comparison.of(
 *         job, variants, CompareOptions.quickly(), ParetoFront.USUAL, ForkJoinPool.commonPool(), 2);
 * comparison.rows().size(); // 7
 * }</pre>
 *
 * @param job the job's name
 * @param note a remark of the variants document, if stated
 * @param imperial whether people read feet and pounds
 * @param options the terms
 * @param rows the job as written, then each variant
 * @param front the rows that none beats
 * @param levers what saves money and hours, the most first
 */
public record Comparison(
    String job,
    Optional<String> note,
    boolean imperial,
    CompareOptions options,
    List<VariantRow> rows,
    ParetoFront front,
    List<LeverRow> levers) {

  public Comparison {
    rows = List.copyOf(rows);
    levers = List.copyOf(levers);
  }

  /**
   * Plans all variants and all levers of a job. Costs time linear in the variants.
   *
   * @param job the job as it is written
   * @param variants what is other in each variant
   * @param options the terms
   * @param objectives what counts for which rows none beats, as {@link ParetoFront#USUAL}
   * @param executor where plans are made
   * @param ahead how many plans may be under way at once, 1 to 1000
   * @return the comparison; the same for any executor
   * @throws io.github.seamstead.api.job.JobFaultsException if the job as written has a fault
   */
  public static Comparison of(
      JobDraft job,
      VariantsDocument variants,
      CompareOptions options,
      List<Measure> objectives,
      Executor executor,
      int ahead) {
    JobPlan base =
        JobPlanner.plan(
            job.with(options.cut()).job(),
            options.planned(),
            // Recalling makes it one of many: where to save is what the levers below are for.
            new Series(Recall.of(1), Supposed.NOTHING, options.quick(), false));
    List<Lever> levers = Levers.of(base);
    List<Alternative> all = new ArrayList<>(variants.variants());
    int asked = all.size() + 1;
    levers.forEach(lever -> all.add(new Alternative(lever.name(), lever.changes())));
    List<VariantRow> planned;
    try (Stream<VariantRow> rows = VariantPlans.rows(job, all, options, executor, ahead)) {
      planned = rows.toList();
    }
    List<VariantRow> rows = planned.subList(0, Math.min(asked, planned.size()));
    List<LeverRow> pulled = new ArrayList<>();
    for (int i = asked; i < planned.size(); i++) {
      pulled.add(new LeverRow(levers.get(i - asked), planned.get(0), planned.get(i)));
    }
    pulled.sort(LeverRow.MOST_SAVED_FIRST);
    return new Comparison(
        base.job().document().site().map(s -> s.name()).orElse("The job"),
        variants.note(),
        base.job().document().units() == UnitSystem.IMPERIAL,
        options,
        rows,
        ParetoFront.of(rows, objectives),
        pulled);
  }

  /**
   * Tells whether a row is beaten by none.
   *
   * @param row a row
   * @return true if it is one of the front
   */
  public boolean isBest(VariantRow row) {
    return front.numbers().contains(row.number());
  }

  /**
   * Gives the measures that some row has, in order.
   *
   * @return the columns of the table
   */
  public List<Measure> columns() {
    return Stream.of(Measure.values())
        .filter(m -> rows.stream().anyMatch(row -> row.value(m).isPresent()))
        .toList();
  }
}
