package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Crew;
import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.job.Joining;
import io.github.seamstead.api.job.PoleSection;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.assembly.fixings.RopeStrength;
import io.github.seamstead.assembly.fixings.Runs;
import io.github.seamstead.assembly.handling.Bundle;
import io.github.seamstead.assembly.handling.CoverEnds;
import io.github.seamstead.assembly.handling.DropZone;
import io.github.seamstead.assembly.handling.LiftLimit;
import io.github.seamstead.assembly.handling.LiftTask;
import io.github.seamstead.assembly.handling.LiftTeam;
import io.github.seamstead.assembly.handling.Packing;
import io.github.seamstead.assembly.handling.RaisingWind;
import io.github.seamstead.assembly.handling.RopePull;
import io.github.seamstead.assembly.handling.Tackle;
import io.github.seamstead.assembly.handling.Turning;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Turns, lifts and raises the whole cover. */
final class HandlingPlanner {

  private HandlingPlanner() {}

  static Optional<HandlingPart> plan(Run run, FramePart frame, CoverPart cover) {
    Optional<Crew> crew = run.document().site().flatMap(Site::crew);
    if (crew.isEmpty()) {
      run.skip(Chapter.HANDLING, "the document states no crew under site");
      return Optional.empty();
    }
    return run.attempt("$.cover", () -> part(run, frame, cover, crew.get()));
  }

  private static HandlingPart part(Run run, FramePart frame, CoverPart cover, Crew crew) {
    Cover stated = run.document().cover().orElseThrow();
    FrameMeasures m = frame.measures();
    double thickness = stated.fabric().thickness();
    Bundle bundle = new Bundle(cover.clothArea(), stated.fabric().massPerArea(), thickness, 0);
    run.worked("assembly.handling.mass", "Mass of the cover", bundle::mass);
    run.worked(
        "assembly.handling.roll",
        "The cover as a roll",
        steps ->
            bundle.rollDiameter(Packing.ROLL_LENGTH, Packing.ROLLED.clothRatio().likely(), steps));
    int n = frame.pyramid().sides();
    Optional<Double> top =
        frame.pyramid().isTruncated() ? Optional.of(n * m.openingSide()) : Optional.empty();
    Turning turning =
        Turning.of(
            new CoverEnds(m.perimeter(), top, stated.door().map(HandlingPlanner::loop)),
            thickness,
            0,
            Packing.BUNCHED);
    run.worked(
        "assembly.handling.turn",
        "The girth of the hem, gathered",
        steps -> turning.bundle(Packing.BUNCHED.clothRatio().likely(), steps));
    run.worked("assembly.handling.turnloop", "Least opening to turn through", turning::leastLoop);
    LiftLimit limit = LiftLimit.of(LiftTask.ofBundle());
    run.worked("assembly.handling.lift", "What one person may lift", limit::mass);
    double own = stated.joining().map(Joining::liftLimit).orElse(limit.mass());
    LiftTeam lift = LiftTeam.of(bundle.mass(), limit, own);
    DropZone zone = DropZone.of(m.frameHeight(), m.circumradius());
    RopePull pull = pull(run, m, zone, bundle.mass());
    double hold = pull.hold(Math.min(RopePull.METAL_BAR_LEAST, pull.friction()));
    run.worked("assembly.handling.dropzone", "Length of each rope", zone::ropeLength);
    RaisingWind wind = RaisingWind.of(cover.clothArea(), crew.people());
    run.worked("assembly.handling.wind", "Gust that the crew can hold", wind::limitGust);
    run.cautions(Chapter.HANDLING, lift.cautions());
    run.cautions(Chapter.HANDLING, pull.cautions());
    run.caution(Chapter.HANDLING, zone.caution());
    run.cautions(Chapter.HANDLING, wind.cautions());
    Optional<Tackle> tackle = tackle(run, pull, crew);
    return new HandlingPart(
        bundle, turning, lift, pull, hold, tackle, rope(run, pull, zone), zone, wind);
  }

