/**
 * The air at the floor, of which laying and drying both speak. Not for callers.
 *
 * <p>First class to open: {@link io.github.seamstead.api.chapter.air.FloorAir}.
 */
@NullMarked
package io.github.seamstead.api.chapter.air;

import org.jspecify.annotations.NullMarked;
