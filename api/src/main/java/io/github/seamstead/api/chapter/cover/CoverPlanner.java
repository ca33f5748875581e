package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.survey.SurveyPart;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Draws a panel for each face and gathers the shapes to cut. */
final class CoverPlanner {

  private CoverPlanner() {}

  static Optional<CoverPart> plan(Run run) {
    Optional<Cover> stated = run.document().cover();
    if (stated.isEmpty()) {
      run.skip(Chapter.PATTERN, "the document has no cover");
      return Optional.empty();
    }
    Cover cover = stated.get();
    Optional<FramePart> frame = run.part(FramePart.class);
    List<Outline> faces = faces(run, frame);
    if (faces.isEmpty()) {
      return Optional.empty();
    }
    if (run.document()
        .stock()
        .filter(
            stock ->
                isTooSmall(run, stock, cover) || PartEstimate.isTooMany(run, stock, cover, faces))
        .isPresent()) {
      return Optional.empty();
    }
    if (!openingsAreSimple(run, cover)) {
      return Optional.empty();
    }
    KeptPieces kept = new KeptPieces(run);
    List<PatternPiece> trims = kept.trims(TrimPlanner.pieces(run, cover, frame));
    PanelDrawer drawer = new PanelDrawer(cover, faces, run.options().cancellation());
    Optional<List<Panel>> all = kept.all(faces);
    ClothChoice.Chosen chosen =
        all.isPresent()
            ? new ClothChoice.Chosen(all.get(), Optional.empty())
            : chosen(run, cover, drawer, trims, kept);
    List<Panel> drawn = chosen.panels();
    if (drawn.stream().mapToInt(Panel::faces).sum() < faces.size()) {
      return Optional.empty();
    }
    List<Panel> panels = kept.settle(drawn, faces);
    drawer.work(run);
    double area =
        panels.stream().mapToDouble(Panel::clothArea).sum()
            + trims.stream().mapToDouble(t -> t.clothArea() * t.count()).sum();
    return Optional.of(
        new CoverPart(
            faces,
            panels,
            trims,
            CutShape.of(panels, trims),
            area,
            area * cover.fabric().massPerArea(),
            TrimPlanner.lining(run, cover, frame),
            chosen.layout(),
            kept.misfits(panels, faces)));
  }

  /** The panels by the choice of cloth, or as those that are cut part the faces. */
  private static ClothChoice.Chosen chosen(
      Run run, Cover cover, PanelDrawer drawer, List<PatternPiece> trims, KeptPieces kept) {
    ClothChoice.Chosen free = ClothChoice.panels(run, cover, drawer, trims, kept.spans());
    return free.panels().isEmpty() || kept.isAgreed(free.panels())
        ? free
        : ClothChoice.panels(
            run, cover, drawer, trims, Optional.of(kept.spansOfCut(drawer.faces())));
  }

  /** The faces that panels are drawn for: as surveyed, else as the fabric lies on the ideal. */
  private static List<Outline> faces(Run run, Optional<FramePart> frame) {
    int sides = run.document().frame().orElseThrow().sides();
    Optional<SurveyPart> survey = run.part(SurveyPart.class);
    if (survey.isPresent()) {
      return survey.get().faces(sides);
    }
    return frame
        .flatMap(FramePart::fabric)
        .map(fabric -> Collections.nCopies(sides, fabric.surface().faceOutline()))
        .orElse(List.of());
  }

  /** Checks that the outlines of door and vents do not cross themselves. */
  private static boolean openingsAreSimple(Run run, Cover cover) {
    boolean simple =
        cover
            .door()
            .map(d -> run.require("$.cover.door", () -> PanelDrawer.outline(d)).isPresent())
            .orElse(true);
    for (int i = 0; i < cover.vents().size(); i++) {
      FaceOpening vent = cover.vents().get(i);
      simple &=
          run.require("$.cover.vents[" + i + "]", () -> PanelDrawer.outline(vent)).isPresent();
    }
    return simple;
  }

  /** Notes a stock of which no piece is larger than the laps that would join it. */
  private static boolean isTooSmall(Run run, Stock stock, Cover cover) {
    double widest =
        Stream.concat(
                    stock.sheets().stream().map(s -> Math.min(s.length(), s.width())),
                    stock.rolls().stream().map(r -> Math.min(r.length(), r.width())))
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0)
            - 2 * stock.edgeMargin();
    if (widest > 2 * cover.spliceLap()) {
      return false;
    }
    run.setback(
        "$.stock",
        "no sheet or roll with more than " + Numbers.significant(widest, 4) + " m between margins",
        "must hold part of a panel: more than twice the splice lap of "
            + Numbers.plain(cover.spliceLap())
            + " m");
    return true;
  }
}
