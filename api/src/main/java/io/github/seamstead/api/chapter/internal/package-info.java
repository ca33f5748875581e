/**
 * What the chapters share on their way from the document to the reader; not for callers.
 *
 * <p>First class to open: {@link io.github.seamstead.api.chapter.internal.ChapterOf}.
 */
@NullMarked
package io.github.seamstead.api.chapter.internal;

import org.jspecify.annotations.NullMarked;
