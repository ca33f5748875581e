/**
 * The floor: layers, loads and orders. First class: {@link
 * io.github.seamstead.api.chapter.floor.FloorPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.floor;

import org.jspecify.annotations.NullMarked;
