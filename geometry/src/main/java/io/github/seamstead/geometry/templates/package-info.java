/**
 * The faces of a frame as it was measured, the fewest templates that fit them, and what hem and
 * seams must take up where a template serves more than one face.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.templates.AsBuilt}, made from an
 * adjusted survey; {@link io.github.seamstead.geometry.templates.Templates} groups its faces.
 */
@NullMarked
package io.github.seamstead.geometry.templates;

import org.jspecify.annotations.NullMarked;
