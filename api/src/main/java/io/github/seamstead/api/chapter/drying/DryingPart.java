package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.floor.EarthLayer;
import java.util.Optional;

/**
 * How one mixed layer dries.
 *
 * @param layer the layer
 * @param forecast days to firm, walkable and dry, with their ranges
 * @param cracking cracks to expect; empty if the soil has no shrinkage test, or for a dry pack
 * @param repair the slip that fills them; empty without {@code cracking}
 * @param aired the forecast beside one with {@link #AIRED} times the air speed over the floor, as
 *     doors and vents wide open may give; empty where that would be a gale
 */
public record DryingPart(
    EarthLayer layer,
    DryingForecast forecast,
    Optional<Cracking> cracking,
    Optional<SlipRepair> repair,
    Optional<DryingForecast.Comparison> aired) {

  /** How many times faster the air moves in the compared forecast (an example, not a measure). */
  public static final double AIRED = 2;
}
