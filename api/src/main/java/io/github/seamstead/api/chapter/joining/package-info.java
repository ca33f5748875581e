/**
 * The order of joining and its time. First class: {@link
 * io.github.seamstead.api.chapter.joining.JoiningPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.joining;

import org.jspecify.annotations.NullMarked;
