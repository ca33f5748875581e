package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.geometry.layout.StockNeed;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Says what to do where cloth is short: what to fetch besides, and where to save instead. */
public final class ShortCloth {

  private final LayoutPart part;
  private final Words words;

  ShortCloth(LayoutPart part, Words words) {
    this.part = part;
    this.words = words;
  }

  /**
   * Says what to do, in a line for each way.
   *
   * @param part the layout
   * @param units whether people read metres or feet
   * @return what to fetch besides, then the change with which the cloth goes round or that leaves
   *     the least without a place; none if every piece has a place
   */
  public static List<String> advice(LayoutPart part, UnitSystem units) {
    ShortCloth cloth = new ShortCloth(part, new Words(units));
    List<String> lines = new ArrayList<>();
    if (!part.result().furtherStock().isEmpty()) {
      lines.add(cloth.needed());
    }
    part.savings()
        .filter(savings -> !savings.tried().isEmpty())
        .ifPresent(savings -> lines.add(cloth.instead(savings)));
    return lines;
  }

  /** Names the pieces of a shape that lack. */
  static String lack(Shortfall lack, List<CutShape> cuts) {
    String name = "piece " + lack.pieceId();
    return cuts.stream()
        .filter(shape -> shape.id().equals(lack.pieceId()))
        .findFirst()
        .map(shape -> lack.message().replace(name, name + " (" + shape.name() + ")"))
        .orElse(lack.message());
  }

  /** What would be enough was found by laying what is left over on it. */
  String needed() {
    List<StockNeed> needs = part.result().furtherStock();
    double cost = needs.stream().mapToDouble(StockNeed::cost).sum();
    boolean isPriced = needs.stream().allMatch(need -> need.cost() > 0);
    String all = needs.stream().map(this::amount).collect(Collectors.joining(", and "));
    if (isPriced) {
      return "Buy besides: " + all + ", for " + BookContext.number(cost, 2) + ".";
    }
    if (cost > 0) {
      return "Needed besides: "
          + all
          + "; what has a price comes to "
          + BookContext.number(cost, 2)
          + ", and the rest must be found: nothing with a price takes these pieces.";
    }
    return needs.stream().allMatch(need -> need.length() > 0)
        ? "Buy besides, of this or a like width: " + all + "; no price is stated."
        : "Needed besides, if more like it can be had: " + all + ".";
  }

  private String amount(StockNeed need) {
    return need.length() > 0
        ? words.length(need.length()) + " more of " + need.stockId() + ", " + width(need) + " wide"
        : need.items() + " more of " + need.stockId();
  }

  private String width(StockNeed need) {
    return part.stock().stream()
        .filter(item -> item.id().equals(need.stockId()))
        .map(item -> words.length(item.outline().bounds().height()))
        .findFirst()
        .orElseThrow();
  }

  /** The best of the changes in a line. */
  private String instead(Savings savings) {
    ClothSaving best = savings.tried().get(0);
    return "Or save cloth instead: "
        + best.lever().name()
        + (best.isEnough() ? " is enough" : " leaves " + left(best))
        + "; the other changes that were planned are in the chapter on cutting.";
  }

  /** What still lacks with a change. */
  String left(ClothSaving saving) {
    return saving.withoutPlace() == 0
        ? "nothing"
        : saving.withoutPlace()
            + (saving.withoutPlace() == 1 ? " piece, " : " pieces, ")
            + words.area(saving.areaWithoutPlace());
  }

  /** What is still to be fetched with a change, in few words. */
  String fetch(ClothSaving saving) {
    if (saving.furtherStock().isEmpty()) {
      return saving.withoutPlace() == 0 ? "nothing" : "not known";
    }
    double cost = saving.furtherStock().stream().mapToDouble(StockNeed::cost).sum();
    return saving.furtherStock().stream().map(this::brief).collect(Collectors.joining(", "))
        + (cost > 0 ? ": " + BookContext.number(cost, 2) : "");
  }

  private String brief(StockNeed need) {
    return (need.length() > 0 ? words.length(need.length()) : Integer.toString(need.items()))
        + " of "
        + need.stockId();
  }
}
