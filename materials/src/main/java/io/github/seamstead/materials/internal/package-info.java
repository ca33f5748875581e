/**
 * The usual doubts of weather, laying and mixing, for our own modules; not for callers, and without
 * any promise.
 */
@NullMarked
package io.github.seamstead.materials.internal;

import org.jspecify.annotations.NullMarked;
