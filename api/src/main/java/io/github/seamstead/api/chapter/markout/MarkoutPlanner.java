package io.github.seamstead.api.chapter.markout;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.geometry.markout.BaselineRow;
import io.github.seamstead.geometry.markout.MarkOut;
import io.github.seamstead.geometry.markout.TapeDivision;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceKind;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Draws up the marking-out tables of the panels. */
final class MarkoutPlanner {

  private MarkoutPlanner() {}

  static List<MarkoutPart> plan(Run run, CoverPart cover) {
    boolean imperial = run.document().units() == UnitSystem.IMPERIAL;
    TapeDivision division = imperial ? TapeDivision.SIXTEENTH_INCH : TapeDivision.MILLIMETRE;
    List<MarkoutPart> parts = new ArrayList<>();
    for (CutShape shape : cover.cuts()) {
      PatternPiece piece = shape.pattern();
      if (piece.kind() != PieceKind.PANEL && piece.kind() != PieceKind.PANEL_PART) {
        continue;
      }
      int base = Math.max(0, piece.cutEdgeOwners().indexOf(0));
      run.attempt("$.cover", () -> MarkOut.of(piece.cut(), base, division, MarkOut.HAND_TOLERANCE))
          .ifPresent(tables -> parts.add(new MarkoutPart(shape, tables)));
    }
    if (!parts.isEmpty()) {
      run.assume(
          "(marking out)",
          division.write(MarkOut.HAND_TOLERANCE),
          "how far a marked corner may lie off; common practice for coated fabric");
      work(run, parts.get(0).tables());
    }
    return parts;
  }

  /** The corner that is farthest off the baseline shows best what rounding to the tape does. */
  private static void work(Run run, MarkOut tables) {
    int corner = 0;
    for (BaselineRow row : tables.baseline()) {
      if (row.offset() > tables.baseline().get(corner).offset()) {
        corner = row.corner();
      }
    }
    int farthest = corner;
    run.worked(
        "geometry.markout.offset",
        "Where a corner lies from the base line",
        (Steps steps) -> tables.workOffset(farthest, steps));
    run.worked(
        "geometry.markout.baseline",
        "Marking a corner by station and offset",
        (Steps steps) -> tables.workBaseline(farthest, steps));
    run.worked(
        "geometry.markout.twotapes",
        "Marking a corner with two tapes",
        (Steps steps) -> tables.workTwoTapes(farthest, steps));
  }
}
