/**
 * How the mixed layers dry and crack. First class: {@link
 * io.github.seamstead.api.chapter.drying.DryingPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.drying;

import org.jspecify.annotations.NullMarked;
