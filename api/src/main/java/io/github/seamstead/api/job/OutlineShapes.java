package io.github.seamstead.api.job;

import java.util.List;

/** The shape of the floor's outline. */
final class OutlineShapes {

  private OutlineShapes() {}

  private static Shape<OutlineCorner> corner() {
    Shape<OutlineCorner> s = Shape.of(OutlineCorner.class, "a corner of the floor in plan");
    Key<Double> x = s.required("x", Quantities.length("m", -100, 100), "from any one point");
    Key<Double> y =
        s.required("y", Quantities.length("m", -100, 100), "from the same point, across x");
    return s.makes(v -> new OutlineCorner(v.get(x), v.get(y)));
  }

  static Shape<FloorOutline> outline() {
    Shape<FloorOutline> s =
        Shape.of(
            FloorOutline.class,
            "the outline of a floor that no frame gives: diameter, or sides and side, or corners");
    Key<Double> diameter =
        s.optional("diameter", Quantities.length("m", 0.3, 100), "of a round room");
    Key<Integer> sides = s.optional("sides", Kinds.count(3, 64), "of a regular room");
    Key<Double> side =
        s.optional("side", Quantities.length("m", 0.1, 100), "length of each of these sides");
    Key<List<OutlineCorner>> corners =
        s.or(
            "corners",
            Kinds.list(corner(), 3, 64),
            "corners of any other room, in order along the edge; side 1 runs from the first to the"
                + " second",
            List.of());
    s.rule(
        (v, faults) -> {
          int ways =
              (v.has(diameter) ? 1 : 0)
                  + (v.has(sides) || v.has(side) ? 1 : 0)
                  + (v.has(corners) ? 1 : 0);
          if (ways != 1) {
            faults.note(
                "",
                ways == 0 ? "an outline without a size" : "an outline in more than one way",
                "must state diameter, or sides and side, or corners");
          } else if (v.has(sides) != v.has(side)) {
            faults.note("", "a regular outline", "must state both sides and side");
          }
        });
    return s.makes(
        v -> new FloorOutline(v.find(diameter), v.find(sides), v.find(side), v.get(corners)));
  }
}
