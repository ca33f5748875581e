/**
 * From faces to flat pieces of cloth: allowances and mitres, notches and marks, openings, splices,
 * caps and skirts.
 *
 * <p>A face is an {@link io.github.seamstead.shared.plane.Outline} in its own plane, seen from
 * outside, good side up: corner 0 is the left base corner at the origin, corner 1 the right base
 * corner on the x axis, then the top corners from right to left or the apex. Edge 0 is the base,
 * edge 1 the right hip, the last edge the left hip, and what lies between them is the top.
 *
 * <p>The stitch line of a piece is the face's outline: where it ends when the cover is up. The cut
 * line lies outside it by each edge's allowance. First class to open: {@link
 * io.github.seamstead.geometry.pattern.Panel}.
 */
@NullMarked
package io.github.seamstead.geometry.pattern;

import org.jspecify.annotations.NullMarked;
