package io.github.seamstead.api.job;

import java.util.List;

/** The shapes of the stock section. */
final class StockShapes {

  private StockShapes() {}

  static Shape<StockFlaw> stockFlaw() {
    Shape<StockFlaw> s =
        Shape.of(StockFlaw.class, "a part of a sheet or roll that must not be used");
    Key<Double> x =
        s.required(
            "x",
            Quantities.length("m", 0, 500),
            "left edge of the flaw from the left edge of the piece");
    Key<Double> y =
        s.required(
            "y",
            Quantities.length("m", 0, 500),
            "lower edge of the flaw from the lower edge of the piece");
    Key<Double> width =
        s.required("width", Quantities.length("m", 0.001, 500), "width of the flaw along x");
    Key<Double> height =
        s.required("height", Quantities.length("m", 0.001, 500), "height of the flaw along y");
    Key<String> note = s.optional("note", Kinds.text(), "what is wrong there");
    return s.makes(
        v -> new StockFlaw(v.get(x), v.get(y), v.get(width), v.get(height), v.find(note)));
  }

  private static Key<Integer> count(Shape<?> s, String one) {
    return s.assumed(
        "count",
        Kinds.count(1, 10000),
        "how many there are",
        1,
        "1",
        "one " + one + " unless the document says more");
  }

  private static Key<List<SheetEdge>> reinforced(Shape<?> s) {
    return s.or(
        "reinforced",
        Kinds.list(Kinds.choice(SheetEdge.class, SheetEdge::word), 1, 4),
        "edges with a reinforced border worth keeping for the hem",
        List.of());
  }

  private static Key<List<StockFlaw>> flaws(Shape<?> s) {
    return s.or("flaws", Kinds.list(stockFlaw(), 1, 200), "parts that must not be used", List.of());
  }

  private static Shape<SheetCorner> sheetCorner() {
    Shape<SheetCorner> s = Shape.of(SheetCorner.class, "a corner of a sheet of any outline");
    Key<Double> x =
        s.required(
            "x",
            Quantities.length("m", 0, 200),
            "along the length, from the left edge of the rectangle that the sheet lies in");
    Key<Double> y =
        s.required(
            "y",
            Quantities.length("m", 0, 200),
            "along the width, from the lower edge of that rectangle");
    return s.makes(v -> new SheetCorner(v.get(x), v.get(y)));
  }

  private static Shape<SheetCopy> sheetCopy() {
    Shape<SheetCopy> s = Shape.of(SheetCopy.class, "one of several sheets of the same shape");
    Key<String> id = s.required("id", Kinds.id(), "its own name, written on it");
    Key<List<StockFlaw>> flaws =
        s.or("flaws", Kinds.list(stockFlaw(), 1, 200), "parts of it not to be used", List.of());
    return s.makes(v -> new SheetCopy(v.get(id), v.get(flaws)));
  }

  private static Key<Integer> preference(Shape<?> s) {
    return s.or("preference", Kinds.count(1, 100), "order of use, lowest first", 1);
  }

