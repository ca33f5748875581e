package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.air.FloorAir;
import io.github.seamstead.api.chapter.air.OpenTimes;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.job.Weather;
import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.CrackChange;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.DryingCriteria;
import io.github.seamstead.materials.drying.DryingDoubt;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.DryingSlab;
import io.github.seamstead.materials.drying.FloorDrying;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.drying.TileCalibration;
import io.github.seamstead.materials.drying.Ventilation;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.LayerRole;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.work.internal.Later;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Forecasts one layer at a time. */
final class LayerDrying {

  private static final double DAY = io.github.seamstead.materials.drying.Weather.DAY;

  private final Run run;
  private final FloorPart floor;
  private final Weather stated;
  private final Optional<Double> room;
  private final io.github.seamstead.materials.drying.Weather weather;
  private final Optional<LocalDate> start;
  private final List<MixPart> mixes;
  private final CrackPlanner cracks;
  private final TilePlanner tiles;
  private final DryingEvidence evidence;

  LayerDrying(
      Run run,
      FloorPart floor,
      Weather stated,
      Optional<FramePart> frame,
      List<MixPart> mixes,
      CrackPlanner cracks) {
    this.run = run;
    this.floor = floor;
    this.stated = stated;
    this.room = stated.roomVolume().or(() -> frame.map(f -> f.measures().volume()));
    this.weather = FloorAir.of(stated);
    this.start = FloorAir.laid(run);
    this.mixes = mixes;
    this.cracks = cracks;
    this.tiles = new TilePlanner(run, stated.tiles());
    this.evidence = new DryingEvidence(run, weather.mean());
  }

  AirState mean() {
    return weather.mean();
  }

  /** A layer that is laid so many days after the lowest. */
  DryingPart part(int index, EarthLayer layer, double day) {
    double limit = OpenTimes.plasticLimit(layer.mix().name(), mixes);
    if (layer.role() == LayerRole.EARTH_COAT && !stated(layer)) {
      run.assume(
          "$.floor.mixes[*].plasticLimit",
          Numbers.plain(limit * 100) + " %",
          "common practice: a sandy floor mix is firm at its plastic limit");
    }
    Optional<LocalDate> since =
        floor.rest().isEmpty() ? Optional.empty() : floor.rest().get(index).laidOn();
    io.github.seamstead.materials.drying.Weather air =
        since.map(evidence::from).orElseGet(() -> weather.after(day));
    DryingSlab slab = FloorDrying.slab(floor.buildUp(), index, this::moisture, DryingPlanner.EARTH);
    DryingCriteria criteria =
        FloorDrying.criteria(layer, moisture(layer), limit, DryingPlanner.EARTH);
    Optional<TileCalibration> tile = logged(index, layer).or(() -> tiles.of(layer));
    DryingDoubt doubt =
        tile.filter(TileCalibration::plausible)
            .map(TileCalibration::doubt)
            .map(calibrated -> calibrated.supposing(run.supposed().drying()))
            .orElseGet(() -> run.supposed().drying());
    Forecaster forecaster = new Forecaster(slab, criteria, doubt, air);
    boolean covered = FloorDrying.isCoveredDamp(floor.buildUp(), index);
    Optional<Ventilation> shut =
        covered || run.isBrief() || air.mean().relativeHumidity() >= 0.999
            ? Optional.empty()
            : ventilation(Optional.of(Ventilation.SHUT));
    Optional<Later<DryingForecast>> underShut = shut.map(forecaster::begin);
    DryingForecast forecast =
        run.worked(
            "materials.drying.simulation",
            "Drying of " + layer.name(),
            steps -> forecaster.with(ventilation(stated.airChanges()), steps));
    if (forecast.neverDries() && !covered) {
      neverDries(layer, air);
    }
    Optional<Cracking> cracking = cracks.of(layer);
    double area = floor.buildUp().footprint().area();
    cracking.ifPresent(c -> cracks.record(layer, c, area));
    boolean fibred = layer.mix().fibreShare() > 0;
    return new DryingPart(
        layer,
        moisture(layer),
        day,
        since.or(() -> start.map(date -> date.plusDays(Math.round(day)))),
        tile,
        forecast,
        cracking,
        cracking.map(c -> c.advice(fibred, layer.thickness())).orElse(List.of()),
        cracking.map(c -> cracks.changes(layer, c)).orElse(List.<CrackChange>of()),
        cracking.map(c -> c.slip(area, layer.thickness(), SlipRepair.USUAL_SKIM, layer.mix())),
        shut.map(cover -> cover(cover, underShut.orElseThrow(), forecast, air.mean())),
        since);
  }

