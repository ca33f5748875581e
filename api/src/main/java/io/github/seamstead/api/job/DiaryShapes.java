package io.github.seamstead.api.job;

import io.github.seamstead.assembly.ring.Facing;
import io.github.seamstead.shared.quantity.Dimension;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** The shapes of a diary: its head and its lines. */
final class DiaryShapes {

  /** More lines than the longest job has; a text of that many stays below the limit of a file. */
  static final int MOST_LINES = 20_000;

  /** What a diary document holds. */
  record DiaryDocument(
      int seamstead,
      Optional<String> job,
      Optional<Integer> effort,
      Optional<Integer> seed,
      List<DiaryRow> diary) {}

  private DiaryShapes() {}

  static Shape<DiaryDocument> diaryDocument() {
    Shape<DiaryDocument> s =
        Shape.of(DiaryDocument.class, "what was done on a job, line by line in the order of days");
    s.required(
        "seamstead",
        Forms.version(),
        "version of the form of the document; the newest is " + Forms.NEWEST);
    Key<String> job = s.optional("job", Kinds.text(), "the name of the job that it belongs to");
    Key<Integer> effort =
        s.optional(
            "effort", Kinds.count(1, 9), "the effort of the plans that pieces are cut by: keep it");
    Key<Integer> seed =
        s.optional(
            "seed",
            Kinds.count(0, Integer.MAX_VALUE),
            "the seed of the plans that pieces are cut by: keep it");
    Key<List<DiaryRow>> diary =
        s.required(
            "diary", Kinds.list(row(), 1, MOST_LINES), "what happened, in the order of the days");
    return s.makes(
        v ->
            new DiaryDocument(
                Forms.NEWEST, v.find(job), v.find(effort), v.find(seed), v.get(diary)));
  }

  private static Shape<DiaryRow> row() {
    Shape<DiaryRow> s =
        Shape.of(DiaryRow.class, "one line of a diary: a day, and one key that says what happened");
    Key<LocalDate> date =
        s.required("date", Moments.day(), "the day on which it happened, such as 2031-05-17");
    Key<LocalTime> time =
        s.optional("time", Moments.clock(), "the time of day; noon where one is needed");
    Key<DiaryEntry.Cut> cut = s.optional("cut", cut(), "pieces cut out of the cloth");
    Key<DiaryEntry.Spoiled> spoiled =
        s.optional("spoiled", spoiled(), "cut pieces that are of no more use");
    Key<DiaryEntry.Found> found =
        s.optional("found", found(), "pieces written off that are there and sound after all");
    Key<DiaryEntry.ClothPart> used =
        s.optional("clothUsed", clothPart(), "cloth used for something else");
    Key<DiaryEntry.ClothPart> torn = s.optional("clothTorn", clothPart(), "cloth torn or stained");
    Key<DiaryEntry.ClothBought> bought =
        s.optional("clothBought", bought(), "cloth that came in addition");
    Key<DiaryEntry.Delivered> delivered =
        s.optional("delivered", delivered(), "a material of the floor delivered or dug");
    Key<DiaryEntry.Joined> joined = s.optional("joined", joined(), "a seam joined");
    Key<DiaryEntry.Undone> undone = s.optional("undone", undone(), "a seam taken apart again");
    Key<DiaryEntry.Laid> laid =
        s.optional("laid", DiaryFloorShapes.laid(), "a layer of the floor laid, or a part of it");
    Key<DiaryEntry.TileMade> made =
        s.optional("tileMade", DiaryFloorShapes.tileMade(), "a test tile filled");
    Key<DiaryEntry.TileWeighed> weighed =
        s.optional("tileWeighed", DiaryFloorShapes.tileWeighed(), "a test tile weighed");
    Key<DiaryEntry.TileCracked> cracked =
        s.optional("tileCracked", DiaryFloorShapes.tileCracked(), "a test tile that cracked");
    Key<SoilTests> soil =
        s.optional("soilTested", DiaryFloorShapes.soilTests(), "tests made of a soil");
    Key<DiaryEntry.TrialMade> trial =
        s.optional("trialMade", DiaryFloorShapes.trialMade(), "a trial sample made and read");
    Key<DiaryEntry.Retaken> retaken =
        s.optional("retaken", retaken(), "a reading of the frame taken again");
    Key<DiaryEntry.PegsPulled> pegs =
        s.optional("pegsPulled", pegs(), "pegs pulled on this ground, along the rope");
    Key<DiaryEntry.WeatherSeen> weather =
        s.optional("weather", DiaryFloorShapes.weather(), "the weather of the day");
    Key<String> note = s.optional("note", Kinds.text(), "a remark");
    List<Key<?>> what =
        List.of(
            cut, spoiled, found, used, torn, bought, delivered, joined, undone, laid, made, weighed,
            cracked, soil, trial, retaken, pegs, weather, note);
    s.rule((v, faults) -> Shape.one(what, v, faults));
    return s.makes(
        v ->
            new DiaryRow(
                v.get(date),
                v.find(time),
                v.find(cut),
                v.find(spoiled),
                v.find(found),
                v.find(used),
                v.find(torn),
                v.find(bought),
                v.find(delivered),
                v.find(joined),
                v.find(undone),
                v.find(laid),
                v.find(made),
                v.find(weighed),
                v.find(cracked),
                v.find(soil),
                v.find(trial),
                v.find(retaken),
                v.find(pegs),
                v.find(weather),
                v.find(note)));
  }

