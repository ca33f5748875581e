/**
 * The usual doubts of wind and cloth, for our own modules; not for callers, and without any
 * promise.
 */
@NullMarked
package io.github.seamstead.assembly.internal;

import org.jspecify.annotations.NullMarked;
