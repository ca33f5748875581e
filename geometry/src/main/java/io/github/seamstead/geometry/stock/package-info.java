/**
 * Sheets and rolls as they really are: size, shape, flaws, a reinforced edge worth keeping, cost
 * and the order in which the builder would rather use them.
 *
 * <p>{@link io.github.seamstead.geometry.stock.StockItem} is what the cutting layout asks for;
 * {@link io.github.seamstead.geometry.stock.Sheet} and {@link
 * io.github.seamstead.geometry.stock.Roll} are its two kinds. All coordinates are in the item's own
 * plane with the good side up, in metres; the weave or print runs along x.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.stock.Roll}.
 */
@NullMarked
package io.github.seamstead.geometry.stock;

import org.jspecify.annotations.NullMarked;
