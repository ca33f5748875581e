/**
 * Fixings, handling and anchoring. First class: {@link
 * io.github.seamstead.api.chapter.rigging.FixingsPart}.
 */
@NullMarked
package io.github.seamstead.api.chapter.rigging;

import org.jspecify.annotations.NullMarked;
