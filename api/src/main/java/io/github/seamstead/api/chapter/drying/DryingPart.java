package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.materials.drying.CrackChange;
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
 * @param start days after the lowest mixed layer on which it is laid, likely
 * @param laid the day on which it is laid, if the document has a day
 * @param tile the calibration by a weighed test tile of its mix, if there is one
 * @param forecast days to each state, with their ranges
 * @param cracking cracks to expect; empty if there is neither a bar nor a sample, or for a dry pack
 * @param crackAdvice what to do about them
 * @param crackChanges what each change would do to the cracks
 * @param repair the slip that fills them; empty without {@code cracking}
 * @param air what its water does to the air under the cover; empty if the room is not known or the
 *     air is saturated
 * @param since the day on which the layer was laid, from which the days count; empty while it is
 *     not laid whole
 */
public record DryingPart(
    EarthLayer layer,
    double moisture,
    double start,
    Optional<LocalDate> laid,
    Optional<TileCalibration> tile,
    DryingForecast forecast,
    Optional<Cracking> cracking,
    List<String> crackAdvice,
    List<CrackChange> crackChanges,
    Optional<SlipRepair> repair,
    Optional<CoverAir> air,
    Optional<LocalDate> since) {

  public DryingPart {
    crackAdvice = List.copyOf(crackAdvice);
    crackChanges = List.copyOf(crackChanges);
  }
}
