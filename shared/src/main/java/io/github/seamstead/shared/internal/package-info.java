/** Shared between the packages of this module; not for callers, and without any promise. */
@NullMarked
package io.github.seamstead.shared.internal;

import org.jspecify.annotations.NullMarked;
