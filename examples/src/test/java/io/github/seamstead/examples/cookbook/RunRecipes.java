package io.github.seamstead.examples.cookbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.assembly.merge.JoinPlanner;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.merge.Objective;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.geometry.bars.BarCutting;
import io.github.seamstead.geometry.bars.BarPiece;
import io.github.seamstead.geometry.bars.BarPlan;
import io.github.seamstead.geometry.bars.BarStock;
import io.github.seamstead.geometry.frame.FrameSolver;
import io.github.seamstead.geometry.frame.PyramidMeasure;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.layout.CuttingLayout;
import io.github.seamstead.geometry.layout.LayoutRequest;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.DryingCurve;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.DryingSlab;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.Weather;
import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.RibbonTest;
import io.github.seamstead.materials.soil.SoilAssessment;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.SoilUse;
import io.github.seamstead.materials.soil.Suitability;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.derivation.Typeset;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Work;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The recipes about runs, books and single modules; {@link CookbookTest} holds the page to them.
 */
class RunRecipes {

  @TempDir private Path folder;

  private static Job model() {
    return JobReader.read(Path.of("jobs/class-model.json"));
  }

  @Test
  void limitFollowAndStopARun() {
    Job job = model();
    List<Double> heard = Collections.synchronizedList(new ArrayList<>());
    // recipe 12
    Cancellation stop = new Cancellation(); // stop.cancel() from any thread ends the run early
    PlanOptions options =
        PlanOptions.defaults()
            .withTimeLimit(Duration.ofSeconds(20))
            .heardBy((done, message) -> heard.add(done))
            .stoppedBy(stop);
    JobPlan plan = JobPlanner.plan(job, options);
    // end
    assertThat(plan.layout().orElseThrow().result().stopped()).isEmpty();
    assertThat(heard).isNotEmpty().isSorted().last().isEqualTo(1.0);
  }

  @Test
  void planForManyAtOnce() throws Exception {
    List<Job> jobs = List.of(model(), model(), model());
    // recipe 13
    ExecutorService workers = Executors.newFixedThreadPool(2);
    List<Future<JobPlan>> plans = new ArrayList<>();
    for (Job job : jobs) {
      plans.add(workers.submit(() -> JobPlanner.plan(job, PlanOptions.defaults())));
    }
    List<String> results = new ArrayList<>();
    for (Future<JobPlan> plan : plans) {
      results.add(ResultsJson.text(plan.get()));
    }
    workers.shutdown();
    // end
    assertThat(results).hasSize(3).allMatch(results.get(0)::equals);
  }

  @Test
  void makeTheBookInMemory() throws Exception {
    JobPlan plan = JobPlanner.plan(model(), PlanOptions.defaults());
    // recipe 14
    Book book = Book.of(plan);
    Files.writeString(folder.resolve("book.html"), book.html());
    for (Map.Entry<String, String> list : book.lists().entrySet()) {
      Files.writeString(folder.resolve(list.getKey()), list.getValue());
    }
    // end
    assertThat(folder.resolve("book.html")).isNotEmptyFile();
  }

  @Test
  void solveAFrameFromWhatWasMeasured() {
    // recipe 15
    RegularPyramid frame =
        FrameSolver.solve(6, Map.of(PyramidMeasure.BASE_SIDE, 1.5, PyramidMeasure.HIP_EDGE, 2.5))
            .single();
    double height = frame.measures().apexHeight();
    // end
    assertThat(height).isCloseTo(2.0, within(1e-9)); // a hexagon's radius is its side: 3, 4, 5
  }

  @Test
  void cutPolesFromBars() {
    // recipe 16
    BarPlan plan =
        BarCutting.plan(
            List.of(new BarPiece("hip", 1.95, 8), new BarPiece("ring", 0.8, 8)),
            List.of(BarStock.unlimited("pole", 3.0)),
            0.003); // the saw cut
    int bars = plan.barCount();
    // end
    assertThat(bars).isEqualTo(8);
  }

  @Test
  void layPiecesOfYourOwn() {
    // recipe 17
    Piece panel = Piece.of("panel", RegularPyramid.ofBaseSideAndHeight(12, 1.2, 2).faceOutline());
    LayoutResult layout =
        CuttingLayout.plan(
            LayoutRequest.of(List.of(panel.withCount(12)), List.of(Roll.of("roll", 3.2, 40))),
            Work.of(Budget.ofWork(20_000), 1)); // equal budget and seed, equal result
    double length = layout.usedLength();
    // end
    assertThat(layout.isComplete()).isTrue();
    assertThat(length).isBetween(12 * 0.5 * 1.2 * 3 / 3.2, 12.0);
  }

  @Test
  void chooseTheOrderOfJoining() {
    // recipe 18
    MergePlan order =
        JoinPlanner.plan(
                PieceRing.ofEqualPieces(9, 4, 3),
                io.github.seamstead.assembly.merge.PlanOptions.least(Objective.HANDLED_MASS))
            .orThrow();
    double handled = order.cost().handledMass();
    // end
    assertThat(order.steps()).hasSize(9);
    assertThat(handled).isPositive();
  }

  @Test
  void judgeASoilByHandTests() {
    // recipe 19
    SoilFinding soil =
        SoilAssessment.assess(
            List.of(RibbonTest.ofLength(0.04), new BendTest(BendTest.Outcome.HALF_RING)));
    double clay = soil.texture().clay().value();
    Suitability.Verdict verdict = Suitability.of(soil, SoilUse.FLOOR).verdict();
    // end
    assertThat(clay).isBetween(0.1, 0.4);
    assertThat(verdict).isNotNull();
  }

  @Test
  void showTheWorkedSteps() {
    // recipe 20
    StepRecorder steps = new StepRecorder();
    RegularPyramid.ofBaseSideAndHeight(4, 2, 1.5).measures(steps);
    Derivation worked = steps.derivation("frame", "Square pyramid");
    List<String> lines = worked.steps().stream().map(Typeset::plain).toList();
    // end
    assertThat(lines).isNotEmpty();
  }

  @Test
  void dryACoatInWeatherOfYourOwn() {
    // recipe 21
    DryingSlab coat = DryingSlab.sealed(0.025, 1750, 0.2, EarthMoisture.sandyMix());
    Weather weather =
        Weather.daily(List.of(new AirState(12, 0.8, 0.5), new AirState(22, 0.55, 1.5)));
    DryingCurve curve = DryingForecast.simulate(coat, weather, 10); // days
    double moisture = curve.finalMoisture();
    // end
    assertThat(moisture).isBetween(0.0, 0.2);
  }
}
