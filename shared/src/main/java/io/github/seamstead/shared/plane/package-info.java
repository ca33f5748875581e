/**
 * Plane figures that cover and floor share: an {@link io.github.seamstead.shared.plane.Outline} is
 * a simple polygon, counter-clockwise, in metres. Points are commons-geometry's {@code Vector2D}.
 *
 * <p>First class to open: {@link io.github.seamstead.shared.plane.Outline}.
 */
@NullMarked
package io.github.seamstead.shared.plane;

import org.jspecify.annotations.NullMarked;
