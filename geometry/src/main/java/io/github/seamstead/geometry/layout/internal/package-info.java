/**
 * The search that lays pieces close together: numbers and outlines in, places out. {@link
 * io.github.seamstead.geometry.layout.internal.StripRun} is where it begins.
 *
 * <p><b>Overlap.</b> Two pieces overlap exactly where the move from one to the other lies in their
 * <i>no-fit region</i>, the union of the Minkowski sums of their convex parts ({@code NoFit}). How
 * deep is the length of the shortest move out of it. A place of a piece is judged by the sum of its
 * depths, each times the weight of the pair. Places are judged by the million, so that the depths
 * of pairs in use are held in a grid of one word a cell: exact in cells on the boundary, where
 * touching must be told from overlapping, and a plane over the cell inside ({@code DepthTable});
 * what a piece can meet near a place is gathered once for all places there ({@code Vicinity}).
 * Overlap minimisation over no-fit polygons: Egeblad, Nielsen and Odgaard 2007; Imamichi, Yagiura
 * and Nagamochi 2009; Umetani and others 2009.
 *
 * <p><b>Sliding to crossings of faces</b> ({@code Mover}, {@code Faces}). Between the faces of the
 * no-fit regions that sum is nearly linear, and a linear function has its least at a corner: so a
 * piece is let go at the best of some places drawn, and moved on to where two of the faces cross
 * through which it can leave what it overlaps, or one of them and a side of the stock. That finds
 * exact fits, in pockets too, at the cost of a few evaluations.
 *
 * <p><b>Parting</b> ({@code Separator}, {@code Pairs}). The pieces that overlap are moved one after
 * another, in random order; after each pass the weights of pairs that still overlap grow in
 * proportion to their depth. This is guided local search (Voudouris and Tsang 1999): what resists
 * becomes dear, so that the search leaves any local least. At first a pair weighs what the sizes of
 * its pieces make it, since large ones that overlap have the fewest other places to go. A parting
 * ends when no overlap is left, or when it has had no record in the second half of its life.
 *
 * <p><b>Pressing</b> ({@code Press}, {@code InteriorPoint}). However a parting has ended, a linear
 * program moves all pieces at once to where the layout is shortest, each pair keeping the sides of
 * the no-fit region's parts on which it lies; the sides are then chosen anew, until nothing is
 * gained. The result is an exact local least for joint moves. Small overlaps are parted on the way,
 * even if the layout is then a little longer than the best: pressed on from there it may yet become
 * the shorter. Compaction and separation by linear programming: Li and Milenkovic 1995; Bennell and
 * Dowsland 2001; Gomes and Oliveira 2006. The program is solved by an interior point method
 * (Mehrotra 1992), whose matrix is narrow because pieces in order along the strip meet near ones
 * alone.
 *
 * <p><b>How far to shorten</b> ({@code Stride}). After a new best layout the strip is shortened by
 * a part of its length, one step up a ladder after each success and one down after each failure:
 * the up-and-down method (Dixon and Mood 1948), which keeps to where about half of the tries
 * succeed whatever the pieces, and needs no phases.
 *
 * <p><b>What to try when the least step fails</b> ({@code Reserve}, {@code Shake}). States in which
 * partings have ended at this length are kept. One is drawn by tournament and shaken: two pieces of
 * about one size exchange places, two slices of the strip do, or a slice is turned about its middle
 * with all that lies in it. Slices move clusters of pieces that fit one another as a whole, which
 * no sequence of single moves does (clusters of pieces: Elkeran 2013).
 *
 * <p><b>Two workers, and beginning anew</b> ({@code StripCrew}). Two workers search a strip, each
 * with its own random numbers, and exchange their best layouts at fixed counts of work, so that the
 * result depends on the seed and the work alone. Where nothing was gained for as long again as the
 * best took to find, one of them begins anew by itself and the other goes on: what a run comes to
 * differs more from one set of random numbers to the next than it still gains (restarts: Luby,
 * Sinclair and Zuckerman 1993).
 *
 * <p>The numbers that no formula gives stand in {@code Tuning}, with how they were chosen. The
 * publications are quoted from memory, but for the sources that the classes name as found.
 */
@NullMarked
package io.github.seamstead.geometry.layout.internal;

import org.jspecify.annotations.NullMarked;
