/**
 * Plane figures that several stages share: an {@link io.github.seamstead.geometry.plane.Outline} is
 * a simple polygon, counter-clockwise, in metres. Points are commons-geometry's {@code Vector2D}.
 */
@NullMarked
package io.github.seamstead.geometry.plane;

import org.jspecify.annotations.NullMarked;
