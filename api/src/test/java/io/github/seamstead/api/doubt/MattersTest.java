package io.github.seamstead.api.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.api.compare.Measure;
import io.github.seamstead.api.compare.Measures;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.api.job.JobDraft;
import io.github.seamstead.api.job.JobValue;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.sensitivity.NormalScore;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Progress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MattersTest {

  private static final JobDraft LOFT = JobDraft.read(DemoJobs.FOLDER.resolve("seed-loft.json"));

  /** The loft without its floor: a plan of a few milliseconds. */
  private static final JobDraft COVER =
      LOFT.with(
          List.of(
              none("floor"),
              none("soils"),
              none("aggregates"),
              none("trialMixes"),
              none("weather"),
              none("plant")));

  private static JobChange none(String path) {
    return new JobChange(path, JobValue.none());
  }

  private static MattersOptions points(int points) {
    return new MattersOptions(points, 1, Progress.NONE, new Cancellation());
  }

  private static NumberInDoubt number(Matters matters, Measure measure) {
    return matters.numbers().stream().filter(n -> n.measure() == measure).findFirst().orElseThrow();
  }

  @Test
  void anyExecutorGivesTheSameResult() {
    Matters alone = MattersSearch.of(COVER, points(16), Runnable::run, 1);
    ExecutorService three = Executors.newFixedThreadPool(3);
    try {
      Matters parallel = MattersSearch.of(COVER, points(16), three, 6);
      assertThat(parallel.numbers()).isEqualTo(alone.numbers());
      assertThat(parallel.runs()).isEqualTo(alone.runs());
    } finally {
      three.shutdownNow();
    }
  }

  @Test
  void thePullOnAPegIsTheWindsAndHalfThatDoubtHalvesItsRange() {
    Matters matters = MattersSearch.of(COVER, points(48), Runnable::run, 1);
    NumberInDoubt pull = number(matters, Measure.PEG_PULL);
    Influence wind = pull.influences().get(0);
    assertThat(wind.doubt()).isEqualTo("design wind");
    assertThat(wind.index().total().value())
        .isCloseTo(1, within(3 * wind.index().total().standardUncertainty()));
    // The pull goes with the square of the wind less the cloth's weight: exp(2 * 1.645 * 0.1).
    assertThat(wind.high() / pull.planned()).isCloseTo(Math.exp(2 * 0.16449), within(0.03));
    Influence.Halved halved = wind.halved().orElseThrow();
    assertThat(halved.narrowing()).isCloseTo(0.5, within(0.05));
    assertThat(Advice.of(matters))
        .anySatisfy(
            sentence ->
                assertThat(sentence)
                    .startsWith("Ask for the gust speed of this very place")
                    .contains("narrows wind pull per peg"));
  }

  @Test
  void clothIsMovedByWhatIsCutAndBuiltAndByNothingElse() {
    Matters matters = MattersSearch.of(COVER, points(32), Runnable::run, 1);
    NumberInDoubt cloth = number(matters, Measure.CLOTH_AREA);
    assertThat(cloth.influences().subList(0, 2).stream().map(Influence::doubt))
        .containsExactlyInAnyOrder("seam allowance as cut", "measures of the frame as built");
    assertThat(cloth.influences().subList(2, cloth.influences().size()))
        .allSatisfy(i -> assertThat(i.index().total().value()).isZero());
    assertThat(cloth.planned()).isBetween(cloth.range().low(), cloth.range().high());
    assertThat(matters.still()).anySatisfy(line -> assertThat(line).startsWith("seam misfit"));
  }

  @Test
  void allDoubtsAtTheirMiddleGiveThePlan() {
    DoubtModel model = DoubtModel.of(LOFT, points(16));
    var middle = model.planned();
    assertThat(middle).isEqualTo(model.run(model.middle(), model.fullWidths()));
    var base = Measures.of(model.base());
    for (Measure measure : Matters.NUMBERS) {
      assertThat(middle.containsKey(measure)).isEqualTo(base.containsKey(measure));
      if (base.containsKey(measure)) {
        assertThat(middle.get(measure))
            .isCloseTo(base.get(measure), within(part(measure) * Math.abs(base.get(measure))));
      }
    }
  }

  /** Drying is marched roughly: its days are within 3 %; nothing else is. */
  private static double part(Measure measure) {
    return measure == Measure.WEEKS ? 0.03 : 1e-6;
  }

  /** No demo is planned otherwise once its numbers are written where they can be moved. */
  @ParameterizedTest
  @ValueSource(strings = {"seed-loft", "hill-hide", "orchard-tent", "orchard-floor", "class-model"})
  void everyDemoIsPlannedAtItsMiddle(String name) {
    JobDraft job = JobDraft.read(DemoJobs.FOLDER.resolve(name + ".json"));
    DoubtModel model = DoubtModel.of(job, points(16));
    var base = Measures.of(model.base());
    model
        .planned()
        .forEach(
            (measure, value) ->
                assertThat(value)
                    .as(measure.key())
                    .isCloseTo(
                        Optional.ofNullable(base.get(measure)).orElseThrow(),
                        within(part(measure) * Math.abs(value) + 1e-9)));
    assertThat(model.planned().keySet()).containsAll(base.keySet());
  }

  @Test
  void aStatedDoubtTakesThePlaceOfTheUsualOne() {
    JobDraft stated =
        JobDraft.parse(
            withDoubts(
                "{\"of\": \"site.designWind\", \"standard\": \"1 m/s\"},{\"of\":"
                    + " \"cover.fabric.thickness\", \"low\": \"0.7 mm\", \"high\": \"0.9 mm\"}"));
    DoubtModel model = DoubtModel.of(stated, points(16));
    List<String> names = model.doubts().stream().map(Doubt::name).toList();
    assertThat(names).containsOnlyOnce("design wind").contains("cover.fabric.thickness");
    Doubt wind = model.doubts().get(names.indexOf("design wind"));
    assertThat(wind.spread()).isEqualTo("1 m/s, one standard deviation, as the job states");
    double[] high = model.middle();
    high[model.begin(names.indexOf("design wind"))] = NormalScore.below(1);
    double planned = model.planned().get(Measure.PEG_PULL);
    double pull = model.run(high, model.fullWidths()).get(Measure.PEG_PULL);
    double gust = stated.job().document().site().orElseThrow().designWind().orElseThrow();
    // Less the cloth's own weight, the pull goes with the square of the wind.
    assertThat(pull / planned).isCloseTo(Math.pow((gust + 1) / gust, 2), within(0.01));
  }

  @Test
  void aNumberThatIsAsGoodAsKnownIsNotWeighed() {
    JobDraft sure =
        JobDraft.parse(
            withDoubts(
                "{\"of\": \"site.designWind\", \"standard\": \"0.01 m/s\"},"
                    + "{\"of\": \"cover.fabric.massPerArea\", \"standard\": \"1 g/m2\"},"
                    + "{\"of\": \"frame.measures.baseSide\", \"standard\": \"0.5 mm\"},"
                    + "{\"of\": \"frame.measures.height\", \"standard\": \"0.5 mm\"}"));
    Matters matters = MattersSearch.of(sure, points(16), Runnable::run, 1);
    assertThat(matters.numbers()).noneMatch(n -> n.measure() == Measure.PEG_PULL);
    assertThat(matters.still())
        .anyMatch(
            s -> s.startsWith("wind pull per peg: no doubt moves it by more than a hundredth"));
  }

  private static byte[] withDoubts(String doubts) {
    try {
      String text = Files.readString(DemoJobs.FOLDER.resolve("seed-loft.json"));
      int floor = text.indexOf("\"soils\"");
      String cover = text.substring(0, text.lastIndexOf(',', floor));
      return (cover + ", \"doubts\": [" + doubts + "]}").getBytes(StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void theClayOfTheMixFollowsThatOfTheSoilWithTheSandAsDecided() {
    DoubtModel model = DoubtModel.of(LOFT, points(16));
    int clay = model.doubts().stream().map(Doubt::name).toList().indexOf("clay of the soil");
    double[] low = model.middle();
    double[] high = model.middle();
    low[model.begin(clay)] = 0.05;
    high[model.begin(clay)] = 0.95;
    double lean = model.run(low, model.fullWidths()).get(Measure.CLAY);
    double fat = model.run(high, model.fullWidths()).get(Measure.CLAY);
    var soil = model.base().soils().get(0).finding().texture().clay();
    double swing = 2 * 1.6448536 * soil.standardUncertainty();
    double diluted =
        model.base().mixes().get(1).choice().recipe().clayRatio().value() / soil.value();
    assertThat(fat - lean).isCloseTo(swing * diluted, within(0.05 * swing * diluted));
  }

  @Test
  void thePageShowsChartAdviceAndMethod() {
    Matters matters = MattersSearch.of(COVER, points(16), Runnable::run, 1);
    MattersPage.Written page = MattersPage.of(matters);
    assertThat(page.html())
        .contains("Do this first")
        .contains("What moves wind pull per peg")
        .contains(MattersOptions.LEFT_OUT);
    assertThat(page.drawings()).containsKey("matters-pegPull");
  }

  @Test
  void theSwitchEndsTheWork() {
    Cancellation cancellation = new Cancellation();
    cancellation.cancel();
    MattersOptions stopped = new MattersOptions(16, 1, Progress.NONE, cancellation);
    assertThatThrownBy(() -> MattersSearch.of(COVER, stopped, Runnable::run, 1))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void aJobWithNothingInDoubtIsRefused() {
    JobDraft soils =
        JobDraft.parse(
            "{\"seamstead\": 1, \"soils\": [{\"id\": \"a\", \"ribbon\": \"30 mm\"}]}"
                .getBytes(StandardCharsets.UTF_8));
    assertThatThrownBy(() -> MattersSearch.of(soils, points(16), Runnable::run, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nothing that is doubtful");
  }
}
