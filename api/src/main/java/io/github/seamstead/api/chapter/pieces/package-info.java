/**
 * The names of the copies of a piece, of which cutting, joining and the diary all speak. Not for
 * callers.
 *
 * <p>First class to open: {@link io.github.seamstead.api.chapter.pieces.PieceNames}.
 */
@NullMarked
package io.github.seamstead.api.chapter.pieces;

import org.jspecify.annotations.NullMarked;
