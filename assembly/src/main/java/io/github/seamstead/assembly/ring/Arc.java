package io.github.seamstead.assembly.ring;

import io.github.seamstead.shared.check.Args;

/**
 * A run of neighbouring pieces, going on past the last piece to the first where the ring closes.
 *
 * @param first the number of its first piece, from 1; 1 or more
 * @param count how many pieces, 1 or more
 */
public record Arc(int first, int count) {

  public Arc {
    Args.within("first piece", first, 1, Integer.MAX_VALUE);
    Args.within("count of pieces", count, 1, Integer.MAX_VALUE);
  }

  /**
   * Gives the number of the last piece.
   *
   * @param pieces how many pieces the whole has
   * @return the number, from 1
   */
  public int last(int pieces) {
    return (first + count - 2) % pieces + 1;
  }

  /**
   * Tells whether a piece belongs to the run.
   *
   * @param piece the piece's number, from 1
   * @param pieces how many pieces the whole has
   * @return true if it does
   */
  public boolean contains(int piece, int pieces) {
    return Math.floorMod(piece - first, pieces) < count;
  }

  /**
   * Writes the run by its first and last number.
   *
   * @param pieces how many pieces the whole has
   * @return such as {@code 3} or {@code 11-2}
   */
  public String text(int pieces) {
    return count == 1 ? Integer.toString(first) : first + "-" + last(pieces);
  }
}
