package io.github.seamstead.api.doubt;

import io.github.seamstead.api.chapter.soil.EarthMaterials;
import io.github.seamstead.api.doubt.Doubts.Input;
import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.FloorLayer;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.LayerKind;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.api.job.Weather;
import io.github.seamstead.api.job.WeatherWeek;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.Evaporation;
import io.github.seamstead.materials.floor.LayingRate;
import io.github.seamstead.materials.internal.LayingDoubt;
import io.github.seamstead.materials.internal.MixDoubt;
import io.github.seamstead.materials.internal.WeatherDoubt;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.shared.sensitivity.NormalScore;
import io.github.seamstead.shared.sensitivity.Scatter;
import io.github.seamstead.shared.sensitivity.internal.UsualDoubt;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The doubts of soil, mix, floor and drying. */
final class EarthDoubts {

  private final Doubts doubts;
  private final JobDocument job;
  private final JobDocument written;

  private EarthDoubts(Doubts doubts, JobDocument job, JobDocument written) {
    this.doubts = doubts;
    this.written = written;
    this.job = job;
  }

  /**
   * Adds the doubts.
   *
   * @param doubts receives them
   * @param job the job in which numbers are moved
   * @param written the job as it is written, which tells what was measured
   */
  static void addTo(Doubts doubts, JobDocument job, JobDocument written) {
    EarthDoubts earth = new EarthDoubts(doubts, job, written);
    if (!job.soils().isEmpty() && job.floor().isPresent()) {
      earth.soil();
      earth.sand();
    }
    job.floor().ifPresent(earth::floor);
    if (job.floor().isPresent() && job.weather().isPresent()) {
      earth.drying();
      earth.weather(job.weather().get());
    }
  }

  /** A doubt of a number that no document states. */
  private void suppose(
      String name, String spread, Source ground, String remedy, Doubt.Effect effect) {
    doubts.add(new Doubt(name, spread, ground, remedy, 1, effect));
  }

  private void soil() {
    suppose(
        "clay of the soil",
        "what its tests leave open, one standard uncertainty",
        Source.derived("all tests of the soil together"),
        "Make the next soil test that the plan names, or send a bag to a laboratory",
        (at, width, draw) -> draw.clay(width * NormalScore.of(at[0])));
    suppose(
        "loose weight of the soil",
        "its standard uncertainty",
        MixComponent.LOOSE_DENSITIES,
        "Weigh a bucket of the soil as it is tipped into the mixer",
        (at, width, draw) -> draw.looseSoil(width * NormalScore.of(at[0])));
    List<Input> judged = new ArrayList<>();
    List<Input> dried = new ArrayList<>();
    for (int i = 0; i < written.soils().size(); i++) {
      SoilSample soil = written.soils().get(i);
      Input moisture = doubts.input("soils[" + i + "].moisture", EarthMaterials.moisture(soil));
      (soil.dried().isPresent() ? dried : judged).add(moisture);
    }
    moisture("moisture of the soil", "soil", MixDoubt.SOIL_MOISTURE, judged, dried);
  }

  private void sand() {
    suppose(
        "loose weight of the sand",
        "its standard uncertainty",
        MixComponent.LOOSE_DENSITIES,
        "Weigh a bucket of the sand as it is tipped into the mixer",
        (at, width, draw) -> draw.looseSand(width * NormalScore.of(at[0])));
    List<Input> judged = new ArrayList<>();
    List<Input> dried = new ArrayList<>();
    for (int i = 0; i < written.aggregates().size(); i++) {
      Aggregate sand = written.aggregates().get(i);
      Input moisture =
          doubts.input("aggregates[" + i + "].moisture", EarthMaterials.moisture(sand));
      (sand.dried().isPresent() ? dried : judged).add(moisture);
    }
    moisture("moisture of the sand", "sand", MixDoubt.SAND_MOISTURE, judged, dried);
  }

  private void moisture(
      String name, String what, UsualDoubt usual, List<Input> judged, List<Input> dried) {
    doubts.together(
        name,
        SpreadText.points(usual),
        usual,
        "Dry a tin of the " + what + " on a stove and weigh it before and after",
        judged);
    doubts.together(
        name + ", by a dried tin",
        SpreadText.points(MixDoubt.DRIED_MOISTURE),
        MixDoubt.DRIED_MOISTURE,
        "Dry tins from several places of the heap",
        dried);
  }

