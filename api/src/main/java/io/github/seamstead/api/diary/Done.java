package io.github.seamstead.api.diary;

import io.github.seamstead.api.job.DiaryEntry.WeatherSeen;
import io.github.seamstead.assembly.ring.LogEntry;
import io.github.seamstead.geometry.layout.LostCloth;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a diary says is done, with what the plan before it drew: the fixed part of the next plan.
 *
 * @param last the last day of the diary; empty if there is none
 * @param cut the pieces that are cut, by name
 * @param panels the panels of which a piece is cut, by face, as they were drawn then
 * @param trims pieces beside the panels of which one is cut, by label, as they were drawn then
 * @param earlier all panels as the plan before drew them, by face
 * @param planned where the plan before laid each piece, by name
 * @param lost cloth from which nothing can be cut any more, but for the pieces that are cut
 * @param spoiled pieces that were cut and are of no use, with what happened, by name
 * @param seams the seams joined and undone, in their order
 * @param laid the parts of the floor that are laid, in their order
 * @param tiles the test tiles
 * @param weather the weather seen, by day
 * @param delivered mass of each material delivered or dug, damp as it came, in kilograms
 * @param pulls pegs pulled, in newtons
 */
public record Done(
    Optional<LocalDate> last,
    Map<String, CutPiece> cut,
    Map<Integer, Panel> panels,
    Map<String, PatternPiece> trims,
    Map<Integer, Panel> earlier,
    Map<String, PlannedPiece> planned,
    List<LostCloth> lost,
    Map<String, String> spoiled,
    List<LogEntry> seams,
    List<LaidWork> laid,
    List<TileLog> tiles,
    Map<LocalDate, WeatherSeen> weather,
    Map<String, Double> delivered,
    List<Double> pulls) {

  /** Nothing is done: the plan of a job without a diary. */
  public static final Done NOTHING =
      new Done(
          Optional.empty(),
          Map.of(),
          Map.of(),
          Map.of(),
          Map.of(),
          Map.of(),
          List.of(),
          Map.of(),
          List.of(),
          List.of(),
          List.of(),
          Map.of(),
          Map.of(),
          List.of());

  public Done {
    cut = ordered(cut);
    panels = ordered(panels);
    trims = ordered(trims);
    earlier = ordered(earlier);
    planned = ordered(planned);
    lost = List.copyOf(lost);
    spoiled = ordered(spoiled);
    seams = List.copyOf(seams);
    laid = List.copyOf(laid);
    tiles = List.copyOf(tiles);
    weather = ordered(weather);
    delivered = ordered(delivered);
    pulls = List.copyOf(pulls);
  }

  /** A copy in the same order, on which the plan that is made of it must not depend by chance. */
  private static <K, V> Map<K, V> ordered(Map<K, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /**
   * Keeps what is cut and done, but not what an earlier document planned for the rest.
   *
   * @return the same without the panels and places of the plan before
   */
  public Done cutOnly() {
    return new Done(
        last, cut, panels, trims, Map.of(), planned, lost, spoiled, seams, laid, tiles, weather,
        delivered, pulls);
  }

  /**
   * Tells whether there is no diary.
   *
   * @return true for the plan of a job without one
   */
  public boolean isNothing() {
    return last.isEmpty();
  }
}
