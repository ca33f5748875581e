/**
 * Pieces laid on the stock. First class: {@link io.github.seamstead.api.chapter.layout.LayoutPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.layout;

import org.jspecify.annotations.NullMarked;
