/**
 * Lays pieces on stock with the least waste.
 *
 * <p>{@link io.github.seamstead.geometry.layout.CuttingLayout} is the front door: pieces and stock
 * in, placements, remnants, what could not be placed and a certified bound out. {@link
 * io.github.seamstead.geometry.layout.PanelRows} answers the everyday case, one triangle or
 * trapezoid many times, in closed form. {@link io.github.seamstead.geometry.layout.StripLayout} is
 * the search on one strip of free length that the front door uses too; {@link
 * io.github.seamstead.geometry.layout.LayoutCheck} holds any layout to its request.
 *
 * <h2>The method</h2>
 *
 * <p>One strip of free length is searched in {@code layout.internal}, whose page tells that method:
 * pieces may overlap on the way and are parted by guided local search over exact no-fit regions,
 * then pressed together by linear programming. It works on numbers alone and knows nothing of
 * pieces, rolls or placements; {@code NestSetup} tells it a request in its own terms and reads the
 * layout back.
 *
 * <p><b>Several items</b> ({@code StockTree}, {@code Evacuation}). Which items are cut from is
 * chosen by a tree of fillings. Then the pieces of one item, or of two for a larger one, are strewn
 * over the others and parted there, on all items at once; as long as that succeeds the layout does
 * with less stock.
 *
 * <p><b>Bounds</b> ({@code SizeBounds}, {@code SectionBounds}, {@code GrownArea}, {@code
 * StockBounds}). By area with half of the spacing around each piece (Steiner, Brunn and Minkowski),
 * by single pieces, and by dual feasible functions of the sections across the stock (Fekete and
 * Schepers 2004).
 *
 * <p>The publications are quoted from memory, but for the sources that the classes name as found.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.layout.CuttingLayout}.
 */
@NullMarked
package io.github.seamstead.geometry.layout;

import org.jspecify.annotations.NullMarked;
