package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Pieces to be laid on one strip of fixed width and free length, the length as short as possible.
 *
 * @param width of the strip, along y from 0, in metres; greater than 0
 * @param pieces what is to be cut; hem edges are not considered; at least one, ids unique, at most
 *     {@link LayoutRequest#MOST_COPIES} copies in all
 * @param spacing least distance between two pieces, in metres, 0 or more
 * @param margin least distance to the four edges of the strip, in metres, 0 or more
 */
public record StripProblem(double width, List<Piece> pieces, double spacing, double margin) {

  public StripProblem {
    Args.positive("strip width", width, "m");
    pieces = Args.notEmpty("pieces", pieces);
    Args.notNegative("spacing", spacing, "m");
    Args.notNegative("margin", margin, "m");
    long copies = 0;
    Set<String> ids = new HashSet<>();
    for (Piece piece : pieces) {
      Args.require(ids.add(piece.id()), "piece id: given \"" + piece.id() + "\" twice");
      copies += piece.count();
    }
    Args.require(
        copies <= LayoutRequest.MOST_COPIES,
        "pieces",
        copies + " copies",
        "must be at most " + LayoutRequest.MOST_COPIES);
  }

  /**
   * A strip without spacing or margin.
   *
   * @param width in metres, greater than 0
   * @param pieces at least one
   * @return the problem
   * @throws IllegalArgumentException as the constructor does
   */
  public static StripProblem of(double width, List<Piece> pieces) {
    return new StripProblem(width, pieces, 0, 0);
  }
}
