package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.soil.SoilPart;
import io.github.seamstead.api.chapter.soil.TrialPart;
import io.github.seamstead.api.job.Weather;
import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.DryingCriteria;
import io.github.seamstead.materials.drying.DryingDoubt;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.DryingSlab;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.FloorDrying;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.drying.TileCalibration;
import io.github.seamstead.materials.drying.Ventilation;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.FloorCautions;
import io.github.seamstead.materials.floor.Layer;
import io.github.seamstead.materials.floor.LayerRole;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Forecasts how the mixed layers dry and crack. */
final class DryingPlanner {

  private static final double DAY = io.github.seamstead.materials.drying.Weather.DAY;
  private static final EarthMoisture EARTH = EarthMoisture.sandyMix();

  private final Run run;
  private final FloorPart floor;
  private final Weather stated;
  private final Optional<Double> room;
  private final DryingEvidence evidence;
  private io.github.seamstead.materials.drying.Weather weather;
  private DryingDoubt doubt;

  private DryingPlanner(Run run, FloorPart floor, Weather stated, Optional<FramePart> frame) {
    this.run = run;
    this.floor = floor;
    this.stated = stated;
    this.room = stated.roomVolume().or(() -> frame.map(f -> f.measures().volume()));
    AirState usual = new AirState(stated.temperature(), stated.humidity(), stated.airSpeed());
    this.doubt = run.supposed().drying();
    this.evidence = new DryingEvidence(run, usual);
    this.weather = io.github.seamstead.materials.drying.Weather.constant(usual);
  }

  static List<DryingPart> plan(
      Run run,
      Optional<FloorPart> floor,
      Optional<FramePart> frame,
      List<SoilPart> soils,
      List<MixPart> mixes,
      List<TrialPart> trials) {
    if (floor.isEmpty()) {
      return List.of();
    }
    Optional<Weather> weather = run.document().weather();
    if (weather.isEmpty()) {
      run.skip(Chapter.DRYING, "the document has no weather");
      return List.of();
    }
    run.assume(
        "$.weather",
        "dry at 75 %",
        "common practice: a layer is dry when air sealed in over it stays at 75 % humidity");
    run.caution(Chapter.DRYING, FloorCautions.heating());
    CrackPlanner cracks = new CrackPlanner(run, soils, mixes, trials);
    List<DryingPart> parts = new ArrayList<>();
    BuildUp buildUp = floor.get().buildUp();
    for (int i = 0; i < buildUp.layers().size(); i++) {
      if (buildUp.layers().get(i) instanceof EarthLayer layer && layer.mixed()) {
        int index = i;
        run.attempt(
                "$.weather",
                () ->
                    new DryingPlanner(run, floor.get(), weather.get(), frame)
                        .part(index, layer, cracks))
            .ifPresent(parts::add);
      }
    }
    return parts;
  }

