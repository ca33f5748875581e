/**
 * Cutting stock of one dimension: the pieces of a frame cut from bars on hand or bought, with the
 * kerf of the saw.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.bars.BarCutting}. Its plan names what
 * each bar is cut into and says whether it is proven best or how far from a lower bound.
 */
@NullMarked
package io.github.seamstead.geometry.bars;

import org.jspecify.annotations.NullMarked;
