package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.geometry.layout.Placement;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.geometry.layout.StockNeed;
import io.github.seamstead.geometry.layout.StockUse;
import io.github.seamstead.shared.plane.Outline;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The cutting layout as data. */
final class LayoutFacts {

  private LayoutFacts() {}

  static Facts<LayoutPart> layout() {
    return new Facts<LayoutPart>()
        .text("method", "how it was found", l -> word(l.result().method()))
        .flag("complete", "whether every piece is placed", l -> l.result().isComplete())
        .maybeText(
            "stopped",
            "why the search ended before its time, if it did",
            l -> l.result().stopped().map(LayoutFacts::word))
        .number("density_ratio", "cloth in pieces over cloth used", l -> l.result().density())
        .number("usedLength_m", "length used, all together", l -> l.result().usedLength())
        .number(
            "lengthBound_m",
            "no layout on the sheets and rolls used has less",
            l -> l.result().lengthBound())
        .number("cost", "cost of what is used, in the money stated", l -> l.result().cost())
        .number("objective", "the value that was made small", l -> l.result().objectiveValue())
        .number("lowerBound", "no layout has less", l -> l.result().lowerBound())
        .number("gap_ratio", "how far the value is from the bound", l -> l.result().gap())
        .text("workUsed", "placements tried", l -> Long.toString(l.result().workUsed()))
        .many("used", "each sheet and roll used", use(), l -> l.result().used())
        .many("unplaced", "pieces that found no place", shortfall(), l -> l.result().unplaced())
        .many(
            "furtherStock",
            "what takes the pieces left over, found by laying them on it; what can be bought first",
            need(),
            l -> l.result().furtherStock())
        .maybe(
            "savings",
            "where cloth could be saved instead, if it is short",
            savings(),
            LayoutPart::savings);
  }

  private static Facts<Savings> savings() {
    return new Facts<Savings>()
        .many("tried", "plans with one change each that were run", saving(), Savings::tried)
        .many("notTried", "changes that were not planned", notTried(), Savings::notTried);
  }

  private static Facts<ClothSaving> saving() {
    return new Facts<ClothSaving>()
        .text("change", "what is changed", s -> s.lever().name())
        .text("price", "what it costs that no number shows", s -> s.lever().price())
        .flag("enough", "whether every piece has a place with it alone", ClothSaving::isEnough)
        .number(
            "clothSaved_m2",
            "how much less cloth all pieces take, negative where it is more",
            ClothSaving::clothSaved)
        .whole("withoutPlace", "pieces that still find no place", ClothSaving::withoutPlace)
        .number("areaWithoutPlace_m2", "their cloth", ClothSaving::areaWithoutPlace)
        .many("furtherStock", "what would take these", need(), ClothSaving::furtherStock)
        .texts("unmet", "what else cannot be met with it", ClothSaving::unmet);
  }

  private static Facts<Savings.NotTried> notTried() {
    return new Facts<Savings.NotTried>()
        .text("change", "what would be changed", n -> n.lever().name())
        .text("why", "why it was not planned", Savings.NotTried::why);
  }

  private static Facts<StockNeed> need() {
    return new Facts<StockNeed>()
        .text("stock", "more of which stock", StockNeed::stockId)
        .whole("items", "how many further sheets, or rolls begun", StockNeed::items)
        .number("length_m", "for a roll: how much of it; for sheets 0", StockNeed::length)
        .number("cost", "what it costs, in the money stated; 0 without a price", StockNeed::cost);
  }

  private static Facts<StockUse> use() {
    return new Facts<StockUse>()
        .text("stock", "its name", StockUse::stockId)
        .whole("copy", "which of several alike", StockUse::copy)
        .number("usedLength_m", "how far the cuts reach along it", StockUse::usedLength)
        .many("placements", "where each piece lies", placement(), StockUse::placements)
        .many("remnants", "what is worth keeping", remnant(), StockUse::remnants);
  }

  private static Facts<Placement> placement() {
    return new Facts<Placement>()
        .text("shape", "the shape to cut", Placement::pieceId)
        .whole("copy", "which copy of it", Placement::copy)
        .flag("mirrored", "whether it is turned over first", Placement::mirrored)
        .number("rotation_rad", "turn about the origin, then", Placement::rotation)
        .number("x_m", "shift along the stock, last", p -> p.shift().getX())
        .number("y_m", "shift across the stock, last", p -> p.shift().getY())
        .flag("onReinforcedEdge", "whether its hem lies on a band", Placement::onReinforcedEdge);
  }

  private static Facts<Outline> remnant() {
    return new Facts<Outline>()
        .number("area_m2", "its area", Outline::area)
        .many("corners", "its corners, counter-clockwise", corner(), Outline::vertices);
  }

  private static Facts<Vector2D> corner() {
    return new Facts<Vector2D>()
        .number("x_m", "along the stock", Vector2D::getX)
        .number("y_m", "across the stock", Vector2D::getY);
  }

  private static Facts<Shortfall> shortfall() {
    return new Facts<Shortfall>()
        .text("shape", "the shape", Shortfall::pieceId)
        .whole("count", "how many", Shortfall::count)
        .code("reason", "why", Shortfall.Reason.class, Shortfall::reason)
        .flag("spliceHelps", "whether a splice would find it a place", Shortfall::spliceHelps)
        .text("message", "why, and what helps", Shortfall::message);
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
