/**
 * How our own modules do several things at once on the caller's threads; not for callers, and
 * without any promise.
 */
@NullMarked
package io.github.seamstead.shared.work.internal;

import org.jspecify.annotations.NullMarked;
