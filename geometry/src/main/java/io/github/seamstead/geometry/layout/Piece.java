package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import java.util.Optional;

/**
 * What is to be cut, seen from its good side.
 *
 * @param id the builder's name for it; not blank
 * @param outline the shape to cut, allowances included, in metres
 * @param count how many, 1 to 100 000
 * @param rotations the turns allowed
 * @param mayMirror true if it may be cut turned over
 * @param hem the edge that belongs on a reinforced edge, if any
 * @param grain the direction that must follow the weave or print, if any
 */
public record Piece(
    String id,
    Outline outline,
    int count,
    Rotations rotations,
    boolean mayMirror,
    Optional<HemEdge> hem,
    Optional<Grain> grain) {

  private static final int MOST_COPIES = 100_000;

  public Piece {
    Args.notBlank("piece id", id);
    Args.within("piece " + id + ": count", count, 1, MOST_COPIES);
    int edges = outline.size();
    hem.ifPresent(h -> Args.within("piece " + id + ": hem edge", h.edge(), 0, edges - 1));
  }

  /**
   * One piece that may be turned by half a turn and not be mirrored, with no hem and no grain.
   *
   * @param id the builder's name for it, not blank
   * @param outline the shape to cut, in metres
   * @return the piece
   * @throws IllegalArgumentException if the id is blank
   */
  public static Piece of(String id, Outline outline) {
    return new Piece(
        id, outline, 1, Rotations.halfTurn(), false, Optional.empty(), Optional.empty());
  }

  /**
   * The same piece, several times.
   *
   * @param number how many, 1 to 100 000
   * @return the new value
   * @throws IllegalArgumentException if the number is out of range
   */
  public Piece withCount(int number) {
    return new Piece(id, outline, number, rotations, mayMirror, hem, grain);
  }

  /**
   * The same piece with other turns.
   *
   * @param turns the turns allowed
   * @return the new value
   */
  public Piece withRotations(Rotations turns) {
    return new Piece(id, outline, count, turns, mayMirror, hem, grain);
  }

  /**
   * The same piece, which may be cut turned over.
   *
   * @return the new value
   */
  public Piece withMirroring() {
    return new Piece(id, outline, count, rotations, true, hem, grain);
  }

  /**
   * The same piece with an edge that belongs on a reinforced edge of the stock.
   *
   * @param edge index of the piece's edge
   * @param required true for must, false for should
   * @return the new value
   * @throws IllegalArgumentException if the index is out of range
   */
  public Piece withHem(int edge, boolean required) {
    return new Piece(
        id, outline, count, rotations, mayMirror, Optional.of(new HemEdge(edge, required)), grain);
  }

  Piece withoutHem() {
    return new Piece(id, outline, count, rotations, mayMirror, Optional.empty(), grain);
  }

  /**
   * The same piece with a direction that follows the weave or print.
   *
   * @param direction the direction
   * @return the new value
   */
  public Piece withGrain(Grain direction) {
    return new Piece(id, outline, count, rotations, mayMirror, hem, Optional.of(direction));
  }
}
