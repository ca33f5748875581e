/**
 * The ideal frame, its members and the bars they are cut from. First class: {@link
 * io.github.seamstead.api.chapter.frame.FramePart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.frame;

import org.jspecify.annotations.NullMarked;
