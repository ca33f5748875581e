package io.github.seamstead.api.plan;

import io.github.seamstead.geometry.pattern.PatternPiece;
import java.util.List;

/**
 * One shape to cut, as often as there are pieces of it.
 *
 * @param id its name, by which the layout calls it
 * @param pieces the pieces of this shape, each with its own label; the layout's copy k is the k-th
 */
public record CutShape(String id, List<PatternPiece> pieces) {

  /**
   * Copies the list.
   *
   * @param id its name
   * @param pieces at least one
   */
  public CutShape {
    pieces = List.copyOf(pieces);
  }

  /**
   * Gives the piece that stands for all.
   *
   * @return the first piece
   */
  public PatternPiece pattern() {
    return pieces.get(0);
  }
}
