package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.assembly.anchor.Ballast;
import io.github.seamstead.assembly.anchor.CapDrainage;
import io.github.seamstead.assembly.anchor.Openings;
import io.github.seamstead.assembly.anchor.ShelterForm;
import io.github.seamstead.assembly.anchor.Ventilation;
import io.github.seamstead.assembly.anchor.WindCoefficients;
import io.github.seamstead.assembly.anchor.WindPressure;
import io.github.seamstead.assembly.anchor.WindScreen;
import io.github.seamstead.geometry.frame.FrameMeasures;
import java.util.Optional;

/** Screens the edge and the pegs for wind, and the top for air and water. */
final class AnchoringPlanner {

  private static final double BALLAST_FRICTION = 0.4;

  private AnchoringPlanner() {}

  static Optional<AnchoringPart> plan(
      Run run, FramePart frame, CoverPart cover, Optional<FixingsPart> fixings) {
    Optional<Double> wind = run.document().site().flatMap(Site::designWind);
    if (wind.isEmpty()) {
      run.skip(Chapter.ANCHORING, "the document states no designWind under site");
      return Optional.empty();
    }
    if (fixings.isEmpty()) {
      run.skip(Chapter.ANCHORING, "pegs are not counted without fixings under cover");
      return Optional.empty();
    }
    return run.attempt(
        "$.site.designWind",
        () -> part(run, frame, cover, fixings.get().pegs().pegs(), wind.get()));
  }

  private static AnchoringPart part(
      Run run, FramePart frame, CoverPart cover, int pegs, double gust) {
    FrameMeasures m = frame.measures();
    ShelterForm form =
        new ShelterForm(frame.pyramid().sides(), frame.pyramid().baseSide(), m.frameHeight());
    WindPressure pressure = WindPressure.of(gust);
    run.worked("assembly.anchor.pressure", "Velocity pressure of the wind", pressure::pascals);
    Openings openings =
        frame.pyramid().isTruncated() && run.document().cover().flatMap(c -> c.cap()).isEmpty()
            ? Openings.OPEN_TO_WIND
            : Openings.CLOSED;
    run.assume(
        "(wind)",
        "the cover alone rests on the ground; factor 1.5 on the wind; the gust is the design wind",
        "the cautious reading: frame mass is left out, people may be inside");
    WindScreen screen =
        WindScreen.of(
            form,
            pressure,
            WindCoefficients.forPyramid(form, openings),
            cover.clothMass(),
            pegs,
            WindScreen.FACTOR_OCCUPIED);
    run.worked("assembly.anchor.screen", "Pull on each peg", screen::pegPullNewtons);
    Ballast ballast = Ballast.of(screen, BALLAST_FRICTION);
    run.assume("(ballast)", "friction 0.4 on the ground", "common practice for sacks on earth");
    run.worked("assembly.anchor.ballast", "Ballast instead of pegs", ballast::massKg);
    Ventilation ventilation = Ventilation.of(m.baseArea(), m.openingArea(), 0);
    run.worked("assembly.anchor.vents", "Free area for air", ventilation::neededSquareMetres);
    CapDrainage drainage = CapDrainage.of(frame.pyramid().sides(), m.faceSlope(), 0);
    run.worked("assembly.anchor.hip", "Slope of the cap's hips", drainage::hipSlopeRadians);
    run.cautions(Chapter.ANCHORING, screen.cautions());
    run.caution(Chapter.ANCHORING, ballast.caution());
    run.cautions(Chapter.ANCHORING, ventilation.cautions());
    return new AnchoringPart(screen, ballast, ventilation, drainage);
  }
}
