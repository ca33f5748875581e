/**
 * How far the job is: what the diary says is done, what is left, and the next day. First class:
 * {@link io.github.seamstead.api.chapter.progress.ProgressPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.progress;

import org.jspecify.annotations.NullMarked;
