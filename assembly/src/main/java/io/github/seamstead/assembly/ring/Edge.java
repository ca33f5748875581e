package io.github.seamstead.assembly.ring;

/**
 * One side edge of one piece.
 *
 * @param piece the piece's number, from 1
 * @param side which of its side edges
 * @param label what is written there, such as {@code 3R}
 */
public record Edge(int piece, Side side, String label) {}
