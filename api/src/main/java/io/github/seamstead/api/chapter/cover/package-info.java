/**
 * The pieces of the cover. First class: {@link io.github.seamstead.api.chapter.cover.CoverPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.cover;

import org.jspecify.annotations.NullMarked;
