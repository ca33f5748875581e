package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import java.util.List;
import java.util.Map;

/** The shapes of the frame section. */
final class FrameShapes {

  private FrameShapes() {}

  static Shape<FrameOpening> frameOpening() {
    Shape<FrameOpening> s =
        Shape.of(FrameOpening.class, "the opening at the top of a truncated frame, by one measure");
    Key<Double> side =
        s.optional("side", Quantities.length("m", 0.005, 50), "length of one edge of the opening");
    Key<Double> radius =
        s.optional(
            "radius",
            Quantities.length("m", 0.005, 50),
            "from the axis to a corner of the opening");
    Key<Double> cutHeight =
        s.optional(
            "cutHeight", Quantities.length("m", 0.01, 100), "height of the opening over the base");
    s.rule(
        (v, faults) -> {
          long given = List.of(side, radius, cutHeight).stream().filter(v::has).count();
          if (given != 1) {
            faults.note(
                "",
                given + " measures of the opening",
                "must be exactly one of: side, radius, cutHeight");
          }
        });
    return s.makes(v -> new FrameOpening(v.find(side), v.find(radius), v.find(cutHeight)));
  }

  static Shape<BarStock> barStock() {
    Shape<BarStock> s =
        Shape.of(BarStock.class, "bars of one length that frame members are cut from");
    Key<Double> length = s.required("length", Quantities.length("m", 0.1, 20), "length of a bar");
    Key<Integer> count =
        s.optional("count", Kinds.count(1, 10000), "how many there are; no limit if left out");
    Key<Double> cost =
        s.optional("cost", Quantities.money(), "price of one bar, in the money of the site");
    return s.makes(v -> new BarStock(v.get(length), v.find(count), v.find(cost)));
  }

  static Shape<Poles> poles() {
    Shape<Poles> s = Shape.of(Poles.class, "the members of the frame");
    Key<PoleSection> section =
        s.assumed(
            "section",
            Kinds.choice(PoleSection.class, PoleSection::word),
            "round pipe or rectangular section",
            PoleSection.ROUND,
            "round",
            "a pipe unless the document says otherwise");
    Key<Double> diameter =
        s.optional(
            "diameter", Quantities.length("mm", 2, 500), "outside diameter of a round section");
    Key<Double> width =
        s.optional(
            "width",
            Quantities.length("mm", 2, 500),
            "width of a rectangular section, along the face");
    Key<Double> depth =
        s.optional(
            "depth",
            Quantities.length("mm", 2, 500),
            "depth of a rectangular section, square to the face");
    Key<Double> massPerLength =
        s.optional(
            "massPerLength",
            Quantities.of(Dimension.MASS_PER_LENGTH, "kg/m", 0.001, 200),
            "mass of the section per length");
    Key<Double> setback =
        s.assumed(
            "setback",
            Quantities.length("mm", 0, 1000),
            "how much a member stops short of each node",
            0.0,
            "0 mm",
            "members run from node to node unless a set-back is given");
    Key<List<BarStock>> bars =
        s.or("bars", Kinds.list(barStock(), 1, 50), "bars to cut the members from", List.of());
    Key<Double> kerf =
        s.assumed(
            "kerf",
            Quantities.length("mm", 0, 20),
            "width of the saw cut",
            0.003,
            "3 mm",
            "common practice: a hand hacksaw or cut-off disc");
    s.rule(
        (v, faults) -> {
          boolean round = v.get(section) == PoleSection.ROUND;
          if (round && !v.has(diameter)) {
            faults.note("diameter", "nothing", "must be there for a round section");
          }
          if (!round && !(v.has(width) && v.has(depth))) {
            faults.note("", "a rectangular section without its size", "must state width and depth");
          }
          if (round && (v.has(width) || v.has(depth))) {
            faults.note("", "width or depth for a round section", "must state diameter alone");
          }
        });
    return s.makes(
        v ->
            new Poles(
                v.get(section),
                v.find(diameter),
                v.find(width),
                v.find(depth),
                v.find(massPerLength),
                v.get(setback),
                v.get(bars),
                v.get(kerf)));
  }

  static Shape<TapedDistance> tapedDistance() {
    Shape<TapedDistance> s = Shape.of(TapedDistance.class, "one taped distance between two nodes");
    Key<String> from =
        s.required(
            "from",
            Kinds.node(),
            "the node where the tape starts: B1 for base corner 1, T1 for the corner of the opening"
                + " above it, A for the apex, C for the ground centre");
    Key<String> to = s.required("to", Kinds.node(), "the node where it is read");
    Key<WrittenQuantity> distance =
        s.required(
            "distance",
            Quantities.written(Dimension.LENGTH, "m", 0.001, 200),
            "the reading, with its standard uncertainty if known");
    Key<Boolean> level =
        s.or("level", Kinds.flag(), "whether the tape was held level between plumb lines", false);
    s.rule(
        (v, faults) -> {
          if (v.get(from).equals(v.get(to))) {
            faults.note("to", '"' + v.get(to) + '"', "must be another node than from");
          }
        });
    return s.makes(v -> new TapedDistance(v.get(from), v.get(to), v.get(distance), v.get(level)));
  }

