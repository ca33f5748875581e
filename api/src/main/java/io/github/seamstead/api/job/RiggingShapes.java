package io.github.seamstead.api.job;

import io.github.seamstead.assembly.anchor.Ground;
import io.github.seamstead.assembly.anchor.PegTest;
import io.github.seamstead.assembly.anchor.Terrain;
import io.github.seamstead.assembly.fixings.Fibre;
import io.github.seamstead.assembly.fixings.RopeStrength;
import io.github.seamstead.shared.quantity.Dimension;
import java.util.List;

/** The shapes of wind, pegs and rope in the site section. */
final class RiggingShapes {

  private RiggingShapes() {}

  static Shape<BasicWind> basicWind() {
    Shape<BasicWind> s =
        Shape.of(BasicWind.class, "a basic wind speed of a code that prints means and not gusts");
    Key<Double> speed =
        s.required(
            "speed",
            Quantities.of(Dimension.SPEED, "m/s", 5, 60),
            "ten-minute mean at 10 m over open country");
    Key<Terrain> terrain =
        s.assumed(
            "terrain",
            Kinds.constant(Terrain.class),
            "what the country upwind looks like",
            Terrain.OPEN,
            "open",
            "low growth with obstacles far apart unless the document says otherwise");
    return s.makes(v -> new BasicWind(v.get(speed), v.get(terrain)));
  }

  static Shape<WindFigures> windFigures() {
    Shape<WindFigures> s =
        Shape.of(
            WindFigures.class,
            "wind coefficients of your own, for a shape that the simple ones do not hold for");
    Key<Double> drag =
        s.required(
            "drag",
            Quantities.ratio(0.05, 3),
            "sideways force over velocity pressure and greatest silhouette");
    Key<Double> uplift =
        s.required(
            "uplift",
            Quantities.ratio(0, 3),
            "upward force over velocity pressure and plan area, pressure from inside included");
    Key<String> source =
        s.required("source", Kinds.text(), "where they stand, such as the code and its clause");
    return s.makes(v -> new WindFigures(v.get(drag), v.get(uplift), v.get(source)));
  }

  static Shape<PegPulls> pegs() {
    Shape<PegPulls> s =
        Shape.of(PegPulls.class, "pegs tested by pulling them on this ground, along the rope");
    Key<List<Double>> pulls =
        s.required(
            "pulls",
            Kinds.list(Quantities.of(Dimension.FORCE, "N", 1, 1e6), PegTest.LEAST_TESTS, 100),
            "pull at which each peg began to move");
    Key<Ground> ground =
        s.assumed(
            "ground",
            Kinds.constant(Ground.class),
            "the ground on the day that counts, beside the day of the test",
            Ground.WET_OR_THAWING,
            "wetOrThawing",
            "the careful reading: wind comes with rain, and wet ground holds about half");
    Key<Double> factor =
        s.assumed(
            "factor",
            Quantities.ratio(1.5, 10),
            "tested over allowed pull",
            PegTest.USUAL_FACTOR,
            "2",
            "common practice");
    return s.makes(v -> new PegPulls(v.get(pulls), v.get(ground), v.get(factor)));
  }

  static Shape<SiteRope> rope() {
    Shape<SiteRope> s = Shape.of(SiteRope.class, "the rope that raises the cover");
    Key<Fibre> fibre = s.required("fibre", Kinds.constant(Fibre.class), "what it is made of");
    Key<Double> diameter = s.required("diameter", Quantities.length("mm", 3, 60), "its diameter");
    Key<Double> factor =
        s.assumed(
            "factor",
            Quantities.ratio(RopeStrength.LEAST_FACTOR, 50),
            "breaking load over working load",
            RopeStrength.OVERHEAD_FACTOR,
            "12",
            "the careful reading: people may be under the load");
    Key<Double> coil =
        s.optional(
            "coil", Quantities.length("m", 1, 1000), "length of the coils that it is cut from");
    return s.makes(v -> new SiteRope(v.get(fibre), v.get(diameter), v.get(factor), v.find(coil)));
  }
}