  /** What the diary's tile of the layer says, which outranks one of before. */
  private Optional<TileCalibration> logged(int index, EarthLayer layer) {
    return floor.rest().isEmpty()
        ? Optional.empty()
        : evidence.calibration(
            floor.rest().get(index).layer(), layer, moisture(layer), DryingPlanner.EARTH);
  }

  private boolean stated(EarthLayer layer) {
    return mixes.stream()
        .anyMatch(
            m -> m.spec().id().equals(layer.mix().name()) && m.spec().plasticLimit().isPresent());
  }

  private void neverDries(EarthLayer layer, io.github.seamstead.materials.drying.Weather air) {
    run.unmet(
        Chapter.DRYING,
        layer.name()
            + ": in air of "
            + Numbers.fixed(air.settledHumidity() * 100, 0)
            + " % it never gets as dry as a coat or oil wants it, which takes air below "
            + DryingPlanner.dryHumidity()
            + " %; wait for drier weather, or warm the room with the vents open");
  }

  /** As it comes out of the mixer, wetter than wanted where the parts are. */
  private double moisture(EarthLayer layer) {
    return floor.batches().stream()
        .filter(plan -> plan.quantity().layer().equals(layer))
        .mapToDouble(plan -> plan.batch().moisture())
        .findFirst()
        .orElse(layer.mix().moistureAsMixed());
  }

  /** Forecasts of one slab, with the cover open and shut. */
  private final class Forecaster {

    private final DryingSlab slab;
    private final DryingCriteria criteria;
    private final DryingDoubt doubt;
    private final io.github.seamstead.materials.drying.Weather air;

    Forecaster(
        DryingSlab slab,
        DryingCriteria criteria,
        DryingDoubt doubt,
        io.github.seamstead.materials.drying.Weather air) {
      this.slab = slab;
      this.criteria = criteria;
      this.doubt = doubt;
      this.air = air;
    }

    DryingForecast with(Optional<Ventilation> ventilation, Steps steps) {
      if (steps.isRecording()) {
        double days = stated.horizon() / DAY;
        return DryingForecast.of(slab, air, ventilation, criteria, doubt, days, steps);
      }
      ForecastOf key = key(ventilation);
      return run.recalled(key, DryingForecast.class, key::forecast);
    }

    /** Begins the forecast of a shut cover beside that of an open one, in a plan by itself. */
    Later<DryingForecast> begin(Ventilation shut) {
      ForecastOf key = key(Optional.of(shut));
      return run.isAlone()
          ? run.beside().start("drying under a shut cover", key::forecast)
          : Later.whenAsked(() -> run.recalled(key, DryingForecast.class, key::forecast));
    }

    private ForecastOf key(Optional<Ventilation> ventilation) {
      double days = stated.horizon() / DAY;
      return new ForecastOf(slab, air, ventilation, criteria, doubt, days, run.isRough());
    }
  }

  /** What a forecast depends on. */
  private record ForecastOf(
      DryingSlab slab,
      io.github.seamstead.materials.drying.Weather weather,
      Optional<Ventilation> ventilation,
      DryingCriteria criteria,
      DryingDoubt doubt,
      double days,
      boolean rough) {

    DryingForecast forecast() {
      return rough
          ? DryingForecast.rough(slab, weather, ventilation, criteria, doubt, days)
          : DryingForecast.of(slab, weather, ventilation, criteria, doubt, days, Steps.none());
    }
  }

  private Optional<Ventilation> ventilation(Optional<? extends Number> changes) {
    double area = floor.buildUp().footprint().area();
    return changes.flatMap(n -> room.map(v -> new Ventilation(n.doubleValue(), v, area)));
  }

  private CoverAir cover(
      Ventilation shut, Later<DryingForecast> underShut, DryingForecast forecast, AirState mean) {
    run.goOn();
    double water = forecast.likely().evaporatedAt(Math.min(DAY, forecast.likely().duration()));
    double daily = water * floor.buildUp().footprint().area();
    double hold = Math.min(1, mean.relativeHumidity() + 0.1);
    double humidity =
        run.worked(
            "materials.drying.closed-cover",
            "Humidity under a cover that is shut",
            steps -> shut.humidityOverWetFloor(mean, steps));
    return new CoverAir(
        daily,
        room.orElseThrow(),
        changes("at the very least", daily, mean, 1),
        changes("to keep the stated humidity", daily, mean, hold),
        Ventilation.SHUT,
        humidity,
        underShut.get());
  }

  private double changes(String what, double daily, AirState mean, double leaving) {
    return run.worked(
        "materials.drying.air-changes",
        "Air changes a day, " + what,
        steps ->
            Ventilation.changesFor(
                daily,
                room.orElseThrow(),
                mean.temperature(),
                mean.relativeHumidity(),
                leaving,
                steps));
  }
}
