/**
 * The pieces of a cover round a ring or along a line, the map that a crew joins by, and the log of
 * what it joined.
 *
 * <pre>
 *   Piece, joint lengths -&gt; PieceRing -&gt; JointMap      how it lies and how it stands
 *                                     -&gt; JoinLog       what was joined -&gt; faults, seams to undo
 * </pre>
 *
 * <p>Pieces and joints are numbered from 1. Left and right are those of somebody who looks at the
 * good side with the hem down: joint i lies between the right edge of piece i and the left edge of
 * piece i + 1, and in a ring joint n closes piece n to piece 1. First class to open: {@link
 * io.github.seamstead.assembly.ring.PieceRing}.
 */
@NullMarked
package io.github.seamstead.assembly.ring;

import org.jspecify.annotations.NullMarked;
