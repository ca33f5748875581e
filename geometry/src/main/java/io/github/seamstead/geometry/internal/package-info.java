/**
 * What our own modules ask of the frame, the pieces and the cloth beside what is published; not for
 * callers, and without any promise.
 */
@NullMarked
package io.github.seamstead.geometry.internal;

import org.jspecify.annotations.NullMarked;