  private DryingPart part(int index, EarthLayer layer, CrackPlanner cracks) {
    if (layer.role() == LayerRole.EARTH_COAT) {
      run.assume(
          "$.floor.mixes[*].plasticLimit",
          Numbers.plain(DryingCriteria.SANDY_MIX_PLASTIC_LIMIT * 100) + " %",
          "common practice: a sandy floor mix is firm at its plastic limit");
    }
    Optional<LocalDate> since =
        floor.rest().isEmpty() ? Optional.empty() : floor.rest().get(index).laidOn();
    since.ifPresent(day -> weather = evidence.from(day));
    Optional<TileCalibration> calibration =
        floor.rest().isEmpty()
            ? Optional.empty()
            : evidence.calibration(floor.rest().get(index).layer(), layer, moisture(layer), EARTH);
    calibration.filter(TileCalibration::plausible).ifPresent(c -> doubt = c.doubt());
    DryingSlab slab = FloorDrying.slab(floor.buildUp(), index, this::moisture, EARTH);
    DryingCriteria criteria = FloorDrying.criteria(layer, moisture(layer), EARTH);
    DryingForecast forecast = forecast(slab, criteria, ventilation(stated.airChanges()));
    if (forecast.neverDries() && !covered(index)) {
      run.unmet(
          Chapter.DRYING,
          layer.name()
              + ": in air of "
              + Numbers.fixed(stated.humidity() * 100, 0)
              + " % it never gets as dry as a coat or oil wants it, which takes air below "
              + Numbers.fixed(DryingCriteria.DRY_HUMIDITY * 100, 0)
              + " %; wait for drier weather, or warm the room with the vents open");
    }
    Optional<Cracking> cracking = cracks.of(layer);
    double area = floor.buildUp().footprint().area();
    return new DryingPart(
        layer,
        moisture(layer),
        forecast,
        cracking,
        cracking
            .map(c -> c.advice(layer.mix().fibreShare() > 0, layer.thickness()))
            .orElse(List.of()),
        cracking.map(c -> c.slip(area, layer.thickness(), SlipRepair.USUAL_SKIM, layer.mix())),
        covered(index) || run.isBrief() ? Optional.empty() : air(slab, criteria, forecast, area),
        calibration,
        since);
  }

  /** Tells whether the next layer is laid on this one while it is damp. */
  private boolean covered(int index) {
    List<Layer> layers = floor.buildUp().layers();
    return layers.get(index) instanceof EarthLayer pack
        && pack.role() == LayerRole.DRY_PACK
        && index + 1 < layers.size()
        && layers.get(index + 1) instanceof EarthLayer next
        && next.mixed();
  }

  /** As it comes out of the mixer, wetter than wanted where the parts are. */
  private double moisture(EarthLayer layer) {
    return floor.batches().stream()
        .filter(plan -> plan.quantity().layer().equals(layer))
        .mapToDouble(plan -> plan.batch().moisture())
        .findFirst()
        .orElse(layer.mix().moistureAsMixed());
  }

  private DryingForecast forecast(
      DryingSlab slab, DryingCriteria criteria, Optional<Ventilation> ventilation) {
    double days = stated.horizon() / DAY;
    return run.recalled(
        new ForecastOf(slab, weather, ventilation, criteria, doubt, days),
        DryingForecast.class,
        () -> DryingForecast.of(slab, weather, ventilation, criteria, doubt, days));
  }

  /** What a forecast depends on. */
  private record ForecastOf(
      DryingSlab slab,
      io.github.seamstead.materials.drying.Weather weather,
      Optional<Ventilation> ventilation,
      DryingCriteria criteria,
      DryingDoubt doubt,
      double days) {}

  private Optional<Ventilation> ventilation(Optional<? extends Number> changes) {
    double area = floor.buildUp().footprint().area();
    return changes.flatMap(n -> room.map(v -> new Ventilation(n.doubleValue(), v, area)));
  }

  private Optional<CoverAir> air(
      DryingSlab slab, DryingCriteria criteria, DryingForecast forecast, double area) {
    if (room.isEmpty() || stated.humidity() >= 0.999) {
      return Optional.empty();
    }
    double water = forecast.likely().evaporatedAt(Math.min(DAY, forecast.likely().duration()));
    double daily = water * area;
    double hold = Math.min(1, stated.humidity() + 0.1);
    Ventilation shut = ventilation(Optional.of(Ventilation.SHUT)).orElseThrow();
    double humidity =
        run.worked(
            "materials.drying.closed-cover",
            "Humidity under a cover that is shut",
            steps -> shut.humidityOverWetFloor(weather.states().get(0), steps));
    return Optional.of(
        new CoverAir(
            daily,
            room.get(),
            changes(daily, 1),
            changes(daily, hold),
            Ventilation.SHUT,
            humidity,
            forecast(slab, criteria, Optional.of(shut))));
  }

  private double changes(double daily, double leaving) {
    return Ventilation.changesFor(
        daily, room.orElseThrow(), stated.temperature(), stated.humidity(), leaving, Steps.none());
  }
}
