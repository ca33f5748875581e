/**
 * The data of a full-size drawing of a piece, and the sheets of paper that it takes. Exported to
 * our own modules alone: a book holds what is drawn from it.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.drawing.PieceDrawing}.
 */
@NullMarked
package io.github.seamstead.geometry.drawing;

import org.jspecify.annotations.NullMarked;
