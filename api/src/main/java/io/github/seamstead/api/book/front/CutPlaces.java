package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.StockUse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** On which cut card each piece lies, so that a piece card leads to its sheet. */
final class CutPlaces {

  /**
   * Where a piece lies.
   *
   * @param copy which of the pieces of its shape, counted from 1
   * @param sheet the sheet, as its cut card is called
   * @param number its number on that card
   */
  record Place(int copy, String sheet, int number) {}

  private CutPlaces() {}

  /** Where the pieces of each shape lie, by the shape's id, in the order of the cut cards. */
  static Map<String, List<Place>> of(Desk desk) {
    Map<String, List<Place>> places = new LinkedHashMap<>();
    desk.plan()
        .layout()
        .ifPresent(layout -> layout.result().used().forEach(use -> add(places, layout, use)));
    return places;
  }

  private static void add(Map<String, List<Place>> places, LayoutPart layout, StockUse use) {
    List<Placement> order = CutCards.inOrder(layout, use);
    String sheet = CutCards.name(CutCards.item(layout, use), use);
    for (int i = 0; i < order.size(); i++) {
      Placement p = order.get(i);
      places
          .computeIfAbsent(p.pieceId(), k -> new ArrayList<>())
          .add(new Place(p.copy(), sheet, i + 1));
    }
  }
}