  static Shape<HeightReading> heightReading() {
    Shape<HeightReading> s =
        Shape.of(
            HeightReading.class,
            "how much higher one node is than another, by a level or water hose");
    Key<String> from = s.required("from", Kinds.node(), "the node measured from");
    Key<String> to = s.required("to", Kinds.node(), "the node measured to");
    Key<WrittenQuantity> rise =
        s.required(
            "rise",
            Quantities.written(Dimension.LENGTH, "m", -50, 50),
            "height of to over from, with its standard uncertainty if known");
    s.rule(
        (v, faults) -> {
          if (v.get(from).equals(v.get(to))) {
            faults.note("to", '"' + v.get(to) + '"', "must be another node than from");
          }
        });
    return s.makes(v -> new HeightReading(v.get(from), v.get(to), v.get(rise)));
  }

  static Shape<PlumbReading> plumbReading() {
    Shape<PlumbReading> s =
        Shape.of(PlumbReading.class, "where a plumb line hung from one node falls");
    Key<String> hung = s.required("hung", Kinds.node(), "the node that the line hangs from");
    Key<String> mark =
        s.required("mark", Kinds.node(), "the node on the ground that it is measured from");
    Key<String> towards =
        s.required("towards", Kinds.node(), "the node that the offset is measured towards");
    Key<WrittenQuantity> offset =
        s.required(
            "offset",
            Quantities.written(Dimension.LENGTH, "m", -20, 20),
            "distance from the mark along that direction, with its standard uncertainty if known");
    return s.makes(v -> new PlumbReading(v.get(hung), v.get(mark), v.get(towards), v.get(offset)));
  }

  static Shape<SurveyReadings> surveyReadings() {
    Shape<SurveyReadings> s = Shape.of(SurveyReadings.class, "the frame as it was taped");
    Key<List<TapedDistance>> distances =
        s.required(
            "distances",
            Kinds.list(tapedDistance(), 1, 5000),
            "taped distances; a distance may be read more than once");
    Key<List<HeightReading>> heights =
        s.or("heights", Kinds.list(heightReading(), 1, 1000), "differences of height", List.of());
    Key<List<PlumbReading>> plumbs =
        s.or("plumbs", Kinds.list(plumbReading(), 1, 1000), "plumb lines", List.of());
    Key<Double> uncertainty =
        s.assumed(
            "uncertainty",
            Quantities.length("mm", 0.01, 500),
            "standard uncertainty of a taped distance that states none",
            0.003,
            "3 mm",
            "common practice: a steel tape in two hands, short spans");
    Key<Double> heightUncertainty =
        s.assumed(
            "heightUncertainty",
            Quantities.length("mm", 0.01, 500),
            "standard uncertainty of a height or plumb offset that states none",
            0.003,
            "3 mm",
            "common practice: a water hose level and a plumb line in still air");
    Key<Double> tolerance =
        s.assumed(
            "tolerance",
            Quantities.length("mm", 0.1, 500),
            "the worst misfit that a template may have on a face",
            0.02,
            "20 mm",
            "common practice: what a hem and stretch take up on a shelter of this size");
    Key<SurveyTape> tape =
        s.optional("tape", TapeShapes.tape(), "the tape, to correct the taped distances");
    return s.makes(
        v ->
            new SurveyReadings(
                v.get(distances),
                v.get(heights),
                v.get(plumbs),
                v.get(uncertainty),
                v.get(heightUncertainty),
                v.get(tolerance),
                v.find(tape)));
  }

  static Shape<Frame> frame() {
    Shape<Frame> s =
        Shape.of(Frame.class, "the frame that carries the cover, by ideal measures or as surveyed");
    Key<Integer> sides = s.required("sides", Kinds.count(3, 64), "how many sides the frame has");
    Key<Map<FrameMeasure, Double>> measures =
        s.optional(
            "measures",
            Kinds.table(
                FrameMeasure.class, FrameMeasure::word, Quantities::measure, FrameMeasure::meaning),
            "ideal measures; two that suffice");
    Key<FrameOpening> opening =
        s.optional(
            "opening", frameOpening(), "the opening at the top; a whole pyramid if left out");
    Key<Poles> poles = s.optional("poles", poles(), "the members of the frame");
    Key<List<Double>> purlins =
        s.or(
            "purlins",
            Kinds.list(Quantities.length("m", 0.01, 100), 1, 50),
            "heights of rings of purlins over the base",
            List.of());
    Key<SurveyReadings> survey =
        s.optional("survey", surveyReadings(), "the frame as it was taped");
    s.rule(
        (v, faults) -> {
          if (!v.has(measures) && !v.has(survey)) {
            faults.note(
                "",
                "neither measures nor survey",
                "must state measures, or the readings of a survey, or both");
          }
          int stated = v.find(measures).map(Map::size).orElse(2);
          if (stated < 2) {
            faults.note(
                "measures",
                stated == 0 ? "no measure" : "one measure",
                "must state two measures that suffice, such as baseSide and height");
          }
        });
    return s.makes(
        v ->
            new Frame(
                v.get(sides),
                v.find(measures),
                v.find(opening),
                v.find(poles),
                v.get(purlins),
                v.find(survey)));
  }
}
