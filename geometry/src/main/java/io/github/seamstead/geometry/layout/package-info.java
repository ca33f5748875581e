/**
 * Lays pieces on stock with the least waste.
 *
 * <p>{@link io.github.seamstead.geometry.layout.CuttingLayout} is the front door: pieces and stock
 * in, placements, remnants, what could not be placed and a certified bound out. {@link
 * io.github.seamstead.geometry.layout.PanelRows} answers the everyday case, one triangle or
 * trapezoid many times, in closed form. {@link io.github.seamstead.geometry.layout.StripLayout} is
 * the search on one strip of free length that the front door uses too; {@link
 * io.github.seamstead.geometry.layout.LayoutCheck} holds any layout to its request.
 */
@NullMarked
package io.github.seamstead.geometry.layout;

import org.jspecify.annotations.NullMarked;