  private void floor(Floor floor) {
    mixes(floor.mixes());
    List<FloorLayer> layers = floor.layers();
    List<Input> mixed = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      if (isMixed(layers.get(i))) {
        mixed.add(
            doubts.input(
                "floor.layers[" + i + "].thickness", layers.get(i).thickness().orElse(0.0)));
      }
    }
    doubts.together(
        "thickness as laid",
        SpreadText.millimetres(LayingDoubt.THICKNESS) + ", on each mixed layer, all together",
        LayingDoubt.THICKNESS,
        "Lay screed rails and check them with a level",
        mixed);
    if (job.site().flatMap(Site::crew).isPresent()) {
      suppose(
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
    List<Input> water = new ArrayList<>();
    for (int i = 0; i < mixes.size(); i++) {
      water.add(
          doubts.input("floor.mixes[" + i + "].placingMoisture", mixes.get(i).placingMoisture()));
    }
    doubts.together(
        "water in the mix as laid",
        SpreadText.percent(MixDoubt.WATER) + " of it, but never more than the pores hold",
        MixDoubt.WATER,
        "Measure the water of each load, and drop a ball of the mix",
        water);
    for (int i = 0; i < mixes.size(); i++) {
      MixSpec mix = mixes.get(i);
      doubts.together(
          "density of " + mix.id() + " as laid",
          "the spread that the job states, evenly",
          new UsualDoubt(
              Scatter.evenPart(mix.densitySpread()),
              Source.derived("densitySpread of the mix, as the job states it")),
          "Cut a cube out of a trial piece, measure it and weigh it dry",
          List.of(doubts.input("floor.mixes[" + i + "].density", mix.density())));
    }
  }

  private void drying() {
    suppose(
        "how fast water moves in the earth",
        "tenfold from end to end, 90 % within",
        Source.derived("the scatter of published diffusivities, as the forecast takes it"),
        "Make a test tile of the mix and weigh it each day",
        (at, width, draw) -> draw.diffusivity(scattered(at, width, EarthMoisture.SCATTER)));
    suppose(
        "how fast air takes water up",
        "a factor of 1.4 either way, 90 % within",
        Source.derived("the scatter of published evaporation formulas, as the forecast takes it"),
        "Weigh a dish of water beside the floor each day",
        (at, width, draw) -> draw.exchange(scattered(at, width, Evaporation.SCATTER)));
  }

  /** A factor whose range from its low to its high end holds nine times in ten. */
  private static double scattered(double[] at, double width, double scatter) {
    return Scatter.logNormal(StrictMath.log(scatter) / NormalScore.AT_95).at(1, at[0], width);
  }

  /** A mean of the weather is doubtful, and so is each of its weeks, all of them the same way. */
  private void weather(Weather weather) {
    List<Input> warmth = weeks(weather, "lowest", WeatherWeek::lowest);
    warmth.addAll(weeks(weather, "highest", WeatherWeek::highest));
    weather.temperature().ifPresent(t -> warmth.add(doubts.input("weather.temperature", t)));
    doubts.together(
        "temperature of the air",
        SpreadText.kelvins(WeatherDoubt.TEMPERATURE),
        WeatherDoubt.TEMPERATURE,
        "Read a thermometer in the room each day and plan again",
        warmth);
    List<Input> damp = weeks(weather, "humidity", WeatherWeek::humidity);
    weather.humidity().ifPresent(h -> damp.add(doubts.input("weather.humidity", h)));
    doubts.together(
        "humidity of the air",
        SpreadText.points(WeatherDoubt.HUMIDITY),
        WeatherDoubt.HUMIDITY,
        "Hang a hygrometer in the room, read it each day and plan again",
        damp);
    List<Input> speed = weeks(weather, "airSpeed", WeatherWeek::airSpeed);
    weather.airSpeed().ifPresent(s -> speed.add(doubts.input("weather.airSpeed", s)));
    doubts.together(
        "air speed over the floor",
        SpreadText.factor(WeatherDoubt.AIR_SPEED),
        WeatherDoubt.AIR_SPEED,
        "Set up a fan, so that the air over the floor moves as planned",
        speed);
  }

  private List<Input> weeks(Weather weather, String key, ToDoubleFunction<WeatherWeek> value) {
    List<Input> inputs = new ArrayList<>();
    for (int i = 0; i < weather.weeks().size(); i++) {
      inputs.add(
          doubts.input(
              "weather.weeks[" + i + "]." + key, value.applyAsDouble(weather.weeks().get(i))));
    }
    return inputs;
  }
}