  private static Key<List<String>> pieces(Shape<?> s) {
    return s.required(
        "pieces",
        Kinds.list(Kinds.text(), 1, 500),
        "their names, such as 3 or 3-1, or skirt 4 where several are named alike");
  }

  private static Shape<DiaryEntry.Cut> cut() {
    Shape<DiaryEntry.Cut> s = Shape.of(DiaryEntry.Cut.class, "pieces cut out of the cloth");
    Key<List<String>> pieces = pieces(s);
    Key<DiaryEntry.CutPlace> place =
        s.optional(
            "place",
            place(),
            "where the piece was cut, if not where the plan of the evening before puts it");
    s.rule(
        (v, faults) -> {
          if (v.has(place) && v.get(pieces).size() > 1) {
            faults.note(
                "pieces",
                v.get(pieces).size() + " pieces at one place",
                "must be a single piece where a place is stated");
          }
        });
    return s.makes(v -> new DiaryEntry.Cut(v.get(pieces), v.find(place)));
  }

  private static Key<String> stock(Shape<?> s) {
    return s.required("stock", Kinds.id(), "the sheet or roll, by its name");
  }

  private static Key<Integer> copy(Shape<?> s) {
    return s.or("copy", Kinds.count(1, 10_000), "which of several alike; the first if left out", 1);
  }

  private static Key<Double> along(Shape<?> s, String key, String meaning) {
    return s.required(key, Quantities.length("m", -5000, 5000), meaning);
  }

  private static Shape<DiaryEntry.CutPlace> place() {
    Shape<DiaryEntry.CutPlace> s =
        Shape.of(
            DiaryEntry.CutPlace.class,
            "where a piece was cut: turned over first if so, then turned, then moved");
    Key<String> stock = stock(s);
    Key<Integer> copy = copy(s);
    Key<Double> x = along(s, "x", "shift along the stock");
    Key<Double> y = along(s, "y", "shift across the stock");
    Key<Double> turn =
        s.or("turn", Quantities.of(Dimension.ANGLE, "deg", -360, 360), "counter-clockwise", 0.0);
    Key<Boolean> turnedOver =
        s.or("turnedOver", Kinds.flag(), "whether it was cut with the plain side up", false);
    return s.makes(
        v ->
            new DiaryEntry.CutPlace(
                v.get(stock), v.get(copy), v.get(x), v.get(y), v.get(turn), v.get(turnedOver)));
  }

  private static Shape<DiaryEntry.Spoiled> spoiled() {
    Shape<DiaryEntry.Spoiled> s =
        Shape.of(DiaryEntry.Spoiled.class, "cut pieces that are of no more use");
    Key<List<String>> pieces = pieces(s);
    Key<String> why = s.optional("why", Kinds.text(), "what happened");
    return s.makes(v -> new DiaryEntry.Spoiled(v.get(pieces), v.find(why)));
  }

  private static Shape<DiaryEntry.Found> found() {
    Shape<DiaryEntry.Found> s =
        Shape.of(DiaryEntry.Found.class, "pieces written off that are there after all");
    Key<List<String>> pieces = pieces(s);
    return s.makes(v -> new DiaryEntry.Found(v.get(pieces)));
  }

