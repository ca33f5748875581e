package io.github.seamstead.assembly.fixings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What to buy. Lines of the same thing in the same pack are summed before they are rounded up, so
 * that two half packs are one pack.
 *
 * @param items the lines, each thing and pack once, in the order first named
 */
public record ShoppingList(List<ShoppingItem> items) {

  public ShoppingList {
    items = List.copyOf(items);
  }

  /**
   * Gathers lines in time linear in their number. Where spare parts differ, the sum of need and
   * spare is kept and the spare becomes its part of the summed need.
   *
   * @param lines the lines, in any order
   * @return the list
   */
  public static ShoppingList of(List<ShoppingItem> lines) {
    Map<List<Object>, List<ShoppingItem>> same = new LinkedHashMap<>();
    for (ShoppingItem line : lines) {
      same.computeIfAbsent(
              List.of(line.name(), line.unit(), line.packSize()), key -> new ArrayList<>())
          .add(line);
    }
    return new ShoppingList(same.values().stream().map(ShoppingList::sum).toList());
  }

  private static ShoppingItem sum(List<ShoppingItem> lines) {
    ShoppingItem first = lines.get(0);
    if (lines.size() == 1) {
      return first;
    }
    double need = lines.stream().mapToDouble(ShoppingItem::need).sum();
    boolean oneSpare = lines.stream().allMatch(line -> line.spare() == first.spare());
    double spare =
        oneSpare
            ? first.spare()
            : Math.min(
                1, lines.stream().mapToDouble(line -> line.need() * line.spare()).sum() / need);
    return new ShoppingItem(first.name(), first.unit(), need, spare, first.packSize());
  }

  /**
   * Writes the list.
   *
   * @return one line for each item
   */
  public String text() {
    return items.stream().map(ShoppingItem::text).collect(Collectors.joining("\n"));
  }
}
