package io.github.seamstead.api.chapter.air;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.job.Floor;
import io.github.seamstead.api.job.Weather;
import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.DryingCriteria;
import io.github.seamstead.materials.drying.OpenTime;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.LayerRole;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import java.util.Optional;

/** How long the open edge of a layer waits for the next sector. */
public final class OpenTimes {

  private OpenTimes() {}

  /**
   * As stated, else by the weather for a coat laid wet, else as usual.
   *
   * @param run the run that is told what is assumed and worked
   * @param floor the floor of the job
   * @param plan the loads of the layer
   * @param mixes the mixes of the job
   * @return how long an edge stays open, in seconds
   */
  public static Range of(Run run, Floor floor, BatchPlan plan, List<MixPart> mixes) {
    if (floor.shortestOpenTime().isPresent()) {
      double shortest = floor.shortestOpenTime().get();
      double longest = floor.longestOpenTime().orElseThrow();
      return new Range(shortest, (shortest + longest) / 2, longest);
    }
    Optional<Weather> weather = run.document().weather();
    double limit = plasticLimit(plan.quantity().layer().mix().name(), mixes);
    double moisture = plan.batch().moisture();
    if (weather.isPresent()
        && plan.quantity().layer().role() == LayerRole.EARTH_COAT
        && moisture > limit) {
      io.github.seamstead.materials.drying.Weather air = FloorAir.of(weather.get());
      AirState driest = OpenTime.driest(air);
      double density = plan.quantity().layer().mix().compactedDryDensity().likely();
      run.workedOnly(
          "materials.drying.open-time",
          "Open time of " + plan.quantity().layer().name(),
          steps -> OpenTime.of(driest, density, moisture, limit, steps));
      return OpenTime.onTheDay(air, density, moisture, limit);
    }
    run.assume(
        "$.floor.shortestOpenTime",
        "30 min to 2 h",
        "common practice: a warm dry day to a cool damp one, for an edge that the weather does not"
            + " tell of");
    return OpenTime.USUAL;
  }

  /**
   * Gives the plastic limit of a mix.
   *
   * @param mix its name
   * @param mixes the mixes
   * @return as stated, else the usual one, water over dry mass
   */
  public static double plasticLimit(String mix, List<MixPart> mixes) {
    return mixes.stream()
        .filter(m -> m.spec().id().equals(mix))
        .flatMap(m -> m.spec().plasticLimit().stream())
        .findFirst()
        .orElse(DryingCriteria.SANDY_MIX_PLASTIC_LIMIT);
  }
}
