package io.github.seamstead.api.doubt;

import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.FloorLayer;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.LayerKind;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.job.Weather;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.Evaporation;
import io.github.seamstead.materials.floor.LayingRate;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.shared.sensitivity.NormalScore;
import io.github.seamstead.shared.source.Source;
import java.util.List;

/** The doubts of soil, mix, floor and drying. */
final class EarthDoubts {

  private static final Source SEASONS =
      Source.commonPractice("the mean of a month differs from year to year");

  private static final double HEAP_MOISTURE = 0.02;
  private static final double WATER = 0.10;
  private static final double LAID = 0.003;
  private static final double LEAST_LAYER = 0.002;
  private static final double KELVIN = 2;
  private static final double HUMIDITY = 0.07;
  private static final double DRIEST_AIR = 0.05;
  private static final double DAMPEST_AIR = 0.98;
  private static final double WETTEST_SAND = 0.3;
  private static final double WETTEST_SOIL = 0.6;
  private static final double AIR_SPEED = StrictMath.log(1.4);

  private final JobDocument job;
  private final List<Doubt> found;

  private EarthDoubts(List<Doubt> found, JobDocument job) {
    this.found = found;
    this.job = job;
  }

  static void addTo(List<Doubt> found, JobDocument job) {
    EarthDoubts doubts = new EarthDoubts(found, job);
    if (!job.soils().isEmpty() && job.floor().isPresent()) {
      doubts.soil();
      doubts.sand();
    }
    job.floor().ifPresent(doubts::floor);
    if (job.floor().isPresent() && job.weather().isPresent()) {
      doubts.drying();
      doubts.weather(job.weather().get());
    }
  }

  private void add(String name, String spread, Source ground, String remedy, Doubt.Effect effect) {
    found.add(new Doubt(name, spread, ground, remedy, 1, effect));
  }

  private void soil() {
    add(
        "clay of the soil",
        "what its tests leave open, one standard uncertainty",
        Source.derived("all tests of the soil together"),
        "Make the next soil test that the plan names, or send a bag to a laboratory",
        (at, width, draw) -> draw.clay(width * NormalScore.of(at[0])));
    add(
        "loose weight of the soil",
        "its standard uncertainty",
        MixComponent.LOOSE_DENSITIES,
        "Weigh a bucket of the soil as it is tipped into the mixer",
        (at, width, draw) -> draw.looseSoil(width * NormalScore.of(at[0])));
    add(
        "moisture of the soil",
        "2 points, one standard deviation",
        Source.commonPractice("soil from a heap, judged by hand"),
        "Dry a tin of the soil on a stove and weigh it before and after",
        (at, width, draw) -> {
          for (int i = 0; i < job.soils().size(); i++) {
            double moved = job.soils().get(i).moisture() + width * HEAP_MOISTURE * score(at);
            draw.set("soils[" + i + "].moisture", within(moved, 0, WETTEST_SOIL));
          }
        });
  }

  private void sand() {
    add(
        "loose weight of the sand",
        "its standard uncertainty",
        MixComponent.LOOSE_DENSITIES,
        "Weigh a bucket of the sand as it is tipped into the mixer",
        (at, width, draw) -> draw.looseSand(width * NormalScore.of(at[0])));
    add(
        "moisture of the sand",
        "2 points, one standard deviation",
        Source.commonPractice("sand from an open heap, judged by hand"),
        "Dry a tin of the sand on a stove and weigh it before and after",
        (at, width, draw) -> {
          for (int i = 0; i < job.aggregates().size(); i++) {
            double moved = job.aggregates().get(i).moisture() + width * HEAP_MOISTURE * score(at);
            draw.set("aggregates[" + i + "].moisture", within(moved, 0, WETTEST_SAND));
          }
        });
  }

