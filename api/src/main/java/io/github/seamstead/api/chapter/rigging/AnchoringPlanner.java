package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.BasicWind;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.job.PegPulls;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.job.WindFigures;
import io.github.seamstead.assembly.anchor.Ballast;
import io.github.seamstead.assembly.anchor.CapDrainage;
import io.github.seamstead.assembly.anchor.GuyRope;
import io.github.seamstead.assembly.anchor.HemRope;
import io.github.seamstead.assembly.anchor.Openings;
import io.github.seamstead.assembly.anchor.PeakWind;
import io.github.seamstead.assembly.anchor.PegCheck;
import io.github.seamstead.assembly.anchor.PegTest;
import io.github.seamstead.assembly.anchor.ShelterForm;
import io.github.seamstead.assembly.anchor.Ventilation;
import io.github.seamstead.assembly.anchor.WindCoefficients;
import io.github.seamstead.assembly.anchor.WindPressure;
import io.github.seamstead.assembly.anchor.WindScreen;
import io.github.seamstead.assembly.fixings.HemPegs;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.shared.plane.Outline;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Screens the edge and the pegs for wind, and the top for air and water. */
final class AnchoringPlanner {

  private AnchoringPlanner() {}

  static Optional<AnchoringPart> plan(
      Run run, FramePart frame, CoverPart cover, Optional<FixingsPart> fixings) {
    Optional<Site> site =
        run.document().site().filter(s -> s.designWind().isPresent() || s.basicWind().isPresent());
    if (site.isEmpty()) {
      run.skip(
          Chapter.ANCHORING, "the document states neither designWind nor basicWind under site");
      return Optional.empty();
    }
    if (fixings.isEmpty()) {
      run.skip(Chapter.ANCHORING, "pegs are not counted without fixings under cover");
      return Optional.empty();
    }
    ShelterForm form = form(run, frame);
    Optional<WindFigures> stated = site.get().windFigures();
    Optional<String> outside =
        stated.isPresent() ? Optional.empty() : WindCoefficients.outside(form);
    if (outside.isPresent()) {
      run.skip(
          Chapter.ANCHORING,
          outside.get()
              + "; state windFigures under site, with their source, or ask a licensed engineer");
      return Optional.empty();
    }
    String path = site.get().designWind().isPresent() ? "$.site.designWind" : "$.site.basicWind";
    return run.attempt(path, () -> part(run, frame, form, cover, fixings.get().pegs(), site.get()));
  }

  /** The mean of a code raised to the gust at the top of the cover. */
  private static PeakWind peak(Run run, ShelterForm form, BasicWind basic) {
    PeakWind peak = PeakWind.of(basic.speed(), basic.terrain(), form.height());
    run.worked("assembly.anchor.gust", "The gust behind the mean", peak::gust);
    run.caution(Chapter.ANCHORING, peak.caution());
    return peak;
  }

  /** The cover as it stands: over the poles, cut off where the frame is, with its cap. */
  private static ShelterForm form(Run run, FramePart frame) {
    FrameMeasures m =
        frame.fabric().map(f -> f.surface().measures()).orElseGet(() -> frame.measures());
    return ShelterForm.ofFrame(
        frame.pyramid().sides(),
        m.base().side(),
        m.apexHeight(),
        m.frameHeight(),
        frame.pyramid().isTruncated() && hasCap(run));
  }

  private static boolean hasCap(Run run) {
    return run.document().cover().flatMap(Cover::cap).isPresent();
  }