  private static Shape<DiaryEntry.ClothPart> clothPart() {
    Shape<DiaryEntry.ClothPart> s =
        Shape.of(DiaryEntry.ClothPart.class, "a part of a sheet or roll that is gone");
    Key<String> stock = stock(s);
    Key<Integer> copy = copy(s);
    Key<Double> x = along(s, "x", "where it begins along the stock");
    Key<Double> y = along(s, "y", "where it begins across the stock");
    Key<Double> width = s.required("width", Quantities.length("m", 0.001, 5000), "along the stock");
    Key<Double> height =
        s.required("height", Quantities.length("m", 0.001, 20), "across the stock");
    return s.makes(
        v ->
            new DiaryEntry.ClothPart(
                v.get(stock), v.get(copy), v.get(x), v.get(y), v.get(width), v.get(height)));
  }

  private static Shape<DiaryEntry.ClothBought> bought() {
    Shape<DiaryEntry.ClothBought> s =
        Shape.of(DiaryEntry.ClothBought.class, "cloth that came in addition");
    Key<StockSheet> sheet = s.optional("sheet", StockShapes.stockSheet(), "sheets of one size");
    Key<StockRoll> roll = s.optional("roll", StockShapes.stockRoll(), "rolls of one width");
    s.rule((v, faults) -> Shape.one(List.of(sheet, roll), v, faults));
    return s.makes(v -> new DiaryEntry.ClothBought(v.find(sheet), v.find(roll)));
  }

  private static Shape<DiaryEntry.Delivered> delivered() {
    Shape<DiaryEntry.Delivered> s =
        Shape.of(DiaryEntry.Delivered.class, "a material of the floor delivered or dug");
    Key<String> material = s.required("material", Kinds.id(), "the soil or aggregate, by its name");
    Key<Double> mass =
        s.required("mass", Quantities.of(Dimension.MASS, "kg", 0.1, 1e6), "damp as it came");
    return s.makes(v -> new DiaryEntry.Delivered(v.get(material), v.get(mass)));
  }

  private static Key<List<String>> edges(Shape<?> s) {
    return s.required("edges", Kinds.list(Kinds.text(), 2, 2), "the two edges, such as 3R and 4L");
  }

  private static Shape<DiaryEntry.Joined> joined() {
    Shape<DiaryEntry.Joined> s = Shape.of(DiaryEntry.Joined.class, "a seam joined");
    Key<List<String>> edges = edges(s);
    Key<Facing> facing = JoinLogShapes.facing(s);
    Key<List<String>> marks = JoinLogShapes.marks(s);
    return s.makes(v -> new DiaryEntry.Joined(v.get(edges), v.get(facing), v.find(marks)));
  }

  private static Shape<DiaryEntry.Undone> undone() {
    Shape<DiaryEntry.Undone> s = Shape.of(DiaryEntry.Undone.class, "a seam taken apart again");
    Key<List<String>> edges = edges(s);
    return s.makes(v -> new DiaryEntry.Undone(v.get(edges)));
  }

  private static Shape<DiaryEntry.Retaken> retaken() {
    Shape<DiaryEntry.Retaken> s =
        Shape.of(DiaryEntry.Retaken.class, "a reading of the frame taken again");
    Key<TapedDistance> distance =
        s.optional("distance", FrameShapes.tapedDistance(), "a taped distance");
    Key<HeightReading> height =
        s.optional("height", FrameShapes.heightReading(), "a difference of height");
    Key<PlumbReading> plumb = s.optional("plumb", FrameShapes.plumbReading(), "a plumb line");
    Key<java.util.Map<FrameMeasure, Double>> measures =
        s.optional(
            "measures",
            Kinds.table(
                FrameMeasure.class, FrameMeasure::word, Quantities::measure, FrameMeasure::meaning),
            "measures of an ideal frame");
    s.rule((v, faults) -> Shape.one(List.of(distance, height, plumb, measures), v, faults));
    return s.makes(
        v ->
            new DiaryEntry.Retaken(
                v.find(distance), v.find(height), v.find(plumb), v.find(measures)));
  }

  private static Shape<DiaryEntry.PegsPulled> pegs() {
    Shape<DiaryEntry.PegsPulled> s =
        Shape.of(DiaryEntry.PegsPulled.class, "pegs pulled on this ground, along the rope");
    Key<List<Double>> pulls =
        s.required(
            "pulls",
            Kinds.list(Quantities.of(Dimension.FORCE, "N", 1, 1e6), 1, 100),
            "pull at which each peg began to move");
    return s.makes(v -> new DiaryEntry.PegsPulled(v.get(pulls)));
  }
}
