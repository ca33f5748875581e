/**
 * The front of the book: what a crew carries. One sheet to start from, a sheet for each day of
 * work, cards for pieces, sheets of cloth, seams, ropes, mixers and soils, and one page of safety.
 *
 * <p>It reads the parts of a plan and computes nothing of its own: a number that stands here stands
 * in a part. The only class to open is {@link io.github.seamstead.api.book.front.Front}.
 */
@NullMarked
package io.github.seamstead.api.book.front;

import org.jspecify.annotations.NullMarked;
