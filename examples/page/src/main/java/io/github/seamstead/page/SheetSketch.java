package io.github.seamstead.page;

import io.github.seamstead.api.job.SheetCopy;
import io.github.seamstead.api.job.SheetEdge;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.api.job.StockFlaw;
import io.github.seamstead.api.job.StockRoll;
import io.github.seamstead.api.job.StockSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sheets and rolls as they are drawn beside the form. */
final class SheetSketch {

  private SheetSketch() {}

  /**
   * Gives a drawing for each sheet and roll, and one for each copy with flaws of its own; copies
   * without such share one.
   */
  static List<Object> of(Stock stock) {
    List<Object> drawn = new ArrayList<>();
    for (StockSheet sheet : stock.sheets()) {
      List<String> alike = new ArrayList<>();
      for (SheetCopy copy : sheet.copies()) {
        if (copy.flaws().isEmpty()) {
          alike.add(copy.id());
        } else {
          List<StockFlaw> flaws = new ArrayList<>(sheet.flaws());
          flaws.addAll(copy.flaws());
          drawn.add(sheet(sheet, copy.id(), 1, flaws));
        }
      }
      if (!alike.isEmpty()) {
        drawn.add(sheet(sheet, String.join(", ", alike), alike.size(), sheet.flaws()));
      } else if (sheet.copies().isEmpty()) {
        drawn.add(sheet(sheet, sheet.id(), sheet.count(), sheet.flaws()));
      }
    }
    stock.rolls().forEach(roll -> drawn.add(roll(roll)));
    return drawn;
  }

  private static Map<String, Object> sheet(
      StockSheet sheet, String id, int count, List<StockFlaw> flaws) {
    Map<String, Object> drawn = rectangle(id, sheet.length(), sheet.width(), count, flaws);
    drawn.put("reinforced", words(sheet.reinforced()));
    if (!sheet.outline().isEmpty()) {
      drawn.put("outline", sheet.outline().stream().map(c -> List.of(c.x(), c.y())).toList());
      drawn.put("bands", sheet.bands());
    }
    return drawn;
  }

  private static Map<String, Object> roll(StockRoll roll) {
    Map<String, Object> drawn =
        rectangle(roll.id(), roll.length(), roll.width(), roll.count(), roll.flaws());
    drawn.put("reinforced", words(roll.reinforced()));
    return drawn;
  }

  private static Map<String, Object> rectangle(
      String id, double length, double width, int count, List<StockFlaw> flaws) {
    Map<String, Object> drawn = new LinkedHashMap<>();
    drawn.put("id", id);
    drawn.put("length", length);
    drawn.put("width", width);
    drawn.put("count", count);
    drawn.put("flaws", flaws.stream().map(SheetSketch::flaw).toList());
    return drawn;
  }

  private static List<String> words(List<SheetEdge> edges) {
    return edges.stream().map(SheetEdge::word).toList();
  }

  private static Map<String, Object> flaw(StockFlaw flaw) {
    return Map.of(
        "x", flaw.x(),
        "y", flaw.y(),
        "width", flaw.width(),
        "height", flaw.height(),
        "note", flaw.note().orElse(""));
  }
}
