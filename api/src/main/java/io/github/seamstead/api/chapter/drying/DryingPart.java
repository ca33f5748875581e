package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.drying.TileCalibration;
import io.github.seamstead.materials.floor.EarthLayer;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How one mixed layer dries.
 *
 * @param layer the layer
 * @param moisture as it is really laid, water over dry mass
 * @param forecast days to each state, with their ranges
 * @param cracking cracks to expect; empty if there is neither a bar nor a sample, or for a dry pack
 * @param crackAdvice what to do about them
 * @param repair the slip that fills them; empty without {@code cracking}
 * @param air what its water does to the air under the cover; empty if the room is not known or the
 *     air is saturated
 * @param calibration what the weighings of a test tile say; empty without enough of them
 * @param since the day on which the layer was laid, from which the days count; empty while it is
 *     not laid whole
 */
public record DryingPart(
    EarthLayer layer,
    double moisture,
    DryingForecast forecast,
    Optional<Cracking> cracking,
    List<String> crackAdvice,
    Optional<SlipRepair> repair,
    Optional<CoverAir> air,
    Optional<TileCalibration> calibration,
    Optional<LocalDate> since) {

  /**
   * Copies the list.
   *
   * @param layer the layer
   * @param moisture as it is really laid
   * @param forecast days to each state
   * @param cracking cracks to expect
   * @param crackAdvice what to do about them
   * @param repair the slip
   * @param air under the cover
   * @param calibration by the weighings of a tile
   * @param since the day of laying
   */
  public DryingPart {
    crackAdvice = List.copyOf(crackAdvice);
  }
}
