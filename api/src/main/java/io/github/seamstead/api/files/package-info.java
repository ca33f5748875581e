/**
 * The folders that are written: a draft beside the folder asked for, moved into its place at the
 * end, so that nothing half-written is left; kept files are those that no run made. Not for
 * callers.
 *
 * <p>First class to open: {@link io.github.seamstead.api.files.BookFolder}.
 */
@NullMarked
package io.github.seamstead.api.files;

import org.jspecify.annotations.NullMarked;
