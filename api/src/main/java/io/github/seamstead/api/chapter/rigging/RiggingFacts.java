package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.assembly.anchor.CapDrainage;
import io.github.seamstead.assembly.anchor.PeakWind;
import io.github.seamstead.assembly.fixings.FixingKind;
import io.github.seamstead.assembly.fixings.ShoppingItem;
import io.github.seamstead.assembly.handling.Packing;
import io.github.seamstead.assembly.handling.TurnRoute;
import io.github.seamstead.assembly.schedule.AdhesiveTimes;
import java.util.Locale;

/** Fixings, handling and anchoring as data. */
final class RiggingFacts {

  private RiggingFacts() {}

  static Facts<FixingsPart> fixings() {
    return new Facts<FixingsPart>()
        .text("kind", "what holds the seams", f -> f.fixings().pattern().kind().label())
        .code("kindCode", "the same as a code", FixingKind.class, f -> f.fixings().pattern().kind())
        .whole("total", "fixings in all seams", f -> f.fixings().total())
        .whole("made", "fixings in the seams made so far", f -> f.left().made())
        .whole("open", "fixings of the seams left to make", f -> f.left().open())
        .whole("pegs", "pegs round the hem", f -> f.pegs().pegs())
        .number("pegSpacing_m", "distance between pegs", f -> f.pegs().spacing())
        .number("seamLength_m", "length of all seams", f -> f.seams().length())
        .maybeNumber(
            "adhesive_m3", "adhesive in all beads", f -> f.adhesive().map(need -> need.volume()))
        .maybeNumber(
            "adhesiveLeft_m3",
            "adhesive of the seams left to make",
            f -> f.left().adhesive().map(need -> need.volume()))
        .maybeNumber("threadLeft_m", "thread of the seams left to make", f -> f.left().thread())
        .maybe("glue", "how it is glued", glue(), FixingsPart::glue)
        .one("through", "what a fixing goes through", through(), FixingsPart::through)
        .many(
            "shopping",
            "what to buy for the seams left to make",
            item(),
            f -> f.shopping().items());
  }

  private static Facts<AdhesiveTimes> glue() {
    return new Facts<AdhesiveTimes>()
        .number("open_s", "how long a bead may wait", AdhesiveTimes::openTime)
        .number("cure_s", "how long a joint rests", AdhesiveTimes::cureTime)
        .number("portion_m", "glued at a time at most", AdhesiveTimes::longestPortion);
  }

  private static Facts<StackPart> through() {
    return new Facts<StackPart>()
        .whole("layers", "layers of cloth", t -> t.stack().layers())
        .number("thickness_m", "their thickness", t -> t.stack().thickness())
        .maybeNumber("leastLeg_m", "least length of a staple's leg or screw", StackPart::leastLeg)
        .maybeNumber("thread_m", "thread of all seams", StackPart::thread);
  }

  private static Facts<RopePart> rope() {
    return new Facts<RopePart>()
        .text("fibre", "what it is made of", r -> r.strength().fibre().label())
        .number("diameter_m", "its diameter", r -> r.strength().diameter())
        .number("breaking_N", "breaking load by the rule used", r -> r.strength().breakingLoad())
        .number(
            "rivalBreaking_N",
            "breaking load by the rule that disagrees",
            r -> r.strength().rivalBreakingLoad())
        .number("working_N", "what it may carry, knotted", r -> r.strength().workingLoad())
        .number("load_N", "the greatest pull on one rope", RopePart::load)
        .flag("holds", "whether it may carry that", RopePart::holds)
        .maybeNumber("coils", "coils to buy", r -> r.coils().map(c -> (double) c.rolls()));
  }

  private static Facts<ShoppingItem> item() {
    return new Facts<ShoppingItem>()
        .text("name", "its name", ShoppingItem::name)
        .text("unit", "what is counted", ShoppingItem::unit)
        .number("need", "needed with spare, in the unit", ShoppingItem::withSpare)
        .whole("packs", "packs to buy", ShoppingItem::packs)
        .number("packSize", "units in a pack", ShoppingItem::packSize);
  }

