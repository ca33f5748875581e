package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Crew;
import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.job.Point;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.assembly.handling.Bundle;
import io.github.seamstead.assembly.handling.CoverEnds;
import io.github.seamstead.assembly.handling.DropZone;
import io.github.seamstead.assembly.handling.LiftLimit;
import io.github.seamstead.assembly.handling.LiftTask;
import io.github.seamstead.assembly.handling.LiftTeam;
import io.github.seamstead.assembly.handling.Packing;
import io.github.seamstead.assembly.handling.RaisingWind;
import io.github.seamstead.assembly.handling.RopePull;
import io.github.seamstead.assembly.handling.Turning;
import io.github.seamstead.geometry.frame.FrameMeasures;
import java.util.List;
import java.util.Optional;

/** Turns, lifts and raises the whole cover. */
final class HandlingPlanner {

  private static final double CLOTH_ON_POLES = 0.5;
  private static final int ROPES = 2;

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
    run.worked("assembly.handling.mass", "Mass of the cover", bundle::massKg);
    int n = frame.pyramid().sides();
    Optional<Double> top =
        frame.pyramid().isTruncated() ? Optional.of(n * m.openingSide()) : Optional.empty();
    Turning turning =
        Turning.of(
            new CoverEnds(m.perimeter(), top, stated.door().map(HandlingPlanner::perimeter)),
            thickness,
            0,
            Packing.BUNCHED);
    LiftLimit limit = LiftLimit.of(LiftTask.ofBundle());
    run.worked("assembly.handling.lift", "What one person may lift", limit::kilograms);
    LiftTeam lift = LiftTeam.of(bundle.massKg(), limit);
    RopePull pull = pull(run, m, bundle.massKg());
    DropZone zone = DropZone.of(m.frameHeight(), m.circumradius());
    run.worked("assembly.handling.dropzone", "Length of each rope", zone::ropeMetres);
    RaisingWind wind = RaisingWind.of(cover.clothArea(), crew.people());
    run.worked("assembly.handling.wind", "Gust that the crew can hold", wind::limitGust);
    run.cautions(Chapter.HANDLING, lift.cautions());
    run.cautions(Chapter.HANDLING, pull.cautions());
    run.caution(Chapter.HANDLING, zone.caution());
    run.cautions(Chapter.HANDLING, wind.cautions());
    if (crew.people() < pull.people()) {
      run.unmet(
          Chapter.HANDLING,
          "the ropes need "
              + pull.people()
              + " people and the crew has "
              + crew.people()
              + ": use a tackle, or raise the cover in parts");
    }
    return new HandlingPart(bundle, turning, lift, pull, zone, wind);
  }

  private static RopePull pull(Run run, FrameMeasures m, double mass) {
    run.assume(
        "(raising)",
        "2 ropes over round metal poles, cloth on poles 0.5",
        "measured friction of rope on metal, 0.14 to 0.25, the greatest; cloth: common practice");
    double load = RopePull.drawnUpNewtons(mass, m.hipSlope(), CLOTH_ON_POLES);
    double wrap = RopePull.wrap(m.hipSlope(), m.hipSlope());
    RopePull pull = new RopePull(load, RopePull.METAL_BAR, wrap, ROPES, RopePull.ONE_PERSON);
    run.worked("assembly.handling.pull", "People on the ropes", pull::people);
    return pull;
  }

  private static double perimeter(FaceOpening door) {
    List<Point> points = door.outline();
    double sum = 0;
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % points.size());
      sum += Math.hypot(b.x() - a.x(), b.y() - a.y());
    }
    return sum;
  }
}
