package io.github.seamstead.api.doubt;

import io.github.seamstead.api.compare.Measure;
import io.github.seamstead.api.compare.MeasureText;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.quantity.UnitSystem;
import io.github.seamstead.shared.sensitivity.SensitivityDesign;
import io.github.seamstead.shared.sensitivity.SensitivityIndex;
import io.github.seamstead.shared.sensitivity.SensitivityRuns;
import io.github.seamstead.shared.uncertainty.Range;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Seeds;
import io.github.seamstead.shared.work.internal.OrderedWork;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.IntFunction;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds what matters most in a job. Cost: {@code N (k + 2)} cheap plans for N points and k doubts,
 * then N for each doubt that is worth halving.
 */
public final class MattersSearch {

  /** A doubt below this part of the variance is not worth a recommendation. */
  private static final double WORTH_HALVING = 0.1;

  private static final int HALVED_FOR_EACH = 2;
  private static final int DRAWS_OF_MANY = 32;

  /** A number that all doubts together move by less, as a part of it, is as good as known. */
  private static final double LEAST_RANGE = 0.01;

  private final DoubtModel model;
  private final MattersOptions options;
  private final Executor executor;
  private final int ahead;
  private final MeasureText text;
  private final SensitivityDesign.Samples samples;
  private int runs;

  private MattersSearch(DoubtModel model, MattersOptions options, Executor executor, int ahead) {
    this.model = model;
    this.options = options;
    this.executor = executor;
    this.ahead = ahead;
    List<Integer> groups = model.doubts().stream().map(Doubt::inputs).toList();
    this.text = new MeasureText(isImperial(model.base()));
    this.samples = new SensitivityDesign(groups, options.points(), options.seed()).samples();
  }

  /**
   * Weighs the doubts of a job.
   *
   * @param job the job as it is written
   * @param options the terms
   * @param executor where plans are made; {@code Runnable::run} for no thread but the caller's
   * @param ahead how many points may be under way at once, 1 or more
   * @return what matters; the same for any executor
   * @throws io.github.seamstead.api.job.JobFaultsException if the job has a fault
   * @throws IllegalArgumentException if the job has nothing that is doubtful
   * @throws CancellationException if the switch was turned before the work was done
   */
  public static Matters of(JobDraft job, MattersOptions options, Executor executor, int ahead) {
    DoubtModel model = DoubtModel.of(job, options);
    if (model.doubts().isEmpty()) {
      throw ArgumentFault.of(
          "job",
          "nothing that is doubtful",
          "must have a frame of stated lengths, a cover or a floor with its soil",
          "",
          "");
    }
    return new MattersSearch(model, options, executor, ahead).matters();
  }

  /** The model at one point of A and of B, and of A with each doubt from B. */
  private record Point(
      Map<Measure, Double> a, Map<Measure, Double> b, List<Map<Measure, Double>> mixed) {

    boolean has(Measure measure) {
      return a.containsKey(measure)
          && b.containsKey(measure)
          && mixed.stream().allMatch(m -> m.containsKey(measure));
    }
  }

  private Matters matters() {
    double[] full = model.fullWidths();
    int doubts = model.doubts().size();
    List<Point> points =
        all(
            options.points(),
            i ->
                new Point(
                    model.run(samples.a(i), full),
                    model.run(samples.b(i), full),
                    IntStream.range(0, doubts)
                        .mapToObj(d -> model.run(samples.mixed(d, i), full))
                        .toList()),
            0,
            0.8);
    runs += options.points() * (doubts + 2);
    List<List<Map<Measure, Double>>> ends = all(doubts, this::alone, 0.8, 0.85);
    Map<Measure, Double> planned = model.planned();
    runs += ends.stream().mapToInt(List::size).sum() + 1;
    List<String> still = new ArrayList<>();
    model.unmoved().forEach(path -> still.add("doubt of " + path + ": cloth is not laid out anew"));
    List<Weighed> weighed = new ArrayList<>();
    for (Measure measure : Matters.NUMBERS) {
      weigh(measure, points, planned, still).ifPresent(weighed::add);
    }
    List<List<Map<Measure, Double>>> halved = halved(weighed);
    JobPlan base = model.base();
    Optional<Site> site = base.job().document().site();
    return new Matters(
        site.map(Site::name).orElse("The job"),
        isImperial(base),
        options,
        weighed.stream().map(w -> number(w, points, ends, halved)).toList(),
        still,
        runs);
  }

  private static boolean isImperial(JobPlan plan) {
    return plan.job().document().units() == UnitSystem.IMPERIAL;
  }

  private <T> List<T> all(int count, IntFunction<T> work, double from, double to) {
    List<T> all = new ArrayList<>();
    Cancellation cancellation = options.cancellation();
    try (Stream<T> results = OrderedWork.of(count, work, executor, ahead, cancellation)) {
      results.forEach(
          result -> {
            all.add(result);
            options.progress().report(from + (to - from) * all.size() / count, "weighing doubts");
          });
    }
    if (all.size() < count) {
      throw new CancellationException("stopped before the doubts were weighed");
    }
    return all;
  }

  /** One doubt alone from end to end: two runs, or a seeded handful if it has many inputs. */
  private List<Map<Measure, Double>> alone(int doubt) {
    int from = model.begin(doubt);
    int inputs = model.doubts().get(doubt).inputs();
    List<Map<Measure, Double>> results = new ArrayList<>();
    RandomGenerator random = Seeds.stream(options.seed(), "one at a time", doubt);
    for (int draw = 0; draw < (inputs == 1 ? 2 : DRAWS_OF_MANY); draw++) {
      double[] point = model.middle();
      for (int i = 0; i < inputs; i++) {
        point[from + i] =
            inputs == 1 ? (draw == 0 ? Spread.LOW : Spread.HIGH) : random.nextDouble();
      }
      results.add(model.run(point, model.fullWidths()));
    }
    return results;
  }

