package io.github.seamstead.materials.floor;

import io.github.seamstead.materials.floor.FloorStep.Kind;
import io.github.seamstead.materials.floor.FloorStep.Quantity;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;

/** The work on a floor from the ground up, step by step, with the numbers of the plan. */
public final class FloorSteps {

  private static final Source LEVELS = Source.commonPractice("levels from a peg in the centre");
  private static final Source EDGING =
      Source.commonPractice("edge rails set to the finished level");
  private static final Source DRAINS =
      Source.commonPractice("ground falls away from the floor, gravel drains to the lowest side");
  private static final Source SHEETS = Source.commonPractice("sheets under floors, lapped uphill");
  private static final Source COATS = Source.commonPractice("screed rails, float and steel trowel");
  private static final Source OIL =
      Source.found("", "Builders' guides to oiled earth floors", "", "4 coats, wiped, in one go");
  private static final Source UPKEEP = Source.commonPractice("upkeep of oiled earth floors");

  private static final Source DRYNESS =
      Source.found("", "Screed drying times, a tiler's guide", "2014", "75 % under a sealed box");

  /** Passes of a 10 kg hand rammer over a lift of at most 100 mm: 6 or more. */
  private static final int PASSES = 6;

  private FloorSteps() {}

  /**
   * Writes the steps of a floor.
   *
   * @param floor the layers
   * @param sectors the order of laying
   * @return in the order of the work
   */
  public static List<FloorStep> of(BuildUp floor, SectorPlan sectors) {
    List<FloorStep> steps = new ArrayList<>();
    steps.add(dig(floor));
    steps.add(drain(floor));
    steps.add(levels(floor));
    steps.add(edging(floor));
    List<EarthQuantity> earth = floor.earth();
    List<MembraneQuantity> sheets = floor.membranes();
    List<FinishQuantity> finishes = floor.finishes();
    int nextEarth = 0;
    int nextSheet = 0;
    int nextFinish = 0;
    for (Layer layer : floor.layers()) {
      if (layer instanceof EarthLayer) {
        EarthQuantity quantity = earth.get(nextEarth++);
        switch (quantity.layer().role()) {
          case LEVELLING, CAPILLARY_BREAK -> steps.add(loose(quantity));
          case DRY_PACK -> steps.add(pack(quantity, sectors));
          case EARTH_COAT -> {
            steps.add(moisten(quantity));
            steps.add(coat(quantity, sectors));
            steps.add(cure(quantity));
          }
        }
      } else if (layer instanceof MembraneLayer) {
        steps.add(sheet(sheets.get(nextSheet++), floor));
      } else {
        steps.add(finish(finishes.get(nextFinish++)));
      }
    }
    steps.add(upkeep(!finishes.isEmpty()));
    return List.copyOf(steps);
  }

  private static FloorStep dig(BuildUp floor) {
    GroundWork dug = GroundWork.levelWithGround(floor);
    return new FloorStep(
        "Dig out",
        List.of(
            "Strip turf, roots and dark topsoil first and keep them apart: they rot and sink.",
            "Dig to the depth of all layers if the floor is to lie level with the ground. To raise"
                + " the floor instead, strip the topsoil only and build up from there.",
            "Trim the bottom level, do not fill hollows with loose soil; ram what was loosened.",
            "Ask where pipes and cables lie before the first spade."),
        List.of(
            Quantity.of("depth", Kind.THICKNESS, floor.thickness()),
            Quantity.of("volume in the ground", Kind.VOLUME, dug.bankVolume()),
            new Quantity("spoil heap, loose", Kind.VOLUME, dug.spoilVolume()),
            new Quantity("work of all hands", Kind.HOURS, dug.hours())),
        "spades, picks, barrow and boards, straight-edge, string, rammer",
        "any number; one wheels for two who dig",
        "bottom firm under the heel, level within the width of a thumb, no roots, no dark soil",
        "soft ground and rotting roots sink under the floor and it cracks",
        GroundWork.DIGGING);
  }