  static Facts<HandlingPart> handling() {
    return new Facts<HandlingPart>()
        .number("mass_kg", "mass of the cover", h -> h.bundle().mass())
        .many("routes", "ways to turn it right side out", route(), h -> h.turning().routes())
        .number("onePerson_kg", "what one person may lift", h -> h.lift().onePersonMass())
        .text("lift", "who may lift it", h -> h.lift().text())
        .maybeNumber(
            "liftPeople",
            "the least team that may lift it; none if no team of the rule may",
            h -> h.lift().team().map(t -> (double) t.people()))
        .maybeNumber(
            "liftTogether_kg",
            "what that team may lift",
            h -> h.lift().team().map(t -> t.capacity()))
        .texts(
            "liftOutside",
            "why the lift is outside the method; none if it is inside",
            h -> h.lift().limit().outside())
        .number("raise_N", "pull of all ropes to raise it", h -> h.pull().raisePull())
        .number("hold_N", "pull of all ropes to hold it", HandlingPart::hold)
        .whole("people", "people on the ropes", h -> h.pull().people())
        .maybeNumber(
            "tackleParts",
            "parts of rope at the moving block, if a tackle is needed",
            h -> h.tackle().map(t -> (double) t.parts()))
        .number("apex_N", "force on the top of the frame", h -> h.pull().apexPull())
        .range(
            "roll_m",
            "diameter of the cover rolled on a length of two metres",
            h -> h.bundle().rollDiameter(Packing.ROLL_LENGTH, Packing.ROLLED))
        .maybe("rope", "the rope stated against that pull", rope(), HandlingPart::rope)
        .number("rope_m", "length of each rope", h -> h.zone().ropeLength())
        .number("dropZone_m", "radius in which nobody stands", h -> h.zone().radius())
        .number("limitGust_m_per_s", "gust above which it stays down", h -> h.wind().limitGust());
  }

  private static Facts<TurnRoute> route() {
    return new Facts<TurnRoute>()
        .text("first", "what is pulled first", TurnRoute::first)
        .text("through", "through which opening", TurnRoute::through)
        .range("bundle_m", "the bundle across", TurnRoute::bundle)
        .number("opening_m", "the opening across", TurnRoute::opening)
        .text("passage", "whether it passes", r -> r.passage().name().toLowerCase(Locale.ROOT));
  }

  private static Facts<PeakWind> peak() {
    return new Facts<PeakWind>()
        .number("basic_m_per_s", "the mean of the code", PeakWind::basic)
        .text("terrain", "the country upwind", p -> p.terrain().label())
        .number("height_m", "height of the cover", PeakWind::height)
        .number("exposure", "peak over basic pressure", PeakWind::exposureFactor);
  }

  static Facts<AnchoringPart> anchoring() {
    return new Facts<AnchoringPart>()
        .number("gust_m_per_s", "the gust", a -> a.screen().pressure().gust())
        .maybe("peak", "how the gust was raised from a mean", peak(), AnchoringPart::peak)
        .number("pressure_Pa", "velocity pressure", a -> a.screen().pressure().pressure())
        .number("drag_N", "sideways load", a -> a.screen().drag())
        .number("uplift_N", "upward load", a -> a.screen().uplift())
        .whole("pegs", "pegs round the hem", a -> a.screen().pegs())
        .number("pegPull_N", "factored pull on each peg", a -> a.screen().pegPull())
        .number("pullAngle_rad", "above the ground", a -> a.screen().pullAngle())
        .number("ballast_kg", "ballast instead of pegs", a -> a.ballast().mass())
        .maybeNumber(
            "pegHolding_N",
            "what a tested peg may be asked to hold",
            a -> a.pegs().map(p -> p.test().holding()))
        .number("hemRope_N", "tension of a rope along the hem", a -> a.hemRope().tension())
        .number("guy_N", "tension of a guy from each corner", a -> a.guy().tension())
        .number("ventilation_m2", "free area wanted in all", a -> a.ventilation().neededArea())
        .number("ventilationThere_m2", "free area there is", a -> a.ventilation().presentArea())
        .text("drainage", "whether water runs off the top", a -> a.drainage().text())
        .code(
            "drainageCode",
            "the same as a code",
            CapDrainage.Drains.class,
            a -> a.drainage().drains())
        .number("drainageHipSlope_rad", "slope of the top's hips", a -> a.drainage().hipSlope());
  }
}