  static Shape<StockSheet> stockSheet() {
    Shape<StockSheet> s = Shape.of(StockSheet.class, "sheets of one shape, measured as they are");
    Key<String> id = s.required("id", Kinds.id(), "its name, written on the sheet");
    Key<Double> length =
        s.required(
            "length",
            Quantities.length("m", 0.01, 200),
            "measured length, along x; of the rectangle that an odd sheet lies in");
    Key<Double> width =
        s.required(
            "width",
            Quantities.length("m", 0.01, 200),
            "measured width, along y; of the rectangle that an odd sheet lies in");
    Key<List<SheetCorner>> outline =
        s.or(
            "outline",
            Kinds.list(sheetCorner(), 3, 50),
            "corners of an odd sheet in order along its edge",
            List.of());
    Key<Integer> count = count(s, "sheet");
    Key<List<SheetCopy>> copies =
        s.or(
            "copies",
            Kinds.list(sheetCopy(), 1, 500),
            "the copies by name instead of their count, each with its own flaws",
            List.of());
    s.either(count, copies);
    Key<List<SheetEdge>> reinforced = reinforced(s);
    Key<List<Integer>> bands =
        s.or(
            "bands",
            Kinds.list(Kinds.count(1, 50), 1, 50),
            "edges of the outline with a reinforced border; edge 1 runs from the first corner to"
                + " the second",
            List.of());
    Key<List<StockFlaw>> flaws = flaws(s);
    Key<Double> cost =
        s.optional("cost", Quantities.money(), "price of one sheet, in the money of the site");
    Key<Integer> preference = preference(s);
    s.rule((v, faults) -> StockRules.flaws("", v.get(flaws), v.get(length), v.get(width), faults));
    s.rule((v, faults) -> StockRules.copyFlaws(v.get(copies), v.get(length), v.get(width), faults));
    s.rule(
        (v, faults) ->
            OddSheetRules.check(
                v.get(outline),
                v.get(length),
                v.get(width),
                v.get(bands),
                v.has(reinforced),
                faults));
    return s.makes(
        v ->
            new StockSheet(
                v.get(id),
                v.get(length),
                v.get(width),
                v.get(outline),
                v.get(count),
                v.get(copies),
                v.get(reinforced),
                v.get(bands),
                v.get(flaws),
                v.find(cost),
                v.get(preference)));
  }

  static Shape<StockRoll> stockRoll() {
    Shape<StockRoll> s = Shape.of(StockRoll.class, "rolls of one width, measured as they are");
    Key<String> id = s.required("id", Kinds.id(), "its name, written on the roll");
    Key<Double> width =
        s.required("width", Quantities.length("m", 0.01, 20), "usable width, along y");
    Key<Double> length =
        s.required("length", Quantities.length("m", 0.01, 5000), "length on the roll, along x");
    Key<Integer> count = count(s, "roll");
    Key<List<SheetEdge>> reinforced = reinforced(s);
    Key<List<StockFlaw>> flaws = flaws(s);
    Key<Double> costPerMetre =
        s.optional(
            "costPerMetre",
            Quantities.money(),
            "price of one metre off the roll, in the money of the site");
    Key<Integer> preference = preference(s);
    s.rule((v, faults) -> StockRules.flaws("", v.get(flaws), v.get(length), v.get(width), faults));
    return s.makes(
        v ->
            new StockRoll(
                v.get(id),
                v.get(width),
                v.get(length),
                v.get(count),
                v.get(reinforced),
                v.get(flaws),
                v.find(costPerMetre),
                v.get(preference)));
  }

  static Shape<Stock> stock() {
    Shape<Stock> s = Shape.of(Stock.class, "the sheets and rolls that panels are cut from");
    Key<List<StockSheet>> sheets =
        s.or("sheets", Kinds.list(stockSheet(), 1, 500), "sheets", List.of());
    Key<List<StockRoll>> rolls = s.or("rolls", Kinds.list(stockRoll(), 1, 500), "rolls", List.of());
    Key<Double> spacing =
        s.assumed(
            "spacing",
            Quantities.length("mm", 0, 500),
            "clear gap between two pieces on the stock",
            0.0,
            "0 mm",
            "pieces may share a cut");
    Key<Double> edgeMargin =
        s.assumed(
            "edgeMargin",
            Quantities.length("mm", 0, 500),
            "clear gap between a piece and the edge of the stock",
            0.0,
            "0 mm",
            "sizes are measured as usable");
    Key<Boolean> keepGrain =
        s.assumed(
            "keepGrain",
            Kinds.flag(),
            "whether panels keep their upward direction along or against the width of the stock",
            false,
            "false",
            "woven coated fabric has no direction that matters");
    s.rule((v, faults) -> StockRules.ids(v.get(sheets), v.get(rolls), faults));
    return s.makes(
        v ->
            new Stock(
                v.get(sheets), v.get(rolls), v.get(spacing), v.get(edgeMargin), v.get(keepGrain)));
  }
}
