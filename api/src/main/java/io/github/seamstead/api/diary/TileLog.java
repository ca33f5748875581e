package io.github.seamstead.api.diary;

import io.github.seamstead.materials.drying.TestTile;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A test tile with its weighings.
 *
 * @param name its name
 * @param layer the layer whose mix it is of
 * @param made when it was filled
 * @param thickness in metres
 * @param area of its open face, in square metres
 * @param scale standard uncertainty of one weighing, in kilograms
 * @param weighings in order of time; those after it cracked are left out
 * @param crack width of the cracks across it, in metres; empty while it has none
 */
public record TileLog(
    String name,
    String layer,
    LocalDateTime made,
    double thickness,
    double area,
    double scale,
    List<TestTile.Weighing> weighings,
    Optional<Double> crack) {

  public TileLog {
    weighings = List.copyOf(weighings);
  }
}