  private static AnchoringPart part(
      Run run, FramePart frame, ShelterForm form, CoverPart cover, HemPegs hem, Site site) {
    FrameMeasures m = frame.measures();
    Optional<PeakWind> peak = site.basicWind().map(basic -> peak(run, form, basic));
    WindPressure pressure =
        WindPressure.of(site.designWind().orElseGet(() -> peak.orElseThrow().gust()));
    run.worked("assembly.anchor.pressure", "Velocity pressure of the wind", pressure::pressure);
    run.assume(
        "(wind)",
        "the cover alone rests on the ground; factor 1.5 on the wind; the gust is the design wind",
        "the cautious reading: frame mass is left out, people may be inside");
    WindScreen screen =
        WindScreen.of(
            form,
            pressure,
            coefficients(run, form),
            cover.clothMass(),
            hem.pegs(),
            WindScreen.FACTOR_OCCUPIED);
    run.worked("assembly.anchor.screen", "Pull on each peg", screen::pegPull);
    Ballast ballast = Ballast.of(screen, Ballast.USUAL_FRICTION);
    run.assume("(ballast)", "friction 0.4 on the ground", "common practice for sacks on earth");
    run.worked("assembly.anchor.ballast", "Ballast instead of pegs", ballast::mass);
    Ventilation ventilation =
        Ventilation.ofCover(
            m.baseArea(), m.openingArea(), hasCap(run), vents(run, m), m.frameHeight());
    run.worked("assembly.anchor.vents", "Free area for air", ventilation::neededArea);
    CapDrainage drainage = CapDrainage.of(frame.pyramid().sides(), m.faceSlope(), 0);
    run.worked("assembly.anchor.hip", "Slope of the cap's hips", drainage::hipSlope);
    HemRope hemRope = HemRope.ofHem(screen, hem.spacing());
    run.worked("assembly.anchor.hemrope", "Rope along the hem", hemRope::tension);
    GuyRope guy = GuyRope.ofCorners(screen);
    run.worked("assembly.anchor.guy", "Guy rope from a corner", guy::tension);
    run.cautions(Chapter.ANCHORING, screen.cautions());
    run.caution(Chapter.ANCHORING, ballast.caution());
    run.cautions(Chapter.ANCHORING, ventilation.cautions());
    run.caution(Chapter.ANCHORING, guy.caution());
    return new AnchoringPart(
        peak, screen, ballast, ventilation, pegs(run, screen), hemRope, guy, drainage);
  }

  private static WindCoefficients coefficients(Run run, ShelterForm form) {
    Openings openings = form.openAtTheTop() ? Openings.OPEN_TO_WIND : Openings.CLOSED;
    return run.document()
        .site()
        .flatMap(Site::windFigures)
        .map(own -> WindCoefficients.stated(own.drag(), own.uplift(), own.source()))
        .orElseGet(() -> WindCoefficients.forPyramid(form, openings));
  }

  private static Optional<PegCheck> pegs(Run run, WindScreen screen) {
    Optional<PegPulls> pulls = run.document().site().flatMap(Site::pegs);
    if (pulls.isEmpty()) {
      run.caution(Chapter.ANCHORING, PegTest.CAUTION);
      return Optional.empty();
    }
    Optional<PegCheck> check =
        run.attempt(
            "$.site.pegs",
            () ->
                PegCheck.of(
                    screen,
                    PegTest.of(pulls.get().pulls(), pulls.get().factor(), pulls.get().ground())));
    check.ifPresent(
        c -> {
          run.worked("assembly.anchor.peg", "What a tested peg may hold", c.test()::holding);
          run.worked("assembly.anchor.pegs", "Pegs against their test", c::pegsNeeded);
          run.cautions(Chapter.ANCHORING, c.cautions());
          if (c.usedRatio() > 1) {
            run.unmet(Chapter.ANCHORING, c.text());
          }
        });
    return check;
  }

  private static List<Ventilation.Vent> vents(Run run, FrameMeasures m) {
    return run.document().cover().map(Cover::vents).orElse(List.of()).stream()
        .map(vent -> vent(vent, m.faceSlope()))
        .toList();
  }

  /** The vent's area, and how high its middle stands on the sloping face. */
  private static Ventilation.Vent vent(FaceOpening vent, double faceSlope) {
    Outline outline =
        new Outline(vent.outline().stream().map(p -> Vector2D.of(p.x(), p.y())).toList());
    double up = Math.max(0, outline.centroid().getY());
    return new Ventilation.Vent(outline.area(), up * StrictMath.sin(faceSlope));
  }
}
