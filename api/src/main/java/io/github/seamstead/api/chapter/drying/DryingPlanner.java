package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.air.FloorAir;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.soil.SoilPart;
import io.github.seamstead.api.chapter.soil.TrialPart;
import io.github.seamstead.api.job.Weather;
import io.github.seamstead.materials.drying.DryingCriteria;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.FloorDrying;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.materials.floor.BuildUp;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.materials.floor.FloorCautions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Forecasts how the mixed layers dry and crack, one after the other. */
final class DryingPlanner {

  static final EarthMoisture EARTH = EarthMoisture.sandyMix();

  private DryingPlanner() {}

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
    return run.attempt(
            "$.weather",
            () -> {
              LayerDrying drying =
                  new LayerDrying(run, floor.get(), weather.get(), frame, mixes, cracks);
              FloorAir.record(run, weather.get(), drying.mean());
              return layers(run, floor.get().buildUp(), drying);
            })
        .orElse(List.of());
  }

  /** Each layer is laid when the one below is ready for it, and meets the weather of those days. */
  private static List<DryingPart> layers(Run run, BuildUp buildUp, LayerDrying drying) {
    List<DryingPart> parts = new ArrayList<>();
    double day = 0;
    for (int i = 0; i < buildUp.layers().size(); i++) {
      if (buildUp.layers().get(i) instanceof EarthLayer layer && layer.mixed()) {
        int index = i;
        double laid = day;
        Optional<DryingPart> part = run.attempt("$.weather", () -> drying.part(index, layer, laid));
        part.ifPresent(parts::add);
        day += part.map(p -> FloorDrying.daysToNext(buildUp, index, last(p))).orElse(0.0);
      }
    }
    return parts;
  }

  private static double last(DryingPart part) {
    List<Milestone> milestones = part.forecast().milestones();
    Milestone last = milestones.get(milestones.size() - 1);
    return last.likely().orElse(last.horizon());
  }

  /** The dry moisture is the same for every layer. */
  static String dryHumidity() {
    return io.github.seamstead.shared.quantity.Numbers.fixed(DryingCriteria.DRY_HUMIDITY * 100, 0);
  }
}
