package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Cap;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Lining;
import io.github.seamstead.api.job.Skirt;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.internal.Strips;
import io.github.seamstead.geometry.pattern.ConeCap;
import io.github.seamstead.geometry.pattern.EdgeAllowance;
import io.github.seamstead.geometry.pattern.EdgePlan;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PanelSpec;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the pieces beside the panels: cap, skirt and lining. They follow the ideal frame. */
final class TrimPlanner {

  private TrimPlanner() {}

  /** The cap and the skirt, cut from the cover's own stock. */
  static List<PatternPiece> pieces(Run run, Cover cover, Optional<FramePart> frame) {
    List<PatternPiece> pieces = new ArrayList<>();
    Optional<FrameMeasures> fabric =
        frame.flatMap(FramePart::fabric).map(f -> f.surface().measures());
    if (cover.cap().isPresent() && known(run, fabric, "cap")) {
      run.attempt("$.cover.cap", () -> cap(run, cover.cap().get(), fabric.orElseThrow()))
          .ifPresent(pieces::add);
    }
    if (cover.skirt().isPresent() && known(run, fabric, "skirt")) {
      run.attempt("$.cover.skirt", () -> skirt(cover, cover.skirt().get(), fabric.orElseThrow()))
          .ifPresent(pieces::add);
    }
    return pieces;
  }

  private static boolean known(Run run, Optional<FrameMeasures> fabric, String what) {
    if (fabric.isEmpty()) {
      run.skip(Chapter.PATTERN, what + ": the document has no measures under frame");
    }
    return fabric.isPresent();
  }

  private static PatternPiece cap(Run run, Cap stated, FrameMeasures fabric) {
    ConeCap cap =
        run.worked(
            "geometry.pattern.cap",
            "The cap over the opening",
            steps ->
                ConeCap.over(
                    fabric.openingCircumradius(), fabric.hipSlope(), stated.overlap(), steps));
    run.cautions(Chapter.PATTERN, cap.cautions());
    run.worked("geometry.pattern.cone", "The sector into which the cap unrolls", cap::sectorAngle);
    // No sector may be more than half a circle.
    int parts = cap.sectorAngle() <= Math.PI ? 1 : 2;
    return cap.piece("cap", parts, stated.lap(), EdgeAllowance.raw(), EdgeAllowance.raw());
  }

  private static PatternPiece skirt(Cover cover, Skirt stated, FrameMeasures fabric) {
    EdgePlan edges =
        EdgePlan.of(
            EdgeAllowance.raw(),
            EdgeAllowance.finSeam(cover.seam().allowance()),
            EdgeAllowance.raw());
    Panel strip =
        Panel.of(
            Strips.groundSkirt(
                fabric.base().side(), stated.drop() + stated.overlap(), Math.PI, Math.PI),
            PanelSpec.of("skirt", edges).as(PieceKind.SKIRT).times(fabric.base().sides()));
    return strip.parts().get(0);
  }

  /** The lining's panels, good side in. */
  static Optional<LiningPart> lining(Run run, Cover cover, Optional<FramePart> frame) {
    Optional<Lining> stated = cover.lining();
    if (stated.isEmpty()) {
      return Optional.empty();
    }
    if (frame.flatMap(FramePart::lining).isEmpty()) {
      run.skip(Chapter.PATTERN, "lining: the document has no measures under frame");
      return Optional.empty();
    }
    return run.attempt(
        "$.cover.lining",
        () -> {
          var surface = frame.flatMap(FramePart::lining).orElseThrow().surface();
          EdgePlan edges =
              EdgePlan.of(
                  EdgeAllowance.raw(),
                  EdgeAllowance.finSeam(stated.get().allowance()),
                  EdgeAllowance.raw());
          Panel panel =
              Panel.of(Strips.seenFromInside(surface.faceOutline()), PanelSpec.of("lining", edges));
          double area = panel.clothArea() * surface.sides();
          return new LiningPart(
              panel, surface.sides(), area, area * stated.get().fabric().massPerArea());
        });
  }
}