  private static FloorStep drain(BuildUp floor) {
    return new FloorStep(
        "Lead water away",
        List.of(
            "Let the ground outside fall away from the floor on all sides, and cut a ditch on the"
                + " uphill side.",
            "Where the hole may fill, run a gravel trench with a pipe from its lowest corner to"
                + " open air or a soakaway; where there is no fall, raise the floor above the"
                + " ground.",
            "Keep the drip line of the cover outside the edge of the floor."),
        List.of(Quantity.of("outline to drain", Kind.LENGTH, floor.footprint().perimeter())),
        "spade, level, perforated pipe if the ground is wet, gravel",
        "one or two",
        "a bucket of water poured at the edge runs away from the floor; the hole stays dry in rain",
        "water stands in the gravel like in a bath, climbs into the earth and softens it",
        DRAINS);
  }

  private static FloorStep levels(BuildUp floor) {
    return new FloorStep(
        "Set the levels from the centre peg",
        List.of(
            "Drive a peg in the centre and mark the finished level on it; all heights are measured"
                + " down from this one mark.",
            "Carry the level to pegs along the edge with a water level or a straight-edge turned"
                + " end for end.",
            "Mark each layer's top on the pegs, from the ground up."),
        heights(floor),
        "peg, mallet, clear hose with water or a long level, straight-edge, pencil",
        "two, one at each end of the hose",
        "back at the first peg the level closes within the thickness of a pencil line",
        "layers come out thick on one side and thin on the other, and the material runs out",
        LEVELS);
  }

  private static List<Quantity> heights(BuildUp floor) {
    List<Quantity> heights = new ArrayList<>();
    double top = floor.thickness();
    for (BuildUp.SectionBand band : floor.section()) {
      if (band.top() > band.bottom()) {
        // The thickness is added up in another order than the bands: nothing may come out below it.
        double below = Math.max(0, top - band.top());
        heights.add(
            Quantity.of("top of " + band.name() + ", below the mark", Kind.THICKNESS, below));
      }
    }
    return heights;
  }

  private static FloorStep edging(BuildUp floor) {
    return new FloorStep(
        "Set the edging",
        List.of(
            "Set boards or stones along the outline with their top at the finished level; they are"
                + " the outer rail for the straight-edge.",
            "Stake them so that ramming does not push them out; leave the door's side to be set"
                + " last."),
        List.of(Quantity.of("edging", Kind.LENGTH, floor.footprint().perimeter())),
        "boards or stones, stakes, hammer, level",
        "two",
        "top of the edging at the mark all round; it does not move when kicked",
        "the edge breaks off and nothing guides the straight-edge",
        EDGING);
  }

  private static FloorStep loose(EarthQuantity quantity) {
    boolean gravel = quantity.layer().role() == LayerRole.CAPILLARY_BREAK;
    return new FloorStep(
        (gravel ? "Lay the gravel: " : "Lay the levelling: ") + quantity.layer().name(),
        List.of(
            "Tip it from the far side towards the door, rake it level to the pegs and ram it in"
                + " lifts.",
            gravel
                ? "Use washed stone without fines, so that water cannot climb through it."
                : "Damp it so that it packs; fill hollows, do not build hills."),
        List.of(
            Quantity.of("thickness, rammed", Kind.THICKNESS, quantity.meanThickness()),
            Quantity.of("lifts", Kind.COUNT, quantity.layer().lifts()),
            Quantity.of("passes of a hand rammer over each lift", Kind.COUNT, PASSES),
            new Quantity("loose, to bring", Kind.VOLUME, quantity.looseVolume())),
        "barrow, rake, straight-edge, hand rammer or plate",
        "three: one wheels, one rakes, one rams",
        "a heel leaves no print; top at its mark on every peg",
        gravel
            ? "ground water climbs by the fines into the earth layers"
            : "the layers above come out uneven and crack over soft places",
        EarthLayer.LIFT_SOURCE);
  }

