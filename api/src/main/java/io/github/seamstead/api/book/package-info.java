/**
 * The writers: a plan becomes a folder of files.
 *
 * <p>Files are written into a new folder beside the one asked for and moved into its place at the
 * end, so that nothing half-written is left. A folder that exists is replaced only when an earlier
 * run made it, which a file inside it tells.
 *
 * <p>First class to open: {@link io.github.seamstead.api.book.BookWriter}.
 */
@NullMarked
package io.github.seamstead.api.book;

import org.jspecify.annotations.NullMarked;
