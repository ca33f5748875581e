package io.github.seamstead.api.doubt;

import io.github.seamstead.api.compare.Measure;
import java.util.List;

/**
 * What matters most in a job: for each number that people decide by, which input's doubt moves it.
 *
 * <p>The decisions stay as planned: the sand in each mix is not chosen anew when the clay is
 * otherwise. Nothing is laid out on the stock; see {@link MattersOptions#LEFT_OUT}.
 *
 * <pre>{@code
 * JobDraft job = JobDraft.read(Path.of("jobs/class-model.json"));
 * MattersOptions options = new MattersOptions(16, 1, Progress.NONE, new Cancellation());
 * Matters matters = MattersSearch.of(job, options, ForkJoinPool.commonPool(), 2);
 * matters.numbers().isEmpty(); // false
 * }</pre>
 *
 * @param job the job's name
 * @param imperial whether people read feet and pounds
 * @param options the terms
 * @param numbers the numbers that any doubt moves
 * @param still what is not looked at or that no doubt moves, each with the reason
 * @param runs how many plans were made
 */
public record Matters(
    String job,
    boolean imperial,
    MattersOptions options,
    List<NumberInDoubt> numbers,
    List<String> still,
    int runs) {

  /** The numbers that are looked at. */
  public static final List<Measure> NUMBERS =
      List.of(
          Measure.WEEKS,
          Measure.MONEY,
          Measure.CLOTH_AREA,
          Measure.CLAY,
          Measure.PEG_PULL,
          Measure.SEAM_MISFIT);

  public Matters {
    numbers = List.copyOf(numbers);
    still = List.copyOf(still);
  }
}