  private static FloorStep sheet(MembraneQuantity quantity, BuildUp floor) {
    return new FloorStep(
        "Lay the damp-proof sheet: " + quantity.layer().name(),
        List.of(
            "Cover sharp stones with sand or felt first.",
            "Roll it out, lap the strips so that water from above runs over the joint, and turn it"
                + " up at the edge and round posts to the finished level.",
            "Walk on boards only; mend each hole with a piece lapped on all sides."),
        List.of(
            Quantity.of("sheet with laps", Kind.AREA, quantity.areaWithLaps()),
            Quantity.of("rolls", Kind.COUNT, quantity.rolls()),
            Quantity.of("lap", Kind.THICKNESS, quantity.layer().lap()),
            Quantity.of("turned up at the edge", Kind.THICKNESS, quantity.layer().upstand()),
            Quantity.of("edge to turn up", Kind.LENGTH, floor.footprint().perimeter())),
        "knife, tape for sheets, boards to walk on",
        "two",
        "no hole against the light, laps as wide as stated, up to the finished level all round",
        "damp rises at the hole or the open edge and stains and softens the floor there",
        SHEETS);
  }

  private static FloorStep pack(EarthQuantity quantity, SectorPlan sectors) {
    EarthLayer layer = quantity.layer();
    return new FloorStep(
        "Ram the dry pack: " + layer.name(),
        List.of(
            "Spread it loose above its mark, rake it even and ram it from the edge inwards until"
                + " the rammer rings and jumps.",
            "Scratch and mist the face of a lift before the next; lay the next lift the same or the"
                + " next day, and keep it damp under a sheet until then.",
            "Pack sector by sector in the order of laying; cut the edge of a day's work upright.",
            "It is walked on at once; it needs no drying before the coat."),
        List.of(
            Quantity.of("thickness, rammed", Kind.THICKNESS, quantity.meanThickness()),
            new Quantity("thickness as spread", Kind.THICKNESS, looseThickness(quantity)),
            Quantity.of("lifts", Kind.COUNT, layer.lifts()),
            Quantity.of("passes of a hand rammer over each lift", Kind.COUNT, PASSES),
            Quantity.of("sectors", Kind.COUNT, sectors.sectors().size())),
        "barrow, rake, hand rammer of about a lifting weight, straight-edge, watering can with"
            + " rose, boots with steel toes, gloves, ear muffs",
        "three: one spreads, one rams, one checks the level; change the rammer often",
        "a nail pushed by hand hardly enters; level under a straight-edge; no print of a heel",
        "loose places settle under feet and the coat breaks into plates",
        EarthLayer.LIFT_SOURCE);
  }

  private static Range looseThickness(EarthQuantity quantity) {
    return quantity.looseVolume().times(1 / quantity.area());
  }

  private static FloorStep moisten(EarthQuantity quantity) {
    return new FloorStep(
        "Moisten the base for " + quantity.layer().name(),
        List.of(
            "Sweep off what is loose, scratch smooth places, and mist the base until it is dark but"
                + " does not shine; let it draw for some minutes.",
            "Brush on a thin slip of the coat's own mix just before the coat."),
        List.of(Quantity.of("base to moisten", Kind.AREA, quantity.area())),
        "broom, scratcher, sprayer or can with a fine rose, wide brush",
        "one, a sector ahead of those who lay",
        "dark all over, no puddles, a thumb comes away damp and clean",
        "a dry base sucks the coat dry before it is smooth, it curls and comes loose",
        COATS);
  }

