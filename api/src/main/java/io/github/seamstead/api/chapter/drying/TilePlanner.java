package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.air.FloorAir;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.TileTest;
import io.github.seamstead.materials.drying.AirState;
import io.github.seamstead.materials.drying.DryingSlab;
import io.github.seamstead.materials.drying.TestTile;
import io.github.seamstead.materials.drying.TileCalibration;
import io.github.seamstead.materials.drying.Weather;
import io.github.seamstead.materials.floor.EarthLayer;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Calibrates the drying of each mix by its weighed test tile. */
final class TilePlanner {

  private final Run run;
  private final List<TileTest> tiles;
  private final Map<String, Optional<TileCalibration>> byMix = new HashMap<>();

  TilePlanner(Run run, List<TileTest> tiles) {
    this.run = run;
    this.tiles = tiles;
  }

  /** The calibration of a layer's mix, if a tile of it was weighed. */
  Optional<TileCalibration> of(EarthLayer layer) {
    return byMix.computeIfAbsent(layer.mix().name(), mix -> calibrate(mix, layer));
  }

  private Optional<TileCalibration> calibrate(String mix, EarthLayer layer) {
    for (int i = 0; i < tiles.size(); i++) {
      TileTest tile = tiles.get(i);
      if (tile.mix().equals(mix)) {
        tile.wetBulb()
            .ifPresent(
                bulb -> FloorAir.record(run, "the tile of " + mix, tile.temperature(), bulb));
        Optional<TileCalibration> calibration =
            run.attempt("$.weather.tiles[" + i + "]", () -> calibrate(tile, layer));
        calibration
            .filter(c -> !c.plausible())
            .ifPresent(
                c ->
                    run.unmet(
                        Chapter.DRYING,
                        "the test tile of "
                            + mix
                            + " dries as no tile of such earth does, and does not count: check its"
                            + " moisture, thickness, air and weighings"));
        return calibration;
      }
    }
    return Optional.empty();
  }

  private TileCalibration calibrate(TileTest tile, EarthLayer layer) {
    DryingSlab slab =
        DryingSlab.sealed(
            tile.thickness(),
            layer.mix().compactedDryDensity().likely(),
            tile.moisture(),
            DryingPlanner.EARTH);
    double humidity =
        tile.humidity()
            .orElseGet(() -> FloorAir.humidity(tile.temperature(), tile.wetBulb().orElseThrow()));
    List<TestTile.Weighing> weighings =
        tile.weighings().stream().map(w -> new TestTile.Weighing(w.time(), w.mass())).toList();
    CalibrationOf key =
        new CalibrationOf(
            new TestTile(slab, tile.area(), weighings, tile.scale()),
            Weather.constant(new AirState(tile.temperature(), humidity, tile.airSpeed())));
    return run.recalled(
        key, TileCalibration.class, () -> TileCalibration.of(key.tile(), key.weather()));
  }

  /** What a calibration depends on. */
  private record CalibrationOf(TestTile tile, Weather weather) {}
}
