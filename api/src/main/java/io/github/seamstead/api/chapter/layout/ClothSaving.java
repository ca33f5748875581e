package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.geometry.layout.StockNeed;
import java.util.List;

/**
 * What a plan that saves cloth comes to: the job planned anew with one change, its panels drawn and
 * laid out.
 *
 * @param lever what is changed
 * @param clothSaved how much less cloth is in all pieces, in square metres; negative if it is more
 * @param withoutPlace pieces that still find no place, 0 or more
 * @param areaWithoutPlace cloth of these pieces, in square metres, 0 or more
 * @param furtherStock what would take these pieces, found by laying them on it
 * @param unmet what else the changed job asks for and cannot be met; empty as a rule
 */
public record ClothSaving(
    ClothLever lever,
    double clothSaved,
    int withoutPlace,
    double areaWithoutPlace,
    List<StockNeed> furtherStock,
    List<String> unmet) {

  public ClothSaving {
    furtherStock = List.copyOf(furtherStock);
    unmet = List.copyOf(unmet);
  }

  /**
   * Tells whether the change alone makes the cloth go round.
   *
   * @return whether every piece has a place and nothing else is unmet
   */
  public boolean isEnough() {
    return withoutPlace == 0 && unmet.isEmpty();
  }
}