  private static FloorStep coat(EarthQuantity quantity, SectorPlan sectors) {
    double longest = sectors.sectors().stream().mapToDouble(Sector::screedLength).max().orElse(0);
    return new FloorStep(
        "Lay the coat: " + quantity.layer().name(),
        List.of(
            "Set screed rails of the coat's thickness from the centre to the edge on both sides of"
                + " a sector; the top of the rails is the level.",
            "Fill between them, draw it level with a straight-edge in a sawing motion, lift the"
                + " rails and fill their tracks at once.",
            "Float it with wood as soon as it stands; trowel it with steel when a thumb leaves only"
                + " a shallow print, first flat, later with the blade raised, with a few drops of"
                + " water.",
            "Cut the open edge of a sector upright, cover it with a damp cloth, mist it and brush"
                + " on slip before the next sector is laid against it."),
        List.of(
            Quantity.of("thickness", Kind.THICKNESS, quantity.meanThickness()),
            Quantity.of("sectors, in the order of laying", Kind.COUNT, sectors.sectors().size()),
            Quantity.of("longest rail, centre to edge", Kind.LENGTH, longest)),
        "two rails, straight-edge, wood float, steel trowel, bucket, brush, damp cloths, kneeling"
            + " boards",
        "four: two mix, one wheels, one lays and trowels",
        "level under a straight-edge in two directions, no print of a float, joints not to be felt",
        "hollows hold water, weak joints open, and a coat trowelled too early dusts or blisters",
        COATS);
  }

  private static FloorStep cure(EarthQuantity quantity) {
    return new FloorStep(
        "Let it dry evenly: " + quantity.layer().name(),
        List.of(
            "The first days no sun on it and no draught: shade it and open low and high on all"
                + " sides a little.",
            "When it is firm, press it once more with a steel trowel and close the first hair"
                + " cracks.",
            "From then on change the air as often as the drying chapter asks for; keep people and"
                + " animals off until it is walkable, then on boards.",
            "Fill cracks with slip when they no longer grow."),
        List.of(Quantity.of("surface to watch", Kind.AREA, quantity.area())),
        "shade cloth, steel trowel, hygrometer, boards",
        "one, morning and evening",
        "even colour; a clear sheet taped down over night stays dry below; a hygrometer sealed"
            + " under a box for two or three days shows 75 % or less",
        "one side dries first, shrinks and cracks; oil over damp earth stays sticky and goes"
            + " mouldy",
        DRYNESS);
  }

  private static FloorStep finish(FinishQuantity quantity) {
    boolean wax = quantity.litresPerCoat().size() == 1;
    List<Quantity> quantities = new ArrayList<>();
    for (int i = 0; i < quantity.litresPerCoat().size(); i++) {
      quantities.add(
          new Quantity(
              wax ? "in all" : "coat " + (i + 1),
              Kind.LIQUID,
              quantity.litresPerCoat().get(i).times(0.001)));
    }
    return new FloorStep(
        (wax ? "Wax it: " : "Oil it: ") + quantity.layer().name(),
        List.of(
            wax
                ? "Rub it in thin and warm by hand, let it harden, polish it."
                : "Brush or roll on as much as it drinks, warm, each coat before the one below has"
                    + " hardened; wipe off what stands after ten minutes. Stop when it pools for"
                    + " half an hour.",
            "Lay oily rags flat in the open to dry or drown them in a closed metal can: in a heap"
                + " they heat themselves and burn within hours.",
            "Open doors and vents, no flame and no smoking while it smells; gloves, and a mask for"
                + " vapours where spirit is in it."),
        quantities,
        "brushes or rollers, rags, metal can with lid and water, gloves, extinguisher",
        "two: one spreads, one wipes, backwards to the door",
        "dry to the touch, no shine of standing oil, a drop of water stays on top",
        "the floor dusts, drinks every spill and wears in paths; standing oil stays sticky",
        OIL);
  }

  private static FloorStep upkeep(boolean finished) {
    return new FloorStep(
        "Keep it",
        List.of(
            "Sweep it; wipe it damp, never flood it. Felt under chair legs, a mat at the door.",
            finished
                ? "Oil or wax worn paths again when a drop of water soaks in."
                : "Without oil or wax it dusts and must not be wiped: lay mats where people walk.",
            "Mend a hole: cut it square, wet it, fill it with the kept mix in two goes, and treat"
                + " it like the rest. Keep a bucket of the dry mix for it."),
        List.of(),
        "broom, cloth, kept mix, trowel, oil or wax",
        "one",
        "once a year: look for damp edges, cracks that grow, hollow places under a knock",
        "small damage grows as feet and water work in it",
        UPKEEP);
  }
}