  /** A number with the points at which it exists, and its indices. */
  private record Weighed(
      Measure measure, double planned, List<Integer> points, List<SensitivityIndex> indices) {

    /** The doubts worth halving, the greatest first. */
    List<Integer> greatest() {
      return IntStream.range(0, indices.size())
          .boxed()
          .filter(d -> indices.get(d).total().value() >= WORTH_HALVING)
          .sorted(Comparator.comparing(d -> -indices.get(d).total().value()))
          .limit(HALVED_FOR_EACH)
          .toList();
    }
  }

  private Optional<Weighed> weigh(
      Measure measure, List<Point> points, Map<Measure, Double> planned, List<String> still) {
    if (!planned.containsKey(measure)) {
      still.add(measure.label() + ": the job does not ask for it, or it cannot be met");
      return Optional.empty();
    }
    List<Integer> there =
        IntStream.range(0, points.size()).filter(i -> points.get(i).has(measure)).boxed().toList();
    if (there.size() < options.points() / 2) {
      still.add(measure.label() + ": at most points the plan cannot be met with other inputs");
      return Optional.empty();
    }
    SensitivityRuns result = runs(measure, points, there);
    double value = Optional.ofNullable(planned.get(measure)).orElseThrow();
    Range range = range(measure, points);
    if (range.high() - range.low() <= LEAST_RANGE * Math.abs(value) || !result.moves()) {
      still.add(
          measure.label()
              + ": no doubt moves it"
              + (result.moves()
                  ? " by more than a hundredth: nine times in ten "
                      + text.of(measure, range.low())
                      + " to "
                      + text.of(measure, range.high())
                  : ""));
      return Optional.empty();
    }
    return Optional.of(new Weighed(measure, value, there, result.indices()));
  }

  /** The range over both samples. */
  private static Range range(Measure measure, List<Point> points) {
    return Spread.range(
        values(
            measure,
            Stream.concat(points.stream().map(Point::a), points.stream().map(Point::b)).toList()));
  }

  private SensitivityRuns runs(Measure measure, List<Point> points, List<Integer> there) {
    double[] a = values(measure, there.stream().map(i -> points.get(i).a()).toList());
    double[] b = values(measure, there.stream().map(i -> points.get(i).b()).toList());
    double[][] mixed = new double[model.doubts().size()][];
    for (int d = 0; d < mixed.length; d++) {
      int doubt = d;
      mixed[d] =
          values(measure, there.stream().map(i -> points.get(i).mixed().get(doubt)).toList());
    }
    return new SensitivityRuns(a, b, mixed, options.seed());
  }

  /** The values in order, of the runs that have one. */
  private static double[] values(Measure measure, List<Map<Measure, Double>> runs) {
    return runs.stream()
        .flatMap(run -> Stream.ofNullable(run.get(measure)))
        .mapToDouble(Double::doubleValue)
        .toArray();
  }

  /** The sample A again with half of each doubt that is among the greatest of a number. */
  private List<List<Map<Measure, Double>>> halved(List<Weighed> weighed) {
    List<Integer> tried =
        weighed.stream().flatMap(w -> w.greatest().stream()).distinct().sorted().toList();
    List<List<Map<Measure, Double>>> halved = new ArrayList<>();
    for (int d = 0; d < model.doubts().size(); d++) {
      if (!tried.contains(d)) {
        halved.add(List.of());
        continue;
      }
      double[] widths = model.fullWidths();
      widths[d] /= 2;
      double at = 0.85 + 0.15 * tried.indexOf(d) / tried.size();
      halved.add(
          all(
              options.points(),
              i -> model.run(samples.a(i), widths),
              at,
              at + 0.15 / tried.size()));
      runs += options.points();
    }
    return halved;
  }

  /** Both ranges from the points at which the number exists either way. */
  private static Influence.Halved halved(
      Measure measure, List<Map<Measure, Double>> before, List<Map<Measure, Double>> after) {
    List<Integer> there =
        IntStream.range(0, before.size())
            .filter(i -> before.get(i).containsKey(measure) && after.get(i).containsKey(measure))
            .boxed()
            .toList();
    return Spread.halved(
        values(measure, there.stream().map(before::get).toList()),
        values(measure, there.stream().map(after::get).toList()));
  }

  private NumberInDoubt number(
      Weighed weighed,
      List<Point> points,
      List<List<Map<Measure, Double>>> ends,
      List<List<Map<Measure, Double>>> halved) {
    Measure measure = weighed.measure();
    List<Map<Measure, Double>> before = points.stream().map(Point::a).toList();
    List<Influence> influences = new ArrayList<>();
    for (int d = 0; d < model.doubts().size(); d++) {
      Doubt doubt = model.doubts().get(d);
      Spread alone = Spread.of(values(measure, ends.get(d)), weighed.planned(), ends.get(d).size());
      boolean great = weighed.greatest().contains(d);
      influences.add(
          new Influence(
              doubt.name(),
              doubt.spread(),
              doubt.ground().citation(),
              doubt.remedy(),
              alone.low(),
              alone.high(),
              alone.open(),
              weighed.indices().get(d),
              great ? Optional.of(halved(measure, before, halved.get(d))) : Optional.empty()));
    }
    influences.sort(Comparator.comparing(i -> -i.index().total().value()));
    return new NumberInDoubt(
        measure, weighed.planned(), range(measure, points), weighed.points().size(), influences);
  }
}
