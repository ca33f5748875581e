/**
 * The form in which our own modules state what is usually not known; not for callers, and without
 * any promise.
 */
@NullMarked
package io.github.seamstead.shared.sensitivity.internal;

import org.jspecify.annotations.NullMarked;
