/**
 * Marking panels out with a tape. First class: {@link
 * io.github.seamstead.api.chapter.markout.MarkoutPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.markout;

import org.jspecify.annotations.NullMarked;
