package io.github.seamstead.api.diary.internal;

import io.github.seamstead.api.diary.CutPiece;
import io.github.seamstead.api.diary.Place;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The plan by which the crew of a day works. */
public interface PlanThen {

  /**
   * A piece of the plan.
   *
   * @param drawn as the plan draws it
   * @param face the face whose panel it is part of, if it is
   * @param place where the plan cuts it, if there is stock
   */
  record Piece(PatternPiece drawn, Optional<Integer> face, Optional<Place> place) {
    CutPiece cut(String name, LocalDate date, Optional<Place> where) {
      return new CutPiece(name, date, drawn, face, where.or(() -> place));
    }
  }

  /** The pieces by name, in their order; empty if there is no cover. */
  Map<String, Piece> pieces();

  /** The panels by face. */
  Map<Integer, Panel> panels();

  /** The names of the pieces that one panel is put together from. */
  Set<String> partsOf(int face);

  /** The panels round the frame, if they are joined to a ring. */
  Optional<PieceRing> ring();

  /** How many loads one sector, by its place in the order, takes; empty for other layers. */
  Optional<Double> loads(String layer, int sector);

  /** How many sectors the floor has; 0 without a floor. */
  int sectors();
}
