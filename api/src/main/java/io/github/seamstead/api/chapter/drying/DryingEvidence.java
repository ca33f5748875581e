package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.api.diary.TileLog;
import io.github.seamstead.api.job.DiaryEntry.WeatherSeen;
import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.DryingSlab;
import io.github.seamstead.materials.drying.EarthMoisture;
import io.github.seamstead.materials.drying.TestTile;
import io.github.seamstead.materials.drying.TileCalibration;
import io.github.seamstead.materials.drying.Weather;
import io.github.seamstead.materials.floor.EarthLayer;
import io.github.seamstead.shared.check.ArgumentFault;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the diary says of drying: the weather as it was, and tiles that were weighed. */
final class DryingEvidence {

  /** Two unknowns are fitted, and the first weighing is the one that the losses count from. */
  private static final int LEAST_WEIGHINGS = 3;

  private final Run run;
  private final Done done;
  private final AirState usual;

  DryingEvidence(Run run, AirState usual) {
    this.run = run;
    this.done = run.done();
    this.usual = usual;
  }

  /** The weather from a day on: as it was seen, and as the job expects it where it was not. */
  Weather from(LocalDate day) {
    List<AirState> days = new ArrayList<>();
    LocalDate last = done.last().orElse(day);
    for (LocalDate d = day; !d.isAfter(last); d = d.plusDays(1)) {
      days.add(Optional.ofNullable(done.weather().get(d)).map(DryingEvidence::air).orElse(usual));
    }
    days.add(usual);
    return Weather.daily(days);
  }

  private static AirState air(WeatherSeen seen) {
    return new AirState(seen.temperature(), seen.humidity(), seen.airSpeed());
  }

  /** What the tile with the most weighings says of its layer. */
  Optional<TileCalibration> calibration(
      String name, EarthLayer layer, double moisture, EarthMoisture earth) {
    Optional<TileLog> tile =
        done.tiles().stream()
            .filter(t -> t.layer().equals(name) && t.weighings().size() >= LEAST_WEIGHINGS)
            .max(Comparator.comparingInt(t -> t.weighings().size()));
    if (tile.isEmpty()) {
      return Optional.empty();
    }
    DryingSlab slab =
        DryingSlab.sealed(
            tile.get().thickness(), layer.mix().compactedDryDensity().likely(), moisture, earth);
    try {
      TestTile test =
          new TestTile(slab, tile.get().area(), tile.get().weighings(), tile.get().scale());
      TileCalibration fit = TileCalibration.of(test, from(tile.get().made().toLocalDate()));
      if (!fit.plausible()) {
        run.unmet(
            Chapter.DRYING,
            "tile "
                + tile.get().name()
                + ": its weighings do not fit a drying tile of that size, so the days are reckoned"
                + " without it; check its thickness, area and scale");
      }
      return Optional.of(fit);
    } catch (ArgumentFault refused) {
      run.unmet(
          Chapter.DRYING, "tile " + tile.get().name() + " is not used: " + refused.getMessage());
      return Optional.empty();
    }
  }
}