  /** The rope of the document against the pull of raising. */
  private static Optional<RopePart> rope(Run run, RopePull pull, DropZone zone) {
    return run.document()
        .site()
        .flatMap(Site::rope)
        .map(
            rope -> {
              RopeStrength strength =
                  RopeStrength.of(rope.fibre(), rope.diameter(), true, rope.factor());
              run.worked("assembly.fixings.rope", "What the rope may carry", strength::workingLoad);
              run.caution(Chapter.HANDLING, strength.caution());
              Optional<Runs> coils =
                  rope.coil()
                      .flatMap(
                          coil -> run.attempt("$.site.rope.coil", () -> coils(pull, zone, coil)));
              RopePart part = new RopePart(strength, pull.ropePull(), coils);
              if (!part.holds()) {
                run.unmet(
                    Chapter.HANDLING,
                    "each rope is pulled with "
                        + Numbers.fixed(part.load(), 0)
                        + " N and may carry "
                        + Numbers.fixed(strength.workingLoad(), 0)
                        + " N with a knot in it, by the rule that "
                        + strength.rule()
                        + ": take a thicker one, or one with a maker's figure that suffices");
              }
              return part;
            });
  }

  /** Ropes are whole; their tails for hands and knots are in their length. */
  private static Runs coils(RopePull pull, DropZone zone, double coil) {
    List<Double> ropes = Collections.nCopies(pull.ropes(), zone.ropeLength());
    return Runs.of("rope", ropes, 0, 0, coil, true);
  }

  /** The tackle on each rope with which the crew can raise the cover, if it cannot without. */
  private static Optional<Tackle> tackle(Run run, RopePull pull, Crew crew) {
    if (crew.people() >= pull.people()) {
      return Optional.empty();
    }
    int hands = Math.max(1, crew.people() / pull.ropes());
    Optional<Tackle> tackle = Tackle.least(pull.ropePull(), hands, pull.pullPerPerson());
    if (tackle.isEmpty()) {
      run.unmet(
          Chapter.HANDLING,
          "the ropes need "
              + pull.people()
              + " people and the crew has "
              + crew.people()
              + ": no tackle of up to "
              + Tackle.MOST_PARTS
              + " parts is enough; raise the cover in parts");
    }
    tackle.ifPresent(
        t ->
            run.worked(
                "assembly.handling.tackle",
                "Pull on the tackle",
                steps -> t.pull(pull.ropePull(), steps)));
    return tackle;
  }

  private static RopePull pull(Run run, FrameMeasures m, DropZone zone, double mass) {
    boolean metal =
        run.document()
            .frame()
            .flatMap(f -> f.poles())
            .filter(p -> p.section() == PoleSection.ROUND)
            .isPresent();
    double friction = metal ? RopePull.METAL_BAR : RopePull.TIMBER_EDGE;
    run.assume(
        "(raising)",
        "2 ropes over "
            + (metal ? "round metal poles" : "timber edges")
            + ", friction of the rope "
            + Numbers.fixed(friction, 2)
            + ", cloth on poles 0.5; held as on the smoothest bar, 0.14",
        "measured friction of rope on metal, 0.14 to 0.25, the greatest, and on a timber edge,"
            + " 0.37; cloth: common practice");
    double load = RopePull.drawnUp(mass, m.hipSlope(), RopePull.CLOTH_ON_POLES);
    double wrap = RopePull.wrap(m.hipSlope(), zone.haul());
    RopePull pull = new RopePull(load, friction, wrap, RopePull.USUAL_ROPES, RopePull.ONE_PERSON);
    run.worked("assembly.handling.pull", "People on the ropes", pull::people);
    run.worked("assembly.handling.apex", "What the top of the frame carries", pull::apexPull);
    return pull;
  }

  /** The loop of the door when it is drawn round. */
  private static double loop(FaceOpening door) {
    return new Outline(door.outline().stream().map(p -> Vector2D.of(p.x(), p.y())).toList())
        .perimeter();
  }
}