  private void floor(Floor floor) {
    if (!floor.mixes().isEmpty()) {
      mixes(floor.mixes());
    }
    List<FloorLayer> layers = floor.layers();
    if (layers.stream().anyMatch(EarthDoubts::isMixed)) {
      add(
          "thickness as laid",
          "3 mm on each mixed layer, all together, one standard deviation",
          Source.commonPractice("screeding by hand over a rough base"),
          "Lay screed rails and check them with a level",
          (at, width, draw) -> {
            for (int i = 0; i < layers.size(); i++) {
              if (isMixed(layers.get(i))) {
                double laid = layers.get(i).thickness().orElse(0.0) + width * LAID * score(at);
                draw.set("floor.layers[" + i + "].thickness", Math.max(LEAST_LAYER, laid), "m");
              }
            }
          });
    }
    if (job.site().flatMap(Site::crew).isPresent()) {
      add(
          "pace of the work",
          "from the low to the high end of the published labour factors, evenly spread",
          LayingRate.MOVING,
          "Time the first barrows and the first square metres, and plan again",
          (at, width, draw) -> draw.pace(width * (2 * at[0] - 1)));
    }
  }

  private static boolean isMixed(FloorLayer layer) {
    return layer.kind() == LayerKind.DRY_PACK || layer.kind() == LayerKind.EARTH_COAT;
  }

  private void mixes(List<MixSpec> mixes) {
    add(
        "water in the mix as laid",
        "a tenth of it, one standard deviation, but never more than the pores hold",
        Source.commonPractice("water added by the bucket until it looks right"),
        "Measure the water of each load, and drop a ball of the mix",
        (at, width, draw) -> {
          for (int i = 0; i < mixes.size(); i++) {
            double water = mixes.get(i).placingMoisture() * Doubts.factor(at[0], width * WATER);
            draw.water(i, Math.min(1, water));
          }
        });
    add(
        "density of the floor as laid",
        "the spread that the job states, evenly",
        Source.derived("densitySpread of each mix, as the job states it"),
        "Cut a cube out of a trial piece, measure it and weigh it dry",
        (at, width, draw) -> {
          for (int i = 0; i < mixes.size(); i++) {
            MixSpec mix = mixes.get(i);
            double factor = 1 + width * mix.densitySpread() * (2 * at[0] - 1);
            draw.density(i, mix.density() * factor);
          }
        });
  }

  private void drying() {
    add(
        "how fast water moves in the earth",
        "tenfold from end to end, 90 % within",
        Source.derived("the scatter of published diffusivities, as the forecast takes it"),
        "Make a test tile of the mix and weigh it each day",
        (at, width, draw) -> draw.diffusivity(scattered(at, width, EarthMoisture.SCATTER)));
    add(
        "how fast air takes water up",
        "a factor of 1.4 either way, 90 % within",
        Source.derived("the scatter of published evaporation formulas, as the forecast takes it"),
        "Weigh a dish of water beside the floor each day",
        (at, width, draw) -> draw.exchange(scattered(at, width, Evaporation.SCATTER)));
  }

  private static double scattered(double[] at, double width, double scatter) {
    return Doubts.factor(at[0], width * StrictMath.log(scatter) / NormalScore.AT_95);
  }

  /** A mean of the weather is doubtful; what was seen week by week is taken as it is. */
  private void weather(Weather weather) {
    weather.temperature().ifPresent(this::temperature);
    weather.humidity().ifPresent(this::humidity);
    weather.airSpeed().ifPresent(this::airSpeed);
  }

  private void temperature(double mean) {
    add(
        "temperature of the air",
        "2 K, one standard deviation",
        SEASONS,
        "Read a thermometer in the room each day and plan again",
        (at, width, draw) ->
            draw.set("weather.temperature", mean + width * KELVIN * score(at), "degC"));
  }

  private void humidity(double mean) {
    add(
        "humidity of the air",
        "7 points, one standard deviation",
        SEASONS,
        "Hang a hygrometer in the room, read it each day and plan again",
        (at, width, draw) ->
            draw.set(
                "weather.humidity",
                within(mean + width * HUMIDITY * score(at), DRIEST_AIR, DAMPEST_AIR)));
  }

  private void airSpeed(double mean) {
    add(
        "air speed over the floor",
        "a factor of 1.4, one standard deviation",
        Source.commonPractice("draught judged by the skin"),
        "Set up a fan, so that the air over the floor moves as planned",
        (at, width, draw) ->
            draw.set("weather.airSpeed", mean * Doubts.factor(at[0], width * AIR_SPEED), "m/s"));
  }

  private static double score(double[] at) {
    return NormalScore.of(at[0]);
  }

  private static double within(double value, double least, double greatest) {
    return Math.max(least, Math.min(greatest, value));
  }
}
