package io.github.seamstead.api.job;

import io.github.seamstead.assembly.fixings.SeamStack;
import io.github.seamstead.shared.quantity.Dimension;

/** The shapes of what holds the cover together and of how the crew joins it. */
final class JoinShapes {

  private JoinShapes() {}

  static Shape<Fixings> fixings() {
    Shape<Fixings> s = Shape.of(Fixings.class, "what holds seams and hem");
    Key<FixingMethod> method =
        s.assumed(
            "method",
            Kinds.choice(FixingMethod.class, FixingMethod::word),
            "what holds a seam",
            FixingMethod.STAPLES,
            "staples",
            "common practice: plier stapler on coated fabric");
    Key<Double> spacing =
        s.assumed(
            "spacing",
            Quantities.length("mm", 2, 1000),
            "distance between fixings along a seam",
            0.04,
            "40 mm",
            "common practice: clinched staples in coated fabric");
    Key<Integer> rows =
        s.assumed(
            "rows",
            Kinds.count(1, 6),
            "rows of fixings in a seam",
            1,
            "1",
            "common practice: one row along each seam");
    Key<Integer> packSize =
        s.assumed(
            "packSize", Kinds.count(1, 100000), "fixings in a pack", 1000, "1000", "a usual pack");
    Key<Double> adhesiveBead =
        s.optional(
            "adhesiveBead",
            Quantities.length("mm", 1, 30),
            "diameter of the bead of adhesive along each seam");
    Key<Double> cartridge =
        s.assumed(
            "cartridge",
            Quantities.of(Dimension.VOLUME, "ml", 10, 5000),
            "volume of adhesive in a cartridge",
            310e-6,
            "310 ml",
            "a usual cartridge");
    Key<Adhesive> adhesive =
        s.optional("adhesive", AdhesiveShapes.adhesive(), "what the maker of the adhesive states");
    Key<Double> spare =
        s.assumed(
            "spare",
            Quantities.ratio(0, 1),
            "spare fixings and adhesive",
            0.1,
            "10 %",
            "common practice: bent staples and half-used cartridges");
    Key<SeamLayers> through =
        s.optional("through", through(), "what a fixing of a seam goes through");
    return s.makes(
        v ->
            new Fixings(
                v.get(method),
                v.get(spacing),
                v.get(rows),
                v.get(packSize),
                v.find(adhesiveBead),
                v.get(cartridge),
                v.find(adhesive),
                v.get(spare),
                v.find(through)));
  }

  private static Shape<SeamLayers> through() {
    Shape<SeamLayers> s = Shape.of(SeamLayers.class, "what a fixing of a seam goes through");
    Key<Integer> layers =
        s.required(
            "layers",
            Kinds.count(1, SeamStack.MOST_LAYERS),
            "layers of cloth that a fixing goes through");
    Key<Double> extra =
        s.or(
            "extra",
            Quantities.length("mm", 0, 100),
            "tape, washers or a batten that a fixing goes through",
            0.0);
    Key<Double> beyond =
        s.optional(
            "beyond",
            Quantities.length("mm", 0.5, 200),
            "what of a staple turns over, or of a screw bites, on the far side");
    Key<Double> reel = s.optional("reel", Quantities.length("m", 1, 100000), "thread on a reel");
    return s.makes(v -> new SeamLayers(v.get(layers), v.get(extra), v.find(beyond), v.find(reel)));
  }

  static Shape<Joining> joining() {
    Shape<Joining> s = Shape.of(Joining.class, "how the crew joins");
    Key<Double> quickestSeam =
        s.assumed(
            "quickestSeam",
            Quantities.of(Dimension.TIME, "min", 0.1, 600),
            "shortest time to join one seam",
            7 * 60.0,
            "7 min",
            "common practice: 8 to 10 minutes to staple one seam of a shelter, less on a good day");
    Key<Double> usualSeam =
        s.assumed(
            "usualSeam",
            Quantities.of(Dimension.TIME, "min", 0.1, 600),
            "usual time to join one seam",
            9 * 60.0,
            "9 min",
            "common practice: 8 to 10 minutes to staple one seam of a shelter");
    Key<Double> slowestSeam =
        s.assumed(
            "slowestSeam",
            Quantities.of(Dimension.TIME, "min", 0.1, 600),
            "longest time to join one seam",
            15 * 60.0,
            "15 min",
            "common practice: 8 to 10 minutes to staple one seam of a shelter, more with a jam or a"
                + " redo");
    Key<Double> liftLimit =
        s.assumed(
            "liftLimit",
            Quantities.of(Dimension.MASS, "kg", 1, 100),
            "the most that one person may handle; a lower limit of the lifting equation goes first",
            23.0,
            "23 kg",
            "revised NIOSH lifting equation: load constant under ideal conditions");
    Key<Double> learning =
        s.optional(
            "learning",
            Quantities.ratio(0.5, 1),
            "time of the second seam over the first, of the fourth over the second and so on;"
                + " usualSeam is the first one's time then");
    s.rule(
        (v, faults) -> {
          if (!(v.get(quickestSeam) <= v.get(usualSeam)
              && v.get(usualSeam) <= v.get(slowestSeam))) {
            faults.note(
                "", "seam times that fall", "must have quickestSeam <= usualSeam <= slowestSeam");
          }
        });
    return s.makes(
        v ->
            new Joining(
                v.get(quickestSeam),
                v.get(usualSeam),
                v.get(slowestSeam),
                v.get(liftLimit),
                v.find(learning)));
  }
}
