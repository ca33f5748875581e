package io.github.seamstead.api.doubt;

import io.github.seamstead.api.book.front.WorkTotals;
import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.Supposed;
import io.github.seamstead.api.chapter.air.FloorAir;
import io.github.seamstead.api.chapter.soil.EarthMaterials;
import io.github.seamstead.api.compare.Measure;
import io.github.seamstead.api.compare.Measures;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobValue;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.api.job.StatedDoubt;
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
  private final List<String> unmoved;
  private final boolean sound;
  private final JobPlan base;
  private final PlanOptions terms;
  private final Series series = new Series(Recall.of(KEPT), Supposed.NOTHING, true, true);

  private DoubtModel(
      JobDraft job,
      JobPlan base,
      PlanOptions terms,
      JobDocument written,
      List<StatedDoubt> stated) {
    this.job = job;
    this.base = base;
    this.terms = terms;
    this.unmoved = stated.stream().map(s -> s.number().path()).filter(DoubtModel::isLaid).toList();
    this.doubts =
        Doubts.of(
            job,
            base.job().document(),
            written,
            stated.stream().filter(s -> !isLaid(s.number().path())).toList());
    this.sound = base.survey().filter(s -> s.report().blunders().isEmpty()).isPresent();
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
    List<StatedDoubt> stated = job.doubts();
    List<JobChange> cheap = new ArrayList<>();
    cheap.add(JobChange.none("stock"));
    cheap.add(JobChange.none("doubts"));
    cheap.addAll(told(job.job().document(), stated));
    if (job.job().document().weather().isPresent()) {
      // What is not dry by the end of the forecast has no weeks, and would leave a gap.
      cheap.add(new JobChange("weather.horizon", JobValue.text("730 d")));
    }
    JobDraft cut = job.with(cheap);
    JobPlan plan = JobPlanner.plan(cut.job(), terms);
    List<JobChange> decided = new ArrayList<>();
    for (int i = 0; i < plan.mixes().size(); i++) {
      if (plan.mixes().get(i).spec().design().isPresent()) {
        // A mix designed by its grading is that design; the parts follow from it each time.
        continue;
      }
      String path = "floor.mixes[" + plan.mixes().get(i).spec().id() + "].sandParts";
      double parts = plan.mixes().get(i).choice().sandParts();
      decided.add(new JobChange(path, JobValue.number(parts)));
    }
    return new DoubtModel(cut.with(decided), plan, terms, job.job().document(), stated);
  }

  /** What a measurement tells in place of a number is stated as that number, which can be moved. */
  private static List<JobChange> told(JobDocument job, List<StatedDoubt> stated) {
    List<JobChange> told = new ArrayList<>();
    for (int i = 0; i < job.soils().size(); i++) {
      if (job.soils().get(i).dried().isPresent()) {
        double moisture = EarthMaterials.moisture(job.soils().get(i));
        tell(told, stated, "soils[" + i + "]", "dried", "moisture", moisture);
      }
    }
    for (int i = 0; i < job.aggregates().size(); i++) {
      if (job.aggregates().get(i).dried().isPresent()) {
        double moisture = EarthMaterials.moisture(job.aggregates().get(i));
        tell(told, stated, "aggregates[" + i + "]", "dried", "moisture", moisture);
      }
    }
    job.weather()
        .filter(w -> w.wetBulb().isPresent() && w.temperature().isPresent())
        .ifPresent(
            w -> {
              double humidity =
                  FloorAir.humidity(w.temperature().orElseThrow(), w.wetBulb().orElseThrow());
              tell(told, stated, "weather", "wetBulb", "humidity", humidity);
            });
    return told;
  }

  private static void tell(
      List<JobChange> told,
      List<StatedDoubt> stated,
      String section,
      String measured,
      String key,
      double value) {
    String at = section + "." + measured;
    if (stated.stream().noneMatch(s -> s.number().path().startsWith(at))) {
      told.add(JobChange.none(at));
      told.add(new JobChange(section + "." + key, JobValue.number(value)));
    }
  }

  /** A number of the cloth at hand, which is not laid out anew. */
  private static boolean isLaid(String path) {
    return path.startsWith("stock.");
  }

  List<Doubt> doubts() {
    return doubts;
  }

  /** The stated doubts of numbers that this model does not look at, by their path. */
  List<String> unmoved() {
    return unmoved;
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
    try {
      return plan(point, widths);
    } catch (JobFaultsException | ArgumentFault e) {
      // A value beyond what a document may state: this point has no plan, and is left out.
      return Map.of();
    }
  }

  /**
   * Runs the plan with all doubts at their middle, which must succeed where the job itself does.
   */
  Map<Measure, Double> planned() {
    return plan(middle(), fullWidths());
  }

  private Map<Measure, Double> plan(double[] point, double[] widths) {
    Draw draw = new Draw();
    draw.sound(sound);
    int from = 0;
    for (int d = 0; d < doubts.size(); d++) {
      Doubt doubt = doubts.get(d);
      double[] own = Arrays.copyOfRange(point, from, from + doubt.inputs());
      doubt.effect().apply(own, widths[d], draw);
      from += doubt.inputs();
    }
    Job read = job.with(draw.changes(mixes())).job();
    return measures(JobPlanner.plan(read, terms, series.supposing(draw.supposed())));
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
