/**
 * Text for people and programs that may hold what other people wrote: made harmless for where it
 * goes, and the reasons for which files cannot be read or written in plain words.
 *
 * <p>First class to open: {@link io.github.seamstead.shared.text.Escapes}.
 */
@NullMarked
package io.github.seamstead.shared.text;

import org.jspecify.annotations.NullMarked;
