/**
 * Marking a template out on the ground with tapes alone.
 *
 * <p>{@link io.github.seamstead.geometry.markout.MarkOut} gives for any outline a
 * baseline-and-offset table, a two-tape table and the diagonals to check by, all rounded to the
 * division that the builder's tape has, with the corner error that the rounding leaves and whether
 * the template drawn so still fits.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.markout.MarkOut}.
 */
@NullMarked
package io.github.seamstead.geometry.markout;

import org.jspecify.annotations.NullMarked;
