package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.plane.Outline;

/**
 * A hole in a piece.
 *
 * @param name the opening's name
 * @param finished the edge of the opening when its turn-in is folded back, in metres
 * @param cut where the cloth is cut, inside {@code finished} by the turn-in; corner {@code i} of
 *     one belongs to corner {@code i} of the other, and a slit joins them so that the turn-in folds
 */
public record PieceHole(String name, Outline finished, Outline cut) {}
