package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Numbers;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What must hold between the members of a stock. */
final class StockRules {

  private StockRules() {}

  /** Every flaw lies on its sheet or roll. */
  static void flaws(
      String path, List<StockFlaw> flaws, double length, double width, Shape.Faults faults) {
    for (int i = 0; i < flaws.size(); i++) {
      StockFlaw flaw = flaws.get(i);
      if (flaw.x() + flaw.width() > length || flaw.y() + flaw.height() > width) {
        faults.note(
            path + "flaws[" + i + "]",
            "a flaw that ends at "
                + Numbers.plain(flaw.x() + flaw.width())
                + " m, "
                + Numbers.plain(flaw.y() + flaw.height())
                + " m",
            "must end within " + Numbers.plain(length) + " m by " + Numbers.plain(width) + " m");
      }
    }
  }

  /** Every flaw of a copy lies on it. */
  static void copyFlaws(List<SheetCopy> copies, double length, double width, Shape.Faults faults) {
    for (int i = 0; i < copies.size(); i++) {
      flaws("copies[" + i + "].", copies.get(i).flaws(), length, width, faults);
    }
  }

  /** There is stock, and no two of it share a name. */
  static void ids(List<StockSheet> sheets, List<StockRoll> rolls, Shape.Faults faults) {
    if (sheets.isEmpty() && rolls.isEmpty()) {
      faults.note("", "neither sheets nor rolls", "must list sheets, rolls or both");
    }
    Set<String> names = new HashSet<>();
    for (int i = 0; i < sheets.size(); i++) {
      once("sheets[" + i + "].id", sheets.get(i).id(), names, faults);
      List<SheetCopy> copies = sheets.get(i).copies();
      for (int j = 0; j < copies.size(); j++) {
        once("sheets[" + i + "].copies[" + j + "].id", copies.get(j).id(), names, faults);
      }
    }
    for (int i = 0; i < rolls.size(); i++) {
      once("rolls[" + i + "].id", rolls.get(i).id(), names, faults);
    }
  }

  /** Notes a name that stands a second time. */
  static void once(String key, String id, Set<String> names, Shape.Faults faults) {
    if (!names.add(id)) {
      faults.note(key, "\"" + id + "\" a second time", "must be a name that no other has");
    }
  }
}
