package io.github.seamstead.api.doubt;

import io.github.seamstead.api.book.front.WorkTotals;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.compare.Measure;
import io.github.seamstead.api.compare.Measures;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobValue;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.shared.check.ArgumentFault;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The plan as a function of where in their distributions the doubtful inputs lie. */
final class DoubtModel {

  private static final double MIDDLE = 0.5;
  private static final int KEPT = 4096;

  private final JobDraft job;
  private final List<Doubt> doubts;
  private final JobPlan base;
  private final PlanOptions terms;
  private final Series series = new Series(Recall.of(KEPT), Supposed.NOTHING, true, true);

  private DoubtModel(JobDraft job, JobPlan base, PlanOptions terms) {
    this.job = job;
    this.base = base;
    this.terms = terms;
    this.doubts = Doubts.of(base.job());
  }

  /** Plans the job as it is written, without its stock, and holds on to what that plan decides. */
  static DoubtModel of(JobDraft job, MattersOptions options) {
    PlanOptions terms =
        PlanOptions.defaults()
            .withSeed(options.seed())
            .stoppedBy(options.cancellation())
            .only(
                Chapter.FRAME,
                Chapter.SURVEY,
                Chapter.PATTERN,
                Chapter.FIXINGS,
                Chapter.ANCHORING,
                Chapter.SOIL,
                Chapter.MIX,
                Chapter.FLOOR,
                Chapter.DRYING);
    List<JobChange> cheap = new ArrayList<>();
    cheap.add(new JobChange("stock", JobValue.none()));
    if (job.job().document().weather().isPresent()) {
      // What is not dry by the end of the forecast has no weeks, and would leave a gap.
      cheap.add(new JobChange("weather.horizon", JobValue.text("730 d")));
    }
    JobDraft cut = job.with(cheap);
    JobPlan plan = JobPlanner.plan(cut.job(), terms);
    List<JobChange> decided = new ArrayList<>();
    for (int i = 0; i < plan.mixes().size(); i++) {
      String path = "floor.mixes[" + plan.mixes().get(i).spec().id() + "].sandParts";
      double parts = plan.mixes().get(i).choice().sandParts();
      decided.add(new JobChange(path, JobValue.number(parts)));
    }
    return new DoubtModel(cut.with(decided), plan, terms);
  }

  List<Doubt> doubts() {
    return doubts;
  }

  JobPlan base() {
    return base;
  }

  int inputs() {
    return doubts.stream().mapToInt(Doubt::inputs).sum();
  }

  /** The point at which all is as likely. */
  double[] middle() {
    double[] middle = new double[inputs()];
    Arrays.fill(middle, MIDDLE);
    return middle;
  }

  /** Where the inputs of a doubt begin. */
  int begin(int doubt) {
    return doubts.subList(0, doubt).stream().mapToInt(Doubt::inputs).sum();
  }

  /** Runs the plan; a number that it does not have then is not in the map. */
  Map<Measure, Double> run(double[] point, double[] widths) {
    Draw draw = new Draw();
    int from = 0;
    for (int d = 0; d < doubts.size(); d++) {
      Doubt doubt = doubts.get(d);
      double[] own = Arrays.copyOfRange(point, from, from + doubt.inputs());
      doubt.effect().apply(own, widths[d], draw);
      from += doubt.inputs();
    }
    try {
      Job read = job.with(draw.changes(mixes())).job();
      return measures(JobPlanner.plan(read, terms, series.supposing(draw.supposed())));
    } catch (JobFaultsException | ArgumentFault e) {
      // A value beyond what a document may state: this point has no plan, and is left out.
      return Map.of();
    }
  }

  private List<MixSpec> mixes() {
    return base.job().document().floor().map(Floor::mixes).orElse(List.of());
  }

  /** Without the numbers that the plan does not have as the base has them. */
  private Map<Measure, Double> measures(JobPlan plan) {
    Map<Measure, Double> all = new EnumMap<>(Measure.class);
    all.putAll(Measures.of(plan));
    boolean lacking =
        plan.floor().isPresent() != base.floor().isPresent()
            || plan.cover().isPresent() != base.cover().isPresent()
            || plan.drying().size() != base.drying().size();
    if (lacking || WorkTotals.of(plan).openEnded()) {
      all.remove(Measure.WEEKS);
    }
    if (lacking) {
      all.remove(Measure.MONEY);
    }
    return all;
  }

  double[] fullWidths() {
    double[] widths = new double[doubts.size()];
    Arrays.fill(widths, 1);
    return widths;
  }
}
