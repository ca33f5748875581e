/**
 * Variants of a job beside each other: planned in parallel, one row for each, the rows marked that
 * none beats, and what saves money and hours.
 *
 * <p>First class to open: {@link io.github.seamstead.api.compare.Comparison}.
 */
@NullMarked
package io.github.seamstead.api.compare;

import org.jspecify.annotations.NullMarked;
